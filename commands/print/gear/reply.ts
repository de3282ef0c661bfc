import type { Enlarger } from "../../../store/shapes/enlarger.ts";
import type { Paper } from "../../../store/shapes/paper.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { enlargerFields } from "../enlarger-fields.ts";
import { enlargerLine, paperFigures, paperName } from "../print-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export function gearReply(enlargers: readonly Enlarger[], papers: readonly Paper[]): Reply {
  return {
    text: [
      enlargers.length === 0 ? words().noEnlarger : words().enlargers,
      ...enlargers.map((each) => `- ${enlargerLine(each)}`),
      papers.length === 0 ? words().noPaper : words().papers,
      ...papers.map((each) => `- ${[paperName(each), paperFigures(each)].filter(Boolean).join("; ")}`),
    ].join("\n"),
    fields: {
      enlargers: enlargers.map(enlargerFields),
      papers: papers.map(({ filters, size, speed, ...each }) => ({
        ...each,
        ...size,
        speed: speed && { ...speed },
        filters: filters.map((filter) => ({ ...filter })),
      })),
    },
  };
}
