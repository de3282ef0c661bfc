import { api } from "./api.ts";

/* The page's worker: it keeps the page for when there is no link, and shows calls while the page is closed. */

/** Null where this browser, or plain http, has none. */
export async function startWorker(): Promise<ServiceWorkerRegistration | null> {
  if (!isSecureContext || !("serviceWorker" in navigator)) return null;
  try {
    return await navigator.serviceWorker.register("/sw.js");
  } catch {
    // Private windows have the interface and refuse its use.
    return null;
  }
}

/** On the school's own network the page is there without it; over https it also opens from a home screen. */
export function keepPage(): void {
  if (location.protocol === "https:") onceLoaded(() => void startWorker());
  onceLoaded(() => void renewPush().catch(() => undefined));
}

/** The view comes beside the document, and may come after it. */
function onceLoaded(work: () => void): void {
  if (document.readyState === "complete") work();
  else addEventListener("load", work);
}

/**
 * Where calls are pushed to this device, its address is told again: the phone maker may have given it another while there was
 * no link to say so. It turns nothing on: what the room does not have as on stays off.
 */
async function renewPush(): Promise<void> {
  if (!isSecureContext || !("serviceWorker" in navigator) || !("PushManager" in window)) return;
  const worker = await navigator.serviceWorker.getRegistration();
  const made = await worker?.pushManager.getSubscription();
  if (!made) return;
  const state = await api.push();
  if (state.ok && state.value.isOn) await api.pushOn(made.toJSON());
}
