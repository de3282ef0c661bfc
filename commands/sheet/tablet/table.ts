import papa from "papaparse";

/*
 * Readings as a densitometer or a spreadsheet saves them: a row for each developing time, or a column for each, with its time
 * at the head. What comes out is the text of readings.ts.
 */

export const LONGEST_TABLE = 20_000;

const TIME = /^(\d{1,3}:\d\d|\d{1,4} ?(?:s|min))$/i;

/** Lines as they are typed; a file that is no table is taken as typed already. */
export function readingsOf(file: string): string {
  const { data } = papa.parse<string[]>(file.replace(/^\ufeff/, "").trim(), {
    delimitersToGuess: ["\t", ";", "|", ","],
    skipEmptyLines: true,
  });
  const rows = data.map((row) => row.map((cell) => cell.trim()));
  const [head = []] = rows;
  const isTable = rows.every((row) => row.length > 1);
  if (!isTable) return file;
  const columns = head.flatMap((cell, at) => (TIME.test(cell) ? [at] : []));
  const isByColumn = columns.length > 0 && rows.slice(1).every(([first = ""]) => !TIME.test(first));
  const strips = isByColumn
    ? columns.map((at) => rows.map((row) => row[at] ?? ""))
    : rows.filter(([first = ""]) => TIME.test(first));
  return strips.map((cells) => cells.filter((cell) => cell !== "").join(" ")).join("\n");
}
