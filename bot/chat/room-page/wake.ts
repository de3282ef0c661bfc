/* Keeps the screen on while a film is in a bath, where the browser can. */

export interface Wake {
  want(isWanted: boolean): void;
  readonly isAble: boolean;
}

export function createWake(): Wake {
  const isAble = "wakeLock" in navigator;
  let isWanted = false;
  let lock: WakeLockSentinel | undefined;

  async function take(): Promise<void> {
    if (!isAble || !isWanted || document.visibilityState !== "visible" || (lock && !lock.released)) return;
    try {
      lock = await navigator.wakeLock.request("screen");
    } catch {
      // Refused (low battery): the page goes on without.
    }
  }

  // A lock is lost whenever the page is hidden.
  document.addEventListener("visibilitychange", () => void take());
  return {
    isAble,
    want(next) {
      isWanted = next;
      if (next) void take();
      else void lock?.release();
    },
  };
}
