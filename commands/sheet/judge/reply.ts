import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatNumber, joinAnd } from "../../speech/wording.ts";
import type { Sheet } from "../../../store/shapes/sheet.ts";
import { sheetName } from "../pick.ts";
import type { Verdict } from "./weigh.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** `number`: the sheet's, for the button; null: it is not kept. */
export function judgedReply(sheet: Sheet, number: number | null, verdict: Verdict): Reply {
  const { rolls, weak, strong, explained, worn, maybeCamera, chance, percent } = verdict;
  const name = sheetName(sheet);
  return {
    text: [
      percent === 0 ? words().nothing(name) : words().propose(percent, name),
      words().evidence(rolls, weak, strong, formatNumber(Math.round(chance * 1000) / 10)),
      ...(explained > 0 ? [words().explained(explained)] : []),
      ...(worn > 0 ? [words().worn(worn)] : []),
      ...(percent === 0 ? [words().few] : [words().else(maybeCamera), words().source]),
    ].join("\n"),
    fields: { ...verdict },
    actions:
      percent === 0 || number === null
        ? []
        : [{ label: words().adopt(percent), line: makeLine("sheet move", { sheet: number, percent }) }],
  };
}

export const whichSheet = (): string => words().whichSheet;

export const keptSource = (
  percent: number,
  date: string,
  person: string,
  before: number,
  source: string,
): string => words().kept(percent, date, person, before, source).slice(0, 200);

export function movedReply(before: Sheet, after: Sheet, percent: number): Reply {
  const times = after.points.map(({ seconds }, at) => words().time(before.points[at]?.seconds ?? 0, seconds));
  return {
    text: words().moved(percent, sheetName(after), joinAnd(times.slice(0, 8))),
    fields: { percent, seconds: after.points.map(({ seconds }) => seconds) },
  };
}
