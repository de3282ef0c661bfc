import { isSheetFilm } from "../../../store/shapes/film.ts";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { DEFAULT_HABITS } from "../../../store/shapes/usual-habits.ts";
import { cutStrips } from "../../../commands/plan/cut.ts";
import { dosePercent } from "../../../commands/plan/dose.ts";
import { planSchema } from "../../../store/shapes/plan.ts";
import { makePlan } from "../../../commands/plan/process.ts";
import { secondsLeftAt } from "../../../commands/plan/retemper.ts";
import { timeFor } from "../../../commands/sheet/time.ts";
import { splitVolume } from "../../../commands/plan/volume.ts";
import { makeCurve } from "../../../commands/sheet/curve.ts";
import { requestArbitrary, sheetArbitrary } from "./arbitrary.ts";

const celsius = fc.double({ min: 0, max: 60, noNaN: true });
const index = fc.integer({ min: 1, max: 102_400 });

test("hotter is never longer, at any exposure index, on any sheet without contradictions", () => {
  fc.assert(
    fc.property(sheetArbitrary, celsius, celsius, index, (sheet, a, b, exposureIndex) => {
      const curve = makeCurve(sheet);
      const [cold, hot] = [Math.min(a, b), Math.max(a, b)];
      expect(curve.secondsAt(hot, exposureIndex)).toBeLessThanOrEqual(
        curve.secondsAt(cold, exposureIndex) * (1 + 1e-9),
      );
    }),
    { numRuns: 10_000 },
  );
});

test("pushing is never shorter, through the sheet's rows and through the rule of thumb beyond them", () => {
  fc.assert(
    fc.property(sheetArbitrary, fc.integer({ min: 50, max: 450 }), index, index, (sheet, tenthsC, a, b) => {
      const low = timeFor(sheet, tenthsC, Math.min(a, b));
      const high = timeFor(sheet, tenthsC, Math.max(a, b));
      if (!low.ok || !high.ok) return;
      expect(high.value.seconds).toBeGreaterThanOrEqual(low.value.seconds * (1 - 1e-9));
    }),
    { numRuns: 10_000 },
  );
});

test("a hotter developer is never planned longer, with the drift to a room allowed for", () => {
  let compared = 0;
  fc.assert(
    fc.property(
      requestArbitrary,
      fc.integer({ min: 50, max: 450 }),
      fc.integer({ min: 50, max: 450 }),
      fc.integer({ min: 0, max: 400 }),
      (request, a, b, roomTenthsC) => {
        const at = (tenthsC: number): number | undefined => {
          const made = makePlan({ ...request, tenthsC, roomTenthsC, filmsDone: 0 }, DEFAULT_HABITS);
          return made.ok ? (made.value.steps[0]?.seconds ?? undefined) : undefined;
        };
        const [cold, hot] = [at(Math.min(a, b)), at(Math.max(a, b))];
        if (cold === undefined || hot === undefined) return;
        compared += 1;
        expect(hot).toBeLessThanOrEqual(cold);
      },
    ),
    { numRuns: 5_000 },
  );
  expect(compared).toBeGreaterThan(500);
});

test("100,000 random requests give a valid plan or a coded fault: no crash, NaN, Infinity or negative time", () => {
  let plans = 0;
  const codes = new Map<string, number>();
  fc.assert(
    fc.property(requestArbitrary, (request) => {
      const made = makePlan(request, DEFAULT_HABITS);
      if (!made.ok) {
        codes.set(made.fault.code, (codes.get(made.fault.code) ?? 0) + 1);
        return;
      }
      plans += 1;
      const plan = made.value;
      if (plans % 20 === 0) expect(planSchema.safeParse(plan).error).toBeUndefined();
      const isWhole = plan.steps.every(
        ({ seconds }) => seconds === null || (Number.isSafeInteger(seconds) && seconds > 0),
      );
      const develop = plan.steps[0]?.seconds ?? 0;
      const { lowSeconds, highSeconds } = plan.spread ?? { lowSeconds: develop, highSeconds: develop };
      const cut = plan.strips.reduce((sum, strip) => sum + strip, 0);
      if (
        !isWhole ||
        !(lowSeconds <= develop && highSeconds >= develop) ||
        !((plan.steps[0]?.concentrateMl ?? 0) > 0) ||
        cut !== (isSheetFilm(plan.format) ? 0 : plan.frames)
      )
        throw new Error(JSON.stringify(plan));
    }),
    { numRuns: 100_000 },
  );
  console.log(
    `${plans} plans, ${100_000 - plans} refusals (${[...codes].map(([code, count]) => `${code} ${count}`).join(", ")})`,
  );
  expect(plans).toBeGreaterThan(10_000);
});

