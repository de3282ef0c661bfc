import { findNodeAtLocation, type Node, type ParseError, parseTree, printParseErrorCode } from "jsonc-parser";
import { z } from "zod";
import { type Sheet, sheetSchema, simplifyParts } from "../../store/shapes/sheet.ts";
import { inEach } from "../speech/language.ts";
import { fail, ok, type Result } from "../result.ts";
import { formatNumber } from "../speech/wording.ts";
import { sortPoints } from "./edit.ts";
import { checkFile, type FileFault, type Placed } from "./file-faults.ts";
import { de } from "./words/json.de.ts";
import { en } from "./words/json.en.ts";

/*
 * Sheets as JSON, our own format: { "format": "sinkside sheets", "version": 1, "sheets": [ … ] }, each sheet as the
 * program holds it: tenths of a degree Celsius, seconds, ml.
 */

const words = inEach({ en, de });

const FORMAT = "sinkside sheets";
const fileSchema = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(1),
  sheets: z
    .array(
      sheetSchema.strict().refine(({ film, developer }) => film.trim() !== "" && developer.trim() !== "", {
        error: () => words().notBlank,
      }),
    )
    .min(1)
    .max(1000),
});

export function writeJson(sheets: readonly Sheet[]): string {
  return `${JSON.stringify({ format: FORMAT, version: 1, sheets }, null, 2)}\n`;
}

/** All sheets of the file, or every fault of it. */
export function readJson(text: string): Result<Sheet[], FileFault[]> {
  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  const lineAt = (offset: number): number => text.slice(0, offset).split("\n").length;
  if (errors.length > 0 || !tree)
    return fail(
      errors.map(({ error, offset }) => ({
        code: "ERR_JSON",
        line: lineAt(offset),
        what: words().parseFault(printParseErrorCode(error)),
      })),
    );
  const value: unknown = JSON.parse(text);
  if (!isOurs(value)) return fail([{ code: "ERR_NOT_OUR_FORMAT", line: 1 }]);
  const read = fileSchema.safeParse(value);
  const lineOf = (path: readonly PropertyKey[]): number => lineAt(nodeAt(tree, path).offset);
  if (!read.success)
    return fail(
      read.error.issues.map((issue) => ({
        code: "ERR_VALUE",
        line: lineOf(issue.path),
        path: issue.path.map(String).join("."),
        what: sayIssue(issue),
      })),
    );
  const placed = read.data.sheets.map((sheet, at): Placed => ({
    sheet: tidySheet(sheet),
    line: lineOf(["sheets", at]),
    pointLines: tidySheet(sheet).points.map((point) =>
      lineOf(["sheets", at, "points", sheet.points.indexOf(point)]),
    ),
  }));
  const faults = checkFile(placed);
  return faults.length > 0
    ? fail(faults.sort((a, b) => a.line - b.line))
    : ok(placed.map(({ sheet }) => sheet));
}

function isOurs(value: unknown): boolean {
  return typeof value === "object" && value !== null && "format" in value && value.format === FORMAT;
}

function sayIssue(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case "too_small":
      return words().atLeast(formatNumber(Number(issue.minimum)));
    case "too_big":
      return words().atMost(formatNumber(Number(issue.maximum)));
    case "invalid_type":
      return issue.expected === "int" ? words().wholeNumber : words().ofKind(issue.expected);
    case "unrecognized_keys":
      return words().without(issue.keys);
    case "invalid_value":
      return words().oneOf(issue.values.map(String));
    case "custom":
      return issue.message;
    default:
      return words().other(issue.message);
  }
}

/** The node of a path, or of as much of it as there is. */
function nodeAt(tree: Node, path: readonly PropertyKey[]): Node {
  const segments = path.map((each) => (typeof each === "number" ? each : String(each)));
  for (let length = segments.length; length > 0; length -= 1) {
    const node = findNodeAtLocation(tree, segments.slice(0, length));
    if (node) return node;
  }
  return tree;
}

/** A tank that never rests has no bursts; names are single-spaced, parts the smallest there are. */
function tidySheet(sheet: Sheet): Sheet {
  const { agitation } = sheet;
  return {
    ...sheet,
    film: sheet.film.replace(/\s+/g, " ").trim(),
    developer: sheet.developer.replace(/\s+/g, " ").trim(),
    dilution: simplifyParts(sheet.dilution),
    points: sortPoints(sheet.points),
    agitation:
      agitation.manner === "continuous"
        ? { initialSeconds: 0, burstSeconds: 0, cycleSeconds: 0, manner: "continuous", taps: 0 }
        : agitation,
  };
}
