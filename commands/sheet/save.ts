import type { Context } from "../define.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import { matchSheets } from "./find.ts";
import { sheetsOf } from "./options.ts";

/** A sheet keeps the spelling it was first given, so that one film in two spellings is one sheet. */
export function saveSheet(context: Context, sheet: Sheet): void {
  const known = matchSheets(sheetsOf(context), sheet)[0];
  const named = known ? { ...sheet, film: known.film, developer: known.developer } : sheet;
  context.stores.sheets.save(context.class.id, named, context.person.id, context.now);
}
