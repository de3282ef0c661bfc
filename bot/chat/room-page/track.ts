import { lengthMs, notesOf, type Tone } from "./tones.ts";

/*
 * The sound of the minutes that lie ahead, as a file: silence, with each tone at its instant. A phone goes on playing it
 * with its screen dark. Eight bits and 8 kHz are enough for tones under 2 kHz, and ten minutes of it are 4.8 MB.
 */

export const SAMPLE_RATE = 8000;
const LONGEST_MS = 10 * 60_000;
const HEADER_BYTES = 44;
/** Between two files lies a moment of real silence: no tone may be near it. Where many tanks leave no such gap, a shorter one. */
const CLEAR_MS = [2000, 700, 100] as const;
const EASE_MS = 15;
const LOUDNESS = 0.8;

/** What decides how the track sounds: only where this changes, is it made anew. */
export function trackKey(tones: readonly Tone[]): string {
  return tones.map(({ at, sound, voice }) => `${at} ${sound} ${voice}`).join("\n");
}

/** Where a file that begins at `fromMs` ends: after the last tone, or at ten minutes, but never in or just before one. */
export function segmentEnd(tones: readonly Tone[], fromMs: number): number {
  const ahead = tones.filter(({ at }) => at >= fromMs);
  const last = ahead[ahead.length - 1];
  if (!last) return fromMs;
  const [wide] = CLEAR_MS;
  const end = last.at + lengthMs(last.sound) + wide;
  if (end <= fromMs + LONGEST_MS) return end;
  const cut = CLEAR_MS.map((clearMs) => cutBefore(ahead, fromMs + LONGEST_MS, clearMs)).find(
    (at) => at > fromMs,
  );
  return cut ?? fromMs + LONGEST_MS;
}

function cutBefore(ahead: readonly Tone[], latest: number, clearMs: number): number {
  let cut = latest;
  for (const { at, sound } of [...ahead].reverse())
    if (at - clearMs < cut && cut < at + lengthMs(sound) + clearMs) cut = at - clearMs;
  return cut;
}

/** A WAV file (8 bit, one channel) of these tones from one instant to another, ms; tones that begin before are left out. */
export function makeSegment(tones: readonly Tone[], fromMs: number, toMs: number): Uint8Array<ArrayBuffer> {
  const count = Math.max(0, Math.round(((toMs - fromMs) / 1000) * SAMPLE_RATE));
  const file = new Uint8Array(HEADER_BYTES + count);
  writeHeader(new DataView(file.buffer), count);
  const samples = file.subarray(HEADER_BYTES);
  samples.fill(128);
  for (const { at, sound, voice } of tones) {
    if (at < fromMs || at >= toMs) continue;
    for (const { hertz, afterMs, ms } of notesOf(sound, voice))
      addNote(samples, hertz, at - fromMs + afterMs, ms);
  }
  return file;
}

/** Added to what is there: two tanks may call at once. */
function addNote(samples: Uint8Array, hertz: number, startMs: number, ms: number): void {
  const first = Math.round((startMs / 1000) * SAMPLE_RATE);
  const length = Math.round((ms / 1000) * SAMPLE_RATE);
  const ease = (EASE_MS / 1000) * SAMPLE_RATE;
  for (let index = 0; index < length && first + index < samples.length; index += 1) {
    // Eased in and out, since a hard edge clicks.
    const edge = Math.min(1, (index + 1) / ease, (length - index) / ease);
    const wave = Math.sin((2 * Math.PI * hertz * index) / SAMPLE_RATE) * edge * LOUDNESS;
    const at = first + index;
    samples[at] = Math.min(255, Math.max(0, Math.round((samples[at] ?? 128) + wave * 127)));
  }
}

/** RIFF/WAVE as Microsoft and IBM published it in 1991: format 1 (PCM), unsigned bytes around 128. */
function writeHeader(view: DataView, bytes: number): void {
  const word = (at: number, text: string): void =>
    [...text].forEach((letter, index) => view.setUint8(at + index, letter.charCodeAt(0)));
  word(0, "RIFF");
  view.setUint32(4, HEADER_BYTES - 8 + bytes, true);
  word(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, SAMPLE_RATE, true);
  view.setUint32(28, SAMPLE_RATE, true);
  view.setUint16(32, 1, true);
  view.setUint16(34, 8, true);
  word(36, "data");
  view.setUint32(40, bytes, true);
}
