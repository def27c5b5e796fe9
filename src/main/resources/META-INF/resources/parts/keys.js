// Keys of the staff pages. A row is an element with data-row; a control with data-key is pressed by its key: first the
// one in the row at hand, else the one on the page. Keys rest while somebody types or a dialog is open, and when the
// person has switched them off: a letter alone may be somebody's word to a machine that listens (WCAG 2.1.4).

const ROW = "[data-row]";
const STEP = { j: 1, ArrowDown: 1, k: -1, ArrowUp: -1 };
const KEPT = "hearthway-keys";

// the row and the control in it that had the keys last, so that a table drawn anew gives them back
const held = { row: "", key: "" };

function rows() {
  return [...document.querySelectorAll(ROW)].filter((row) => row.offsetParent !== null);
}

function atHand() {
  return document.activeElement?.closest(ROW) ?? document.querySelector(`${ROW}.on`);
}

function isTyping(event) {
  // a list to choose from takes letters and arrows for itself
  if (event.composedPath().some((part) => part instanceof HTMLElement && part.matches("vaadin-select, vaadin-select-overlay"))) {
    return true;
  }
  const at = event.composedPath()[0];
  return at instanceof HTMLElement && (at.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(at.tagName)) && at.type !== "checkbox";
}

function isCovered() {
  return document.querySelector("vaadin-dialog-overlay, vaadin-confirm-dialog-overlay, vaadin-context-menu-overlay, vaadin-combo-box-overlay") !== null;
}

function step(by) {
  const all = rows();
  const here = all.indexOf(atHand());
  const next = all[Math.min(all.length - 1, Math.max(0, here + by))];
  next?.focus();
  next?.scrollIntoView({ block: "nearest" });
}

function named(key) {
  const wanted = (control) => control.dataset.key === key && !control.disabled && control.offsetParent !== null;
  const row = atHand();
  const inRow = row ? [...row.querySelectorAll("[data-key]")].find(wanted) : undefined;
  return inRow ?? [...document.querySelectorAll("[data-key]")].find((control) => !control.closest(ROW) && wanted(control));
}

function areOff() {
  return localStorage.getItem(KEPT) === "off";
}

function tellSwitch(button) {
  button.setAttribute("aria-pressed", String(areOff()));
}

function giveBack(place) {
  const row = place.closest(ROW) ?? rows().find((one) => one.dataset.row === held.row) ?? rows().at(-1);
  const control = held.key && row?.querySelector(`[data-key="${held.key}"]:not(:disabled)`);
  (control || row)?.focus();
  row?.scrollIntoView({ block: "nearest" });
}

// a number takes the next step up or down: a small one by arrow, a large one by page
function stepped(input, key) {
  const { step, leap, min, max } = input.dataset;
  const by = { ArrowUp: +step, ArrowDown: -step, PageUp: +leap, PageDown: -leap }[key];
  if (!by) {
    return false;
  }
  const size = Math.abs(by);
  const now = Number(input.value.trim().replace(",", ".") || 0);
  if (Number.isFinite(now)) {
    const places = by > 0 ? Math.floor(now / size + 1e-6) + 1 : Math.ceil(now / size - 1e-6) - 1;
    const next = Math.max(+min, Math.min(+max, places * size));
    input.value = next === 0 ? "" : String(Number(next.toFixed(3)));
    input.dispatchEvent(new Event("input", { bubbles: true }));
  }
  return true;
}

document.addEventListener("hw-keys-back", (event) => giveBack(event.target));

document.addEventListener("hw-keys-switch", (event) => tellSwitch(event.target));

document.addEventListener("click", (event) => {
  const button = event.target.closest?.("[data-keys-switch]");
  if (button) {
    localStorage.setItem(KEPT, areOff() ? "on" : "off");
    tellSwitch(button);
  }
});

document.addEventListener("focusin", (event) => {
  const row = event.target.closest?.(ROW);
  if (row) {
    held.row = row.dataset.row;
    held.key = event.target.dataset.key ?? "";
    document.querySelectorAll(`${ROW}.on`).forEach((other) => other.classList.toggle("on", other === row));
    row.classList.add("on");
  }
});

// in a number of a row: steps, and the way back to the row
document.addEventListener("keydown", (event) => {
  const input = event.target;
  const plain = !event.ctrlKey && !event.metaKey && !event.altKey && !event.shiftKey && !event.defaultPrevented;
  if (!plain || !(input instanceof HTMLInputElement) || input.dataset.step === undefined) {
    return;
  }
  const row = input.closest(ROW);
  if ((event.key === "Enter" || event.key === "Escape") && row) {
    event.preventDefault();
    row.focus();
  } else if (stepped(input, event.key)) {
    event.preventDefault();
  }
});

document.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented || isTyping(event) || isCovered() || areOff()) {
    return;
  }
  if (Object.hasOwn(STEP, event.key)) {
    event.preventDefault();
    step(STEP[event.key]);
    return;
  }
  // a focused button or link keeps its own Enter and space
  const onControl = document.activeElement?.matches("button, a[href], input, summary");
  if (onControl && (event.key === "Enter" || event.key === " ")) {
    return;
  }
  const name = event.key === " " ? "space" : event.shiftKey && event.key.length === 1 && /[a-z]/i.test(event.key) ? `shift+${event.key.toLowerCase()}` : event.key.toLowerCase();
  const control = named(name);
  if (control) {
    event.preventDefault();
    // a key leads to a field to type in, and presses everything else
    if (control.matches("input:not([type=checkbox]), textarea, select, vaadin-text-field, vaadin-text-area")) {
      control.focus();
      control.select?.();
    } else {
      control.click();
    }
  }
});

// a list left open is read anew when somebody comes back to it
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible" && !isCovered()) {
    document.querySelector("[data-on-return]")?.click();
  }
});
