import { forget } from './session-kept.js';

const PREFIX = 'hw-draft|';
const KEPT_FOR = 7 * 24 * 3600 * 1000;

// a browser may refuse to store anything; typing must go on all the same
const stored = (act, otherwise = null) => {
  try {
    return act();
  } catch {
    return otherwise;
  }
};

const all = () => stored(() => Object.keys(localStorage).filter((key) => key.startsWith(PREFIX)), []);

const read = (key) => stored(() => JSON.parse(localStorage.getItem(key)));

/** Who signs out takes the own drafts along; another person's wait for that person. */
document.addEventListener(
  'click',
  (event) => {
    const person = event.target.closest?.('a[data-drafts]')?.dataset.drafts;
    if (person) {
      all()
        .filter((key) => key.startsWith(PREFIX + person))
        .forEach((key) => stored(() => localStorage.removeItem(key)));
      forget(person.slice(0, -1));
    }
  },
  true
);

all()
  .filter((key) => !(Date.now() - read(key)?.at < KEPT_FOR))
  .forEach((key) => stored(() => localStorage.removeItem(key)));

/**
 * Keeps the words of the text area in it while they are typed, and puts them back when the page comes again.
 * Attributes: name, which names person, child and form; kept, the words that say so.
 */
class Draft extends HTMLElement {
  #field = null;

  connectedCallback() {
    this.#field = this.querySelector('vaadin-text-area');
    this.addEventListener('input', () => this.#keep());
    // after the server has said its own value
    customElements.whenDefined('vaadin-text-area').then(() => requestAnimationFrame(() => this.#bring()));
  }

  get #key() {
    return PREFIX + this.getAttribute('name');
  }

  #keep() {
    const text = this.#field.value;
    stored(() =>
      text ? localStorage.setItem(this.#key, JSON.stringify({ text, at: Date.now() })) : localStorage.removeItem(this.#key)
    );
  }

  #bring() {
    const text = read(this.#key)?.text;
    if (!this.isConnected || !text || text === this.#field.value) {
      return;
    }
    this.#field.value = text;
    this.#field.dispatchEvent(new CustomEvent('change', { bubbles: true }));
    this.#field.helperText = this.getAttribute('kept');
  }
}

customElements.get('hw-draft') ?? customElements.define('hw-draft', Draft);
