// Reads a page aloud with the voice of the phone itself, which needs no network. Where there is no voice for the page's
// language the button stays away: Spanish read by an English voice helps nobody.

const QUIET = 'button, nav, svg, select, input, textarea, [aria-hidden="true"], .hw-vh, hw-aloud';

const isInline = (element) => getComputedStyle(element).display.startsWith('inline');

function blockOf(text) {
  let element = text.parentElement;
  while (element.parentElement && isInline(element)) element = element.parentElement;
  return element;
}

/** What can be read, block by block, in the order of the page. */
function blocks(root) {
  const found = new Map();
  const walk = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const text = walk.currentNode;
    const words = text.data.replace(/\s+/g, ' ').trim();
    if (!words || text.parentElement.closest(QUIET) || !text.parentElement.getClientRects().length) continue;
    const block = blockOf(text);
    found.set(block, (found.get(block) || '') + ' ' + words);
  }
  return [...found].map(([block, words]) => ({ block, words: words.trim() }));
}

const tongue = (tag) => tag.toLowerCase().replace('_', '-').split('-')[0];

class Aloud extends HTMLElement {
  #reading = false;
  #press = () => (this.#reading ? this.stop() : this.start());
  #leave = () => this.stop();

  connectedCallback() {
    this.hidden = true;
    if (!('speechSynthesis' in window)) return;
    this.addEventListener('click', this.#press);
    addEventListener('pagehide', this.#leave);
    speechSynthesis.addEventListener?.('voiceschanged', this.#offer);
    this.#offer();
  }

  disconnectedCallback() {
    this.stop();
    removeEventListener('pagehide', this.#leave);
    window.speechSynthesis?.removeEventListener?.('voiceschanged', this.#offer);
  }

  get #language() {
    return document.documentElement.lang || 'en';
  }

  #voice() {
    const some = speechSynthesis.getVoices().filter((voice) => tongue(voice.lang) === tongue(this.#language));
    return some.find((voice) => voice.localService) || some[0];
  }

  // some phones tell their voices late, and some never tell them and speak all the same
  #offer = () => {
    this.hidden = speechSynthesis.getVoices().length > 0 && !this.#voice();
  };

  start() {
    const root = document.querySelector(this.getAttribute('of')) || document.body;
    const parts = blocks(root);
    if (!parts.length) return;
    speechSynthesis.cancel();
    this.#show(true);
    parts.forEach(({ block, words }, place) => {
      const said = new SpeechSynthesisUtterance(words);
      said.lang = this.#language;
      const voice = this.#voice();
      if (voice) said.voice = voice;
      said.rate = 0.95;
      said.onstart = () => {
        this.#mark(block);
      };
      said.onend = () => {
        block.classList.remove('hw-spoken');
        if (place === parts.length - 1) this.#show(false);
      };
      said.onerror = () => {
        this.#mark(null);
        this.#show(false);
      };
      speechSynthesis.speak(said);
    });
  }

  stop() {
    if (!this.#reading) return;
    speechSynthesis.cancel();
    this.#mark(null);
    this.#show(false);
  }

  #mark(block) {
    document.querySelectorAll('.hw-spoken').forEach((before) => before.classList.remove('hw-spoken'));
    block?.classList.add('hw-spoken');
    block?.scrollIntoView({ block: 'nearest' });
  }

  #show(reading) {
    this.#reading = reading;
    const button = this.querySelector('button');
    button.setAttribute('aria-pressed', String(reading));
    const words = button.querySelector('span');
    words.textContent = this.getAttribute(reading ? 'stop' : 'start');
  }
}

customElements.define('hw-aloud', Aloud);
