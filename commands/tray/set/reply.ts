import type { TrayLine } from "../../../store/shapes/tray-line.ts";
import type { Action, FieldValue, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatBothScales, formatDilution, formatNumber, plain } from "../../speech/wording.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** As many as the class's own shape takes. */
export const MOST_LINES = 20;

export const busy = (number: number): string => words().busy(number);
export const noName = (): string => words().noName;
export const tooMany = (): string => words().tooMany(MOST_LINES);

export function removedReply(number: number, wasThere: boolean): Reply {
  return {
    text: wasThere ? words().removed(number) : words().notThere(number),
    fields: { line: number, removed: wasThere },
  };
}

export function savedReply(line: TrayLine, isNew: boolean): Reply {
  const { developer, dilution, factorPer10C, factor } = line;
  const bath = `${plain(developer)} ${formatDilution(dilution)}`;
  return {
    text: [
      words().saved(line.number, bath, line.rcSeconds, line.fibreSeconds, formatBothScales(line.atTenthsC)),
      words().places(line),
      factorPer10C === null ? "" : words().per10(formatNumber(factorPer10C)),
      factor === null ? "" : words().factor(formatNumber(factor)),
      line.isUsual ? words().usual : "",
      isNew ? words().next : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: fieldsOf(line),
    actions: [planAction(line.number)],
  };
}

function planAction(line: number): Action {
  return { label: words().makePlan, line: makeLine("tray plan", { line, temp: "20C" }), weight: "main" };
}

const fieldsOf = (line: TrayLine): { readonly [key: string]: FieldValue } => ({ ...line });
