import type { Action } from "../define.ts";
import { makeLine } from "../speech/line.ts";
import { formatBothScales, formatMl, instant, makeNumber, plain, saySeconds } from "../speech/wording.ts";
import { makeTemperature } from "../speech/measure.ts";
import { splitVolume } from "../plan/volume.ts";
import type { Batch, BatchKind } from "../../store/shapes/batch.ts";
import type { Run } from "../../store/shapes/run.ts";
import type { Facts } from "./facts.ts";
import { lookOf } from "./looks.ts";
import type { Reading } from "./read.ts";
import type { Intent } from "./rules.ts";
import { timeAnswer } from "./time.ts";
import { aidWords, askWords as words, termText } from "./words.ts";

/*
 * What a sentence is answered with. Nothing is changed here: a command that only reads may be shown, and whatever would
 * change something is a key.
 */

/** Commands that change nothing, so that a sentence may show what they say. */
export const READING_COMMANDS = [
  "run status",
  "batch status",
  "class board",
  "help",
  "caution",
  "sheet list",
  "roll fault",
] as const;
export type ReadingCommand = (typeof READING_COMMANDS)[number];

export interface Answer {
  readonly text: string;
  readonly show?: {
    readonly command: ReadingCommand;
    readonly options: Readonly<Record<string, string | number>>;
  };
  readonly keys: readonly Action[];
}

type Answerer = (reading: Reading, facts: Facts) => Answer;

const says = (text: string, ...keys: Action[]): Answer => ({ text, keys });
const shows = (
  command: ReadingCommand,
  options: Readonly<Record<string, string | number>> = {},
  text = "",
  keys: readonly Action[] = [],
): Answer => ({ text, keys, show: { command, options } });

const planKey = (): Action => ({ label: words().makePlan, line: "plan", weight: "main" });
const runLabel = ({ number }: Run): string => makeNumber("run", number);

/** The runs a sentence speaks of: the one it names, else all of this person's. */
function runsMeant({ things }: Reading, { runs }: Facts): readonly Run[] {
  const named = runs.filter(
    ({ number, plan }) =>
      (things.run === null || number === things.run) && (things.tank === null || plan.tank === things.tank),
  );
  return named.slice(0, 3);
}

/** Where this person is; with no film in a tank, the next sensible step. */
const whereAnswer: Answerer = (reading, facts) => {
  const [run, second] = runsMeant(reading, facts);
  if (!run) return shows("help");
  return second ? shows("run status") : shows("run status", { run: run.number });
};

const leftAnswer: Answerer = (reading, facts) => {
  if (runsMeant(reading, facts).length > 0) return whereAnswer(reading, facts);
  return reading.things.tank === null ? noRunAnswer(reading, facts) : whoAnswer(reading, facts);
};

/** What there is to do instead. */
const noRunAnswer: Answerer = (reading, facts) => {
  const answer = startAnswer(reading, facts);
  return { ...answer, text: [words().noRun, answer.text].join("\n") };
};

/** A run that waits for its person's word shows its own key; else the plan that is ready, else the way to one. */
const startAnswer: Answerer = (reading, facts) => {
  if (runsMeant(reading, facts).length > 0) return nextAnswer(reading, facts);
  const { plan, isPlanUsed } = facts;
  if (!plan || isPlanUsed) return says(words().planFirst, planKey());
  const label = makeNumber("plan", plan.number);
  return says(words().pressStart(label), {
    label: words().start,
    line: makeLine("run start", { plan: label }),
    weight: "main",
  });
};

const nextAnswer: Answerer = (reading, facts) => {
  if (runsMeant(reading, facts).length === 0) return startAnswer(reading, facts);
  return { ...whereAnswer(reading, facts), text: words().pressIt };
};

/** Ways back people need most, in seconds. */
const USUAL_AGO = [10, 20, 30, 60];

const pouredAnswer: Answerer = (reading, facts) => {
  const runs = runsMeant(reading, facts);
  const [first] = runs;
  if (!first) return startAnswer(reading, facts);
  const { seconds } = reading.things;
  const correct = (run: Run, ago: number, label: string): Action => ({
    label,
    line: makeLine("run correct", { run: run.number, ago: `${ago} s` }),
    weight: "main",
  });
  const keys =
    seconds === null
      ? USUAL_AGO.map((ago) => correct(first, ago, words().ago(saySeconds(ago))))
      : runs.map((run) => correct(run, seconds, words().pouredAgo(runLabel(run), saySeconds(seconds))));
  return says(words().whenPoured(runs.map(runLabel).join(", ")), ...keys);
};

const undoAnswer: Answerer = (reading, facts) => {
  const answer = pouredAnswer({ ...reading, things: { ...reading.things, seconds: null } }, facts);
  const runs = runsMeant(reading, facts);
  return runs.length === 0 ? answer : says(words().undo, ...answer.keys, ...runs.map(stopKey));
};

const stopKey = (run: Run): Action => ({
  label: words().stopRun(runLabel(run)),
  line: makeLine("run stop", { run: run.number }),
  weight: "danger",
});

const stopAnswer: Answerer = (reading, facts) => {
  const runs = runsMeant(reading, facts);
  return runs.length === 0 ? noRunAnswer(reading, facts) : says(words().nothingStopped, ...runs.map(stopKey));
};

const waitAnswer: Answerer = (reading, facts) =>
  runsMeant(reading, facts).length === 0
    ? says(words().cannotWait)
    : { ...whereAnswer(reading, facts), text: words().cannotWait };

