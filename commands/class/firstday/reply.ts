import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { type SaidFirstDay, type SaidStep } from "../first-day-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export function firstDayReply({ title, done, steps }: SaidFirstDay): Reply {
  const next = steps.find(({ state }) => state === "open");
  const isDone = steps.every(({ state }) => state === "done");
  return {
    text: [
      words().head(title, done, steps.length),
      ...steps.map(sayStep),
      next ? words().next(next.title, next.how) : isDone ? words().allDone : words().onlyLater,
    ].join("\n"),
    fields: {
      done,
      steps: steps.map(({ key, state }) => ({ step: key, state })),
      next: next?.key ?? null,
    },
    actions: [...(next?.actions ?? [])],
  };
}

const sayStep = ({ state, title }: SaidStep): string => words()[state](title);

export const pastReply = (isInvented: boolean): Reply => ({
  text: isInvented ? words().invented : words().past,
  fields: { next: null },
});
