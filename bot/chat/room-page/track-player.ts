import { createSoundFile } from "./sound-file.ts";
import { lengthMs, type Tone } from "./tones.ts";
import { makeSegment, segmentEnd, trackKey } from "./track.ts";

/*
 * Plays the track of the minutes ahead from a media element: phones go on playing one with a dark screen, where a page's
 * own timers sleep. Its place is held against the room's clock; a pause from outside is nobody's word to the film.
 */

/** Further off than this the element is put right, but not while a tone is near. */
const MOST_DRIFT_MS = 50;
/** In step as far as a tone is heard from it and not from the page as well; further off it is put right whatever sounds. */
const IN_STEP_MS = 250;
const SEEK_GAP_MS = 2000;
/** A file that a browser did not take, as happens in WebKit, is made anew after so long, and after twice that each time. */
const REMAKE_MS = 1000;
const LONGEST_REMAKE_MS = 60_000;
/** A tone that comes to be wanted so shortly before it is no reason for another file: that takes as long. */
const NEAR_MS = 1000;
/** Longer than from one look at its place to the next. */
const HUSH_MS = 120;

export interface TrackPlayer {
  /** From a touch: from then on the element may play. */
  bless(): void;
  /** What is to be heard from now on; the track is made anew where that has changed. */
  follow(tones: readonly Tone[]): void;
  /** True where this tone is heard from the track; one that came after it was made is not. */
  covers(tone: Tone): boolean;
  /** The page has sounded these itself: where the track still comes to them, it passes over them in silence. */
  leave(tones: readonly Tone[]): void;
  /** After a pause from outside. */
  resume(): void;
  /** The name of what comes next, for a lock screen. */
  name(title: string, by: string): void;
  readonly state: "off" | "playing" | "refused" | "paused";
  /** How far its place is from the room's clock, ms; undefined where it does not play. For measuring. */
  drift(): number | undefined;
}

const keyOf = (tone: Tone): string => trackKey([tone]);
const endOf = ({ at, sound }: Tone): number => at + lengthMs(sound);

interface Segment {
  readonly tones: readonly Tone[];
  readonly fromMs: number;
}

/** A hundredth of a second of nothing: enough for a browser to let the element play. */
const NOTHING_MS = 10;

