import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { useDialogKeys, useFocusHere } from "./focus.ts";
import { useWords } from "./words.ts";

interface SheetProps {
  readonly title: string;
  readonly children: ComponentChildren;
  onClose(): void;
}

/**
 * A panel over the page: from below on a phone, at the side on a wide screen. It is no modal of the browser's own: a
 * call comes over it, and must not take the keyboard from who is typing in it.
 */
export function Sheet({ title, children, onClose }: SheetProps) {
  const { menu } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  useFocusHere(dialog, true);
  useDialogKeys(dialog, onClose);
  return (
    <>
      <div class="veil" onClick={onClose} />
      <dialog ref={dialog} open class="sheet" tabIndex={-1} aria-modal="true" aria-label={title}>
        <div class="sheet-inner">
          <header class="sheet-head">
            <h2>{title}</h2>
            <button type="button" class="key" onClick={onClose}>
              {menu.close}
            </button>
          </header>
          {children}
        </div>
      </dialog>
    </>
  );
}
