import type { Paper } from "../../../store/shapes/paper.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeNumber } from "../../speech/wording.ts";
import { gearAction, paperFigures, paperName } from "../print-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const noName = (number: number): string => words().noName(makeNumber("paper", number));

export function savedReply(paper: Paper, isNewLot: boolean, isGuessed: boolean): Reply {
  const figures = paperFigures(paper);
  return {
    text: [
      `**${paperName(paper)}**${figures === "" ? "" : `; ${figures}`}.`,
      ...(isGuessed ? [words().check] : []),
      ...(isNewLot ? [words().newLot] : []),
    ].join("\n"),
    fields: {
      paper: paper.number,
      name: paper.name,
      kind: paper.kind,
      gradeTenths: paper.gradeTenths,
      ...paper.size,
    },
    actions: [gearAction()],
  };
}

export function removedReply(number: number): Reply {
  return {
    text: words().removed(makeNumber("paper", number)),
    fields: { paper: number, removed: true },
    actions: [gearAction()],
  };
}
