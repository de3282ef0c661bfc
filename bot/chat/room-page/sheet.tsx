import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { closeModal, openModal } from "./modal.ts";
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
  useEffect(() => openModal(dialog.current), []);
  const close = (): void => closeModal(dialog.current, onClose);
  return (
    <dialog
      ref={dialog}
      class="sheet"
      aria-label={title}
      onClose={onClose}
      onClick={(event) => event.target === dialog.current && close()}
    >
      <div class="sheet-inner">
        <header class="sheet-head">
          <h2>{title}</h2>
          <button type="button" class="key" onClick={close}>
            {menu.close}
          </button>
        </header>
        {children}
      </div>
    </dialog>
  );
}
