import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { formatNumber } from "../../speech/wording.ts";
import { LAW_HOLDS_SECONDS, type LongExposure } from "./long.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const tooLong = (): string => words().tooLong;

export function exposureReply(long: LongExposure, power: number | null, hasFilter: boolean): Reply {
  const { meteredSeconds: metered, middleSeconds, answers, lowSeconds, highSeconds, lessPercent } = long;
  const text =
    metered <= LAW_HOLDS_SECONDS
      ? [words().noNeed(metered)]
      : [
          power === null
            ? words().head(middleSeconds, metered)
            : words().own(middleSeconds, metered, formatNumber(power)),
          words().develop(lessPercent),
          words().differ(lowSeconds, highSeconds),
          ...answers.map(({ form, lowSeconds: low, highSeconds: high }) =>
            words().answer(words().range(low, high), words().forms[form]),
          ),
        ];
  return {
    text: [...text, ...(hasFilter ? [words().filter] : [])].join("\n"),
    fields: {
      meteredSeconds: metered,
      seconds: Math.round(middleSeconds),
      lowSeconds: Math.round(lowSeconds),
      highSeconds: Math.round(highSeconds),
      lessPercent,
      answers: answers.map((each) => ({ ...each })),
    },
  };
}
