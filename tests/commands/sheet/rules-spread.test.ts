import { describe, expect, test } from "vitest";
import { developmentFor } from "../../../commands/plan/develop.ts";
import { bareRequest, type PlanRequest } from "../../../commands/plan/request.ts";
import { timeFor } from "../../../commands/sheet/time.ts";
import { aSheet } from "../../support/make.ts";
import { calibrate, type Calibration, type Checked } from "./calibrate.ts";
import { BY_HAND, CONTINUOUS, PUSHES, VESSELS, type AgitationPair, type Vessel } from "./published-rules.ts";

/*
 * How often the spreads told for rules of thumb hold what is published, and how wide they are. Two published answers to one
 * question lie further apart than most lie from the rule, so that nine in ten ask for more than twice the median error.
 */
const WIDEST = 4;

function developed(request: PlanRequest, volumeMl = 300): Omit<Checked, "name" | "published"> {
  const made = developmentFor(request, volumeMl);
  if (!made.ok) throw new Error(made.fault.code);
  const { seconds, spread } = made.value;
  return { seconds, low: spread?.lowSeconds ?? seconds, high: spread?.highSeconds ?? seconds };
}

function expectHeld({ points, inside, medianError, medianWidth }: Calibration, least: number): void {
  expect(points).toBeGreaterThan(least);
  expect(inside).toBeGreaterThanOrEqual(0.9);
  expect(medianWidth).toBeLessThanOrEqual(WIDEST * medianError);
}

function agitated({ name, from, to }: AgitationPair): Checked {
  const sheet = aSheet({
    agitation: from.agitation,
    points: [{ tenthsC: 200, exposureIndex: 400, seconds: from.seconds, source: "published" }],
  });
  const told = developed({ ...bareRequest(sheet, 200), agitation: to.agitation });
  return { name, published: to.seconds, ...told };
}

describe("another agitation than the sheet's", () => {
  test.each([
    ["bursts each half minute or each minute", BY_HAND],
    ["a rotary tube or a small tank", CONTINUOUS],
  ])("%s: nine in ten of the published times inside", (title, pairs) => {
    expectHeld(calibrate(`agitation, ${title}`, pairs.map(agitated)), 40);
  });
});

test("a push or pull by the rule: nine in ten of the published times inside", () => {
  const checked = PUSHES.map(({ series, given, asked, boxSpeed }): Checked => {
    const sheet = aSheet({ boxSpeed, points: [{ ...given, source: "published" }] });
    const time = timeFor(sheet, asked.tenthsC, asked.exposureIndex);
    if (!time.ok) throw new Error(`${series.name}: ${time.fault.code}`);
    const { seconds, lowSeconds: low, highSeconds: high } = time.value;
    const name = `${series.name} EI ${given.exposureIndex} -> ${asked.exposureIndex}`;
    return { name, published: asked.seconds, seconds, low, high };
  });
  expectHeld(calibrate("push and pull", checked), 20);
});

/** A tank that follows its room as this vessel did: the time that is right in it, and what is told where nobody measured. */
function drifted({ name, ml, gap, left, seconds }: Vessel, [bath, room]: readonly [number, number]): Checked {
  const sheet = aSheet({
    points: [
      { tenthsC: 160, exposureIndex: 400, seconds: 730, source: "invented" },
      { tenthsC: 200, exposureIndex: 400, seconds: 540, source: "invented" },
      { tenthsC: 240, exposureIndex: 400, seconds: 400, source: "invented" },
    ],
  });
  const request = { ...bareRequest(sheet, bath), roomTenthsC: room };
  const timeConstantSeconds = Math.round(seconds / Math.log(gap / left));
  const tank = { number: 1, reels: 1, volumeMl: ml, format: "135", condition: null } as const;
  const { seconds: published } = developed({ ...request, tank: { ...tank, timeConstantSeconds } }, ml);
  return { name: `${name}, ${bath / 10} °C in ${room / 10} °C`, published, ...developed(request, ml) };
}

test("a tank that nobody measured drifts as published vessels do: nine in ten of the times inside", () => {
  const rooms = [
    [200, 140],
    [200, 170],
    [240, 180],
    [200, 260],
  ] as const;
  const checked = VESSELS.flatMap((vessel) => rooms.map((each) => drifted(vessel, each)));
  expectHeld(calibrate("drift", checked), 20);
});
