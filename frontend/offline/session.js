// The session on the phone: one exercise a page, with or without a signal. The plan is taken along, what is said is kept on
// the phone first and sent then.

import '../figure/moving-figure.js';
import './hold-ring.js';
import './count-ring.js';
import * as kept from './session-kept.js';
import { ask, send, SignedOut, state, whenTried } from './session-send.js';
import { calls, choice, h, icon, led, pip, PIPS, ring, scale, stage, still, strip } from './session-parts.js';

const SEVERE = 7;
const LONGEST_NOTE = 2000;
const CLOCK_OFF_MS = 10 * 60_000;
const DAY_MS = 24 * 3600_000;
const REASONS = ['TIRED', 'PAIN', 'ILL', 'NO_TIME', 'DID_NOT_WANT', 'OTHER'];

const child = location.pathname.split('/')[2] || '';
const main = document.getElementById('main');
const top_ = document.getElementById('top');
const status = document.getElementById('state');
const turns = document.getElementById('turns');
const stops = document.getElementById('stops');
const version = main.dataset.version;
const none = document.getElementById('none');

let plan = kept.plan(child);
let notYours = '';

const w = (name) => plan.words[name];

// ---- days and what was said -------------------------------------------------------------------------------------------

/** The day it is for this person, whatever this phone's clock says. */
const dayOf = (at) => new Intl.DateTimeFormat('en-CA', { timeZone: plan.zone, dateStyle: 'short' }).format(at);
const today = () => dayOf(kept.now());
const isOld = () => kept.now() > plan.until;

const dayAt = (date) => plan.days.find((day) => day.date === date);

/** What was said last of an exercise: what waits here before what the plan came with. */
function said(date, item) {
  const waits = kept
    .ticks(child)
    .filter(({ tick }) => tick.day === date && tick.exercise === item.exercise)
    .at(-1);
  if (waits) {
    return {
      outcome: waits.tick.outcome,
      severe: (waits.tick.pain ?? 0) >= SEVERE,
      words: w('outcome.' + waits.tick.outcome),
      waits: waits.problems ? 'refused' : 'waits',
    };
  }
  return item.said ? { ...item.said, waits: '' } : null;
}

const open = (day) => day.planned.filter((item) => !said(day.date, item));

// ---- getting the plan -------------------------------------------------------------------------------------------------

async function fetchPlan() {
  try {
    const { status: code, body } = await ask(`/session/${child}/week`);
    if (body.child && typeof body.child === 'string') {
      location.replace('/session/' + body.child);
      return;
    }
    if (code === 200) {
      plan = body;
      kept.keepPlan(plan);
      state.reach = 'sent';
      takePictures();
    } else if (code === 404) {
      kept.dropPlan(child);
      plan = null;
      notYours = body.message;
    }
  } catch (trouble) {
    state.reach = trouble instanceof SignedOut ? 'signed-out' : 'no-signal';
    // another person may have signed in on this phone meanwhile
    plan = kept.plan(child);
  }
}

/** Stills of all exercises of these days; what is no longer among them goes, the moving ones that were opened stay. */
async function takePictures() {
  if (!globalThis.caches) return;
  const items = plan.days.flatMap((day) => day.planned);
  const stills = new Set(items.flatMap((item) => [item.picture.start, item.picture.end]));
  const wanted = new Set([...stills, ...items.map((item) => item.picture.moving)]);
  const cache = await caches.open(kept.PICTURES);
  for (const { url } of await cache.keys()) {
    const path = new URL(url).pathname;
    if (wanted.has(path)) stills.delete(path);
    else await cache.delete(url);
  }
  for (const address of stills) {
    await cache.add(address).catch(() => undefined);
  }
}

function keepForLater() {
  if (!navigator.serviceWorker) return;
  for (const door of ['/session', '/call']) {
    navigator.serviceWorker.register(`${door}/worker.js?v=${version}`, { scope: door }).catch(() => {
      // a browser that keeps nothing: the page works as long as there is a network
    });
  }
}

// ---- where we are -----------------------------------------------------------------------------------------------------

/** #2026-03-12/2/went: the day, the exercise counted from 1, and what of it; or #2026-03-12/end. */
function place() {
  const [date, number, part] = decodeURIComponent(location.hash.slice(1)).split('/');
  return { date: dayAt(date) ? date : today(), number: Number(number) || 0, part: part || (Number(number) ? '' : number || '') };
}

