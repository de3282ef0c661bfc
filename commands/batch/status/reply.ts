import type { Action, FieldValue, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatMl, formatNumber, formatSeconds, instant } from "../../speech/wording.ts";
import {
  clearingWords,
  formatRolls,
  labelOf,
  leftWords,
  nameOf,
  standingWord,
  stateLine,
  wornWords,
} from "../batch-words.ts";
import { isFixer, isForPaper, type Batch } from "../../../store/shapes/batch.ts";
import { fieldsOf } from "../fields.ts";
import type { Forecast, UseRate } from "../forecast.ts";
import type { LedgerLine } from "../../../store/shapes/ledger.ts";
import { numberedLine } from "./ledger-words.ts";
import { sourceWords } from "../source-words.ts";
import type { BatchState } from "../state.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface Shown {
  readonly batch: Batch;
  readonly state: BatchState;
  readonly forecast: Forecast;
}

export function allReply(shown: readonly Shown[], now: number): Reply {
  if (shown.length === 0) return { text: words().noneYet, fields: { batches: [] } };
  const worn = shown.filter(({ state }) => state.standing !== "ready");
  const head =
    worn.length === 0
      ? words().allFit(shown.length)
      : words().someWorn(worn.map(({ batch }) => labelOf(batch)).join(", "), shown.length - worn.length);
  const lines = shown.map(
    ({ batch, state, forecast }) => `- ${stateLine(batch, state)}${endWords(forecast, now)}`,
  );
  return {
    text: [head, ...lines].join("\n"),
    fields: {
      batches: shown.map(({ batch, state, forecast }) => ({ ...fieldsOf(batch, state), ...forecast })),
    },
    actions: shown.slice(0, 5).map(({ batch }) => see(batch)),
  };
}

const see = (batch: Batch): Action => ({
  label: labelOf(batch),
  line: makeLine("batch status", { batch: labelOf(batch) }),
});

function endWords({ endsAtMs, ends }: Forecast, now: number): string {
  if (endsAtMs === null || endsAtMs <= now) return "";
  const { usedUpBy, keepsUntil } = words();
  return (ends === "used-up" ? usedUpBy : keepsUntil)(instant(endsAtMs, "date"));
}

export function oneReply({ batch, state, forecast }: Shown, pace: UseRate | null): Reply {
  const head =
    state.standing === "ready"
      ? words().one(leftWords(batch, state), nameOf(batch), batch.kind)
      : words().oneWorn(labelOf(batch), standingWord(state.standing), nameOf(batch), wornWords(batch, state));
  const lines = [
    head,
    words().inBottle(
      formatMl(Math.max(0, state.volumeMl)),
      formatRolls(state.usedSqIn, batch.kind),
      instant(batch.mixedAtMs, "date"),
    ),
    thinnedWords(state),
    state.replenishMl ? words().wantsReplenisher(formatMl(state.replenishMl)) : "",
    testWords(batch, state),
    state.standing === "ready" ? forecastWords(batch, state, forecast, pace) : "",
    words().limits(sourceWords(batch.source)),
  ];
  return {
    text: lines.filter(Boolean).join("\n"),
    fields: {
      ...fieldsOf(batch, state),
      ...forecast,
      rollsPerWeek: pace && Math.round(pace.rollsPerWeek * 10) / 10,
    },
    actions: [{ label: words().itsLedger, line: makeLine("batch ledger", { batch: labelOf(batch) }) }],
  };
}

/** What film carried in and out, where the class has it reckoned. */
function thinnedWords(state: BatchState): string {
  const { carriedInMl, carriedOutMl } = state;
  if (carriedInMl + carriedOutMl === 0) return "";
  return words().carried(formatMl(carriedInMl), formatMl(carriedOutMl), Math.round(state.strength * 100));
}

function testWords(batch: Batch, state: BatchState): string {
  if (!isFixer(batch.kind)) return "";
  const clears = clearingWords(state);
  if (clears === "" && batch.kind !== "fixer") return "";
  if (clears === "") return words().neverTested;
  const { testedAtMs, testedSeconds } = state;
  return words().tested(
    clears,
    testedAtMs === null
      ? null
      : { date: instant(testedAtMs, "date"), seconds: formatSeconds(testedSeconds ?? 0) },
  );
}

function forecastWords({ kind }: Batch, state: BatchState, forecast: Forecast, pace: UseRate | null): string {
  const { keeps: sayKeeps, tooEarly, usedUp, between, keepsAndUsedUp } = words();
  const keeps =
    state.expiresAtMs === null ? null : sayKeeps(instant(state.expiresAtMs, "date"), state.isPartFull);
  if (pace === null || state.leftRolls === null || forecast.usedUpAtMs === null)
    return keeps === null ? "" : tooEarly(keeps);
  const range =
    forecast.earliestMs === null || forecast.latestMs === null
      ? ""
      : between(instant(forecast.earliestMs, "date"), instant(forecast.latestMs, "date"));
  const used = `${usedUp(formatNumber(pace.rollsPerWeek, 1), isForPaper(kind), pace.weeks, instant(forecast.usedUpAtMs, "date"))}${range}`;
  return forecast.ends === "used-up" || keeps === null ? `${used}.` : keepsAndUsedUp(keeps, used);
}

/** What a line leaves out, its data leave out too. */
function bodyFields(body: LedgerLine["body"]): { readonly [key: string]: FieldValue } {
  const { carry = null, ...rest } = body.kind === "used" ? body : { ...body, carry: undefined };
  const given = Object.entries(rest).filter((entry): entry is [string, string | number | boolean | null] => {
    return entry[1] !== undefined;
  });
  return { ...Object.fromEntries(given), ...(carry === null ? {} : { carry: { ...carry } }) };
}

export function ledgerReply(
  batch: Batch,
  state: BatchState,
  lines: readonly LedgerLine[],
  page: number,
  pageSize: number,
): Reply {
  const shown = lines.slice((page - 1) * pageSize, page * pageSize);
  const pages = Math.max(1, Math.ceil(lines.length / pageSize));
  const turn = (to: number, label: string): Action[] =>
    to < 1 || to > pages
      ? []
      : [{ label, line: makeLine("batch ledger", { batch: labelOf(batch), page: to }) }];
  return {
    text: [
      `**${stateLine(batch, state)}**`,
      ...shown.map((line) => numberedLine(line, batch.kind, lines)),
      pages > 1 ? words().page(page, pages) : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: {
      ...fieldsOf(batch, state),
      lines: shown.map(({ id: _id, batchId: _batch, body, ...line }) => ({
        line: lines.findIndex(({ id }) => id === _id) + 1,
        atMs: line.atMs,
        person: line.personName,
        ...bodyFields(body),
      })),
    },
    actions: [...turn(page - 1, words().earlier), ...turn(page + 1, words().later)],
  };
}
