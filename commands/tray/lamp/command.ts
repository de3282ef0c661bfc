import { z } from "zod";
import { lampSchema, type Lamp } from "../../../store/shapes/lamp.ts";
import { defineCommand, UserError, type Completer } from "../../define.ts";
import { textIn, wholeIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { judgeLamp, USUAL_DAYS, USUAL_MINUTES } from "../lamp.ts";
import * as words from "./reply.ts";

const DAY_MS = 86_400_000;
const { shape } = lampSchema;

const completeLamp: Completer = (typed, { class: { habits } }) =>
  habits.lamps
    .filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase()))
    .map(({ name }) => ({ label: name, value: name }));

/** The step at which a coin was first to be seen; nothing said: none was. */
const firstSeen = wholeIn(shape.beforeMinutes).optional();

export const trayLamp = defineCommand({
  name: "tray lamp",
  summary: "Note what a safelight's test has shown, and get its safe time; or see all lamps",
  options: () => ({
    lamp: textIn(shape.name).optional().describe("Which safelight; all of them if left out"),
    before: firstSeen.describe("First coin to be seen in row 1, minutes; none if left out"),
    after: firstSeen.describe("First coin to be seen in row 2, minutes; none if left out"),
    alone: firstSeen.describe("First change on the strip without grey, minutes; none if left out"),
    longest: wholeIn(shape.longestMinutes).default(7).describe("The longest step you tried, minutes"),
    shortest: wholeIn(shape.longestMinutes).default(USUAL_MINUTES[0]).describe("The shortest step, minutes"),
    next: z.coerce.number().int().min(1).max(1000).default(USUAL_DAYS).describe("Days until the next test"),
  }),
  who: whoMay("tray lamp"),
  visibility: "private",
  complete: { lamp: completeLamp },
  handle({ lamp: name, before, after, alone, longest, shortest, next }, context) {
    const { stores, class: school, now } = context;
    const { lamps } = school.habits;
    if (name === undefined) return words.lampsReply(lamps, now);
    if (alone !== undefined && before === undefined && after === undefined && alone > longest)
      throw new UserError("ERR_LAMP_STEP", words.beyondLongest(longest));
    if ([before, after, alone].some((each) => each !== undefined && (each > longest || each < shortest)))
      throw new UserError("ERR_LAMP_STEP", words.beyondLongest(longest));
    const seen = {
      beforeMinutes: before ?? null,
      afterMinutes: after ?? null,
      aloneMinutes: alone ?? null,
      longestMinutes: longest,
    };
    const verdict = judgeLamp(seen, shortest);
    const { safeSeconds } = verdict;
    const lamp: Lamp = { name, testedAtMs: now, ...seen, safeSeconds, nextAtMs: now + next * DAY_MS };
    const others = lamps.filter((each) => each.name.toLowerCase() !== name.toLowerCase());
    if (others.length >= words.MOST_LAMPS) throw new UserError("ERR_TOO_MANY_LAMPS", words.tooMany());
    stores.classes.setHabits(school.id, { ...school.habits, lamps: [...others, lamp] });
    return words.lampReply(lamp, verdict);
  },
});
