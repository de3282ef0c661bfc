import { vi } from "vitest";
import type { Tone } from "../../../../../bot/chat/room-page/tones.ts";
import { lengthMs } from "../../../../../bot/chat/room-page/tones.ts";

/*
 * An ear beside a page: a media element that plays by a clock of the test's, as the HTML standard describes one (load,
 * play, pause, seek, ended, muted), and a note of what was heard of each tone, and from where.
 */

export interface Heard {
  readonly id: string;
  readonly at: number;
  readonly from: "page" | "track";
}

/** What a device takes its time for, ms. */
export interface Device {
  readonly loadMs: number;
  readonly seekMs: number;
  /** So many files at first it does not take. */
  readonly refuses?: number;
}

const STEP_MS = 10;
/** The standard asks for a word of its place at least so often while it plays. */
const TIMEUPDATE_MS = 250;
/** Who has heard so much of a tone has heard it. */
const ENOUGH = 0.6;

type Told = "loadeddata" | "playing" | "pause" | "ended" | "seeked" | "timeupdate";

interface Begun {
  then(ok: () => void, fail: (error: unknown) => void): void;
}

class Element {
  #src = "";
  paused = true;
  ended = false;
  seeking = false;
  muted = false;
  error: object | null = null;
  /** So many files were replaced before they were taken up. */
  disturbed = 0;
  #isTakingUp = false;
  #refuses: number;
  #position = 0;
  #readyAt = Infinity;
  #seek: { readonly to: number; readonly at: number } | undefined;
  #begun: { ok: () => void; fail: (error: unknown) => void } | undefined;
  readonly #listeners = new Map<string, (() => void)[]>();
  readonly #queue: Told[] = [];

  readonly device: Device;
  readonly nowMs: () => number;
  readonly durationMs: () => number;

  constructor(device: Device, nowMs: () => number, durationMs: () => number) {
    this.device = device;
    this.#refuses = device.refuses ?? 0;
    this.nowMs = nowMs;
    this.durationMs = durationMs;
  }

