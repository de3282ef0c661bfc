import { inEach } from "../speech/language.ts";
import type { EditFault } from "./edit.ts";
import { saySheetFault } from "./file-words.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/* Why a row can't be added to a sheet. */

const words = inEach({ en, de });

export function editFault(fault: EditFault): string {
  if (fault.code === "ERR_NO_SPEED") return words().noSpeed;
  if (fault.code === "ERR_SHEET_FULL") return words().full;
  return words().nothingChanged(fault.faults.map(saySheetFault).join("\n"));
}
