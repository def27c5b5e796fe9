// What this phone keeps of sessions, for each account apart: the plan it took along, ticks that wait, what was being said.
// At sign-out the plan, the pictures and what was being said go; ticks that wait stay for the one who made them, and are
// sent at the next sign-in: what a family did must not be lost because somebody signed out.

const WHO = 'hw-session|who';
const PLAN = 'hw-session|plan|';
const TICK = 'hw-session|tick|';
const FORM = 'hw-session|form|';
const NEWS = 'hw-session|news|';
export const PICTURES = 'hearthway-session-pictures';

// a browser that refuses to store keeps it as long as the page is open
const memory = new Map();

function put(key, value) {
  try {
    localStorage.setItem(key, JSON.stringify(value));
    memory.delete(key);
  } catch {
    memory.set(key, value);
  }
}

function get(key) {
  if (memory.has(key)) return memory.get(key);
  try {
    return JSON.parse(localStorage.getItem(key));
  } catch {
    return null;
  }
}

function drop(key) {
  memory.delete(key);
  try {
    localStorage.removeItem(key);
  } catch {
    // nothing was stored
  }
}

function keys(prefix) {
  let stored = [];
  try {
    stored = Object.keys(localStorage);
  } catch {
    // nothing was stored
  }
  return [...new Set([...stored, ...memory.keys()])].filter((key) => key.startsWith(prefix));
}

/** Whose phone it is: {account, offset}; offset is what must be added to the phone's clock, in milliseconds. */
export const who = () => get(WHO);

/** Another person's plans go with the change; that person's ticks wait. */
export function isNow(account, offset) {
  const before = who()?.account;
  if (before && before !== account) forget(before);
  put(WHO, { account, offset });
}

/** The time by the server's clock. */
export const now = () => Date.now() + (who()?.offset ?? 0);

export const plan = (child) => (who() ? get(PLAN + who().account + '|' + child) : null);
export const keepPlan = (sheet) => put(PLAN + sheet.account + '|' + sheet.child.id, sheet);
export const dropPlan = (child) => who() && drop(PLAN + who().account + '|' + child);

/** Ticks of a child that wait or were refused, the first first: {tick, problems?}. */
export function ticks(child) {
  if (!who()) return [];
  return keys(TICK + who().account + '|' + child + '|')
    .map(get)
    .filter(Boolean)
    .sort((a, b) => a.tick.at - b.tick.at);
}

const tickKey = (child, tick) => TICK + who().account + '|' + child + '|' + tick.key;

export const keepTick = (child, kept) => put(tickKey(child, kept.tick), kept);
export const dropTick = (child, tick) => drop(tickKey(child, tick));

/** The children of whom ticks wait. */
export function waiting() {
  if (!who()) return [];
  const prefix = TICK + who().account + '|';
  return [...new Set(keys(prefix).map((key) => key.slice(prefix.length).split('|')[0]))];
}

/** Whether ticks of anybody wait on this phone: who is signed in now must be asked. */
export const anyWaits = () => keys(TICK).length > 0;

const formKey = (child, day, exercise) => FORM + who()?.account + '|' + child + '|' + day + '|' + exercise;

export const form = (child, day, exercise) => get(formKey(child, day, exercise));
export const keepForm = (child, day, exercise, said) => put(formKey(child, day, exercise), said);
export const dropForm = (child, day, exercise) => drop(formKey(child, day, exercise));

/** What the team's changes mean for ticks that came late, until the family has read it. */
export const news = (child) => (who() && get(NEWS + who().account + '|' + child)) || [];
export const keepNews = (child, told) => put(NEWS + who().account + '|' + child, told.slice(-20));

/** Lets go of all of an account but its ticks. */
export function forget(account) {
  [PLAN, FORM, NEWS].forEach((prefix) => keys(prefix + account).forEach(drop));
  if (who()?.account === account) drop(WHO);
  globalThis.caches?.delete(PICTURES).catch(() => undefined);
}
