import type { Paper } from "../../../store/shapes/paper.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { formatNumber, makeNumber } from "../../speech/wording.ts";
import { gearAction, gradeWord, paperName, stopsWord } from "../print-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const nothing = (): string => words().nothing;
export const bothTimes = (): string => words().bothTimes;
export const isGraded = (): string => words().isGraded;
export const far = (): string => words().far;
export const noSpeed = (paper: number): string => words().noSpeed(makeNumber("paper", paper));

export function measuredReply(
  paper: Paper,
  grade: number | null,
  beside: number | null,
  stops: number,
): Reply {
  const { speed, dryDownPercent } = paper;
  return {
    text: [
      `**${paperName(paper)}**`,
      ...(grade === null ? [] : [`- ${words().filter(gradeWord(grade), stopsWord(stops, true))}`]),
      ...(beside === null || speed === null
        ? []
        : [
            `- ${words().speed(formatNumber(speed.tenths / 10), makeNumber("paper", beside), stopsWord(stops, true))}`,
          ]),
      ...(dryDownPercent === null ? [] : [`- ${words().dry(dryDownPercent)}`]),
      words().used,
    ].join("\n"),
    fields: {
      paper: paper.number,
      gradeTenths: grade,
      speedTenths: speed?.tenths ?? null,
      dryDownPercent,
      stops: Math.round(stops * 1000) / 1000,
    },
    actions: [gearAction()],
  };
}
