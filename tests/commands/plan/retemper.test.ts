import { expect, test } from "vitest";
import { DEFAULT_HABITS } from "../../../store/shapes/usual-habits.ts";
import { makePlan } from "../../../commands/plan/process.ts";
import { bareRequest } from "../../../commands/plan/request.ts";
import { secondsLeftAt } from "../../../commands/plan/retemper.ts";
import { aSheet } from "../../support/make.ts";

const row = (tenthsC: number, seconds: number) => ({
  tenthsC,
  exposureIndex: 400,
  seconds,
  source: "invented",
});
const made = makePlan(bareRequest(aSheet({ points: [row(200, 600), row(240, 400)] }), 200), DEFAULT_HABITS);
if (!made.ok) throw new Error(made.fault.code);
const plan = made.value;

test("half done at 20 °C (600 s), the rest at 24 °C (400 s) takes half of 400 s", () => {
  expect(secondsLeftAt(plan, 300, 240)).toEqual({ ok: true, value: 200 });
});

test("wrong from the start: all of it at the new temperature", () => {
  expect(secondsLeftAt(plan, 0, 240)).toEqual({ ok: true, value: 400 });
});

test("a second correction counts what the first one changed", () => {
  // 150 s at 20 °C: a quarter. 100 s at 24 °C: another. The half left takes 300 s at 20 °C.
  expect(secondsLeftAt(plan, 250, 200, [{ atSeconds: 150, tenthsC: 240 }])).toEqual({ ok: true, value: 300 });
});

test("when the dose is given nothing is left, however late it is asked", () => {
  expect(secondsLeftAt(plan, 600, 240)).toEqual({ ok: true, value: 0 });
  expect(secondsLeftAt(plan, 9_999, 180)).toEqual({ ok: true, value: 0 });
});

test("a temperature beyond the sheet's range is refused with the nearest", () => {
  expect(secondsLeftAt(plan, 300, 400)).toMatchObject({
    fault: { code: "ERR_TOO_HOT", nearestTenthsC: 267 },
  });
  expect(secondsLeftAt(plan, 300, 100)).toMatchObject({
    fault: { code: "ERR_TOO_COLD", nearestTenthsC: 160 },
  });
});
