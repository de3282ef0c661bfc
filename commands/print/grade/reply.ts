import type { Paper } from "../../../store/shapes/paper.ts";
import type { Action, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatNumber } from "../../speech/wording.ts";
import { gradeWord, paperName } from "../print-words.ts";
import {
  filterForRange,
  gradeForRange,
  HARDEST,
  isDraftGrade6,
  MIDDLES,
  oldGradeForRange,
  slopeFor,
  SOFTEST,
} from "../range.ts";
import { formatGrade } from "../stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** `range` in hundredths. `paper`: null where nobody said on what it is printed. */
export function gradedReply(range: number, paper: Paper | null): Reply {
  const filterTenths = filterForRange(range);
  const gradeTenths = gradeForRange(range);
  const oldTenths = oldGradeForRange(range);
  const beyond = beyondOf(range);
  return {
    text: [
      headOf(range, filterTenths, gradeTenths, paper),
      ...beyond,
      `- ${words().filter(formatGrade(filterTenths))}`,
      `- ${words().graded(formatGrade(gradeTenths))}`,
      `- ${isDraftGrade6(range) ? words().draft : words().old(oldTenths === null ? null : formatGrade(oldTenths))}`,
      `- ${words().middles(middleWords(MIDDLES[0]), middleWords(MIDDLES[1]))}`,
      // Beyond what paper prints each source names its last grade, and that is no agreement.
      ...(beyond.length > 0
        ? []
        : [differWords([filterTenths, gradeTenths, ...(oldTenths === null ? [] : [oldTenths])])]),
    ].join("\n"),
    fields: {
      range,
      filterTenths,
      gradeTenths,
      oldGradeTenths: oldTenths,
      paper: paper?.number ?? null,
      paperGradeTenths: paper?.gradeTenths ?? null,
    },
    actions: [stripAction(filterTenths, paper)],
  };
}

function headOf(range: number, filterTenths: number, gradeTenths: number, paper: Paper | null): string {
  const [log, filter, grade] = [hundredths(range), formatGrade(filterTenths), formatGrade(gradeTenths)];
  if (paper === null) return words().either(filter, grade, log, range);
  if (paper.gradeTenths === null) return words().byFilter(filter, log, range, paperName(paper));
  const head = words().byGrade(grade, log, range);
  const off = paper.gradeTenths - gradeTenths;
  const fits = off === 0 ? words().fits : off > 0 ? words().tooHard : words().tooSoft;
  return `${head} ${fits(paperName(paper), gradeWord(paper.gradeTenths))}`;
}

function beyondOf(range: number): string[] {
  if (range > SOFTEST) return [words().tooLong];
  return range < HARDEST ? [words().tooShort] : [];
}

const middleWords = (middle: (typeof MIDDLES)[number]) => ({
  range: hundredths(middle.range),
  scene: hundredths(middle.scene),
  slope: formatNumber(slopeFor(middle), 2),
});

function differWords(tenths: readonly number[]): string {
  const [softest, hardest] = [Math.min(...tenths), Math.max(...tenths)];
  return hardest - softest <= 5 ? words().agree : words().differ(formatGrade(softest), formatGrade(hardest));
}

const hundredths = (value: number): string => formatNumber(value / 100, 2);

/** A strip decides. */
function stripAction(filterTenths: number, paper: Paper | null): Action {
  const grade = paper?.gradeTenths ?? filterTenths;
  const options = { base: 8, grade: formatGrade(grade), ...(paper === null ? {} : { paper: paper.number }) };
  return { label: words().strip, line: makeLine("print strip", options), weight: "main" };
}
