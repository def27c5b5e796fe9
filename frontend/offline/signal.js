// A tone and a buzz at the end of a hold or a rest. Both are off until somebody turns them on, on this phone.

const KEY = 'hw-signal|';
const HIGH = 880;
const LOW = 587;
const SECONDS = 0.35;

let audio = null;

const stored = (act, otherwise = null) => {
  try {
    return act();
  } catch {
    return otherwise;
  }
};

/** Whether 'sound' or 'buzz' is on. */
export const isOn = (what) => stored(() => localStorage.getItem(KEY + what)) === 'on';

/** Whether this phone can buzz at all. */
export const canBuzz = () => 'vibrate' in navigator;

/** Turns it on or off; what was turned on is given at once, so that the person knows what it is. */
export function turn(what, on) {
  stored(() => (on ? localStorage.setItem(KEY + what, 'on') : localStorage.removeItem(KEY + what)));
  if (on) signal(true, what);
}

/** Phones let a page sound only after a press: call this in one. */
export function wake() {
  if (!isOn('sound')) return;
  audio ??= stored(() => new AudioContext());
  audio?.resume?.();
}

function sound(high) {
  wake();
  if (!audio) return;
  const tone = audio.createOscillator();
  const volume = audio.createGain();
  tone.frequency.value = high ? HIGH : LOW;
  volume.gain.setValueAtTime(0.0001, audio.currentTime);
  volume.gain.exponentialRampToValueAtTime(0.25, audio.currentTime + 0.03);
  volume.gain.exponentialRampToValueAtTime(0.0001, audio.currentTime + SECONDS);
  tone.connect(volume).connect(audio.destination);
  tone.start();
  tone.stop(audio.currentTime + SECONDS);
}

/** The end of a hold is high, the end of a rest low. */
export function signal(high, only = null) {
  if (isOn('sound') && only !== 'buzz') stored(() => sound(high));
  if (isOn('buzz') && only !== 'sound') stored(() => navigator.vibrate?.(high ? 200 : [80, 80, 80]));
}

/** Two buttons that turn them on and off; words is asked for 'sound' and 'buzz'. */
export function switches(words) {
  const group = document.createElement('div');
  group.className = 'hw-signals';
  for (const what of ['sound', ...(canBuzz() ? ['buzz'] : [])]) {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'hw-chip';
    button.textContent = words(what);
    button.setAttribute('aria-pressed', String(isOn(what)));
    button.addEventListener('click', () => {
      turn(what, !isOn(what));
      button.setAttribute('aria-pressed', String(isOn(what)));
    });
    group.append(button);
  }
  return group;
}
