import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildPage } from "../browser/browser.ts";
import type { LaunchedEngine } from "../browser/engines/hand.ts";
import { CHROMIUM } from "../browser/engines/playwright.ts";
import { joinDemo, listenToTrack, pressAt, say } from "../browser/engines/steps.ts";
import { WEBKIT } from "../browser/engines/webkit.ts";
import { openRoomBehind, planFor, room } from "../browser/room-behind.ts";
import { aPlan, aStep, EACH_MINUTE } from "../support/make.ts";
import { needing } from "../support/needs.ts";

/*
 * How far the place where the track plays is from the clock, over minutes: a player has a clock of its own, and a file of
 * ten minutes is followed by the next. TRACK_MINUTES (10) says how long. Firefox plays nothing where the machine has no device
 * for sound.
 */

const MINUTES = Number(process.env["TRACK_MINUTES"] ?? 10);
const MOST_OFF_MS = 150;

/** Each second, in the page itself; in the first moment of a new file the player is still on its way. */
const LOOK_EACH_SECOND = `
  track.off = [];
  track.looks = 0;
  setInterval(() => {
    const { element, files, madeAt } = track;
    track.looks += 1;
    if (!element || files.length === 0 || element.paused || Date.now() - madeAt < 2500) return;
    track.off.push(Math.abs(element.currentTime * 1000 - (Date.now() - madeAt)));
  }, 1000);
`;

let pageDir: string;

describe.each([CHROMIUM, WEBKIT])("in $name", ({ name, launch, needs }) => {
  let engine: LaunchedEngine;
  beforeAll(async () => {
    [engine, pageDir] = await Promise.all([launch(), buildPage()]);
  }, 60_000);
  afterAll(() => engine?.close());
  openRoomBehind(() => pageDir);

  test(
    `the track keeps to the clock within ${MOST_OFF_MS} ms for ${MINUTES} min`,
    { timeout: (MINUTES * 60 + 240) * 1000, ...needing(...needs) },
    async () => {
      const hand = await engine.open(room.url);
      await joinDemo(hand, "Mina");
      await listenToTrack(hand);
      const steps = [
        aStep({ kind: "develop", seconds: MINUTES * 60 + 180, agitation: EACH_MINUTE, pourOutSeconds: 10 }),
        aStep({ kind: "rinse", ordinal: 1 }),
      ];
      planFor("Mina", aPlan({ tank: 2, steps }));
      await say(hand, "/run start");
      await pressAt(hand, ".run.is-waiting .key.main");
      await hand.run(LOOK_EACH_SECOND);
      await expect
        .poll(() => hand.ask("track.looks"), { interval: 5000, timeout: (MINUTES * 60 + 120) * 1000 })
        .toBeGreaterThanOrEqual(MINUTES * 60);
      const off = await hand.ask<number[]>("track.off");
      const files = await hand.ask<number>("track.files.length");
      off.sort((a, b) => a - b);
      const at = (share: number): number => Math.round(off[Math.ceil(off.length * share) - 1] ?? Number.NaN);
      console.log(
        `${name}, off the clock over ${MINUTES} min, ${off.length} looks, ${files} files: p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, most ${at(1)} ms`,
      );
      expect(off.length).toBeGreaterThan(MINUTES * 40);
      expect(at(1)).toBeLessThan(MOST_OFF_MS);
    },
  );
});
