import type { FoundPrints } from "../../../store/prints.ts";
import type { Print } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { turnActions } from "../../speech/turns.ts";
import { plain } from "../../speech/wording.ts";
import { sayPrintFault } from "../look-words.ts";
import { gradeWord } from "../print-words.ts";
import { fieldsOf, headLine, showAction } from "../recipe-words.ts";
import { formatExposure } from "../stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

export interface Found extends FoundPrints {
  readonly page: number;
  readonly pageSize: number;
  readonly isEverything: boolean;
}

const words = inEach({ en, de });

export function foundReply(found: Found, lineOfPage: (page: number) => string): Reply {
  const { prints, total, page, pageSize, isEverything } = found;
  if (total === 0)
    return { text: isEverything ? words().empty : words().noneLike, fields: { total: 0, prints: [] } };
  const pages = Math.ceil(total / pageSize);
  if (prints.length === 0) return { text: words().pagesOnly(pages), fields: { total, page, prints: [] } };
  return {
    text: [
      pages > 1 ? words().headOfPages(total, page, pages) : words().head(total),
      ...prints.map((print) => `- ${lineOf(print)}`),
    ].join("\n"),
    fields: { total, page, pages, prints: prints.map(fieldsOf) },
    actions: [...prints.slice(0, 3).map(showAction), ...turnActions({ page, pages }, words(), lineOfPage)],
  };
}

function lineOf(print: Print): string {
  const { body, rating, fault } = print;
  return [
    headLine(print),
    formatExposure(body.exposureTenths),
    gradeWord(body.paper?.gradeTenths ?? body.gradeTenths),
    ...(body.paper === null ? [] : [plain(body.paper.name)]),
    ...(rating === null ? [] : [words().rated(rating)]),
    ...(fault === "" ? [] : [words().fault(plain(sayPrintFault(fault)))]),
  ].join(", ");
}
