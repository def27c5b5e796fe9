/** A button that lets the figure before it go from its start to its end and back, until pressed again. */
class ShowMe extends HTMLElement {
  #turn = 0;

  connectedCallback() {
    this.addEventListener('click', this);
  }

  disconnectedCallback() {
    this.removeEventListener('click', this);
    this.#rest();
  }

  handleEvent(event) {
    if (!event.target.closest('button')) {
      return;
    }
    if (this.#turn) {
      this.#rest();
    } else {
      this.#toggle(true);
      this.#turn = setInterval(() => this.#toggle(), 1500);
      this.#say('stop');
    }
  }

  #toggle(force) {
    this.parentElement?.classList.toggle('at-start', force);
  }

  #rest() {
    clearInterval(this.#turn);
    this.#turn = 0;
    this.#toggle(false);
    this.#say('show');
  }

  #say(word) {
    const words = this.querySelector('button > span:last-child');
    if (words) {
      words.textContent = this.dataset[word];
    }
  }
}

customElements.get('hw-show-me') ?? customElements.define('hw-show-me', ShowMe);