export function createTrackPlayer(now: () => number): TrackPlayer {
  const file = createSoundFile();
  const { element } = file;
  let segment: Segment | undefined;
  let wanted: readonly Tone[] = [];
  let state: TrackPlayer["state"] = "off";
  /** The browser has let it play nothing at all after a touch: it lets it play whatever comes. */
  let isBlessed = false;
  /** Another file is due as soon as the last one is taken up. */
  let isPutOff = false;
  let remakeMs = REMAKE_MS;
  let lastSeekAt = -Infinity;
  /** What a seek costs on this device: learned from where the last one landed. */
  let seekLeadMs = 0;
  /** Wanted when the file was last found to be right: as time goes on there is only less to come. */
  let rightFor: { readonly tones: readonly Tone[]; readonly at: number } | undefined;
  const left = new Set<Tone>();
  /** From here on its tones were heard: those before were left, or lie where it has jumped. */
  let soundsFromMs = -Infinity;

  const isAhead = ({ at }: Tone): boolean => at > now();
  const placeMs = (): number => (segment?.fromMs ?? 0) + element.currentTime * 1000;
  const inFile = (tone: Tone): Tone | undefined =>
    segment?.tones.find((known) => keyOf(known) === keyOf(tone));

  function drift(): number | undefined {
    if (!segment || element.paused || element.ended || element.seeking || element.currentTime === 0)
      return undefined;
    return element.currentTime * 1000 - (now() - segment.fromMs);
  }

  /** What waits for a touch takes nothing up. */
  const isTakingUp = (): boolean => state !== "refused" && file.isTakingUp();

  function play(): void {
    element.play().then(
      () => void (state = "playing"),
      (error: unknown) => {
        if (error instanceof DOMException && error.name === "NotAllowedError") state = "refused";
      },
    );
  }

  function load(tones: readonly Tone[], fromMs: number, toMs: number): void {
    segment = { tones, fromMs };
    rightFor = undefined;
    left.clear();
    soundsFromMs = fromMs;
    element.muted = false;
    file.give(makeSegment(tones, fromMs, toMs));
    lastSeekAt = -Infinity;
    play();
  }

  function start(): void {
    isPutOff = isTakingUp();
    if (isPutOff) return undefined;
    const fromMs = now();
    const ahead = wanted.filter(isAhead);
    if (ahead.length === 0) return stop();
    state = state === "paused" ? "off" : state;
    return load(ahead, fromMs, segmentEnd(ahead, fromMs));
  }

  function stop(): void {
    segment = undefined;
    state = "off";
    file.clear();
    if ("mediaSession" in navigator) navigator.mediaSession.metadata = null;
  }

  function keepInStep(): void {
    const off = drift();
    if (off === undefined || !segment) return;
    if (performance.now() - lastSeekAt < SEEK_GAP_MS) return;
    const isNearTone = segment.tones.some((tone) => tone.at - 1000 < now() && now() < endOf(tone) + 200);
    if (Math.abs(off) <= MOST_DRIFT_MS || (isNearTone && Math.abs(off) < IN_STEP_MS)) return;
    // What is left over after a seek is what the seek itself took.
    if (lastSeekAt > -Infinity) seekLeadMs = Math.min(500, Math.max(0, seekLeadMs - off / 2));
    lastSeekAt = performance.now();
    soundsFromMs = now() + seekLeadMs;
    element.currentTime = (soundsFromMs - segment.fromMs) / 1000;
  }

  function hush(): void {
    const isMuted = [...left].some((tone) => tone.at - HUSH_MS < placeMs() && placeMs() < endOf(tone));
    if (element.muted && !isMuted) soundsFromMs = placeMs();
    element.muted = isMuted;
  }

  /** True once for each file that the browser has not taken, when another try is due. */
  function isLost(): boolean {
    if (element.error === null || performance.now() - file.givenAt < remakeMs) return false;
    remakeMs = Math.min(remakeMs * 2, LONGEST_REMAKE_MS);
    return true;
  }

  /** What sounds from it now, or at any moment, as far as it is behind or ahead. */
  function isSounding({ tones }: Segment): boolean {
    const [first, last] = [now(), placeMs()].sort((a, b) => a - b) as [number, number];
    return (
      drift() !== undefined && tones.some((tone) => !left.has(tone) && tone.at <= last && first < endOf(tone))
    );
  }

  /** Whether another file is due. What sounds is heard to its end first, and what is not wanted any more is left meanwhile. */
  function isStale(old: Segment, ahead: readonly Tone[]): boolean {
    const at = now();
    if (rightFor?.tones === wanted && rightFor.at <= at) return false;
    const asked = new Set(ahead.map(keyOf));
    const held = old.tones.filter(isAhead);
    const unwanted = held.filter((tone) => !asked.has(keyOf(tone)));
    const known = new Set(held.map(keyOf));
    const isLacking = ahead.some((tone) => tone.at > now() + NEAR_MS && !known.has(keyOf(tone)));
    if (unwanted.length === 0 && !isLacking) {
      rightFor = { tones: wanted, at };
      return false;
    }
    if (ahead.length === 0 || !isSounding(old)) return true;
    for (const tone of unwanted) left.add(tone);
    return false;
  }

  function follow(tones: readonly Tone[]): void {
    wanted = tones;
    if (isTakingUp()) return undefined;
    if (isPutOff) return start();
    const ahead = tones.filter(isAhead);
    if (state === "paused") return ahead.length === 0 ? stop() : undefined;
    if (!segment) return ahead.length > 0 ? start() : undefined;
    hush();
    if (isLost() || isStale(segment, ahead)) return start();
    if (ahead.length === 0 && element.ended) return stop();
    return state === "playing" ? keepInStep() : undefined;
  }

  element.addEventListener("ended", start);
  // Before it plays what may not be wanted any more.
  element.addEventListener("loadeddata", () => follow(wanted));
  for (const moved of ["timeupdate", "seeked"]) element.addEventListener(moved, hush);
  element.addEventListener("pause", () => {
    // Not by us and not by its end: by the lock screen, a headphone's key or another app.
    if (segment && element.paused && !element.ended && state !== "refused") state = "paused";
  });
  element.addEventListener("playing", () => {
    remakeMs = REMAKE_MS;
    // Let go from outside, as after a phone call: it goes on where it was stopped, and that is past.
    if (state === "paused") start();
  });
  if ("mediaSession" in navigator) {
    navigator.mediaSession.setActionHandler("pause", () => element.pause());
    navigator.mediaSession.setActionHandler("play", () => start());
  }

  return {
    drift,
    get state() {
      return state;
    },
    bless() {
      if (state === "refused" || state === "off") {
        if (wanted.some(isAhead)) return start();
        // Once is enough, and a page that is left while a browser takes a file up can stand still as well.
        if (isBlessed || segment || element.src !== "") return undefined;
        file.give(makeSegment([], 0, NOTHING_MS));
        element.play().then(
          () => void (isBlessed = true),
          () => undefined,
        );
      }
      return undefined;
    },
    follow,
    covers(tone) {
      const off = drift();
      if (!segment || off === undefined || Math.abs(off) >= IN_STEP_MS) return false;
      return !element.muted && tone.at >= soundsFromMs && inFile(tone) !== undefined;
    },
    leave(tones) {
      for (const tone of tones.map(inFile)) if (tone) left.add(tone);
      hush();
    },
    resume() {
      start();
    },
    name(title, by) {
      if (!("mediaSession" in navigator) || typeof MediaMetadata === "undefined") return;
      if (navigator.mediaSession.metadata?.title === title && navigator.mediaSession.metadata.artist === by)
        return;
      navigator.mediaSession.metadata = new MediaMetadata({ title, artist: by });
    },
  };
}
