import { candidatesFor } from "../../batch/candidates.ts";
import { z } from "zod";
import { kindsKept } from "../../batch/kept.ts";
import { readDayOption } from "../../batch/options.ts";
import { defineCommand, UserError, type Context } from "../../define.ts";
import {
  completeDeveloper,
  completeDilution,
  completeFilm,
  developerOption,
  filmOption,
  sheetDilutionOption,
  sheetsOf,
} from "../../sheet/options.ts";
import { insteadOf, pickSheet } from "../../sheet/pick.ts";
import { planSchema } from "../../../store/shapes/plan.ts";
import { planClass, type ClassDay } from "./needs.ts";
import * as words from "./reply.ts";

const NOON_MS = 12 * 3_600_000;
/** Where the class has noted no tank: one for two rolls of 135. */
const TANK_ML = 600;

export const mixClass = defineCommand({
  name: "mix class",
  summary: "What to mix for so many rolls on a day: from which bottles, from the shelf, what to buy",
  options: () => ({
    rolls: z.coerce.number().int().min(1).max(500).describe("How many rolls the class will develop"),
    film: filmOption.describe("The film, as on its data sheet"),
    developer: developerOption
      .optional()
      .describe("The developer; needed if the film has several data sheets"),
    dilution: sheetDilutionOption.optional().describe("Concentrate + water, like 1+9, or stock"),
    date: z.string().max(20).optional().describe("The day: today, tomorrow, 2026-05-31"),
    format: planSchema.shape.format.default("135").describe("The film's format"),
  }),
  who: "student",
  visibility: "private",
  complete: { film: completeFilm, developer: completeDeveloper, dilution: completeDilution },
  handle({ rolls, date, format, ...wanted }, context) {
    const picked = pickSheet(sheetsOf(context), wanted);
    if (!picked.ok) {
      const { code, text } = picked.fault;
      throw new UserError(code, text, [], { instead: insteadOf(picked.fault) });
    }
    const sheet = picked.value;
    const dayMs = readDayOption(context, date);
    if (dayMs !== undefined && dayMs + 2 * NOON_MS <= context.now)
      throw new UserError("ERR_DAY_GONE", words.dayGone());
    const atMs = dayMs === undefined ? context.now : Math.max(context.now, dayMs + NOON_MS);
    const { stores, class: found } = context;
    const day: ClassDay = {
      rolls,
      format,
      isTabular: sheet.tabularGrain,
      developer: sheet.developer,
      dilution: sheet.dilution,
      minConcentrateMl: sheet.minConcentrateMl,
      kinds: kindsKept(found.habits),
      tankMl: Math.max(TANK_ML, ...stores.tanks.list(found.id).map(({ volumeMl }) => volumeMl)),
      candidates: candidatesFor(stores, found.id, null, atMs),
      shelf: stores.shelf.list(found.id),
      usual: usualOf(context),
    };
    return words.classReply(day, planClass(day), sheet.film, atMs);
  },
});

/** The newest batch of each kind says what the class uses. */
function usualOf({ stores, class: { id } }: Context): ClassDay["usual"] {
  const usual: Record<string, { product: string; dilution: ClassDay["dilution"] }> = {};
  for (const { kind, product, dilution } of stores.batches.list(id)) usual[kind] ??= { product, dilution };
  return usual;
}
