import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatNumbers, parseNumbers } from "../../../commands/tank/numbers.ts";

describe("tank numbers", () => {
  it.each([
    ["3", [3]],
    ["T3", [3]],
    ["1-4", [1, 2, 3, 4]],
    ["1–3", [1, 2, 3]],
    ["2 to 4", [2, 3, 4]],
    ["5, 1, 2 and 7-8", [1, 2, 5, 7, 8]],
    ["4,4", [4]],
  ])("%s is read", (text, numbers) => {
    expect(parseNumbers(text)).toEqual({ ok: true, value: numbers });
  });

  it.each([
    ["", "ERR_NO_NUMBERS"],
    ["some", "ERR_NO_NUMBERS"],
    ["1..4", "ERR_NO_NUMBERS"],
    ["-1", "ERR_NO_NUMBERS"],
    ["0", "ERR_NUMBER_RANGE"],
    ["4-1", "ERR_NUMBER_RANGE"],
    ["1000", "ERR_NUMBER_RANGE"],
    ["1-99", "ERR_TOO_MANY_NUMBERS"],
  ])("%s is refused", (text, code) => {
    expect(parseNumbers(text)).toMatchObject({ ok: false, fault: { code } });
  });

  it("reads back what it writes", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 60 }),
        (some) => {
          const numbers = some.sort((a, b) => a - b);
          expect(parseNumbers(formatNumbers(numbers))).toEqual({ ok: true, value: numbers });
        },
      ),
    );
  });
});
