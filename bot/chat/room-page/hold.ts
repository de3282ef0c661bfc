/*
 * Keys and taps that were meant for what was on the screen a moment ago do nothing. A call comes under a finger that is
 * already on its way, and goes under one, too; a wrong press moves a film's clock.
 */

export const HOLD_MS = 1000;

let heldUntil = 0;

/** Shown on the page itself as well, so that its keys can look held. */
export function holdKeys(ms = HOLD_MS): void {
  heldUntil = Math.max(heldUntil, performance.now() + ms);
  document.documentElement.dataset.held = "";
  setTimeout(() => {
    if (performance.now() >= heldUntil) delete document.documentElement.dataset.held;
  }, ms + 10);
}

export const isTextField = (element: Element | null): boolean =>
  element instanceof HTMLTextAreaElement ||
  element instanceof HTMLSelectElement ||
  (element instanceof HTMLInputElement && !["checkbox", "radio", "button", "file"].includes(element.type));

function swallow(event: Event): void {
  if (performance.now() >= heldUntil || !event.isTrusted) return;
  // What is being typed goes on, and the key that sends it is its typist's own.
  if (isTextField(document.activeElement) && (event.type === "keydown" || (event as MouseEvent).detail === 0))
    return;
  if (event instanceof KeyboardEvent && event.key !== "Enter" && event.key !== " ") return;
  event.preventDefault();
  event.stopPropagation();
}

/** Once for a page, before anything else listens. */
export function watchHolds(): void {
  for (const type of ["click", "keydown"]) addEventListener(type, swallow, { capture: true });
}
