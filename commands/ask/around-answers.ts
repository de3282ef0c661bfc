import { outlast, type Outlast, outlastLeft } from "../plan/outlast.ts";
import { outlastWords } from "../plan/outlast-words.ts";
import { titleOf } from "../sheet/step-words.ts";
import { instant, sayMinutes } from "../speech/wording.ts";
import { waitsToBegin } from "../../store/shapes/run.ts";
import { runLabel, runsMeant } from "./run-answers.ts";
import { says, type Answerer } from "./shape.ts";
import { stepsOf, withRun } from "./sink-answers.ts";
import { aroundWords as words, type AroundTexts } from "./words.ts";

/* Answers to what happens around a tank: phones, neighbours, things that can't be found. */

const saying =
  (name: AroundTexts): Answerer =>
  () =>
    says(words()[name]);

const sayingWithRun =
  (name: AroundTexts): Answerer =>
  (reading, facts) =>
    withRun(words()[name], reading, facts);

export const musicAnswer = saying("music");
/** Before anything is poured, wet hands are in the way of the film. */
export const wetHandsAnswer: Answerer = ({ signs }, { runs }) =>
  says(runs.length > 0 || signs.has("PHONE") || signs.has("PAGE") ? words().wetHands : words().wet);
export const panicAnswer = saying("panic");
export const shareAnswer = saying("share");
export const forOtherAnswer = saying("forOther");
export const teacherAnswer = sayingWithRun("teacher");
export const noPhoneAnswer = saying("noPhone");
export const touchAnswer: Answerer = ({ signs }) =>
  says(signs.has("REEL") ? words().touchReel : words().touch);
export const levelAnswer = sayingWithRun("level");
export const fixedAnswer = sayingWithRun("fixed");
export const finishAnswer = saying("finish");
export const clockAnswer = sayingWithRun("clock");
/** Once the developer is in, a film can't wait for its lid. */
export const closeAnswer: Answerer = (reading, facts) => {
  const isEmpty = runsMeant(reading, facts).every(waitsToBegin);
  return withRun(isEmpty ? words().close : words().closeNow, reading, facts);
};
export const placeAnswer = sayingWithRun("place");
export const waterAnswer = saying("water");
export const secondReelAnswer = sayingWithRun("secondReel");

export const eatAnswer = saying("eat");
export const tapAnswer = saying("tap");
export const backAnswer = saying("back");
/** Held against the end of the sitting that is on; between sittings, and with nothing to hold against it, in general. */
export const bellAnswer: Answerer = (reading, facts) => {
  const runs = runsMeant(reading, facts);
  const { now, bellAtMs, plan, isPlanUsed } = facts;
  const isTimeAsked = reading.signs.has("WHEN") || reading.signs.has("LONG");
  if (bellAtMs === null) return withRun(isTimeAsked ? words().bellUnknown : words().bell, reading, facts);
  if (isTimeAsked)
    return withRun(words().bellAt(instant(bellAtMs, "time"), sayUntil(bellAtMs, now)), reading, facts);
  const texts = runs.map((run) => {
    const text = bellText(outlastLeft(run, now, bellAtMs), now, !waitsToBegin(run));
    return runs.length > 1 ? `${text} (${runLabel(run)})` : text;
  });
  const planned =
    plan && !isPlanUsed ? bellText(outlast(plan.plan, now, bellAtMs), now, false) : words().bell;
  return withRun(texts.join("\n") || planned, reading, facts);
};

/** Rounded down: who comes a little early loses nothing. */
const sayUntil = (atMs: number, now: number): string => sayMinutes(Math.floor((atMs - now) / 1000));

/** Told not to pour is whoever has not poured yet. */
function bellText(found: Outlast, now: number, isPoured: boolean): string {
  const bell = instant(found.bellAtMs, "time");
  if (found.verdict === "fits") return words().bellFits(instant(found.doneAtMs, "time"), bell);
  if (isPoured && found.verdict === "not-fixed") return words().bell;
  if (isPoured && found.verdict === "wash-later")
    return words().bellInWater(bell, found.fixedAtMs > now ? instant(found.fixedAtMs, "time") : null);
  return outlastWords(found);
}

export const slowPourAnswer = sayingWithRun("slowPour");
export const loadAnswer = saying("load");
export const droppedAnswer = saying("dropped");
export const quietAnswer = saying("quiet");
export const wetAnswer = saying("wet");
export const hardAnswer = sayingWithRun("hard");
export const dirtAnswer = saying("dirt");
export const brokenAnswer = saying("broken");
export const longerFixAnswer = sayingWithRun("longerFix");

/** The baths of one's own film, or of the plan that waits. */
export const orderAnswer: Answerer = (reading, facts) => {
  const meant = stepsOf(reading, facts);
  return says(meant ? words().order(meant.steps.map(titleOf).join(", "), meant.name) : words().usualOrder);
};