const go = (date, ...rest) => {
  location.hash = [date, ...rest].join('/');
};

let shown = '';

function draw() {
  const focus = shown !== location.hash;
  shown = location.hash;
  none.hidden = Boolean(plan) || Boolean(notYours);
  document.getElementById('waiting')?.remove();
  if (!plan) {
    turns.hidden = true;
    none.hidden = Boolean(notYours) || state.reach === 'signed-out';
    if (!none.isConnected) main.replaceChildren(none);
    if (notYours) main.replaceChildren(h('h1.u-2xl.u-mt5', {}, notYours));
    if (state.reach === 'signed-out') location.replace(`/session/${child}/again`);
    return;
  }
  document.documentElement.lang = plan.lang;
  document.querySelector('.hw-skip').textContent = w('skip');
  const demo = document.querySelector('.hw-demo');
  if (demo) demo.textContent = w('demo');
  document.title = `${plan.child.name} · Hearthway`;
  const here = place();
  const day = dayAt(here.date);
  const page = isOld() || !day ? oldPage() : pageOf(day, here);
  top_.replaceChildren(...page.top);
  tellState();
  main.replaceChildren(h('div.hw-page', {}, ...page.parts.filter(Boolean)));
  turns.hidden = !page.turns;
  turns.replaceChildren(...(page.turns ?? []));
  if (focus) {
    scrollTo(0, 0);
    const title = main.querySelector('h1');
    title?.setAttribute('tabindex', '-1');
    title?.focus({ preventScroll: true });
  }
}

function pageOf(day, here) {
  const item = day.planned[here.number - 1];
  if (here.part === 'call') return callPage(day);
  if (item && here.part === 'went') return wentPage(day, item, here.number);
  if (item) return exercisePage(day, item, here.number);
  if (here.part === 'end') return endPage(day);
  return firstPage(day);
}

const round = (mark, name, address) =>
  h('a.hw-round.u-back', { href: address, 'aria-label': name }, icon(mark));

/** Where the ticks stand, over every page. */
function tellState() {
  const waiting = kept.ticks(child).filter((each) => !each.problems).length;
  const parts = [];
  if (state.reach === 'signed-out') {
    parts.push(
      strip(
        'ember',
        'signin',
        w('session.signed-out') + ' ',
        waiting ? plan.counted.waits[Math.min(waiting, plan.counted.waits.length - 1)] + ' ' : '',
        h('a', { href: `/session/${child}/again` }, w('session.sign-in'))
      )
    );
  } else if (waiting) {
    parts.push(strip('quiet', 'info', plan.counted.waits[Math.min(waiting, plan.counted.waits.length - 1)]));
  } else if (!navigator.onLine || state.reach === 'no-signal') {
    parts.push(strip('quiet', 'info', w('session.offline')));
  }
  const words = parts.map((part) => part.textContent).join();
  if (status.dataset.words === words) return;
  status.dataset.words = words;
  status.replaceChildren(...parts);
}

// ---- pages ------------------------------------------------------------------------------------------------------------

function oldPage() {
  return {
    top: [round('back', w('session.home'), plan.home), h('span.hw-b.hw-below', {}, plan.child.name)],
    parts: [
      h('h1.u-2xl', {}, w('session.old')),
      h('p.u-mt1', {}, w('session.old.why')),
      h('button.hw-button.main.big.wide.u-mt5', { type: 'button', onclick: begin }, w('session.try')),
      h('div.hw-stack.u-mt5', {}, stopParts(null).filter(Boolean)),
    ],
  };
}