  addEventListener(type: string, listen: () => void): void {
    this.#listeners.set(type, [...(this.#listeners.get(type) ?? []), listen]);
  }
  removeAttribute(): void {
    this.src = "";
  }
  get readyState(): number {
    return this.src === "" || this.#isTakingUp
      ? HTMLMediaElement.HAVE_NOTHING
      : HTMLMediaElement.HAVE_ENOUGH_DATA;
  }
  get src(): string {
    return this.#src;
  }
  set src(url: string) {
    if (this.#isTakingUp) this.disturbed += 1;
    this.#isTakingUp = url !== "";
    this.#src = url;
    this.error = null;
    this.paused = true;
    this.ended = false;
    this.seeking = false;
    this.#position = 0;
    this.#seek = undefined;
    this.#readyAt = this.nowMs() + this.device.loadMs;
    this.#fail("AbortError");
    this.#queue.length = 0;
  }
  /** A promise as the product uses one. */
  play(): Begun {
    this.paused = false;
    // Settled as the test's moments pass, which no true promise is.
    // oxlint-disable-next-line unicorn/no-thenable
    return { then: (ok, fail) => void (this.#begun = { ok, fail }) };
  }
  pause(): void {
    if (this.paused) return;
    this.paused = true;
    this.#fail("AbortError");
    this.#queue.push("pause");
  }
  #fail(name: string): void {
    const begun = this.#begun;
    this.#begun = undefined;
    begun?.fail(new DOMException("", name));
  }
  get currentTime(): number {
    return (this.#seek?.to ?? this.#position) / 1000;
  }
  set currentTime(seconds: number) {
    this.seeking = true;
    this.#seek = { to: seconds * 1000, at: this.nowMs() + this.device.seekMs };
  }
  get isSounding(): boolean {
    return !this.paused && !this.seeking && !this.ended && !this.muted && this.#begun === undefined;
  }
  /** Lets a moment pass; how far its place has gone. */
  pass(): number {
    for (const told of this.#queue.splice(0)) this.#tell(told);
    if (this.#seek && this.nowMs() >= this.#seek.at) {
      this.#position = this.#seek.to;
      this.#seek = undefined;
      this.seeking = false;
      this.#queue.push("seeked");
    }
    if (this.error || this.ended || this.src === "" || this.nowMs() < this.#readyAt) return 0;
    if (this.#isTakingUp) {
      this.#isTakingUp = false;
      if (this.#refuses === 0) this.#tell("loadeddata");
      // Another file may be given at once.
      if (this.nowMs() < this.#readyAt || this.src === "") return 0;
    }
    if (this.paused) return 0;
    if (this.#refuses > 0) {
      this.#refuses -= 1;
      this.error = {};
      this.#fail("NotSupportedError");
      return 0;
    }
    if (this.#begun) {
      const { ok } = this.#begun;
      this.#begun = undefined;
      ok();
      this.#tell("playing");
    }
    if (this.seeking) return 0;
    this.#position += STEP_MS;
    if (this.#position % TIMEUPDATE_MS < STEP_MS) this.#queue.push("timeupdate");
    if (this.#position < this.durationMs()) return STEP_MS;
    this.ended = true;
    this.paused = true;
    this.#queue.push("pause", "ended");
    return 0;
  }
  #tell(told: Told): void {
    for (const listen of this.#listeners.get(told) ?? []) listen();
  }
}

export interface Ear {
  /** Everything that was heard, as it was heard. */
  readonly heard: Heard[];
  readonly now: () => number;
  /** So many files were made. */
  readonly files: number;
  /** So many of them were replaced before the browser had taken them up. */
  readonly disturbed: number;
  /** The file the page makes next. */
  made(tones: readonly Tone[], fromMs: number, toMs: number): void;
  /** To be given to the page's sounder. */
  readonly alarm: {
    play(tones: readonly Pick<Tone, "sound" | "voice">[]): boolean;
  };
  /** Whether the browser lets the page itself sound. */
  letPage(mayIt: boolean): void;
  /** Moves the element from outside, as a lock screen does. */
  pause(): void;
  resume(): void;
  readonly isPaused: boolean;
  /** Lets `ms` pass, looking in at each step. */
  pass(ms: number): void;
}

/** Puts the element in the page's place of `Audio`; `vi.unstubAllGlobals` takes it away. */
export function openEar(startMs: number, device: Device): Ear {
  let time = startMs;
  let mayPage = true;
  let files = 0;
  let file: { tones: readonly Tone[]; fromMs: number; toMs: number } | undefined;
  let parts = new Map<string, { ms: number; at: number }>();
  const heard: Heard[] = [];
  const now = (): number => time;
  const element = new Element(device, now, () => (file ? file.toMs - file.fromMs : 0));
  vi.stubGlobal("Audio", function Audio() {
    return element;
  });
  // The numbers are the HTML standard's.
  vi.stubGlobal("HTMLMediaElement", { HAVE_NOTHING: 0, HAVE_CURRENT_DATA: 2, HAVE_ENOUGH_DATA: 4 });
  vi.stubGlobal("navigator", {});
  vi.spyOn(performance, "now").mockImplementation(now);

  function listen(): void {
    const before = element.currentTime * 1000;
    const wasSounding = element.isSounding;
    const went = element.pass();
    if (!file || went === 0 || !wasSounding) return;
    for (const { id, at, sound } of file.tones) {
      const begins = at - file.fromMs;
      if (before < begins - STEP_MS || before >= begins + lengthMs(sound)) continue;
      const part = parts.get(id) ?? { ms: 0, at: time };
      part.ms += went;
      parts.set(id, part);
      if (part.ms >= lengthMs(sound) * ENOUGH && part.ms - went < lengthMs(sound) * ENOUGH)
        heard.push({ id, at: part.at, from: "track" });
    }
  }

  return {
    heard,
    now,
    get files() {
      return files;
    },
    get disturbed() {
      return element.disturbed;
    },
    made(tones, fromMs, toMs) {
      files += 1;
      file = { tones, fromMs, toMs };
      parts = new Map();
    },
    alarm: {
      play: (tones) => {
        // A sounder gives whole tones.
        if (mayPage)
          for (const { id } of tones as readonly Tone[]) heard.push({ id, at: time, from: "page" });
        return mayPage;
      },
    },
    letPage: (mayIt) => void (mayPage = mayIt),
    pause: () => element.pause(),
    resume: () =>
      void element.play().then(
        () => undefined,
        () => undefined,
      ),
    get isPaused() {
      return element.paused;
    },
    pass(ms) {
      for (let passed = 0; passed < ms; passed += STEP_MS) {
        time += STEP_MS;
        listen();
      }
    },
  };
}
