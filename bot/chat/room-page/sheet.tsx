import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { useWords } from "./words.ts";

interface SheetProps {
  readonly title: string;
  readonly children: ComponentChildren;
  onClose(): void;
}

/** A panel over the page: from below on a phone, at the side on a wide screen. */
export function Sheet({ title, children, onClose }: SheetProps) {
  const { menu } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog
      ref={dialog}
      class="sheet"
      aria-label={title}
      onClose={onClose}
      onClick={(event) => event.target === dialog.current && dialog.current?.close()}
    >
      <div class="sheet-inner">
        <header class="sheet-head">
          <h2>{title}</h2>
          <button type="button" class="key" onClick={() => dialog.current?.close()}>
            {menu.close}
          </button>
        </header>
        {children}
      </div>
    </dialog>
  );
}
