import { makeNumber } from "../speech/wording.ts";
import { titleOf } from "../sheet/step-words.ts";
import { isFilmRun } from "../../store/shapes/run.ts";
import { isFilmPlan } from "../../store/shapes/tray.ts";
import { runLabel, runsMeant, whereAnswer } from "./run-answers.ts";
import { says, type Answerer } from "./shape.ts";
import { aroundWords as words, type AroundTexts } from "./words.ts";

/* Answers to what happens around a tank: phones, neighbours, things that can't be found. */

const saying =
  (name: AroundTexts): Answerer =>
  () =>
    says(words()[name]);

/** And below it where the film is, if one is in a tank. */
const withRun =
  (name: AroundTexts): Answerer =>
  (reading, facts) =>
    runsMeant(reading, facts).length > 0
      ? { ...whereAnswer(reading, facts), text: words()[name] }
      : says(words()[name]);

export const musicAnswer = saying("music");
export const wetHandsAnswer = saying("wetHands");
export const panicAnswer = saying("panic");
export const shareAnswer = saying("share");
export const forOtherAnswer = saying("forOther");
export const teacherAnswer = withRun("teacher");
export const noPhoneAnswer = saying("noPhone");
export const touchAnswer: Answerer = ({ signs }) =>
  says(signs.has("REEL") ? words().touchReel : words().touch);
export const levelAnswer = withRun("level");
export const fixedAnswer = withRun("fixed");
export const finishAnswer = saying("finish");
export const clockAnswer = withRun("clock");
export const closeAnswer = withRun("close");
export const placeAnswer = withRun("place");
export const waterAnswer = saying("water");
export const secondReelAnswer = withRun("secondReel");

export const eatAnswer = saying("eat");
export const tapAnswer = saying("tap");
export const backAnswer = saying("back");
export const bellAnswer = withRun("bell");
export const slowPourAnswer = withRun("slowPour");
export const loadAnswer = saying("load");
export const droppedAnswer = saying("dropped");
export const quietAnswer = saying("quiet");
export const wetAnswer = saying("wet");
export const hardAnswer = withRun("hard");
export const dirtAnswer = saying("dirt");
export const brokenAnswer = saying("broken");
export const longerFixAnswer = withRun("longerFix");

/** The baths of one's own film, or of the plan that waits. */
export const orderAnswer: Answerer = (reading, facts) => {
  const [run] = runsMeant(reading, facts).filter(isFilmRun);
  const { plan } = facts;
  const steps = run?.plan.steps ?? (plan && isFilmPlan(plan.plan) ? plan.plan.steps : []);
  const of = run ? runLabel(run) : plan ? makeNumber("plan", plan.number) : "";
  return says(steps.length > 0 ? words().order(steps.map(titleOf).join(", "), of) : words().usualOrder);
};
