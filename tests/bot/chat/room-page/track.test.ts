import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PersonView } from "../../../../bot/chat/room/view.ts";
import {
  inTurn,
  lengthMs,
  tonesDue,
  tonesOf,
  voicesOf,
  type Tone,
} from "../../../../bot/chat/room-page/tones.ts";
import { makeSegment, SAMPLE_RATE, segmentEnd, trackKey } from "../../../../bot/chat/room-page/track.ts";
import { advance, type RunEvent } from "../../../../commands/run/machine.ts";
import { cuesOf } from "../../../../commands/run/cues.ts";
import { viewOf } from "../../../../commands/run/view.ts";
import type { Run } from "../../../../store/shapes/run.ts";
import { aPlan, aRun, aStep, EACH_MINUTE, START } from "../../../support/make.ts";

/*
 * The track's files, read back as any player reads them: by their own header, byte for byte. Where sound begins in them is
 * held against the cues of the run machine, which are what people are called by.
 */

const NEAR_MS = 20;
/** The longest pause within one tone is 90 ms. */
const APART_MS = 400;

interface Wav {
  readonly rate: number;
  readonly samples: Uint8Array;
}

/** By the header: 8 bit, one channel, unsigned. */
function readWav(file: Uint8Array): Wav {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const word = (at: number): string => String.fromCharCode(...file.subarray(at, at + 4));
  expect([word(0), word(8), word(12), word(36)]).toEqual(["RIFF", "WAVE", "fmt ", "data"]);
  expect([view.getUint16(20, true), view.getUint16(22, true), view.getUint16(34, true)]).toEqual([1, 1, 8]);
  expect(view.getUint32(4, true)).toBe(file.byteLength - 8);
  expect(view.getUint32(40, true)).toBe(file.byteLength - 44);
  return { rate: view.getUint32(24, true), samples: file.subarray(44) };
}

/** Where a tone begins, ms from the beginning of the file. */
function onsetsOf({ rate, samples }: Wav): number[] {
  const onsets: number[] = [];
  let lastLoud = -Infinity;
  for (const [index, value] of samples.entries()) {
    if (Math.abs(value - 128) < 8) continue;
    if (((index - lastLoud) / rate) * 1000 > APART_MS) onsets.push((index / rate) * 1000);
    lastLoud = index;
  }
  return onsets;
}

/** All files of a track, one after the other as they are played, and the instants at which sound begins. */
function played(tones: readonly Tone[], fromMs: number): { onsets: number[]; mostBytes: number } {
  const onsets: number[] = [];
  let mostBytes = 0;
  let from = fromMs;
  for (let end = segmentEnd(tones, from); end > from; end = segmentEnd(tones, from)) {
    const file = makeSegment(tones, from, end);
    mostBytes = Math.max(mostBytes, file.byteLength);
    const begin = from;
    onsets.push(...onsetsOf(readWav(file)).map((ms) => begin + ms));
    from = end;
  }
  return { onsets, mostBytes };
}

function developing(seconds: number, over: Partial<Run> = {}): Run {
  const steps = [
    aStep({ kind: "develop", seconds, agitation: EACH_MINUTE, pourOutSeconds: 10 }),
    aStep({ kind: "rinse", ordinal: 1 }),
  ];
  const run = aRun({ plan: aPlan({ steps, tank: 3 }), ...over });
  return act(run, { kind: "next", step: 0, sure: true, atMs: START });
}

function act(run: Run, event: RunEvent): Run {
  const result = advance(run, event);
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
}

const view = (run: Run): PersonView => viewOf(run, "");
const tonesOfRuns = (...runs: Run[]): Tone[] => tonesOf(runs.map(view), [], {});

/** What must be heard from `fromMs` on: every cue of the running step, by the run machine alone. */
const momentsOf = (run: Run, fromMs: number): number[] =>
  cuesOf(run)
    .map(({ dueAtMs }) => dueAtMs)
    .filter((at) => at >= fromMs);

function expectHeard(onsets: readonly number[], moments: readonly number[]): void {
  for (const at of moments) {
    const nearest = Math.min(...onsets.map((onset) => Math.abs(onset - at)));
    expect(nearest, `a tone at ${(at - START) / 1000} s`).toBeLessThanOrEqual(NEAR_MS);
  }
}

