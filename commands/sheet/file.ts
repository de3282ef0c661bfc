import { fail, type Result } from "../result.ts";
import { readCsv } from "./csv.ts";
import type { FileFault } from "./file-faults.ts";
import { readJson } from "./json.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";

/** Longer than a class's sheets ever get. */
export const LONGEST_FILE = 500_000;

/** Sheets from a file's text, CSV or JSON as it begins; all or nothing, with every fault. */
export function readSheets(text: string): Result<Sheet[], FileFault[]> {
  if (text.length > LONGEST_FILE) return fail([{ code: "ERR_TOO_LONG", line: 1 }]);
  return /^[\s\ufeff]*[{[]/.test(text) ? readJson(text.replace(/^\ufeff/, "")) : readCsv(text);
}
