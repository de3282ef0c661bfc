import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { fitsKey, makeLine } from "../speech/line.ts";
import { plain } from "../speech/wording.ts";
import type { FirstStep } from "../../store/shapes/school.ts";
import { type FirstDayFacts, firstDayOf, type StepState } from "./first-day.ts";
import { de } from "./words/first-day.de.ts";
import { en } from "./words/first-day.en.ts";

/* The first day as it is said: in an answer, in help, and in the panel of a teacher's page. */

const words = inEach({ en, de });

export const FIRST_DAY_COMMAND = "class firstday";

export interface SaidStep {
  readonly key: FirstStep;
  readonly state: StepState;
  readonly title: string;
  /** What to do and how, with an example. */
  readonly how: string;
  /** The key that does it, others that do it otherwise, and at last the one that puts it off. */
  readonly actions: readonly Action[];
}

/** In the language being spoken. */
export interface SaidFirstDay {
  readonly title: string;
  readonly done: number;
  readonly steps: readonly SaidStep[];
}

export function sayFirstDay(facts: FirstDayFacts): SaidFirstDay {
  const steps = firstDayOf(facts);
  return {
    title: words().title,
    done: steps.filter(({ state }) => state === "done").length,
    steps: steps.map(({ key, state }) => ({
      key,
      state,
      title: words().titles[key],
      how: HOW[key](facts),
      actions: [...ACTIONS[key](facts), ...(state === "open" ? [laterAction(key)] : [])],
    })),
  };
}

export const sayStep = (facts: FirstDayFacts, key: FirstStep): SaidStep | undefined =>
  sayFirstDay(facts).steps.find((step) => step.key === key);

/** `ABC-1DE`. */
const shown = (code: string): string => `${code.slice(0, 3)}-${code.slice(3)}`.toUpperCase();

const HOW = {
  name: ({ class: { name, zone } }) => words().name(plain(name), zone),
  tanks: () => words().tanks,
  times: () => words().times,
  bottles: ({ missing }) => words().bottles(missing),
  code: ({ joinCode }) => (joinCode === null ? words().channel : words().code(shown(joinCode))),
  trial: () => words().trial,
} as const satisfies Record<FirstStep, (facts: FirstDayFacts) => string>;

const main = (label: string, line: string): Action => ({ label, line, weight: "main" });

const ACTIONS = {
  name({ class: { name, zone } }) {
    const line = makeLine("class setup", { name, zone });
    return fitsKey(line) ? [main(words().keep, line)] : [];
  },
  tanks: () => [main(words().enterTanks, "tank add")],
  times: () => [main(words().paste, "sheet import"), { label: words().oneTime, line: "sheet add" }],
  bottles: ({ missing }) =>
    missing.map((kind, at): Action => {
      const line = makeLine("batch mix", { kind });
      return at === 0 ? main(words().bottleOf[kind], line) : { label: words().bottleOf[kind], line };
    }),
  code: ({ joinCode }) =>
    joinCode === null ? [main(words().thisChannel, makeLine("class setup", { channel: "here" }))] : [],
  trial: () => [main(words().startTrial, "run trial")],
} as const satisfies Record<FirstStep, (facts: FirstDayFacts) => readonly Action[]>;

const laterAction = (key: FirstStep): Action => ({
  label: words().later,
  line: makeLine(FIRST_DAY_COMMAND, { later: key }),
});

export const firstDayKey = (): Action => ({ label: words().all, line: FIRST_DAY_COMMAND });