describe("the track", () => {
  test.each([30, 60, 300, 540, 1200, 3600, 5400])("of a bath of %d s has each tone at its cue", (seconds) => {
    const run = developing(seconds);
    const tones = tonesOfRuns(run);
    const { onsets, mostBytes } = played(tones, START);
    expectHeard(onsets, momentsOf(run, START));
    // And nothing else sounds: every onset belongs to a tone.
    expect(onsets).toHaveLength(new Set(tones.map(({ at }) => at)).size);
    // Two files at most are held at once, and each while it is made a second time.
    expect(mostBytes * 4).toBeLessThanOrEqual(20_000_000);
  });

  test("after a correction or a new temperature has the tones where they are now", () => {
    const at = START + 100_000;
    const moved = act(developing(540), { kind: "poured", agoSeconds: 120, atMs: at });
    const warmer = act(developing(540), {
      kind: "new-temperature",
      tenthsC: 220,
      leftSeconds: 370,
      atMs: at,
    });
    for (const run of [moved, warmer]) {
      expect(trackKey(tonesOfRuns(run))).not.toBe(trackKey(tonesOfRuns(developing(540))));
      expectHeard(played(tonesOfRuns(run), at).onsets, momentsOf(run, at));
    }
  });

  test("a stopped run sounds no more", () => {
    const stopped = act(developing(540), { kind: "stop", reason: "", atMs: START + 1000 });
    expect(tonesOfRuns(stopped)).toEqual([]);
  });

  test("is cut between tones, never in or near one, and loses none at the cut", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 5400 }),
        fc.integer({ min: 0, max: 700_000 }),
        (seconds, later) => {
          const tones = tonesOfRuns(developing(seconds), developing(seconds + 7, { number: 8 }));
          const ends: number[] = [];
          let from = START + later;
          for (let end = segmentEnd(tones, from); end > from; end = segmentEnd(tones, from)) {
            expect(end - from).toBeLessThanOrEqual(600_000);
            ends.push(end);
            from = end;
          }
          for (const end of ends.slice(0, -1))
            for (const { at } of tones) expect(at < end - 100 || at >= end + 1900).toBe(true);
          const last = tones.at(-1)?.at ?? 0;
          expect(ends.at(-1) ?? Infinity).toBeGreaterThan(last >= START + later ? last : 0);
        },
      ),
      { numRuns: 60 },
    );
  });

  describe("ends after its last tone, or at ten minutes, which is 600 s", () => {
    const tone = (atMs: number): Tone => ({
      id: String(atMs),
      call: {} as Tone["call"],
      sound: "agitate",
      voice: 0,
      at: START + atMs,
      until: Infinity,
      isRepeat: false,
    });
    const long = lengthMs("agitate");
    const each = (everyMs: number, fromMs: number): Tone[] =>
      Array.from({ length: Math.ceil(900_000 / everyMs) }, (_, index) => tone(fromMs + index * everyMs));
    const endOf = (...tones: Tone[]): number => segmentEnd(tones, START) - START;

    test("with two seconds after the last tone, up to the full time", () => {
      expect(endOf()).toBe(0);
      expect(endOf(tone(1000))).toBe(1000 + long + 2000);
      expect(endOf(tone(400_000))).toBe(400_000 + long + 2000);
      expect(endOf(tone(598_000 - long))).toBe(600_000);
    });

    test("at the full time where no tone is near, else two seconds before the tone that is", () => {
      expect(endOf(tone(1000), tone(700_000))).toBe(600_000);
      expect(endOf(tone(599_000), tone(700_000))).toBe(597_000);
      expect(endOf(tone(601_500), tone(700_000))).toBe(599_500);
    });

    test("in a shorter gap where many tanks leave none of two seconds, never where it begins", () => {
      // Wide gaps lead back to the very beginning; of 700 ms there is one before each tone.
      const tones = each(3000, 2000);
      const end = endOf(...tones);
      expect(end).toBeGreaterThan(596_000);
      for (const { at } of tones) {
        const apart = end - (at - START);
        expect(apart <= -700 || apart >= long + 700, String(apart)).toBe(true);
      }
    });

    test("at the full time though a tone be cut, where there is no gap at all", () => {
      expect(endOf(...each(long - 10, 0))).toBe(600_000);
    });
  });

  test("goes on asking for the next bath after its time, and stops asking when it is answered", () => {
    const run = developing(60);
    const ask = (answered: Record<string, number>): number[] =>
      tonesOf([view(run)], [], answered)
        .map(({ at }) => (at - START) / 1000)
        .filter((at) => at >= 50);
    expect(ask({})).toEqual([
      50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 120, 125, 130, 135, 140, 240, 245, 250, 255, 260,
    ]);
    expect(ask({ 7: 60_000 }).slice(0, 2)).toEqual([80, 85]);
  });

  test("keeps to 8 kHz, so that its pitches are there", () => {
    expect(SAMPLE_RATE).toBe(8000);
  });
});

describe("what sounds on the page", () => {
  test("one tone for each tank, however many were slept through; none for what is over", () => {
    const tones = tonesOfRuns(developing(540), developing(540, { number: 8 }));
    const due = (at: number, has = new Set<string>()): string[] =>
      tonesDue(tones, (id) => has.has(id), START + at * 1000).map(({ call }) => `${call.of} ${call.kind}`);
    expect(due(605)).toEqual(["7 nudge", "8 nudge"]);
    expect(due(333)).toEqual([]);
    const [first] = tonesDue(tones, () => false, START + 60_000);
    expect(due(61, new Set([first?.id ?? ""]))).toEqual(["8 agitate"]);
  });

  test("at one device eight tanks called at once sound one after the other, and none of them twice or after its time", () => {
    const runs = Array.from({ length: 8 }, (_, index) => developing(540, { number: index + 1 }));
    const tones = tonesOfRuns(...runs);
    const turns = inTurn(tones);
    for (const [index, tone] of turns.entries()) {
      const before = turns[index - 1];
      if (before) expect(tone.at).toBeGreaterThan(before.at + lengthMs(before.sound));
      expect(tone.at).toBeLessThan(tone.until);
    }
    expect(new Set(turns.map(({ id }) => id)).size).toBe(turns.length);
    // A call of each tank to each of its changes and bursts: that they come at once takes none away.
    const calls = (list: readonly Tone[]): string[] =>
      list.filter(({ isRepeat }) => !isRepeat).map(({ id }) => id);
    expect(calls(turns)).toEqual(calls(tones));
    const alone = tonesOfRuns(developing(540));
    expect(inTurn(alone)).toEqual(alone);
  });

  test("each tank of a person has a voice of its own, the same all evening", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 }),
        (tanks) => {
          const views = tanks.map((tank, index) => ({ run: index + 1, tank }));
          const voices = voicesOf(views);
          expect(new Set(voices.values()).size).toBe(tanks.length);
        },
      ),
    );
    expect(voicesOf([{ run: 9, tank: 3 }]).get(9)).toBe(
      voicesOf([
        { run: 9, tank: 3 },
        { run: 12, tank: 4 },
      ]).get(9),
    );
  });
});
