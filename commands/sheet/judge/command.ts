import { z } from "zod";
import { defineCommand, UserError, type Context } from "../../define.ts";
import { EVERY_ROLL } from "../../../store/shapes/roll.ts";
import type { Sheet } from "../../../store/shapes/sheet.ts";
import { makeDilution } from "../../../store/shapes/sheet.ts";
import {
  completeDeveloper,
  completeDilution,
  completeFilm,
  developerOption,
  filmOption,
  sheetDilutionOption,
  sheetsOf,
} from "../options.ts";
import { bathBefore } from "../../roll/bath-before.ts";
import { foldName } from "../names.ts";
import { pickSheet } from "../pick.ts";
import * as words from "./reply.ts";
import { weigh } from "./weigh.ts";

const complete = { film: completeFilm, developer: completeDeveloper, dilution: completeDilution };
const named = {
  film: filmOption.describe("The film's name"),
  developer: developerOption.optional().describe("The developer's name"),
  dilution: sheetDilutionOption.optional().describe("Concentrate + water, like 1+9, or stock"),
};
const MOST_ROLLS = 200;

export const sheetJudge = defineCommand({
  name: "sheet judge",
  summary: "Whether the class's negatives say that a film's time should move: a proposal, no change",
  options: () => named,
  who: "aide",
  visibility: "private",
  complete,
  handle(input, context) {
    const sheet = pick(context, input);
    const { rolls } = context.stores.rolls.search(context.class.id, EVERY_ROLL, MOST_ROLLS, 0);
    const ofSheet = rolls.filter(
      ({ film, developer, dilution }) =>
        foldName(film) === foldName(sheet.film) &&
        foldName(developer) === foldName(sheet.developer) &&
        dilution === makeDilution(sheet.dilution),
    );
    const looks = ofSheet.map((roll) => ({
      look: roll.fault,
      rating: roll.rating,
      dosePerMille: roll.body.dosePerMille,
      isDeveloperWorn: (bathBefore(context, roll, "developer")?.standing ?? "ready") !== "ready",
    }));
    return words.judgedReply(sheet, numberOf(context, sheet), weigh(looks));
  },
});

export const sheetMove = defineCommand({
  name: "sheet move",
  summary:
    "Make all times of a data sheet longer or shorter by per cent; the source says what each was before",
  options: () => ({
    ...named,
    film: named.film.optional().describe("The film's name"),
    sheet: z.coerce
      .number()
      .int()
      .min(1)
      .optional()
      .describe("In place of the names: the data sheet's number, as the button of /sheet judge has it"),
    percent: z.coerce
      .number()
      .int()
      .min(-30)
      .max(30)
      .describe("Per cent to add, below 0 to take off: 10, -10"),
  }),
  who: "teacher",
  visibility: "class",
  complete,
  handle({ percent, sheet: number, film, ...input }, context) {
    if (number === undefined && film === undefined)
      throw new UserError("ERR_WHICH_SHEET", words.whichSheet());
    const sheet =
      number === undefined ? pick(context, { film: film ?? "", ...input }) : byNumber(context, number);
    const date = new Date(context.now).toLocaleDateString("sv", { timeZone: context.class.zone });
    const points = sheet.points.map((point) => ({
      ...point,
      seconds: Math.min(10_800, Math.max(15, Math.round(point.seconds * (1 + percent / 100)))),
      source: words.keptSource(percent, date, context.person.name, point.seconds, point.source),
    }));
    const moved = { ...sheet, points };
    context.stores.sheets.save(context.class.id, moved, context.person.id, context.now);
    return words.movedReply(sheet, moved, percent);
  },
});

/** Names can be longer than a chat's button holds; its row's number never is. */
function numberOf({ stores, class: { id } }: Context, sheet: Sheet): number | null {
  const { film, developer, dilution } = sheet;
  return stores.sheets.find(id, film, developer, makeDilution(dilution))[0]?.id ?? null;
}

function byNumber({ stores, class: { id } }: Context, number: number): Sheet {
  const found = stores.sheets.list(id).find((each) => each.id === number);
  if (!found) throw new UserError("ERR_WHICH_SHEET", words.whichSheet());
  return found.sheet;
}

function pick(context: Context, input: Parameters<typeof pickSheet>[1]): Sheet {
  const picked = pickSheet(sheetsOf(context), input);
  if (!picked.ok) throw new UserError(picked.fault.code, picked.fault.text);
  return picked.value;
}
