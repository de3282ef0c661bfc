import { isFilmRun, type Run, waitsToBegin } from "../../store/shapes/run.ts";
import { lookAnswer as loggedLookAnswer } from "./class-answers.ts";
import type { Facts } from "./facts.ts";
import type { Reading } from "./read.ts";
import type { Sign } from "./rules.ts";
import { planKey, runsMeant, stopKey, whereAnswer } from "./run-answers.ts";
import { says, shows, type Answerer } from "./shape.ts";
import { isFixed, withRun } from "./sink-answers.ts";
import { askWords, basicsWords as words, type BasicsWords } from "./words.ts";

/* Answers to what a first hour in the darkroom brings: when it must be dark, what may be left out, how a wet film looks. */

/** This person's films that are in a tank or hang to dry. */
const filmsOf = (reading: Reading, facts: Facts): readonly Run[] =>
  runsMeant(reading, facts).filter(isFilmRun);

export const unreelAnswer: Answerer = (reading, facts) => {
  const isWet = filmsOf(reading, facts).some((run) => !isFixed(run));
  return withRun(isWet ? words().unreelShut : words().unreel, reading, facts);
};
export const skipAnswer: Answerer = (reading, facts) => withRun(words().skip, reading, facts);
export const darkAnswer: Answerer = () => says(words().dark);
export const rinseWarmthAnswer: Answerer = () =>
  says(words().rinseWarmth, { label: askWords().warmIt, line: "mix temper" });
export const dryerAnswer: Answerer = () => says(words().dryer);
export const clingsAnswer: Answerer = (reading, facts) => withRun(words().clings, reading, facts);
export const cutAnswer: Answerer = () => says(words().cut);
/** In its tank it has a run that tells it; before that, only what is written on it. */
export const filmNameAnswer: Answerer = (reading, facts) =>
  runsMeant(reading, facts).length > 0 ? whereAnswer(reading, facts) : says(words().filmName);
export const pourHowAnswer: Answerer = () => says(words().pourHow);
export const wrongBottleAnswer: Answerer = () =>
  says(words().wrongBottle, { label: askWords().cautions, line: "caution" });
export const whyAgitateAnswer: Answerer = (reading, facts) => withRun(words().whyAgitate, reading, facts);
export const wettingAnswer: Answerer = () => says(words().wetting);
/** Once its developer is in, a film goes by the time of another; before that, by a new plan. */
export const wrongPlanAnswer: Answerer = (reading, facts) => {
  const runs = runsMeant(reading, facts);
  const isPouredIn = runs.some((run) => !waitsToBegin(run));
  if (!isPouredIn) return says(words().wrongPlan, ...runs.map(stopKey), planKey());
  return withRun(
    reading.signs.has("TANK") || reading.signs.has("NUMBER") ? words().wrongTankIn : words().wrongPlanIn,
    reading,
    facts,
  );
};
export const lateAnswer: Answerer = (reading, facts) => withRun(words().late, reading, facts);
export const sleeveAnswer: Answerer = () => says(words().sleeve);
export const rewindAnswer: Answerer = () => says(words().rewind);
export const alarmAnswer: Answerer = () => says(words().alarm);
export const lengthAnswer: Answerer = () => says(words().length);
export const comeInAnswer: Answerer = () => says(words().comeIn);
export const spiltOnAnswer: Answerer = () =>
  says(words().spiltOn, { label: askWords().cautions, line: "caution" });

/** What can't wait comes first; then how each of them stands. */
export const atOnceAnswer: Answerer = (reading, facts) =>
  filmsOf(reading, facts).length === 0
    ? shows("class board", {}, words().atOnceNone)
    : shows("run status", {}, words().atOnce);

type Seen = keyof BasicsWords["look"];
const SEEN: readonly (readonly [Seen, ...Sign[]])[] = [
  ["milky", "MILKY"],
  // Of black or clear spots the spots are meant.
  ["scratch", "SCRATCH"],
  ["spots", "SPOTS", "DRYMARKS"],
  ["coloured", "COLOURED"],
  ["blank", "CLEAR", "NOTHING"],
  ["dark", "BLACK", "DARK", "FOGGED"],
];

/** Of a film in hand that is in no log yet; of one in the log, with its record. */
export const lookAnswer: Answerer = (reading, facts) => {
  const { signs } = reading;
  const films = filmsOf(reading, facts);
  const isInHand = films.length > 0 && reading.things.run === null;
  if (signs.has("PRINTS") || (facts.roll !== null && !isInHand)) return loggedLookAnswer(reading, facts);
  if (films.some((run) => !isFixed(run))) return withRun(words().lookWait, reading, facts);
  const [seen] = SEEN.find(([, ...any]) => any.some((sign) => signs.has(sign))) ?? (["any"] as const);
  return says(words().look[seen]);
};