function firstPage(day) {
  const now = day.date === today();
  const yesterday = dayAt(dayOf(kept.now() - DAY_MS));
  const rest = open(day);
  const severe = day.planned.some((item) => said(day.date, item)?.severe);
  if (now && severe) return callPage(day);
  const done = day.planned.filter((item) => ['DONE', 'SOME'].includes(said(day.date, item)?.outcome)).length;
  const title = () => {
    if (!day.planned.length) return w('today.rest');
    if (rest.length) return plan.counted.left[rest.length];
    if (!done) return w('today.spent');
    return plan.counted[done === day.planned.length ? 'over' : 'some'][done];
  };
  const next = rest.length ? day.planned.indexOf(rest[0]) + 1 : 0;
  const ahead = day.date > today();
  return {
    top: [round('back', w('session.home'), plan.home), h('span.hw-b.hw-below', {}, plan.child.name)],
    parts: [
      h(
        'div.hw-hero.u-pb3',
        {},
        h('p.when', {}, day.label),
        h('h1', {}, title()),
        day.planned.length ? h('p.hw-quiet.u-mt1', {}, day.lead) : h('p.u-lead', {}, plan.pause || w('rest.why'))
      ),
      ahead ? strip('quiet', 'info', w('today.to-come')) : null,
      ...newsParts(),
      h(
        'section.hw-stack.u-gap2',
        { 'aria-label': w('today.exercises') },
        day.planned.map((item, at) => row(day, item, at + 1))
      ),
      h(
        'div.hw-stack.u-gap2.u-mt5',
        {},
        now && yesterday && open(yesterday).length
          ? h('a.hw-button.plain.wide', { href: `#${yesterday.date}` }, w('session.yesterday'))
          : null,
        now ? null : h('a.hw-button.plain.wide', { href: `#${today()}` }, w('session.today')),
        h('p.hw-s.hw-quiet', {}, age()),
        Math.abs(kept.who().offset) > CLOCK_OFF_MS ? h('p.hw-s.hw-quiet', {}, w('session.clock')) : null
      ),
    ],
    turns: day.planned.length
      ? [
          stopButton(null),
          !ahead && next
            ? h(
                'a.hw-button.main.big',
                { href: `#${day.date}/${next}` },
                icon('play'),
                h('span', {}, w(rest.length === day.planned.length ? 'session.start' : 'session.go-on'))
              )
            : null,
        ].filter(Boolean)
      : null,
  };
}

const age = () => {
  const days = Math.round((Date.parse(today()) - Date.parse(dayOf(plan.now))) / DAY_MS);
  return plan.counted.age[Math.max(0, Math.min(days, plan.counted.age.length - 1))];
};

function row(day, item, number) {
  const before = said(day.date, item);
  const lesson = plan.exercises[item.exercise];
  const says = before ? before.words + (before.waits === 'waits' ? ' · ' + w('session.waiting') : '') : item.says;
  return h(
    `article.hw-ex.${before ? 'done' : 'later'}`,
    {},
    h(`div.hw-well.hw-tone-${plan.child.tone}`, {}, still(item.picture.end, item.picture.ratio, '')),
    h(
      'div',
      {},
      h('h2.name', {}, h('a', { href: `#${day.date}/${number}` }, lesson.name)),
      h('p.dose', {}, says)
    ),
    before ? h('span.hw-went', {}, pip(PIPS[before.outcome])) : h('span', {})
  );
}

function newsParts() {
  const told = kept.news(child);
  const refused = kept.ticks(child).filter((each) => each.problems);
  return [
    ...told.map((each) =>
      h(
        'div.hw-strip.u-mb3',
        {},
        icon('info'),
        h('div', {}, each.says),
        h(
          'button.hw-round',
          {
            type: 'button',
            'aria-label': w('session.close'),
            onclick: () => {
              kept.keepNews(child, kept.news(child).filter((other) => other.key !== each.key));
              draw();
            },
          },
          icon('close')
        )
      )
    ),
    ...refused.map((each) => refusal(each)),
  ];
}

/** A tick that the clinic could not take: it stays here until somebody says what is to become of it. */
function refusal(each) {
  const name = plan.exercises[each.tick.exercise]?.name ?? each.tick.exercise;
  const day = dayAt(each.tick.day)?.label ?? each.tick.day;
  const again = (tick) => {
    kept.dropTick(child, each.tick);
    if (tick) kept.keepTick(child, { tick });
    draw();
    send();
  };
  const ofDay = each.problems.some((problem) => problem.field === 'day') && dayAt(today());
  return h(
    'div.hw-strip.ember.u-mb3',
    {},
    icon('info'),
    h(
      'div.hw-stack.u-gap2',
      {},
      h('p', {}, h('b', {}, `${w('session.refused')} ${name}, ${day}`)),
      ...each.problems.map((problem) => h('p', {}, problem.message)),
      ofDay
        ? h(
            'button.hw-button.plain',
            { type: 'button', onclick: () => again({ ...each.tick, day: today(), at: kept.now() }) },
            w('session.refused.today')
          )
        : null,
      h('button.hw-button.plain', { type: 'button', onclick: () => again(null) }, w('session.refused.drop'))
    )
  );
}

