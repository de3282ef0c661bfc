import { z } from "zod";
import { defineCommand, UserError } from "../../define.ts";
import { habitsSchema, type Habits } from "../../../store/shapes/school.ts";
import { limitsOf, wholeIn } from "../../speech/shaped.ts";
import { whoMay } from "../../who.ts";
import { parseCarry } from "./carry.ts";
import * as words from "./reply.ts";

const { shape } = habitsSchema;
const written = z.string().trim().min(1).max(40);

export const classBaths = defineCommand({
  name: "class baths",
  summary:
    "Carry-over by film, one fixing bath or two, how finely you measure; without options it shows them",
  options: () => ({
    carry: written
      .optional()
      .describe("Carried from bath to bath: 20 ml (a roll), 0.04 ml/cm2; none: not reckoned"),
    fixbaths: wholeIn(shape.fixBaths).optional().describe("Fixing baths that film goes through: 1 or 2"),
    rotations: wholeIn(shape.fixRotations)
      .optional()
      .describe("How often the second moves up before both are mixed new: 2"),
    measure: written
      .optional()
      .describe("The finest step of your measures or syringe, like 0.1 ml; usual: the usual ones"),
  }),
  who: whoMay("class baths"),
  visibility: "private",
  handle({ carry, fixbaths, rotations, measure }, { stores, class: school }) {
    const habits: Habits = {
      ...school.habits,
      ...(carry === undefined ? {} : { carryMlPerRoll: readCarry(carry) }),
      ...(fixbaths === undefined ? {} : { fixBaths: fixbaths }),
      // With one bath no bottle stands behind another.
      ...(fixbaths === 1 ? { fixPairs: [] } : {}),
      ...(rotations === undefined ? {} : { fixRotations: rotations }),
      ...(measure === undefined ? {} : { measureStepMl: readMeasure(measure) }),
    };
    stores.classes.setHabits(school.id, habits);
    return words.bathsReply(habits);
  },
});

function readCarry(text: string): number | null {
  if (/^(none|keine?|nothing|nichts)$/i.test(text)) return null;
  const { least, most } = limitsOf(shape.carryMlPerRoll);
  const ml = parseCarry(text);
  if (ml === undefined) throw new UserError("ERR_NO_CARRY", words.noCarry(text));
  if (ml < least || ml > most) throw new UserError("ERR_OUTSIDE", words.outside(ml, least, most));
  return ml;
}

function readMeasure(text: string): number | null {
  if (/^(usual|üblich|none)$/i.test(text)) return null;
  const { least, most } = limitsOf(shape.measureStepMl);
  const match = /^(\d{1,3}(?:[.,]\d)?) ?(?:ml)?$/i.exec(text);
  if (!match) throw new UserError("ERR_NO_MEASURE", words.noMeasure(text));
  const ml = Number((match[1] ?? "").replace(",", "."));
  if (ml < least || ml > most) throw new UserError("ERR_OUTSIDE", words.outside(ml, least, most));
  return ml;
}