const warmerAnswer: Answerer = (reading, facts) => {
  const { tenthsC } = reading.things;
  const running = runsMeant(reading, facts).filter(({ phase }) => phase.kind === "running");
  if (running.length === 0) {
    if (tenthsC !== null) return timeAnswer(reading, facts);
    return says(words().measure, { label: words().warmIt, line: "mix temper" });
  }
  if (tenthsC === null) return says(words().measure);
  const keys = running.map((run): Action => ({
    label: words().newTemperature(runLabel(run), formatBothScales(tenthsC)),
    line: makeLine("run correct", { run: run.number, temp: makeTemperature(tenthsC) }),
    weight: "main",
  }));
  return says(words().pressTemperature(formatBothScales(tenthsC)), ...keys);
};

/** The kind of bath a sentence names. */
function kindMeant({ signs, things }: Reading): BatchKind | null {
  if (signs.has("FIXER")) return "fixer";
  if (signs.has("STOPBATH")) return "stop";
  return signs.has("DEVELOPER") || things.developer !== null ? "developer" : null;
}

const bottleAnswer: Answerer = (reading, { bottles }) => {
  const kind = kindMeant(reading);
  const { bottle } = reading.things;
  if (bottle === null && kind === null) return shows("batch status");
  const meant = bottles.filter((each) => (bottle === null ? each.kind === kind : each.number === bottle));
  const all: Action = { label: words().otherBottles, line: "batch status" };
  const [first, ...others] = meant;
  if (!first) return says(words().noBottle, all);
  const keys = others.slice(0, 3).map(bottleKey);
  return shows("batch status", { batch: makeNumber("batch", first.number) }, "", [...keys, all]);
};

const bottleKey = ({ number }: Batch): Action => ({
  label: makeNumber("batch", number),
  line: makeLine("batch status", { batch: makeNumber("batch", number) }),
});

const whoAnswer: Answerer = (reading, { board, tanks }) => {
  const wanted = reading.things.tank;
  const free = tanks.filter(
    ({ number, condition }) => condition === null && !board.some(({ tank }) => tank === number),
  );
  const sayFree =
    free.length === 0
      ? words().noFreeTank
      : words().freeTanks(free.map(({ number }) => makeNumber("tank", number)).join(", "));
  if (wanted === null) {
    return reading.signs.has("FREE") ? says(sayFree) : shows("class board", {}, sayFree);
  }
  const row = board.find(({ tank }) => tank === wanted);
  if (row) {
    const until = row.endsAtMs === null ? null : instant(row.endsAtMs, "time");
    return says(words().tankOf(wanted, plain(row.person), row.step, until));
  }
  const tank = tanks.find(({ number }) => number === wanted);
  if (!tank) return says([words().tankUnknown(wanted), sayFree].join(" "));
  return says(
    tank.condition === null ? words().tankFree(wanted) : words().tankReported(wanted, plain(tank.condition)),
  );
};

const lookAnswer: Answerer = ({ signs }, { roll }) => {
  if (roll === null) return says(words().noRoll);
  const look = lookOf(signs);
  return shows("roll fault", look === null ? { roll } : { roll, look });
};

const wordAnswer: Answerer = ({ terms, things }) => {
  const named = things.dilution !== null && terms.length === 0 ? (["dilution"] as const) : terms;
  return says(named.length === 0 ? words().noTerm : named.slice(0, 3).map(termText).join("\n"));
};

const amountAnswer: Answerer = (_, { plan }) => {
  if (!plan) return says(words().mixTotal, planKey());
  const { volumeMl, sheet } = plan.plan;
  const { concentrateMl, waterMl } = splitVolume(volumeMl, sheet.dilution);
  const parts = waterMl === 0 ? words().stockOnly : words().parts(formatMl(concentrateMl), formatMl(waterMl));
  return says(words().amountOf(makeNumber("plan", plan.number), formatMl(volumeMl), parts));
};

/** All that fits is said, the eye first. */
const harmAnswer: Answerer = ({ signs }) => {
  const has = (...wanted: Parameters<typeof signs.has>[0][]): boolean =>
    wanted.some((sign) => signs.has(sign));
  const { eye, swallowed, breathed, skin, spilt, hurt, call } = aidWords();
  const parts = [
    ...(has("EYE", "FACE") ? [eye] : []),
    ...(has("SWALLOW", "MOUTH") ? [swallowed] : []),
    ...(has("BREATHE") ? [breathed] : []),
    ...(has("SKIN", "FACE", "BURNS", "ITCH") && !has("EYE") ? [skin] : []),
    ...(has("HURT") ? [hurt] : []),
    ...(has("SPILL", "FLOOR", "FELL") && !has("EYE", "SKIN", "FACE", "SWALLOW", "MOUTH") ? [spilt] : []),
  ];
  return says([...(parts.length > 0 ? parts : [hurt]), call].join("\n"), {
    label: words().cautions,
    line: makeLine("caution", {}),
  });
};

const ANSWERS: Readonly<Record<Intent, Answerer>> = {
  time: timeAnswer,
  start: startAnswer,
  next: nextAnswer,
  poured: pouredAnswer,
  where: whereAnswer,
  left: leftAnswer,
  stop: stopAnswer,
  wait: waitAnswer,
  undo: undoAnswer,
  warmer: warmerAnswer,
  good: bottleAnswer,
  age: bottleAnswer,
  who: whoAnswer,
  look: lookAnswer,
  word: wordAnswer,
  waste: () => shows("caution", { about: "waste" }),
  amount: amountAnswer,
  films: () => shows("sheet list"),
  harm: harmAnswer,
  hello: () => shows("help", {}, words().hello),
  thanks: () => says(words().thanks),
  help: () => shows("help"),
};

export function answerTo(intent: Intent, reading: Reading, facts: Facts): Answer {
  return ANSWERS[intent](reading, facts);
}