test("an undisturbed plan gives 100 % of its dose, and half of its time less", () => {
  let plans = 0;
  fc.assert(
    fc.property(requestArbitrary, (request) => {
      const made = makePlan(request, DEFAULT_HABITS);
      if (!made.ok) return;
      plans += 1;
      const seconds = made.value.steps[0]?.seconds ?? 0;
      expect(dosePercent(made.value, seconds)).toEqual({ ok: true, value: 100 });
      const half = dosePercent(made.value, seconds / 2);
      expect(half.ok && half.value < 100).toBe(true);
    }),
    { numRuns: 4_000 },
  );
  expect(plans).toBeGreaterThan(1_000);
});

test("the same temperature measured in mid-step leaves what is left; any allowed one leaves a whole, finite time", () => {
  let plans = 0;
  fc.assert(
    fc.property(
      requestArbitrary,
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.integer({ min: 0, max: 1000 }),
      (request, share, tenthsC) => {
        const made = makePlan({ ...request, roomTenthsC: null }, DEFAULT_HABITS);
        if (!made.ok) return;
        plans += 1;
        const seconds = made.value.steps[0]?.seconds ?? 0;
        const elapsed = Math.round(seconds * share);
        const same = secondsLeftAt(made.value, elapsed, made.value.tenthsC);
        expect(same.ok && Math.abs(same.value - (seconds - elapsed)) <= 1).toBe(true);
        const other = secondsLeftAt(made.value, elapsed, tenthsC);
        if (other.ok) expect(Number.isSafeInteger(other.value) && other.value >= 0).toBe(true);
        else expect(other.fault.code).toMatch(/^ERR_TOO_/);
      },
    ),
    { numRuns: 4_000 },
  );
  expect(plans).toBeGreaterThan(1_000);
});

test("parts sum to the volume, in whole ml", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 200_000 }),
      fc.integer({ min: 1, max: 100 }),
      fc.integer({ min: 0, max: 1000 }),
      (volumeMl, concentrateParts, waterParts) => {
        const { concentrateMl, waterMl } = splitVolume(volumeMl, { concentrateParts, waterParts });
        expect(concentrateMl + waterMl).toBe(volumeMl);
        expect(Math.min(concentrateMl, waterMl)).toBeGreaterThanOrEqual(0);
        expect(
          Math.abs(concentrateMl - (volumeMl * concentrateParts) / (concentrateParts + waterParts)),
        ).toBeLessThanOrEqual(0.5);
      },
    ),
  );
});

test("strips sum to the frames, none is longer than the sleeve, none is a loose single frame", () => {
  for (let stripFrames = 2; stripFrames <= 12; stripFrames += 1) {
    for (let frames = 1; frames <= 100; frames += 1) {
      const { strips, keepsTail } = cutStrips(frames, stripFrames);
      expect(strips.reduce((sum, strip) => sum + strip, 0)).toBe(frames);
      expect(Math.max(...strips)).toBeLessThanOrEqual(stripFrames);
      expect(strips).toHaveLength(Math.ceil(frames / stripFrames));
      expect(strips.includes(1)).toBe(keepsTail);
      if (keepsTail) expect(frames === 1 || stripFrames === 2).toBe(true);
    }
  }
});