const steps = (day, number) =>
  h(
    'div.hw-pips.hw-steppings',
    { 'aria-hidden': 'true' },
    day.planned.map((item, at) => pip(at + 1 === number ? 'now' : PIPS[said(day.date, item)?.outcome] || ''))
  );

function exerciseTop(day, number, back) {
  return [
    round('back', w('session.back'), back),
    h(
      'span.hw-b.hw-below.grow',
      {},
      w('session.step').replace('#', number).replace('@', day.planned.length)
    ),
    steps(day, number),
  ];
}

function exercisePage(day, item, number) {
  const lesson = plan.exercises[item.exercise];
  const ahead = day.date > today();
  const next = number < day.planned.length ? `#${day.date}/${number + 1}` : `#${day.date}/end`;
  return {
    top: exerciseTop(day, number, `#${day.date}`),
    parts: [
      h(
        'div.hw-stack.hw-exercise',
        {},
        stage(plan.words, item, plan.child.tone),
        h('div', {}, h('h1.u-2xl', {}, lesson.name), h('p.hw-quiet.u-mt1', {}, lesson.purpose)),
        h(
          `div.hw-dose.of${item.dose.length}`,
          {},
          item.dose.map((cell) => h('div', {}, h('b', {}, cell.large), h('span', {}, cell.small)))
        ),
        ring(plan.words, item.timer),
        item.notFromSays ? strip('ember', 'lock', item.notFromSays) : null,
        h(
          'section.hw-stack.u-gap2',
          { 'aria-label': w('exercise.how') },
          h('h2.u-l', {}, w('exercise.how')),
          item.note ? strip('', 'person', ...led(w('exercise.note'), item.note)) : null,
          h('ol.hw-steps', {}, lesson.steps.map((step) => h('li', {}, h('span', {}, step)))),
          ...item.cautions.map((caution) => strip('ember', 'info', ...led(caution.strong, caution.words))),
          strip('quiet', 'pause', ...led(w('exercise.stop'), lesson.stop))
        ),
        h('a.hw-button.text', { href: next }, w('session.skip'))
      ),
    ],
    turns: [
      stopButton(lesson),
      ahead
        ? h('a.hw-button.plain.big', { href: next }, w('session.skip'))
        : h('a.hw-button.main.big', { href: `#${day.date}/${number}/went` }, w('session.how')),
    ],
  };
}

// ---- how it went ------------------------------------------------------------------------------------------------------

