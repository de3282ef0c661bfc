import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { outsideWords } from "../../speech/limits.ts";
import { formatMl, makeNumber, plain, quoted } from "../../speech/wording.ts";
import type { Habits } from "../../../store/shapes/school.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const noCarry = (typed: string): string => words().noCarry(quoted(plain(typed)));
export const noMeasure = (typed: string): string => words().noMeasure(quoted(plain(typed)));
export const outside = (ml: number, least: number, most: number): string =>
  outsideWords(ml, { least, most }, formatMl);

export function bathsReply(habits: Habits): Reply {
  const { carryMlPerRoll, fixBaths, fixRotations, fixPairs, measureStepMl } = habits;
  const pairs = fixPairs.map(
    ({ first, second }) => `${makeNumber("batch", first)} + ${makeNumber("batch", second)}`,
  );
  const lines = [
    carryMlPerRoll === null ? words().noCarrySet : words().carry(formatMl(carryMlPerRoll)),
    words().carrySource,
    fixBaths === 1 ? words().oneBath : words().twoBaths(fixRotations, pairs),
    measureStepMl === null ? words().usualMeasures : words().measure(formatMl(measureStepMl)),
  ];
  return {
    text: lines.map((line) => `- ${line}`).join("\n"),
    fields: { carryMlPerRoll, fixBaths, fixRotations, measureStepMl, pairs },
  };
}
