import { z } from "zod";
import { defineCommand, UserError } from "../../define.ts";
import { durationIn } from "../../speech/quantity.ts";
import { longExposure } from "./long.ts";
import * as words from "./reply.ts";

/** The longest reading that makes sense of a meter here, seconds; the longest published is 240. */
const MOST_METERED = { least: 1, most: 600 } as const;

export const planExposure = defineCommand({
  name: "plan exposure",
  summary: "Long exposures, as with a pinhole: how much longer than metered, and how to develop",
  options: () => ({
    metered: durationIn(MOST_METERED).describe("What the meter says, like 10 s"),
    filter: z.coerce
      .number()
      .min(1)
      .max(1000)
      .default(1)
      .describe("The filter's factor, if it was metered without: 2, 8"),
    exponent: z.coerce
      .number()
      .min(1)
      .max(2)
      .optional()
      .describe("The film's own exponent, if its maker states one: 1.31"),
  }),
  who: "student",
  visibility: "private",
  rest: "metered",
  handle({ metered, filter, exponent }) {
    if (metered * filter > MOST_METERED.most) throw new UserError("ERR_OUTSIDE", words.tooLong());
    const power = exponent ?? null;
    return words.exposureReply(longExposure(metered, filter, power), power, filter > 1);
  },
});
