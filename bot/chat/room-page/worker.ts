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
  if (location.protocol === "https:") addEventListener("load", () => void startWorker());
}
