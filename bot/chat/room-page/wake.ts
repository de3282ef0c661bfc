/*
 * Keeps the screen on while it is wanted. Over https by the browser's wake lock. Elsewhere by a video of our own making
 * that plays in a corner: a canvas of four pixels with a soundtrack of silence. Each engine keeps the screen on for a
 * playing video by its own rule, as its sources say: Blink for one that is on the screen and comes as a stream
 * (VideoWakeLock), Gecko for a stream (ShouldCreateVideoWakeLock), WebKit for one with sound that is neither muted nor
 * looped (shouldDisableSleep). A stream with both keeps to all three.
 */

/** `lock`: sure. `video`: by the rules above. `none`: the screen may go dark. */
export type WakeBy = "lock" | "video" | "none";

export interface Wake {
  want(isWanted: boolean): void;
  /** To be called from a touch: without one no browser plays a video that has sound. */
  touch(): void;
  /** What holds the screen, or would if it were wanted. */
  readonly by: WakeBy;
  readonly isHolding: boolean;
}

export function createWake(): Wake {
  const hasLock = "wakeLock" in navigator;
  const canStream =
    typeof HTMLCanvasElement.prototype.captureStream === "function" && typeof AudioContext === "function";
  let isWanted = false;
  let isRefused = false;
  let lock: WakeLockSentinel | undefined;
  let video: HTMLVideoElement | undefined;

  async function takeLock(): Promise<void> {
    if (!isWanted || document.visibilityState !== "visible" || (lock && !lock.released)) return;
    try {
      lock = await navigator.wakeLock.request("screen");
      isRefused = false;
    } catch {
      // Refused (low battery): then the video is tried at the next touch.
      isRefused = true;
    }
  }

  function playVideo(): void {
    if (!isWanted || !canStream || (hasLock && !isRefused)) return;
    video ??= makeVideo();
    if (video.paused) video.play().catch(() => undefined);
  }

  // A lock is lost whenever the page is hidden, and a video may be paused.
  document.addEventListener("visibilitychange", () => {
    if (hasLock) void takeLock();
    if (video && isWanted) playVideo();
  });
  return {
    get by() {
      if (hasLock && !isRefused) return "lock";
      return canStream ? "video" : "none";
    },
    get isHolding() {
      return (lock !== undefined && !lock.released) || (video !== undefined && !video.paused);
    },
    want(next) {
      isWanted = next;
      if (!next) {
        void lock?.release();
        video?.pause();
      } else if (hasLock) void takeLock();
      else playVideo();
    },
    touch: playVideo,
  };
}

const FRAME_MS = 1000;

function makeVideo(): HTMLVideoElement {
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = 2;
  const paint = canvas.getContext("2d");
  let isOdd = false;
  const draw = (): void => {
    isOdd = !isOdd;
    if (paint) paint.fillStyle = isOdd ? "#000" : "#010000";
    paint?.fillRect(0, 0, 2, 2);
  };
  draw();
  setInterval(draw, FRAME_MS);
  const context = new AudioContext();
  const out = context.createMediaStreamDestination();
  const silence = context.createConstantSource();
  silence.offset.value = 0;
  silence.connect(out);
  silence.start();
  const video = document.createElement("video");
  video.className = "wake-video";
  video.setAttribute("playsinline", "");
  video.setAttribute("aria-hidden", "true");
  video.tabIndex = -1;
  video.srcObject = new MediaStream([...canvas.captureStream(1).getTracks(), ...out.stream.getTracks()]);
  document.body.append(video);
  video.addEventListener("playing", () => void context.resume().catch(() => undefined));
  return video;
}
