import { formatMl, formatSeconds, instant, makeNumber, plain } from "../wording.ts";
import { formatRolls } from "./area.ts";
import type { Destination, Line } from "./ledger.ts";

const TO = {
  silver: "to the silver collection",
  drain: "to the drain",
  supplier: "to the supplier",
} as const satisfies Record<Destination, string>;

const said = (note: string): string => (note === "" ? "" : `: ${plain(note)}`);

/** One line of a ledger in words, without its number and date. `positionOf`: a line's number by its id. */
export function lineWords(line: Line, positionOf: (id: number) => number): string {
  const { body } = line;
  const by = plain(line.personName);
  switch (body.kind) {
    case "mixed": {
      const clears =
        body.clearingSeconds === null ? "" : `, clears in ${formatSeconds(body.clearingSeconds)}`;
      return `mixed ${formatMl(body.volumeMl)}${clears} (${by})`;
    }
    case "used": {
      const what = [
        formatRolls(body.areaSqIn) + (body.isTabular ? " of tabular-grain film" : ""),
        body.ml > 0 ? formatMl(body.ml) : "",
      ].filter(Boolean);
      const run = body.runNumber === null ? "" : `${makeNumber("run", body.runNumber)}, `;
      const leave =
        body.allowedBy === null ? "" : `, worn out, allowed by line ${positionOf(body.allowedBy)}`;
      return `used: ${what.join(", ")} (${run}${by}${leave})`;
    }
    case "tested": {
      const readings = [
        body.clearingSeconds === null ? "" : `clears in ${formatSeconds(body.clearingSeconds)}`,
        body.phTenths === null ? "" : `pH ${body.phTenths / 10}`,
        body.silverMgPerLitre === null ? "" : `silver ${body.silverMgPerLitre / 1000} g/l`,
      ].filter(Boolean);
      return `tested: ${[...readings, plain(body.note)].filter(Boolean).join(", ")} (${by})`;
    }
    case "topped": {
      const out = body.removedMl > 0 ? `, ${formatMl(body.removedMl)} out ${TO[body.to ?? "silver"]}` : "";
      return `topped up: ${formatMl(body.addedMl)} in${out}${said(body.note)} (${by})`;
    }
    case "discarded":
      return `${body.isAll ? "thrown away" : "partly thrown away"}: ${formatMl(body.ml)} ${TO[body.to]}${said(body.note)} (${by})`;
    case "corrected": {
      const what = [
        body.reverses === null ? "" : `line ${positionOf(body.reverses)} counts no more`,
        body.ml === 0 ? "" : `${body.ml > 0 ? "+" : "-"}${formatMl(Math.abs(body.ml))}`,
        body.areaSqIn === 0 ? "" : `${body.areaSqIn > 0 ? "+" : "-"}${formatRolls(Math.abs(body.areaSqIn))}`,
      ].filter(Boolean);
      return `corrected: ${what.join(", ")}${said(body.reason)} (${by})`;
    }
    case "allowed":
      return `allowed worn out for one tank of ${plain(line.aboutName ?? "somebody")}${said(body.reason)} (${by})`;
  }
}

/** `14. 31 May, used: 1 roll (R7, Mina)`; a line taken back is struck through. */
export function numberedLine(line: Line, lines: readonly Line[]): string {
  const positionOf = (id: number): number => lines.findIndex((each) => each.id === id) + 1;
  const words = `${instant(line.atMs, "date")}, ${lineWords(line, positionOf)}`;
  const isTakenBack = lines.some(({ body }) => body.kind === "corrected" && body.reverses === line.id);
  return `${positionOf(line.id)}. ${isTakenBack ? `~~${words}~~` : words}`;
}
