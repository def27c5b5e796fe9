import { signal, switches, wake } from './signal.js';

const SVG = 'http://www.w3.org/2000/svg';
const ROUND = 2 * Math.PI * 54;
const BREATH_SECONDS = 10;
const SAID_ALOUD = [10, 3, 0];

/**
 * Counts a hold down in a ring, with a breath between holds and a rest between rounds, first one side, then the other.
 * Attributes: seconds, holds, round (holds in a round), rest (seconds between rounds), sides (divided by "|"), and its
 * words as word-….
 */
class HoldRing extends HTMLElement {
  #state = 'ready';
  #step = 0;
  #left = 0;
  #due = 0;
  #beat = 0;
  #awake = null;

  connectedCallback() {
    this.seconds = Number(this.getAttribute('seconds'));
    this.holds = Number(this.getAttribute('holds'));
    this.round = Number(this.getAttribute('round')) || this.holds;
    this.rest = Number(this.getAttribute('rest')) || BREATH_SECONDS;
    this.sides = this.getAttribute('sides').split('|');
    this.#left = this.seconds;
    this.#build();
    this.#draw();
  }

  disconnectedCallback() {
    this.#stop();
  }

  get #count() {
    return this.holds * this.sides.length;
  }

  /** How long the rest is that goes before the step to come. */
  get #restNow() {
    return this.#step % this.round === 0 ? Math.max(this.rest, BREATH_SECONDS) : BREATH_SECONDS;
  }

  #word(name) {
    return this.getAttribute(`word-${name}`);
  }

  #build() {
    const circle = (style) => {
      const c = document.createElementNS(SVG, 'circle');
      for (const [name, at] of Object.entries({ class: style, cx: 66, cy: 66, r: 54, transform: 'rotate(-90 66 66)' })) {
        c.setAttribute(name, at);
      }
      return c;
    };
    const text = (style, y) => {
      const t = document.createElementNS(SVG, 'text');
      t.setAttribute('class', style);
      t.setAttribute('x', 66);
      t.setAttribute('y', y);
      return t;
    };
    const part = (tag, style) => {
      const e = document.createElement(tag);
      e.className = style;
      return e;
    };
    this.ring = document.createElementNS(SVG, 'svg');
    this.ring.setAttribute('class', 'hw-ring');
    this.ring.setAttribute('viewBox', '0 0 132 132');
    this.ring.setAttribute('aria-hidden', 'true');
    this.edge = circle('rg-edge');
    this.run = circle('rg-run');
    this.number = text('rg-n', 73);
    this.unit = text('rg-s', 92);
    this.ring.append(circle('rg-bed'), this.edge, this.run, this.number, this.unit);
    this.side = part('b', 'hw-b');
    this.which = part('span', 'hw-s hw-quiet');
    this.pips = part('div', 'hw-pips');
    this.pips.setAttribute('aria-hidden', 'true');
    this.button = part('button', 'hw-button main');
    this.button.type = 'button';
    this.button.addEventListener('click', () => this.#press());
    this.skip = part('button', 'hw-button text');
    this.skip.type = 'button';
    this.skip.textContent = this.#word('skip');
    this.skip.addEventListener('click', () => this.#skip());
    this.aloud = part('span', 'hw-vh');
    this.aloud.setAttribute('role', 'status');
    const words = part('p', 'u-tight');
    words.append(this.side, document.createElement('br'), this.which);
    const beside = part('div', 'hw-stack u-gap3');
    beside.append(words, this.pips, this.button, this.skip, this.aloud);
    this.classList.add('hw-sheet', 'hw-hold');
    this.setAttribute('role', 'group');
    this.setAttribute('aria-label', this.#word('name'));
    this.replaceChildren(this.ring, beside, switches((what) => this.#word(what)));
  }

  /** Goes on before the rest is over. */
  #skip() {
    this.#left = this.seconds;
    this.#go('running');
    this.#draw();
    this.button.focus();
  }

  #press() {
    wake();
    if (this.#state === 'running' || this.#state === 'resting') {
      this.#stop();
      this.#state = this.#state === 'resting' ? 'rest-paused' : 'paused';
    } else {
      if (this.#state === 'over') {
        this.#step = 0;
      }
      if (this.#state === 'ready' || this.#state === 'over') {
        this.#left = this.seconds;
      }
      this.#go(this.#state === 'rest-paused' ? 'resting' : 'running');
    }
    this.#draw();
  }

  #go(state) {
    this.#state = state;
    // what is left is measured against the clock, so that a sleeping page does not lose time
    this.#due = Date.now() + this.#left * 1000;
    clearInterval(this.#beat);
    this.#beat = setInterval(() => this.#tick(), 250);
    this.#stayAwake();
  }

  #tick() {
    const left = Math.max(0, Math.ceil((this.#due - Date.now()) / 1000));
    if (left === this.#left) {
      return;
    }
    this.#left = left;
    if (SAID_ALOUD.includes(left)) {
      this.aloud.textContent = String(left);
    }
    if (left === 0) {
      this.#turn();
    }
    this.#draw();
  }

  #turn() {
    if (this.#state === 'resting') {
      signal(false);
      this.#left = this.seconds;
      this.#go('running');
      return;
    }
    signal(true);
    this.#step++;
    if (this.#step === this.#count) {
      this.#stop();
      this.#state = 'over';
      this.aloud.textContent = this.#word('over');
    } else {
      this.#left = this.#restNow;
      this.#go('resting');
      this.aloud.textContent = this.#word('rest');
    }
  }

  #stop() {
    clearInterval(this.#beat);
    this.#awake?.release().catch(() => {});
    this.#awake = null;
  }

  #stayAwake() {
    if (!this.#awake && navigator.wakeLock) {
      navigator.wakeLock.request('screen').then(
        (lock) => {
          this.#awake = lock;
        },
        () => {}
      );
    }
  }

  #draw() {
    const resting = this.#state === 'resting' || this.#state === 'rest-paused';
    const over = this.#state === 'over';
    const whole = resting ? this.#restNow : this.seconds;
    this.skip.hidden = !resting;
    const share = over ? 1 : this.#left / whole;
    this.classList.toggle('ready', this.#state === 'ready');
    this.classList.toggle('resting', resting || over);
    for (const c of [this.edge, this.run]) {
      c.setAttribute('stroke-dasharray', `${(share * ROUND).toFixed(1)} ${ROUND.toFixed(1)}`);
    }
    const long = whole >= 100;
    this.number.textContent = over
      ? '✓'
      : long
        ? `${Math.floor(this.#left / 60)}:${String(this.#left % 60).padStart(2, '0')}`
        : String(this.#left);
    this.unit.textContent = over ? '' : resting ? this.#word('rest') : this.#word(long ? 'minutes' : 'seconds');
    const at = Math.min(this.#step, this.#count - 1);
    this.side.textContent = over ? this.#word('over') : this.sides[Math.floor(at / this.holds)] || this.#word('name');
    this.which.textContent = over
      ? ''
      : this.#word('hold').replace('#', (at % this.holds) + 1).replace('@', this.holds);
    this.pips.replaceChildren(...this.#stones());
    this.button.textContent = this.#word(this.#label());
  }

  #label() {
    switch (this.#state) {
      case 'running':
      case 'resting':
        return 'pause';
      case 'paused':
      case 'rest-paused':
        return 'go-on';
      case 'over':
        return 'again';
      default:
        return 'start';
    }
  }

  #stones() {
    const stones = [];
    for (let i = 0; i < this.#count; i++) {
      if (i > 0 && i % this.holds === 0) {
        const gap = document.createElement('span');
        gap.className = 'u-gapx';
        stones.push(gap);
      }
      const stone = document.createElement('i');
      const now = i === this.#step && this.#state !== 'ready';
      stone.className = `hw-pip${i < this.#step ? ' done' : now ? ' now' : ''}`;
      stones.push(stone);
    }
    return stones;
  }
}

customElements.get('hw-hold-ring') ?? customElements.define('hw-hold-ring', HoldRing);