function wentPage(day, item, number) {
  const lesson = plan.exercises[item.exercise];
  const form = kept.form(child, day.date, item.exercise) ?? { outcome: 'DONE', effort: null, pain: null, note: '' };
  const keep = () => kept.keepForm(child, day.date, item.exercise, form);
  const parts = {};
  const arrange = () => {
    const couldNot = form.outcome === 'COULD_NOT';
    parts.why.hidden = !couldNot;
    parts.effort.hidden = couldNot;
    parts.who.hidden = form.pain === null && (couldNot || form.effort === null);
    const severe = (form.pain ?? 0) >= SEVERE;
    if (severe && !parts.severe.firstChild) {
      parts.severe.append(
        h('h2.u-xl', {}, w('today.stop')),
        h('p', {}, w('stop.why')),
        calls(plan, ['urgent', 'now']),
        h('p.hw-first', {}, w('stop.when-now'))
      );
      parts.severe.scrollIntoView({ block: 'start' });
    } else if (!severe) {
      parts.severe.replaceChildren();
    }
  };
  const set = (field) => (value) => {
    form[field] = value;
    keep();
    arrange();
  };
  const fault = h('p.hw-fault', { role: 'alert', hidden: true });
  const stone = (outcome) => pip(PIPS[outcome]);
  parts.severe = h('div.hw-severe', { role: 'alert' });
  parts.why = h(
    'div.hw-stack.u-gap2',
    {},
    h('h2.u-l', {}, w('exercise.why-not')),
    choice('hw-chips', w('exercise.why-not'), REASONS.map((r) => [r, w('reason.' + r)]), form.reason ?? null, set('reason'))
  );
  parts.effort = scale(plan, 'effort', form.effort, set('effort'));
  parts.pain = scale(plan, 'pain', form.pain, set('pain'));
  parts.who = h(
    'div.hw-stack.u-gap2',
    {},
    h('h2.u-l', {}, w('exercise.who')),
    choice(
      'hw-chips',
      w('exercise.who'),
      ['CHILD', 'ADULT'].map((who) => [who, w('rated.' + who)]),
      form.ratedBy ?? null,
      set('ratedBy')
    )
  );
  const note = h('textarea', {
    rows: 3,
    oninput: () => {
      form.note = note.value;
      keep();
    },
  });
  note.value = form.note;
  const save = () => {
    const wrong = problem(form);
    fault.hidden = !wrong;
    fault.textContent = wrong;
    if (wrong) {
      fault.scrollIntoView({ block: 'center' });
      return;
    }
    tick(day, item, form);
    const severe = (form.pain ?? 0) >= SEVERE;
    const rest = open(day);
    const later = rest.find((other) => day.planned.indexOf(other) >= number) ?? rest[0];
    if (severe) go(day.date, 'call');
    else if (later) go(day.date, day.planned.indexOf(later) + 1);
    else go(day.date, 'end');
  };
  const page = {
    top: exerciseTop(day, number, `#${day.date}/${number}`),
    parts: [
      h(
        'div.hw-stack.loose.hw-exercise',
        {},
        parts.severe,
        h(
          'div.hw-asked',
          {},
          h(`div.hw-well.hw-tone-${plan.child.tone}`, {}, still(item.picture.end, item.picture.ratio, '')),
          h('div', {}, h('p.hw-quiet.hw-s', {}, lesson.name), h('h1.u-2xl', {}, w('exercise.went')))
        ),
        choice(
          'hw-choice',
          w('exercise.went'),
          ['DONE', 'SOME', 'COULD_NOT'].map((outcome) => [outcome, w('outcome.' + outcome), stone(outcome)]),
          form.outcome,
          set('outcome'),
          true
        ),
        parts.why,
        parts.effort,
        parts.pain,
        parts.who,
        h('p.hw-s.hw-quiet', {}, w('exercise.severe')),
        plan.helper ? null : h('label.hw-line', {}, h('span', {}, w('session.note')), note),
        fault
      ),
    ],
    turns: [
      stopButton(lesson),
      h('button.hw-button.main.big', { type: 'button', onclick: save }, w('exercise.save')),
    ],
  };
  arrange();
  return page;
}

function problem(form) {
  const rated = form.pain !== null || (form.outcome !== 'COULD_NOT' && form.effort !== null);
  if (form.outcome === 'COULD_NOT' && !form.reason) return w('session.why-choose');
  // severe pain is not held up by a question
  if (rated && !form.ratedBy && (form.pain ?? 0) < SEVERE) return w('session.rate-who');
  if (form.note.length > LONGEST_NOTE) return w('session.note.long');
  return '';
}

const uuid = () => {
  if (crypto.randomUUID) return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-');
};

/** Kept on the phone first; what waited of the same exercise and day is said anew. */
function tick(day, item, form) {
  const couldNot = form.outcome === 'COULD_NOT';
  const effort = couldNot ? null : form.effort;
  const rated = form.pain !== null || effort !== null;
  kept
    .ticks(child)
    .filter(({ tick: other }) => other.day === day.date && other.exercise === item.exercise)
    .forEach(({ tick: other }) => kept.dropTick(child, other));
  kept.keepTick(child, {
    tick: {
      key: uuid(),
      exercise: item.exercise,
      day: day.date,
      outcome: form.outcome,
      reason: couldNot ? form.reason : null,
      effort,
      pain: form.pain,
      ratedBy: rated ? (form.ratedBy ?? 'ADULT') : null,
      note: plan.helper ? '' : form.note.trim(),
      at: kept.now(),
      phone: { clock: Date.now(), offset: kept.who().offset },
      version: plan.version || null,
      before: item.said?.turn ?? 0,
    },
  });
  kept.dropForm(child, day.date, item.exercise);
  send();
}

// ---- call and stop ----------------------------------------------------------------------------------------------------

