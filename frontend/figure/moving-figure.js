/**
 * Shows an exercise in motion: fetches the moving picture when the page opens, takes it in so that it has the colours of
 * the page, and pauses it at a press. Where motion is not wanted, or the picture does not come, a press shows start and
 * end in turn until pressed again.
 */
class MovingFigure extends HTMLElement {
  #picture = null;
  #turn = 0;
  #calm = matchMedia('(prefers-reduced-motion: reduce)');

  connectedCallback() {
    this.addEventListener('click', this);
    this.#calm.addEventListener('change', this);
    if (!this.#calm.matches) {
      this.#fetch();
    }
  }

  disconnectedCallback() {
    this.removeEventListener('click', this);
    this.#calm.removeEventListener('change', this);
    this.#rest();
  }

  handleEvent(event) {
    if (event.type === 'change') {
      this.#still();
    } else if (event.target.closest('button')) {
      this.#press();
    }
  }

  async #fetch() {
    try {
      const answer = await fetch(this.dataset.src);
      if (!answer.ok || !this.isConnected) return;
      // its own styles are for pictures that stand alone: the theme has them for pages, and strict pages refuse them
      const text = (await answer.text()).replace(/<style[^>]*>[^]*?<\/style>/g, '');
      const drawn = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
      if (drawn.localName !== 'svg' || this.#calm.matches) return;
      this.#picture = document.importNode(drawn, true);
      this.prepend(this.#picture);
      this.classList.add('moves');
      this.#say('pause');
    } catch {
      // without a network the two positions stay
    }
  }

  #press() {
    if (this.#picture) {
      const paused = this.#picture.animationsPaused();
      if (paused) {
        this.#picture.unpauseAnimations();
      } else {
        this.#picture.pauseAnimations();
      }
      this.#say(paused ? 'pause' : 'play');
    } else if (this.#turn) {
      this.#rest();
    } else {
      this.classList.add('at-start');
      this.#turn = setInterval(() => this.classList.toggle('at-start'), 1500);
      this.#say('stop');
    }
  }

  #still() {
    this.#picture?.remove();
    this.#picture = null;
    this.classList.remove('moves');
    this.#rest();
  }

  #rest() {
    clearInterval(this.#turn);
    this.#turn = 0;
    this.classList.remove('at-start');
    this.#say('show');
  }

  #say(word) {
    this.classList.toggle('runs', word === 'pause' || word === 'stop');
    const words = this.querySelector('button > span:last-child');
    if (words) {
      words.textContent = this.dataset[word];
    }
  }
}

customElements.get('hw-moving-figure') ?? customElements.define('hw-moving-figure', MovingFigure);
