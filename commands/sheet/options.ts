import { z } from "zod";
import type { Completer, Context } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { textIn } from "../speech/shaped.ts";
import { dilutionOption } from "../speech/quantity.ts";
import { makeDilution, sheetSchema, type Sheet } from "../../store/shapes/sheet.ts";
import { matchSheets, offerNames } from "./find.ts";
import { parseReuse } from "./reuse-text.ts";
import { de } from "./words/options.de.ts";
import { en } from "./words/options.en.ts";

/* Options that name a sheet, shared by /sheet and /plan. */

const words = inEach({ en, de });

export const filmOption = textIn(sheetSchema.shape.film);
export const developerOption = textIn(sheetSchema.shape.developer);
export const sheetDilutionOption = dilutionOption;

/** A maker's rule for reuse, written like 1/10%/10. */
export const reuseOption = z.string().transform((text, context) => {
  const reuse = parseReuse(text.slice(0, 40));
  if (reuse) return reuse;
  context.addIssue({
    code: "custom",
    message: words().reuse,
  });
  return z.NEVER;
});

export function sheetsOf(context: Context): Sheet[] {
  return context.stores.sheets.list(context.class.id).map(({ sheet }) => sheet);
}

const offer = (names: readonly string[]): { label: string; value: string }[] =>
  names.map((name) => ({ label: name, value: name }));

export const completeFilm: Completer = (typed, context, { developer }) =>
  offer(
    offerNames(
      typed,
      matchSheets(sheetsOf(context), { developer: developer || undefined }).map(({ film }) => film),
    ),
  );

export const completeDeveloper: Completer = (typed, context, { film }) =>
  offer(
    offerNames(
      typed,
      matchSheets(sheetsOf(context), { film: film || undefined }).map((sheet) => sheet.developer),
    ),
  );

export const completeDilution: Completer = (typed, context, { film, developer }) =>
  offer(
    offerNames(
      typed,
      matchSheets(sheetsOf(context), { film: film || undefined, developer: developer || undefined }).map(
        ({ dilution }) => makeDilution(dilution),
      ),
    ),
  );
