// Sends ticks that wait: when a page opens, when the signal is back, and again after a while when it did not work. Runs in
// the pages of the family as well, so that nobody has to open the session for it.

import * as kept from './session-kept.js';

const WAITS_MS = [5_000, 15_000, 60_000, 300_000];
const PATIENCE_MS = 15_000;
const BATCH = 25;

/** How the last try ended: 'none' before any, 'sent', 'no-signal', 'signed-out'. */
export const state = { reach: 'none' };

let token = null;
let tries = 0;
let timer = 0;
let running = null;
let again = false;
let listener = null;

/** Is told after each try, with whether anything came in. */
export function whenTried(then) {
  listener = then;
}

export class SignedOut extends Error {}

/** Asks the server for an answer in JSON; sets the clock right by it. */
export async function ask(address, options = {}) {
  const left = Date.now();
  const answer = await fetch(address, {
    cache: 'no-store',
    credentials: 'same-origin',
    signal: AbortSignal.timeout(PATIENCE_MS),
    ...options,
  });
  const isJson = (answer.headers.get('Content-Type') || '').includes('json');
  if (answer.status === 401 || (answer.ok && (answer.redirected || !isJson))) {
    state.reach = 'signed-out';
    throw new SignedOut();
  }
  const body = isJson ? await answer.json() : {};
  if (body.now) {
    const offset = Math.round(body.now - (left + Date.now()) / 2);
    kept.isNow(body.account ?? kept.who()?.account, offset);
  }
  if (body.token) token = body.token;
  return { status: answer.status, body };
}

/** What a phone holds is told again with the server's time of the moment it was said. */
const told = ({ tick }) => ({ ...tick, phone: undefined });

async function post(child, some) {
  const { account } = kept.who();
  const answer = await ask(`/session/${child}/ticks`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', [token.header]: token.value },
    body: JSON.stringify({ account, ticks: some.map(told) }),
  });
  // somebody else has signed in on this phone: these ticks wait for the one who made them
  if (answer.status === 409) throw new SignedOut();
  return answer;
}

function take(child, waiting, answer) {
  const problems = [{ field: '', message: answer.body.message || '' }];
  waiting.forEach((each, place) => {
    const said = answer.body.answers?.[place];
    if (said?.state === 'kept' || said?.state === 'known') {
      kept.dropTick(child, each.tick);
      if (said.became && said.state === 'kept') {
        const { key, day, exercise } = each.tick;
        kept.keepNews(child, [...kept.news(child), { key, day, exercise, says: said.says }]);
      }
    } else if (said || (answer.status >= 400 && answer.status < 500)) {
      kept.keepTick(child, { ...each, problems: said?.problems ?? problems });
    }
  });
}

async function sendAll() {
  // a token lives as long as its session, which may have ended
  await ask('/session/here');
  let came = false;
  for (const child of kept.waiting()) {
    for (;;) {
      const waiting = kept
        .ticks(child)
        .filter((each) => !each.problems)
        .slice(0, BATCH);
      if (!waiting.length) break;
      const answer = await post(child, waiting);
      if (answer.status >= 500 || answer.status === 403) throw new Error('not now');
      take(child, waiting, answer);
      came = true;
    }
  }
  return came;
}

const alone = (act) =>
  navigator.locks ? navigator.locks.request('hw-session-send', { ifAvailable: true }, (lock) => lock && act()) : act();

function later() {
  clearTimeout(timer);
  const waits = kept.waiting().some((child) => kept.ticks(child).some((each) => !each.problems));
  if (waits && state.reach !== 'signed-out') {
    timer = setTimeout(send, WAITS_MS[Math.min(tries++, WAITS_MS.length - 1)]);
  }
}

async function attempt() {
  let came = false;
  try {
    if (kept.anyWaits()) {
      came = await alone(sendAll);
      state.reach = 'sent';
      tries = 0;
    }
  } catch (trouble) {
    state.reach = trouble instanceof SignedOut ? 'signed-out' : 'no-signal';
  }
  later();
  await listener?.(Boolean(came));
}

/** Sends all that waits; at most once at a time, and once more when something was said meanwhile. */
export function send() {
  again = Boolean(running);
  running ??= attempt().finally(() => {
    running = null;
    if (again) send();
  });
  return running;
}

// a page of the family shows what the server knew before the ticks came
listener = (came) => {
  if (came && /\/(today|week)$/.test(location.pathname)) location.reload();
};

addEventListener('online', () => {
  tries = 0;
  send();
});
document.addEventListener('visibilitychange', () => {
  if (!document.hidden) send();
});
queueMicrotask(send);