function callPage(day) {
  const at = day.planned.findIndex((item) => said(day.date, item)?.severe);
  return {
    top: [round('back', w('session.home'), plan.home), h('span.hw-b.hw-below', {}, plan.child.name)],
    parts: [
      h(
        'div.hw-stop.hw-stack',
        {},
        h(
          'div.hw-hero.u-pb3',
          {},
          at >= 0 ? h('p.when', {}, plan.exercises[day.planned[at].exercise].name) : null,
          h('h1.u-2xl', {}, w('today.stop')),
          h('p.u-lead', {}, w('stop.why'))
        ),
        calls(plan, ['urgent', 'now']),
        h('p.hw-first', {}, w('stop.when-now')),
        strip('quiet', 'rest', w('stop.rest')),
        plan.helper ? strip('', 'person', w('session.tell')) : null,
        at >= 0
          ? h('a.hw-button.text.wide', { href: `#${day.date}/${at + 1}/went` }, w('session.anew'))
          : null
      ),
    ],
  };
}

function stopParts(lesson) {
  const signs = plan.signs.map((sign) => h('li', {}, h('span', {}, sign.says)));
  return [
    lesson ? strip('quiet', 'pause', ...led(w('session.stop.now'), lesson.stop)) : null,
    h('p.hw-s.hw-quiet', {}, w('exercise.severe')),
    calls(plan, ['now', 'urgent', 'hours']),
    signs.length
      ? h(
          'section.hw-call.hours',
          { 'aria-label': w('session.stop.signs') },
          h('h2.u-l', {}, w('session.stop.signs')),
          h('ul.signs', {}, ...signs)
        )
      : null,
    h('a.hw-button.plain.wide', { href: '/call' }, w('place.call')),
  ];
}

function stopButton(lesson) {
  return h(
    'button.hw-button.hw-stopper',
    {
      type: 'button',
      onclick: () => {
        stops.setAttribute('aria-label', w('session.stop'));
        stops.replaceChildren(
          h(
            'div.hw-stack',
            {},
            h(
              'div.hw-stops-top',
              {},
              h('h2.u-xl', {}, w('session.stop')),
              h(
                'button.hw-round',
                { type: 'button', 'aria-label': w('session.close'), onclick: () => stops.close() },
                icon('close')
              )
            ),
            ...stopParts(lesson).filter(Boolean)
          )
        );
        stops.showModal();
      },
    },
    icon('call'),
    h('span', {}, w('session.stop'))
  );
}

stops.addEventListener('click', (event) => {
  if (event.target === stops) stops.close();
});

// ---- the end ----------------------------------------------------------------------------------------------------------

function endPage(day) {
  const all = day.planned.map((item) => [item, said(day.date, item)]);
  const did = all.filter(([, before]) => ['DONE', 'SOME'].includes(before?.outcome)).length;
  const rest = open(day);
  const waits = all.filter(([, before]) => before?.waits === 'waits').length;
  return {
    top: [round('back', w('session.back'), `#${day.date}`), h('span.hw-b.hw-below', {}, plan.child.name)],
    parts: [
      h(
        'div.hw-hero.u-pb3',
        {},
        h('p.when', {}, day.label),
        h('h1', {}, did ? w('today.praise') : w('today.spent')),
        h('p.u-lead', {}, did ? plan.counted[rest.length ? 'some' : 'over'][did] : w('today.comfort'))
      ),
      ...newsParts(),
      h(
        'section.hw-stack.u-gap2',
        { 'aria-label': w('today.exercises') },
        day.planned.map((item, at) => row(day, item, at + 1))
      ),
      h(
        'div.hw-stack.u-mt5',
        {},
        waits ? null : strip('quiet', 'check', w('session.sent')),
        rest.length
          ? h(
              'a.hw-button.plain.wide',
              { href: `#${day.date}/${day.planned.indexOf(rest[0]) + 1}` },
              w('session.go-on')
            )
          : null,
        h('a.hw-button.main.big.wide', { href: plan.home }, w('session.end'))
      ),
    ],
  };
}

// ---- begin ------------------------------------------------------------------------------------------------------------

const isQuiet = () => !['went', 'call'].includes(plan ? place().part : '') && !(plan && place().number);

async function begin() {
  await send();
  await fetchPlan();
  if (isQuiet() || !shown) draw();
  else tellState();
}

whenTried(async (came) => {
  if (came) await fetchPlan();
  if (!plan) return;
  // nothing is drawn anew under somebody's hands
  if (isQuiet()) draw();
  else tellState();
});

addEventListener('hashchange', draw);
addEventListener('offline', () => plan && tellState());
addEventListener('online', begin);

if (child) {
  if (plan) draw();
  keepForLater();
  begin();
} else {
  location.replace('/');
}
