import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { formatNumbers } from "../../tank/numbers.ts";
import { instant, joinAnd, plain, saySeconds } from "../../speech/wording.ts";
import type { InLine } from "../../tray/queue.ts";
import type { Bound } from "./order.ts";
import type { Places } from "./fit.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface FitLine {
  readonly label: string;
  /** null: under way already. */
  readonly pourInAtMs: number | null;
  /** null: no bell, or this load can't be in time. */
  readonly latestAtMs: number | null;
  readonly hungAtMs: number;
  readonly dryAtMs: number;
  readonly isInTime: boolean;
}

export interface FitAnswer {
  readonly bellAtMs: number | null;
  /** What the order aims at: everything done by the bell, or every film hung up by then. */
  readonly goal: "done" | "hung";
  /** In the order of pour-in. */
  readonly lines: readonly FitLine[];
  readonly doneByBell: number;
  readonly hungByBell: number;
  readonly bound: Bound | undefined;
  readonly places: Places;
}

/** A line of trays, with whoever is at it. */
export interface TraysNow {
  readonly line: number;
  /** `Mina (R5)`. */
  readonly inTrays: readonly string[];
  /** In order; of each when there is room, null: never. */
  readonly waiting: readonly (Pick<InLine, "fromMs" | "isAfterBell"> & { readonly label: string })[];
}

/** A tank for which somebody waits. */
export interface WaitsNow {
  readonly tank: number;
  /** `Mina (R5)`. */
  readonly holder: string;
  /** As an instant that is marked; null, like its ms: not known yet. */
  readonly until: string | null;
  readonly freeAtMs: number | null;
  /** In order. */
  readonly waiting: readonly string[];
}

export function fitReply(
  answer: FitAnswer,
  waits: readonly WaitsNow[],
  trays: readonly TraysNow[],
  nowMs: number,
): Reply {
  const { lines } = answer;
  const late = lines.filter(({ isInTime }) => !isInTime);
  const waiting = late.filter(({ pourInAtMs }) => pourInAtMs !== null).map(({ label }) => plain(label));
  const begun = late.filter(({ pourInAtMs }) => pourInAtMs === null).map(({ label }) => plain(label));
  return {
    text: [
      headOf(answer),
      bottleneckOf(answer),
      waiting.length > 0 ? words().mustWait(waiting) : "",
      begun.length > 0 ? words().begunLate(begun) : "",
      ...groupsOf(lines.filter(({ isInTime, pourInAtMs }) => isInTime || pourInAtMs === null)).map(
        (group, at) => `${at + 1}. ${lineOf(group, answer)}`,
      ),
      ...waits.map(({ tank, holder, until, waiting: those }) =>
        words().waitsForTank(tank, plain(holder), until, those.map(plain)),
      ),
      ...trays.map((each) => sayTrays(each, nowMs)),
    ]
      .filter(Boolean)
      .join("\n"),
    fields: {
      trays: traysAsData(trays),
      bellAtMs: answer.bellAtMs,
      goal: answer.goal,
      tanks: lines.length,
      doneByBell: answer.doneByBell,
      hungByBell: answer.hungByBell,
      bottleneck: answer.bound?.stage ?? null,
      loads: lines.map((line) => ({ ...line, label: labelAsData(line.label) })),
      waits: waits.map(({ tank, holder, freeAtMs, waiting: those }) => ({
        tank,
        holder,
        freeAtMs,
        waiting: [...those],
      })),
    },
  };
}

/** Where nobody has a film: the trays alone. */
export const traysReply = (trays: readonly TraysNow[], bellAtMs: number | null, nowMs: number): Reply => ({
  text: trays.map((each) => sayTrays(each, nowMs)).join("\n"),
  fields: { bellAtMs, tanks: 0, loads: [], trays: traysAsData(trays) },
});

const traysAsData = (trays: readonly TraysNow[]) =>
  trays.map(({ line, inTrays, waiting }) => ({
    line,
    inTrays: [...inTrays],
    waiting: waiting.map(({ label, fromMs, isAfterBell }) => ({ label, fromMs, isAfterBell })),
  }));

function sayTrays({ line, inTrays, waiting }: TraysNow, nowMs: number): string {
  const order = waiting.map(({ label, fromMs, isAfterBell }, at) => {
    const { now, at: atTime, never } = words().trays.when;
    const when = fromMs === null ? never : fromMs <= nowMs ? now : atTime(instant(fromMs, "time"));
    return `${at + 1}. ${words().trays.waits(plain(label), when, isAfterBell)}`;
  });
  return [words().trays.head(line, inTrays.map(plain)), ...order].join("\n");
}

function headOf({ bellAtMs, lines, goal, doneByBell, hungByBell }: FitAnswer): string {
  const count = lines.length;
  if (bellAtMs === null) {
    const last = Math.max(...lines.map(({ dryAtMs }) => dryAtMs));
    return words().noBell(count, instant(last, "time"));
  }
  const bell = instant(bellAtMs, "time");
  if (goal === "done") return words().allDone(count, bell);
  if (hungByBell === count) return words().allHung(count, bell, doneByBell);
  return words().someHung(hungByBell, count, bell, doneByBell);
}

function bottleneckOf({ bound, places }: FitAnswer): string {
  if (!bound) return "";
  const least = saySeconds(Math.ceil(bound.seconds / 60) * 60);
  return words().bottleneck(words().stages[bound.stage](places), least);
}

/** Loads with the same times in a row are one line. */
function groupsOf(lines: readonly FitLine[]): FitLine[] {
  const groups: { line: FitLine; labels: string[] }[] = [];
  for (const line of lines) {
    const last = groups.at(-1);
    if (last && hasSameTimes(last.line, line)) last.labels.push(line.label);
    else groups.push({ line, labels: [line.label] });
  }
  return groups.map(({ line, labels }) => ({ ...line, label: joinLabels(labels) }));
}

function hasSameTimes(a: FitLine, b: FitLine): boolean {
  return (
    a.pourInAtMs === b.pourInAtMs &&
    a.latestAtMs === b.latestAtMs &&
    a.hungAtMs === b.hungAtMs &&
    a.dryAtMs === b.dryAtMs
  );
}

/** `Tank loads 1-5`; `Mina (P1) and Ben (P2)`. */
function joinLabels(labels: readonly string[]): string {
  const numbers = labels.flatMap((label) => loadNumber(label) ?? []);
  return labels.length > 1 && numbers.length === labels.length
    ? words().loads(formatNumbers(numbers))
    : joinAnd(labels);
}

/** Of a load that nobody has planned yet. */
function loadNumber(label: string): number | undefined {
  const number = Number(/ (\d+)$/.exec(label)?.[1]);
  return label === words().load(number) ? number : undefined;
}

/** As programs read it, whatever language the reply is in. */
function labelAsData(label: string): string {
  const number = loadNumber(label);
  return number === undefined ? label : en.load(number);
}

function lineOf(line: FitLine, { goal }: FitAnswer): string {
  const end =
    goal === "done"
      ? words().dry(instant(line.dryAtMs, "time"))
      : words().hung(instant(line.hungAtMs, "time"));
  if (line.pourInAtMs === null) return words().underWay(plain(line.label), end);
  const latest = line.latestAtMs === null ? null : instant(line.latestAtMs, "time");
  return words().pourIn(plain(line.label), instant(line.pourInAtMs, "time"), latest, end);
}

export const nothingToFit = (): string => words().nothing;
export const bellPast = (typed: string): string => words().bellPast(plain(typed));
export const loadLabel = (number: number): string => words().load(number);
export const somebody = (): string => words().somebody;
