import { useEffect } from "preact/hooks";
import type { RefObject } from "preact";
import { isTextField } from "./hold.ts";

/* Where the keyboard is. It goes back to where it was after everything that came over it. */

/** What the keyboard was on last, with everything around it, from the inside out. */
let trail: readonly Element[] = [];
/** Where the keyboard was left because its place was taken away; nobody has chosen that. */
let leftAt: HTMLElement | undefined;

/** Once for a page: whatever is taken away under the keyboard leaves it at the nearest part that is still there. */
export function watchFocus(): void {
  document.addEventListener("focusin", ({ target }) => {
    const path: Element[] = [];
    for (let each = target instanceof Element ? target : null; each; each = each.parentElement)
      path.push(each);
    trail = path;
  });
  new MutationObserver(() => {
    const nearest = nearestLeft();
    if (!nearest) return;
    leftAt = nearest;
    nearest.focus({ preventScroll: true });
  }).observe(document.body, { childList: true, subtree: true });
}

/** Where what held the keyboard is gone: the nearest part around it that is left and can hold it. */
function nearestLeft(): HTMLElement | undefined {
  if (document.activeElement !== document.body || trail[0]?.isConnected !== false) return undefined;
  const left = trail.find((each) => each.isConnected && each.hasAttribute("tabindex"));
  return left instanceof HTMLElement ? left : undefined;
}

interface Spot {
  readonly element: Element | null;
  readonly from: number | null;
  readonly to: number | null;
}

function spot(): Spot {
  const element = nearestLeft() ?? document.activeElement;
  const isCaret = element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement;
  return {
    element,
    from: isCaret ? element.selectionStart : null,
    to: isCaret ? element.selectionEnd : null,
  };
}

function goBack({ element, from, to }: Spot): void {
  if (!(element instanceof HTMLElement) || !element.isConnected || element === document.body) return;
  element.focus({ preventScroll: true });
  if (from !== null && (element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement))
    element.setSelectionRange(from, to);
}

/** Takes the keyboard to this part while it is shown, and back, caret and all. Who types goes on typing where they are. */
export function useFocusHere(part: RefObject<HTMLElement | null>, isForTypists: boolean): void {
  useEffect(() => {
    const root = part.current;
    const before = spot();
    const isTyping = isTextField(before.element);
    if (isForTypists || !isTyping) root?.focus({ preventScroll: true });
    return () => {
      const { activeElement } = document;
      // Who has gone elsewhere meanwhile, or never left, stays there. What is closed may be gone already.
      const isLeft = activeElement === document.body || activeElement === leftAt;
      if (isLeft || root?.contains(activeElement)) goBack(before);
    };
  }, []);
}

const FOCUSABLE =
  "button:not(:disabled), a[href], input:not(:disabled), select, textarea, summary, [tabindex='0']";

/** Within a dialog the Tab key goes round, and Escape closes it where it can be closed. */
export function useDialogKeys(part: RefObject<HTMLElement | null>, onClose: (() => void) | null): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const root = part.current;
      if (!root || event.defaultPrevented) return;
      if (event.key === "Escape" && onClose && root.contains(document.activeElement)) {
        event.preventDefault();
        return onClose();
      }
      if (event.key !== "Tab" || !root.contains(document.activeElement)) return undefined;
      const stops = [...root.querySelectorAll<HTMLElement>(FOCUSABLE)].filter(
        (each) => each.getClientRects().length > 0,
      );
      const [first] = stops;
      const last = stops[stops.length - 1];
      if (!first || !last) return event.preventDefault();
      const at = document.activeElement;
      const isOut = event.shiftKey ? at === first || at === root : at === last;
      if (!isOut) return undefined;
      event.preventDefault();
      return (event.shiftKey ? last : first).focus();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [onClose]);
}
