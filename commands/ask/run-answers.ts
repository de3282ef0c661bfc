import type { Action } from "../define.ts";
import { makeLine } from "../speech/line.ts";
import { makeTemperature } from "../speech/measure.ts";
import { formatBothScales, makeNumber, saySeconds } from "../speech/wording.ts";
import type { Run } from "../../store/shapes/run.ts";
import { whoAnswer } from "./class-answers.ts";
import type { Facts } from "./facts.ts";
import type { Reading } from "./read.ts";
import { says, shows, type Answerer } from "./shape.ts";
import { timeAnswer } from "./time.ts";
import { askWords as words } from "./words.ts";

/* Answers about one's own film: where it is, how long, and keys for what a person says of it. */

export const planKey = (): Action => ({ label: words().makePlan, line: "plan", weight: "main" });
export const runLabel = ({ number }: Run): string => makeNumber("run", number);

/** The runs a sentence speaks of: the one it names, else all of this person's. */
export function runsMeant({ things }: Reading, { runs }: Facts): readonly Run[] {
  const named = runs.filter(
    ({ number, plan }) =>
      (things.run === null || number === things.run) && (things.tank === null || plan.tank === things.tank),
  );
  return named.slice(0, 3);
}

/** A film that is done, or dry. */
const isOfDeveloped = ({ signs }: Reading): boolean =>
  signs.has("DRY") || (signs.has("FILM") && signs.has("DONE"));

/** What comes after the last bath. */
const developedAnswer: Answerer = (_, { roll }) => {
  if (roll === null) return says(words().developedUnlogged, planKey());
  const label = makeNumber("roll", roll);
  return says(
    words().developed(label),
    { label: words().contactKey, line: "contact sheet", weight: "main" },
    { label, line: makeLine("roll show", { roll: label }) },
  );
};

/** Where this person is; with no film in a tank, the next sensible step. */
export const whereAnswer: Answerer = (reading, facts) => {
  const [run, second] = runsMeant(reading, facts);
  if (!run) return isOfDeveloped(reading) ? developedAnswer(reading, facts) : shows("help");
  return second ? shows("run status") : shows("run status", { run: run.number });
};

export const leftAnswer: Answerer = (reading, facts) => {
  if (runsMeant(reading, facts).length > 0) return whereAnswer(reading, facts);
  return reading.things.tank === null ? noRunAnswer(reading, facts) : whoAnswer(reading, facts);
};

/** What there is to do instead. */
const noRunAnswer: Answerer = (reading, facts) => {
  const answer = startAnswer(reading, facts);
  return { ...answer, text: [words().noRun, answer.text].join("\n") };
};

/** A run that waits for its person's word shows its own key; else the plan that is ready, else the way to one. */
export const startAnswer: Answerer = (reading, facts) => {
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

export const nextAnswer: Answerer = (reading, facts) => {
  if (runsMeant(reading, facts).length === 0) {
    const isPlanReady = facts.plan !== null && !facts.isPlanUsed;
    return !isPlanReady && isOfDeveloped(reading)
      ? developedAnswer(reading, facts)
      : startAnswer(reading, facts);
  }
  return { ...whereAnswer(reading, facts), text: words().pressIt };
};

/** Ways back people need most, in seconds. */
const USUAL_AGO = [10, 20, 30, 60];

export const pouredAnswer: Answerer = (reading, facts) => {
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

export const undoAnswer: Answerer = (reading, facts) => {
  const answer = pouredAnswer({ ...reading, things: { ...reading.things, seconds: null } }, facts);
  const runs = runsMeant(reading, facts);
  return runs.length === 0 ? answer : says(words().undo, ...answer.keys, ...runs.map(stopKey));
};

export const stopKey = (run: Run): Action => ({
  label: words().stopRun(runLabel(run)),
  line: makeLine("run stop", { run: run.number }),
  weight: "danger",
});

export const stopAnswer: Answerer = (reading, facts) => {
  const runs = runsMeant(reading, facts);
  return runs.length === 0 ? noRunAnswer(reading, facts) : says(words().nothingStopped, ...runs.map(stopKey));
};

export const waitAnswer: Answerer = (reading, facts) =>
  runsMeant(reading, facts).length === 0
    ? says(words().cannotWait)
    : { ...whereAnswer(reading, facts), text: words().cannotWait };

export const warmerAnswer: Answerer = (reading, facts) => {
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
