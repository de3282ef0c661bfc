import type { Action, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, formatMl, formatSeconds, instant, plain } from "../wording.ts";
import { formatRolls } from "./area.ts";
import type { Batch } from "./batch.ts";
import {
  clearingWords,
  KIND_WORDS,
  labelOf,
  leftWords,
  nameOf,
  STANDING_WORDS,
  stateLine,
  wornWords,
} from "./batch-words.ts";
import { fieldsOf } from "./fields.ts";
import type { Forecast, Pace } from "./forecast.ts";
import type { Line } from "./ledger.ts";
import { numberedLine } from "./ledger-words.ts";
import type { BatchState } from "./state.ts";

export interface Shown {
  readonly batch: Batch;
  readonly state: BatchState;
  readonly forecast: Forecast;
}

const NONE_YET =
  "No bottle is noted yet. When an aide or the teacher has mixed one: `/batch mix kind:fixer product:… dilution:1+4 volume:2 l`.";

export function allReply(shown: readonly Shown[], now: number): Reply {
  if (shown.length === 0) return { text: NONE_YET, fields: { batches: [] } };
  const worn = shown.filter(({ state }) => state.standing !== "ready");
  const head =
    worn.length === 0
      ? `**${countOf(shown.length, "bottle")}**, all fit for use.`
      : `**Don't use ${worn.map(({ batch }) => labelOf(batch)).join(", ")}.** ${countOf(shown.length - worn.length, "bottle")} fit for use.`;
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
  return ends === "used-up"
    ? `; at this pace used up by ${instant(endsAtMs, "date")}`
    : `; keeps until ${instant(endsAtMs, "date")}`;
}

export function oneReply({ batch, state, forecast }: Shown, pace: Pace | null): Reply {
  const head =
    state.standing === "ready"
      ? `**${leftWords(batch, state)}** in ${nameOf(batch)} (${KIND_WORDS[batch.kind]}).`
      : `**${labelOf(batch)} is ${STANDING_WORDS[state.standing]}: don't use it.** ${nameOf(batch)}: ${wornWords(state)}.`;
  const lines = [
    head,
    `${formatMl(Math.max(0, state.volumeMl))} in the bottle; ${formatRolls(state.usedSqIn)} through it since it was mixed, ${instant(batch.mixedAtMs, "date")}.`,
    testWords(batch, state),
    state.standing === "ready" ? forecastWords(state, forecast, pace) : "",
    `_Limits: ${plain(batch.source)}._`,
  ];
  return {
    text: lines.filter(Boolean).join("\n"),
    fields: {
      ...fieldsOf(batch, state),
      ...forecast,
      rollsPerWeek: pace && Math.round(pace.rollsPerWeek * 10) / 10,
    },
    actions: [{ label: "Its ledger", line: makeLine("batch ledger", { batch: labelOf(batch) }) }],
  };
}

function testWords(batch: Batch, state: BatchState): string {
  if (batch.kind !== "fixer") return "";
  const clears = clearingWords(state);
  if (clears === "") return "Its clearing time was never tested: the class's least fixing time stands alone.";
  const tested =
    state.testedAtMs === null
      ? ""
      : `, last tested ${instant(state.testedAtMs, "date")} at ${formatSeconds(state.testedSeconds ?? 0)}`;
  return `It ${clears}${tested}.`;
}

function forecastWords(state: BatchState, forecast: Forecast, pace: Pace | null): string {
  const keeps = state.expiresAtMs === null ? "" : `It keeps until ${instant(state.expiresAtMs, "date")}`;
  const part = state.isPartFull && keeps ? ", as a part-full bottle" : "";
  if (pace === null || state.leftRolls === null || forecast.usedUpAtMs === null)
    return keeps ? `${keeps}${part}. How long it lasts shows after two weeks of use.` : "";
  const range =
    forecast.earliestMs === null || forecast.latestMs === null
      ? ""
      : `, between ${instant(forecast.earliestMs, "date")} and ${instant(forecast.latestMs, "date")} eight times in ten`;
  const used = `At this class's pace (${pace.rollsPerWeek.toFixed(1)} rolls a week, from ${pace.weeks} weeks) it is used up by ${instant(forecast.usedUpAtMs, "date")}${range}`;
  return forecast.ends === "used-up" || keeps === ""
    ? `${used}.`
    : `${keeps}${part}; ${used.charAt(0).toLowerCase()}${used.slice(1)}.`;
}

export function ledgerReply(
  batch: Batch,
  state: BatchState,
  lines: readonly Line[],
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
      ...shown.map((line) => numberedLine(line, lines)),
      pages > 1 ? `Page ${page} of ${pages}.` : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: {
      ...fieldsOf(batch, state),
      lines: shown.map(({ id: _id, batchId: _batch, body, ...line }) => ({
        line: lines.findIndex(({ id }) => id === _id) + 1,
        atMs: line.atMs,
        person: line.personName,
        ...body,
      })),
    },
    actions: [...turn(page - 1, "Earlier"), ...turn(page + 1, "Later")],
  };
}
