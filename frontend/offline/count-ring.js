import { signal, switches, wake } from './signal.js';

const SVG = 'http://www.w3.org/2000/svg';
const ROUND = 2 * Math.PI * 54;
const SAID_ALOUD = [10, 3, 0];

/**
 * Counts repetitions by a press on the ring, with a rest between rounds that counts down, first one side, then the other.
 * Attributes: times (in a round), rounds, rest (seconds), sides (divided by "|"), and its words as word-….
 */
class CountRing extends HTMLElement {
  #counted = 0;
  #step = 0;
  #rest = 0;
  #due = 0;
  #beat = 0;

  connectedCallback() {
    this.times = Number(this.getAttribute('times'));
    this.rounds = Number(this.getAttribute('rounds'));
    this.seconds = Number(this.getAttribute('rest'));
    this.sides = this.getAttribute('sides').split('|');
    this.#build();
    this.#draw();
  }

  disconnectedCallback() {
    clearInterval(this.#beat);
  }

  get #steps() {
    return this.rounds * this.sides.length;
  }

  get #over() {
    return this.#step === this.#steps;
  }

  #word(name) {
    return this.getAttribute(`word-${name}`);
  }

  #build() {
    const drawn = (tag, attributes) => {
      const e = document.createElementNS(SVG, tag);
      for (const [name, value] of Object.entries(attributes)) e.setAttribute(name, value);
      return e;
    };
    const circle = (style) => drawn('circle', { class: style, cx: 66, cy: 66, r: 54, transform: 'rotate(-90 66 66)' });
    const part = (tag, style) => {
      const e = document.createElement(tag);
      e.className = style;
      return e;
    };
    this.ring = drawn('svg', { class: 'hw-ring', viewBox: '0 0 132 132', 'aria-hidden': 'true' });
    this.edge = circle('rg-edge');
    this.run = circle('rg-run');
    this.number = drawn('text', { class: 'rg-n', x: 66, y: 73 });
    this.unit = drawn('text', { class: 'rg-s', x: 66, y: 92 });
    this.ring.append(circle('rg-bed'), this.edge, this.run, this.number, this.unit);
    this.button = part('button', 'hw-count');
    this.button.type = 'button';
    this.button.append(this.ring);
    this.button.addEventListener('click', () => this.#press());
    this.side = part('b', 'hw-b');
    this.which = part('span', 'hw-s hw-quiet');
    this.pips = part('div', 'hw-pips');
    this.pips.setAttribute('aria-hidden', 'true');
    this.back = part('button', 'hw-button plain');
    this.back.type = 'button';
    this.back.addEventListener('click', () => this.#back());
    this.hint = part('p', 'hw-s hw-quiet');
    this.hint.textContent = this.#word('hint');
    this.aloud = part('span', 'hw-vh');
    this.aloud.setAttribute('role', 'status');
    const words = part('p', 'u-tight');
    words.append(this.side, document.createElement('br'), this.which);
    const beside = part('div', 'hw-stack u-gap3');
    beside.append(words, this.pips, this.hint, this.back, this.aloud);
    this.classList.add('hw-sheet', 'hw-hold');
    this.setAttribute('role', 'group');
    this.setAttribute('aria-label', this.#word('name'));
    this.replaceChildren(this.button, beside, switches((what) => this.#word(what)));
  }

  #press() {
    wake();
    if (this.#over) {
      this.#step = 0;
      this.#counted = 0;
    } else if (this.#rest > 0) {
      this.#endRest();
    } else {
      this.#counted++;
      this.aloud.textContent = this.#word('hold').replace('#', this.#counted).replace('@', this.times);
      if (this.#counted === this.times) this.#endRound();
    }
    this.#draw();
  }

  #back() {
    if (this.#rest > 0) {
      this.#endRest();
    } else if (this.#over) {
      this.#step--;
      this.#counted = this.times - 1;
    } else {
      this.#counted = Math.max(0, this.#counted - 1);
    }
    this.#draw();
  }

  #endRound() {
    signal(true);
    this.#step++;
    if (this.#over) {
      this.aloud.textContent = this.#word('over');
      return;
    }
    this.#counted = 0;
    if (this.seconds > 0) {
      this.#rest = this.seconds;
      this.#due = Date.now() + this.seconds * 1000;
      this.#beat = setInterval(() => this.#tick(), 250);
      this.aloud.textContent = this.#word('rest');
    }
  }

  #tick() {
    const left = Math.max(0, Math.ceil((this.#due - Date.now()) / 1000));
    if (left === this.#rest) return;
    this.#rest = left;
    if (SAID_ALOUD.includes(left)) this.aloud.textContent = String(left);
    if (left === 0) {
      signal(false);
      this.#endRest();
    }
    this.#draw();
  }

  #endRest() {
    clearInterval(this.#beat);
    this.#rest = 0;
  }

  #draw() {
    const resting = this.#rest > 0;
    const over = this.#over;
    const share = over ? 1 : resting ? this.#rest / this.seconds : this.#counted / this.times;
    this.classList.toggle('ready', share === 0);
    this.classList.toggle('resting', resting || over);
    for (const c of [this.edge, this.run]) {
      c.setAttribute('stroke-dasharray', `${(share * ROUND).toFixed(1)} ${ROUND.toFixed(1)}`);
    }
    this.number.textContent = over ? '✓' : String(resting ? this.#rest : this.#counted);
    this.unit.textContent = over
      ? ''
      : resting
        ? this.#word('rest')
        : this.#word('hold').replace('#', this.#counted).replace('@', this.times);
    this.unit.classList.toggle('of', !resting && !over);
    const at = Math.min(this.#step, this.#steps - 1);
    this.side.textContent = over
      ? this.#word('over')
      : this.sides[Math.floor(at / this.rounds)] || this.#word('name');
    this.which.textContent =
      over || this.rounds === 1
        ? ''
        : this.#word('round')
            .replace('#', (at % this.rounds) + 1)
            .replace('@', this.rounds);
    this.pips.replaceChildren(...this.#stones());
    this.button.setAttribute('aria-label', this.#word(over ? 'again' : resting ? 'skip' : 'add'));
    this.back.textContent = this.#word(resting ? 'skip' : 'back');
    const fresh = !resting && !over && this.#counted === 0;
    this.back.hidden = fresh;
    this.hint.hidden = !fresh;
  }

  #stones() {
    return Array.from({ length: this.#steps }, (_, i) => {
      const stone = document.createElement('i');
      const now = i === this.#step && (this.#counted > 0 || this.#rest > 0 || i > 0);
      stone.className = `hw-pip${i < this.#step ? ' done' : now ? ' now' : ''}`;
      return stone;
    });
  }
}

customElements.get('hw-count-ring') ?? customElements.define('hw-count-ring', CountRing);
