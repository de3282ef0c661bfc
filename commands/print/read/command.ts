import { z } from "zod";
import type { Strip } from "../../../store/shapes/print.ts";
import { type Context, defineCommand, UserError } from "../../define.ts";
import { ok, fail } from "../../result.ts";
import { whoMay } from "../../who.ts";
import { barsOf, readBar } from "../bars.ts";
import { byGrade, harderBy } from "../grade.ts";
import { factorOf, onTimer } from "../light.ts";
import { readBy } from "../options.ts";
import { type Parse, tidy } from "../stops.ts";
import { noStrip } from "../strip-words.ts";
import * as words from "./reply.ts";

interface Place {
  readonly bar: number;
  readonly isBetween: boolean;
}

/** `4`, `bar 4`, `4-5`, `4 1/2`. */
const parseBar: Parse<Place> = (text) => {
  const match = /^(?:bar|feld)? ?(\d{1,2})(?: ?(?:-|–|to|and|bis|und|\/) ?(\d{1,2})| (1\/2)|(\.5))?$/i.exec(
    tidy(text),
  );
  const bar = Number(match?.[1]);
  const isNext = match?.[2] === undefined || Number(match[2]) === bar + 1;
  return match && isNext && bar >= 1
    ? ok({ bar, isBetween: (match[2] ?? match[3] ?? match[4]) !== undefined })
    : fail({ code: "ERR_NO_BAR", typed: text });
};

export const printRead = defineCommand({
  name: "print read",
  summary: "Read your test strip: the time of the bar that is right, or of half-way between two",
  options: () => ({
    bar: readBy(parseBar).describe("Which bar is right, like 4; or 4-5 for between the two"),
    harder: z.coerce
      .number()
      .min(-5)
      .max(5)
      .multipleOf(0.5)
      .default(0)
      .describe("So many grades harder, like 0.5; softer: -0.5"),
  }),
  who: whoMay("print read"),
  visibility: "private",
  rest: "bar",
  handle({ bar: place, harder }, context) {
    const strip = context.stores.prints.strip(context.class.id, context.person.id);
    if (!strip) throw new UserError("ERR_NO_STRIP", noStrip());
    const bars = barsOf(strip);
    const seconds = bars.ok ? readBar(bars.value, place) : undefined;
    if (seconds === undefined) throw new UserError("ERR_BAR_BEYOND", words.noBar(strip.bars));
    const move = gradeMove(context, strip, Math.round(harder * 10));
    const exact = seconds * factorOf(move.stops);
    return words.readReply({
      strip,
      place,
      seconds,
      exact,
      setTenths: onTimer(exact, strip.timerTenths),
      move,
    });
  },
});

/** @throws UserError where no grade is known to go on from, or a graded paper has but the one. */
function gradeMove(context: Context, strip: Strip, tenths: number): words.Move {
  if (tenths === 0) return { stops: 0, basis: "none", from: strip.gradeTenths, to: strip.gradeTenths };
  if (strip.gradeTenths === null) throw new UserError("ERR_GRADE_UNKNOWN", words.gradeUnknown());
  const { stores, class: school } = context;
  const paper = (strip.paper === null ? undefined : stores.papers.find(school.id, strip.paper)) ?? null;
  if (paper && paper.gradeTenths !== null) throw new UserError("ERR_GRADED_PAPER", words.isGraded());
  const to = harderBy(strip.gradeTenths, tenths);
  return { ...byGrade(strip.gradeTenths, to, paper, strip.enlarger), from: strip.gradeTenths, to };
}
