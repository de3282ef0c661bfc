/* Dialogs over the page, also in a browser that has the element but not its methods (iOS before 15.4). */

export function openModal(dialog: HTMLDialogElement | null): void {
  if (!dialog || dialog.open) return;
  if (typeof dialog.showModal === "function") dialog.showModal();
  else dialog.setAttribute("open", "");
}

/** `onClose` is what the dialog's own close event would have called. */
export function closeModal(dialog: HTMLDialogElement | null, onClose: () => void): void {
  if (typeof dialog?.close === "function") dialog.close();
  else onClose();
}
