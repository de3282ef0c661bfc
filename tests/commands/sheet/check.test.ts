import { expect, test } from "vitest";
import { checkSheet } from "../../../commands/sheet/check.ts";
import { saySheetFault } from "../../../commands/sheet/file-words.ts";
import type { Point } from "../../../store/shapes/sheet.ts";
import { aSheet } from "../../support/make.ts";

const point = (tenthsC: number, exposureIndex: number, seconds: number): Point => ({
  tenthsC,
  exposureIndex,
  seconds,
  source: "invented",
});

function faults(points: Point[], over = {}) {
  return checkSheet(aSheet({ points, ...over }));
}

test("longer when hotter is refused, with both rows named", () => {
  const [fault] = faults([point(200, 400, 540), point(240, 400, 541)]);
  expect(fault?.code).toBe("ERR_CONTRADICTION");
  const text = fault ? saySheetFault(fault) : "";
  expect(text).toContain("9:00 at 20 °C (68 °F), EI 400");
  expect(text).toContain("9:01 at 24 °C (75.2 °F), EI 400");
});

test("shorter when pushed is refused, and hotter with a lower index but longer", () => {
  expect(faults([point(200, 800, 500), point(200, 400, 540)])[0]?.code).toBe("ERR_CONTRADICTION");
  expect(faults([point(200, 800, 500), point(240, 400, 540)])[0]?.code).toBe("ERR_CONTRADICTION");
});

test("equal times at two temperatures are fine: a published row prints 5 min at 72 and at 75 °F (Kodak F-32)", () => {
  expect(faults([point(222, 400, 300), point(239, 400, 300)])).toEqual([]);
});

test("hotter and pushed may be longer or shorter", () => {
  expect(faults([point(200, 400, 540), point(240, 800, 520)])).toEqual([]);
  expect(faults([point(200, 400, 540), point(240, 800, 560)])).toEqual([]);
});

test("two times for one place are refused, and a row twice", () => {
  const [different] = faults([point(200, 400, 540), point(200, 400, 550)]);
  expect(different && saySheetFault(different)).toMatch(/^Two times/);
  const [same] = faults([point(200, 400, 540), point(200, 400, 540)]);
  expect(same && saySheetFault(same)).toMatch(/twice/);
});

test("a row outside the data sheet's own range, an empty range and a burst longer than its cycle are refused", () => {
  expect(faults([point(250, 400, 540)], { maxTenthsC: 240 })[0]?.code).toBe("ERR_OUTSIDE_RANGE");
  expect(faults([point(200, 400, 540)], { minTenthsC: 240, maxTenthsC: 180 })[0]?.code).toBe(
    "ERR_EMPTY_RANGE",
  );
  const agitation = {
    initialSeconds: 30,
    cycleSeconds: 5,
    burstSeconds: 10,
    manner: "inversion" as const,
    taps: 0,
  };
  expect(faults([point(200, 400, 540)], { agitation })[0]?.code).toBe("ERR_SCHEME");
});
