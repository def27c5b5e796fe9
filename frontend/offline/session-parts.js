// The pieces that the pages of the session are made of. Words come from the plan; everything is text, nothing is markup.

const SVG = 'http://www.w3.org/2000/svg';
const BANDS = ['none', 'little', 'fair', 'all'];

/** An element: its tag with classes ("p.hw-quiet.hw-s"), attributes, children; what is null is left out. */
export function h(name, attributes = {}, ...children) {
  const [tag, ...classes] = name.split('.');
  const e = document.createElement(tag);
  if (classes.length) e.className = classes.join(' ');
  for (const [key, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (key.startsWith('on')) e.addEventListener(key.slice(2), value);
    else e.setAttribute(key, value === true ? '' : String(value));
  }
  e.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== ''));
  return e;
}

function drawn(tag, attributes, ...children) {
  const e = document.createElementNS(SVG, tag);
  for (const [key, value] of Object.entries(attributes)) e.setAttribute(key, value);
  e.append(...children);
  return e;
}

export const icon = (name, size = '') =>
  drawn(
    'svg',
    { class: `hw-icon ${size}`.trim(), viewBox: '0 0 24 24', 'aria-hidden': 'true' },
    drawn('use', { href: `/look/icons.svg#i-${name}` })
  );

/** A small stone: done, some, miss, now or none. */
export const pip = (state) => h(`i.hw-pip${state ? '.' + state : ''}`, { 'aria-hidden': 'true' });

export const PIPS = { DONE: 'done', SOME: 'some', COULD_NOT: 'miss' };

export const strip = (kind, mark, ...children) =>
  h(`div.hw-strip${kind ? '.' + kind : ''}`, {}, icon(mark), h('div', {}, ...children));

export const led = (strong, words) => [h('b', {}, strong), ' ' + words];

export function still(address, ratio, words, kind = 'end') {
  const image = h(`img.hw-still.${kind}`, { alt: words, src: address });
  image.style.setProperty('--ratio', ratio);
  return image;
}

/** The large figure, moving where motion is wanted, with its pause. */
export function stage(words, item, tone) {
  const { picture, side } = item;
  const moving = h(
    `hw-moving-figure.hw-tone-${tone}`,
    {
      'data-src': picture.moving,
      'data-show': words['exercise.show'],
      'data-stop': words['exercise.show.stop'],
      'data-pause': words['exercise.show.pause'],
      'data-play': words['exercise.show.play'],
    },
    h(
      'div.hw-poses',
      {},
      still(picture.start, picture.ratio, '', 'start'),
      still(picture.end, picture.ratio, picture.words)
    ),
    h(
      'div.over',
      {},
      h('button.hw-button.plain', { type: 'button' }, played('play'), played('pause'), h('span', {}, words['exercise.show']))
    )
  );
  return h(
    'div.hw-stage',
    {},
    moving,
    side && h('span.hw-side', {}, h('b', {}, side.strong), h('span', {}, side.words))
  );
}

function played(name) {
  const mark = icon(name, 'sm');
  return h(`span.hw-drawing.${name}`, {}, mark);
}

/** The timer or counter of an exercise. */
export function ring(words, timer) {
  const hold = timer.kind === 'hold';
  const attributes = hold
    ? { seconds: timer.seconds, holds: timer.times * timer.rounds, round: timer.times }
    : { times: timer.times, rounds: timer.rounds };
  attributes.rest = timer.rest;
  attributes.sides = timer.sides.join('|');
  const names = ['start', 'pause', 'go-on', 'again', 'rest', 'over', 'seconds', 'minutes', 'hold', 'skip', 'sound', 'buzz'];
  for (const name of names) attributes[`word-${name}`] = words[`ring.${name}`];
  attributes['word-name'] = words[hold ? 'ring.name' : 'count.name'];
  for (const name of ['add', 'back', 'round', 'hint']) attributes[`word-${name}`] = words[`count.${name}`];
  return h(hold ? 'hw-hold-ring' : 'hw-count-ring', attributes);
}

/** Buttons of which at most one is pressed; pressing it again lets it go, unless one must stay. */
export function choice(style, name, options, chosen, changed, must = false) {
  const buttons = new Map();
  const show = (now) => buttons.forEach((button, key) => button.setAttribute('aria-pressed', String(key === now)));
  let now = chosen;
  for (const [key, words, mark] of options) {
    const button = h(
      style === 'hw-chips' ? 'button.hw-chip' : 'button',
      {
        type: 'button',
        onclick: () => {
          now = now === key && !must ? null : key;
          show(now);
          changed(now);
        },
      },
      mark,
      h('span', {}, words)
    );
    buttons.set(key, button);
  }
  show(now);
  return h(`div.${style}`, { role: 'group', 'aria-label': name }, ...buttons.values());
}

export function band(rating) {
  if (rating === 0) return 'none';
  return rating <= 3 ? 'little' : rating <= 6 ? 'fair' : 'all';
}

const face = (pieces) =>
  drawn(
    'svg',
    { class: 'hw-face', viewBox: '0 0 40 35', 'aria-hidden': 'true' },
    ...pieces.map((piece) => drawn('path', { class: piece.style, d: piece.d }))
  );

/** A number from 0 to 10 under four bands with their pictures; the number is what is kept. */
export function scale(plan, what, chosen, changed) {
  const words = plan.words;
  const bands = BANDS.map((name, place) =>
    h('span', {}, face(plan.faces[what][place]), h('span', {}, words[`scale.${what}.${name}`]))
  );
  let now = chosen;
  const cells = Array.from({ length: 11 }, (_, number) =>
    h(
      'button',
      {
        type: 'button',
        'aria-label': plan.counted.of[number],
        onclick: () => {
          now = now === number ? null : number;
          show();
          changed(now);
        },
      },
      String(number)
    )
  );
  const show = () => {
    cells.forEach((cell, number) => cell.setAttribute('aria-pressed', String(number === now)));
    bands.forEach((each, place) => each.classList.toggle('on', now !== null && band(now) === BANDS[place]));
  };
  show();
  return h(
    'div.hw-scale',
    { role: 'group', 'aria-label': words[`scale.${what}.title`] },
    h('h2.u-l.u-legend', {}, words[`scale.${what}.title`]),
    h('div.faces', {}, ...bands),
    h('div.row', {}, ...cells)
  );
}

/** The rows that call. */
export function calls(plan, styles) {
  const row = (line) =>
    h(
      'li',
      {},
      h(
        `a.${line.style}`,
        { href: line.link },
        icon(line.icon),
        h('span', {}, h('b', {}, line.title), h('small', {}, line.detail), h('em', {}, line.call)),
        h('i', {}, icon('phone'))
      )
    );
  const lines = styles.flatMap((style) => plan.calls.filter((line) => line.style === style));
  return h('ul.hw-calls', { 'aria-label': plan.words['call.who'] }, ...lines.map(row));
}
