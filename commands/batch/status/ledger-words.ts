import { inEach } from "../../speech/language.ts";
import { nameWords, somebody } from "../../speech/name-words.ts";
import { formatMl, formatNumber, formatSeconds, instant, makeNumber, plain } from "../../speech/wording.ts";
import { formatRolls } from "../batch-words.ts";
import { isForPaper, type BatchKind } from "../../../store/shapes/batch.ts";
import type { LedgerLine } from "../../../store/shapes/ledger.ts";
import { de } from "./ledger.de.ts";
import { en } from "./ledger.en.ts";

const words = inEach({ en, de });

const said = (note: string): string => (note === "" ? "" : `: ${plain(note)}`);
const join = (parts: readonly string[]): string => parts.filter(Boolean).join(", ");
const signed = (value: number, size: string): string =>
  value === 0 ? "" : `${value > 0 ? "+" : "-"}${size}`;

/** One line of a ledger in words, without its number and date. `positionOf`: a line's number by its id. */
export function lineWords(line: LedgerLine, kind: BatchKind, positionOf: (id: number) => number): string {
  const { body } = line;
  const { clears, to, ...say } = words();
  const by = nameWords(line.personName);
  const cleared = (seconds: number | null): string =>
    seconds === null ? "" : clears(formatSeconds(seconds));
  switch (body.kind) {
    case "mixed":
      return say.mixed(join([formatMl(body.volumeMl), cleared(body.clearingSeconds)]), by);
    case "used": {
      const rolls = formatRolls(body.areaSqIn, kind);
      const what = [
        body.isTabular ? (isForPaper(kind) ? say.fibre : say.tabular)(rolls) : rolls,
        body.ml > 0 ? formatMl(body.ml) : "",
        body.place ? say.asBath(body.place) : "",
        body.carry ? say.carried(formatMl(body.carry.inMl), formatMl(body.carry.outMl)) : "",
      ];
      const run = body.runNumber === null ? null : makeNumber("run", body.runNumber);
      return say.used(join(what), run, by, body.allowedBy === null ? null : positionOf(body.allowedBy));
    }
    case "tested": {
      const readings = [
        cleared(body.clearingSeconds),
        body.phTenths === null ? "" : `pH ${formatNumber(body.phTenths / 10)}`,
        body.silverMgPerLitre === null ? "" : say.silver(formatNumber(body.silverMgPerLitre / 1000)),
        plain(body.note),
      ];
      return say.tested(join(readings), by);
    }
    case "topped": {
      const out = body.removedMl > 0 ? say.out(formatMl(body.removedMl), to[body.to ?? "silver"]) : "";
      const added = formatMl(body.addedMl);
      return (body.isReplenisher ? say.replenished : say.topped)(added, out, said(body.note), by);
    }
    case "discarded":
      return say.discarded(body.isAll, formatMl(body.ml), to[body.to], said(body.note), by);
    case "corrected": {
      const what = [
        body.reverses === null ? "" : say.countsNoMore(positionOf(body.reverses)),
        signed(body.ml, formatMl(Math.abs(body.ml))),
        signed(body.areaSqIn, formatRolls(Math.abs(body.areaSqIn), kind)),
      ];
      return say.corrected(join(what), said(body.reason), by);
    }
    case "allowed":
      return say.allowed(
        line.aboutName === null ? somebody() : nameWords(line.aboutName),
        said(body.reason),
        by,
      );
  }
}

/** `14. 31 May, used: 1 roll (R7, Mina)`; a line taken back is struck through. */
export function numberedLine(line: LedgerLine, kind: BatchKind, lines: readonly LedgerLine[]): string {
  const positionOf = (id: number): number => lines.findIndex((each) => each.id === id) + 1;
  const text = `${instant(line.atMs, "date")}, ${lineWords(line, kind, positionOf)}`;
  const isTakenBack = lines.some(({ body }) => body.kind === "corrected" && body.reverses === line.id);
  return `${positionOf(line.id)}. ${isTakenBack ? `~~${text}~~` : text}`;
}
