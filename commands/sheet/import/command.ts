import { z } from "zod";
import { type Context, defineCommand, picks, UserError } from "../../define.ts";
import { textIn, wholeIn } from "../../speech/shaped.ts";
import { makeDilution, pointSchema, sheetSchema, type Sheet } from "../../../store/shapes/sheet.ts";
import { whoMay } from "../../who.ts";
import { LONGEST_FILE, readFile } from "../file.ts";
import { matchSheets } from "../find.ts";
import { mergeSheets } from "../merge.ts";
import {
  completeDeveloper,
  completeDilution,
  completeFilm,
  developerOption,
  filmOption,
  sheetDilutionOption,
  sheetsOf,
} from "../options.ts";
import { saveSheet } from "../save.ts";
import { takeBack } from "../take-back.ts";
import * as words from "./reply.ts";

export const sheetImport = defineCommand({
  name: "sheet import",
  summary: "Read times out of a pasted table or a file: all of it, or nothing",
  options: () => ({
    file: z
      .string()
      .min(1)
      .max(LONGEST_FILE)
      .meta(picks("file"))
      .describe("A table pasted out of a data sheet, or a file's text, as /sheet export writes it"),
    film: filmOption.optional().describe("Which film, where the table doesn't say it"),
    developer: developerOption.optional().describe("Which developer, where the table doesn't say it"),
    dilution: sheetDilutionOption.optional().describe("Which dilution, where the table doesn't say it: 1+9"),
    speed: wholeIn(sheetSchema.shape.boxSpeed).optional().describe("The film's own speed, if it is new"),
    source: textIn(pointSchema.shape.source).optional().describe("Where the times come from"),
    replace: z
      .enum(["yes", "no"])
      .default("no")
      .describe("Times of the file take the place of other ones for the same film and bath"),
  }),
  first: ["film", "developer", "dilution", "speed"],
  who: whoMay("sheet import"),
  visibility: "private",
  rest: "file",
  complete: { film: completeFilm, developer: completeDeveloper, dilution: completeDilution },
  handle({ file, film, developer, dilution, speed, source, replace }, context) {
    const { stores, class: school, person, now } = context;
    const known = sheetsOf(context);
    const cells = {
      ...(film === undefined ? {} : { film }),
      ...(developer === undefined ? {} : { developer }),
      ...(dilution === undefined ? {} : { dilution: makeDilution(dilution) }),
      ...(speed === undefined ? {} : { film_speed: String(speed) }),
      source: source ?? `entered by ${person.name}`.slice(0, 200),
    };
    const read = readFile(file, { cells, known });
    if (!read.ok) throw new UserError("ERR_FILE", words.importFaults(read.fault), [], { option: "file" });
    const merged = mergeSheets(known, read.value.sheets);
    if (merged.faults.length > 0)
      throw new UserError("ERR_SHEET_FAULTS", words.mergeFaults(merged.faults), [], { option: "file" });
    if (merged.replaced.length + merged.restated.length > 0 && replace === "no")
      throw new UserError("ERR_TWO_TIMES", words.wouldReplace(merged), [], { option: "replace" });
    if (merged.changes.length === 0) return words.imported(merged);
    const { number } = stores.atomically(() => {
      for (const sheet of merged.sheets) saveSheet(context, sheet);
      return stores.imports.add(school.id, merged.changes, person.id, now);
    });
    return words.imported(merged, number, read.value.aside);
  },
});

export const sheetUndo = defineCommand({
  name: "sheet undo",
  summary: "Take a whole import back: all it changed that nobody has changed since",
  options: () => ({
    import: z.coerce
      .number()
      .int()
      .min(1)
      .max(1_000_000)
      .optional()
      .describe("Which import; the newest if left out"),
  }),
  who: whoMay("sheet undo"),
  visibility: "private",
  handle({ import: number }, context) {
    const { stores, class: school, now } = context;
    const found =
      number === undefined ? stores.imports.newest(school.id) : stores.imports.find(school.id, number);
    if (!found) throw new UserError("ERR_NO_IMPORT", words.noImport(number));
    if (found.takenBackAt !== null) return words.wasTakenBack(found.number);
    const each = stores.atomically(() => {
      stores.imports.markTakenBack(found.id, now);
      return found.changes.map((change) => {
        const undone = takeBack(change, matchSheets(sheetsOf(context), change.after)[0]);
        if (undone.hindrance === null) keep(context, change.after, undone.sheet);
        return { name: change.after, undone };
      });
    });
    return words.takenBack(found.number, each);
  },
});

/** `sheet` null: the one of these names goes. */
function keep(context: Context, { film, developer, dilution }: Sheet, sheet: Sheet | null): void {
  if (sheet) return saveSheet(context, sheet);
  const { sheets } = context.stores;
  const stored = sheets
    .list(context.class.id)
    .find((each) => matchSheets([each.sheet], { film, developer, dilution }).length > 0);
  if (stored) sheets.remove(context.class.id, stored.id);
}
