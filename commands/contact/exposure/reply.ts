import type { Enlarger, Standing } from "../../../store/shapes/enlarger.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { instant, makeNumber } from "../../speech/wording.ts";
import { stopsBetween } from "../../print/light.ts";
import { stopsWord } from "../../print/print-words.ts";
import { ruleLines, settingWords } from "../standing-words.ts";
import { formatExposure } from "../../print/stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const whichEnlarger = (): string => words().whichEnlarger;
export const needParts = (): string => words().needParts;
export const lighterShort = (): string => words().lighterShort;
export const tooLong = (): string => words().tooLong;

/** The finest difference that a published trial could see: 9 s beside 10. */
const SEEN_STOPS = stopsBetween(9, 10);

export function standingReply(enlarger: Enlarger, standing: Standing | null, isSet: boolean): Reply {
  const name = makeNumber("enlarger", enlarger.number);
  if (standing === null)
    return {
      text: [words().none(name), words().start, ...ruleLines()].join("\n"),
      fields: { enlarger: enlarger.number, standing: null },
      actions: [
        { label: words().strip, line: makeLine("print strip", { base: "4", enlarger: enlarger.number }) },
      ],
    };
  return {
    text: [
      words().head(name, settingWords(standing), isSet),
      standing.isTried ? "" : words().reckoned,
      between(standing),
      isSet ? "" : words().since(instant(standing.setAtMs, "date")),
      ...ruleLines(),
    ]
      .filter(Boolean)
      .join("\n"),
    fields: { enlarger: enlarger.number, standing: { ...standing } },
  };
}

/** How closely the least time is known. */
function between({ lighterTenths, tenths }: Standing): string {
  if (lighterTenths === null) return "";
  const stops = stopsBetween(lighterTenths, tenths);
  const said = words().between(formatExposure(lighterTenths), formatExposure(tenths), stopsWord(stops));
  return stops > SEEN_STOPS + 0.02 ? `${said} ${words().finer}` : said;
}
