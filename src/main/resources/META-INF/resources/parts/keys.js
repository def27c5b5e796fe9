// Keys of the staff pages. A row is an element with data-row; a control with data-key is pressed by its key: first the
// one in the row at hand, else the one on the page. Keys rest while somebody types or a dialog is open.

const ROW = "[data-row]";
const STEP = { j: 1, ArrowDown: 1, k: -1, ArrowUp: -1 };

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

document.addEventListener("focusin", (event) => {
  const row = event.target.closest?.(ROW);
  if (row) {
    document.querySelectorAll(`${ROW}.on`).forEach((other) => other.classList.toggle("on", other === row));
    row.classList.add("on");
  }
});

document.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented || isTyping(event) || isCovered()) {
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
    control.matches("input:not([type=checkbox]), textarea") ? control.focus() : control.click();
  }
});

// a list left open is read anew when somebody comes back to it
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible" && !isCovered()) {
    document.querySelector("[data-on-return]")?.click();
  }
});
