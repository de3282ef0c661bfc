import { bottleAnswer, whoAnswer } from "./class-answers.ts";
import { runsMeant, whereAnswer } from "./run-answers.ts";
import { says, type Answer, type Answerer } from "./shape.ts";
import { aroundWords, askWords, worryWords as words, type WorryWords } from "./words.ts";

/* Answers to what worries somebody: a phone that went dark, a smell, light that got in, a film out of date. */

const saying =
  (name: keyof WorryWords): Answerer =>
  () =>
    says(words()[name]);

/** And below it where the film is, if one is in a tank. */
const withRun =
  (name: keyof WorryWords): Answerer =>
  (reading, facts) =>
    runsMeant(reading, facts).length > 0
      ? { ...whereAnswer(reading, facts), text: words()[name] }
      : says(words()[name]);

const before = (name: keyof WorryWords, { text, ...answer }: Answer): Answer => ({
  ...answer,
  text: [words()[name], text].filter(Boolean).join("\n"),
});
const cautions = (name: keyof WorryWords): Answer =>
  says(words()[name], { label: askWords().cautions, line: "caution" });

export const wearAnswer: Answerer = () => cautions("wear");
export const smellAnswer: Answerer = () => cautions("smell");
export const exposedAnswer = withRun("exposed");
export const leaderAnswer = saying("leader");
export const tintAnswer: Answerer = (reading, facts) => {
  const { signs } = reading;
  const isWater = signs.has("WASH") && !signs.has("FIXER") && !signs.has("DEVELOPER");
  return isWater ? says(aroundWords().rinseColour) : before("tint", bottleAnswer(reading, facts));
};
export const callsAnswer = saying("calls");
export const phoneAnswer = withRun("phone");
export const turnAnswer: Answerer = (reading, facts) =>
  runsMeant(reading, facts).length > 0
    ? whereAnswer(reading, facts)
    : before("turn", whoAnswer(reading, facts));
export const expiredAnswer = saying("expired");
export const severalAnswer = saying("several");
export const fasterAnswer = withRun("faster");
export const worryAnswer = withRun("worry");
