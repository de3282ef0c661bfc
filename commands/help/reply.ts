import type { Action, Reply } from "../define.ts";
import { mayActAs, type Role } from "../../store/shapes/person.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { makeNumber } from "../speech/wording.ts";
import { actionsAt, doingNow } from "../run/doing.ts";
import type { FirstDayFacts } from "../class/first-day.ts";
import { firstDayKey, sayStep } from "../class/first-day-words.ts";
import type { NextStep } from "./next-step.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/* The next sensible step for this person now: one thing first, then what is always there. */

const words = inEach({ en, de });

export function helpReply(
  step: NextStep,
  role: Role,
  commands: readonly string[],
  nowMs: number,
  firstDay?: FirstDayFacts,
): Reply {
  if (step.kind === "first-day") {
    const said = firstDay && sayStep(firstDay, step.step);
    return {
      text: `${words().firstDay(said?.title ?? "", said?.how ?? "")}\n${alwaysThere(role)}`,
      actions: [...(said?.actions ?? []), firstDayKey()],
      fields: { next: step.kind, step: step.step, commands: [...commands] },
    };
  }
  return {
    text: `${wordsOf(step, nowMs)}\n${alwaysThere(role)}`,
    actions: actionsOf(step, nowMs),
    fields: { next: step.kind, commands: [...commands] },
  };
}

type OtherStep = Exclude<NextStep, { kind: "first-day" }>;

function wordsOf(step: OtherStep, nowMs: number): string {
  const { waiting, going, planReady, notSetUp, bottle, rate, noSheet, firstPlan, nextPlan } = words();
  switch (step.kind) {
    case "run": {
      const { run, title, phase } = step.view;
      return (phase === "waiting" ? waiting : going)(
        makeNumber("run", run),
        title,
        doingNow(step.view, nowMs),
        step.others,
      );
    }
    case "start":
      return [step.bellWarning, planReady(makeNumber("plan", step.plan))].filter(Boolean).join("\n");
    case "setup":
      return notSetUp(step.missing);
    case "bottle":
      return bottle[step.mark](step.label);
    case "rate":
      return rate(makeNumber("roll", step.roll));
    case "no-sheet":
      return noSheet;
    case "plan":
      return step.isFirst ? firstPlan : nextPlan;
  }
}

function actionsOf(step: OtherStep, nowMs: number): Action[] {
  switch (step.kind) {
    case "run":
      return [...actionsAt(step.view, nowMs), { label: words().whereAmI, line: makeLine("run status", {}) }];
    case "start":
      return [
        {
          label: words().start,
          line: makeLine("run start", { plan: makeNumber("plan", step.plan) }),
          weight: "main",
        },
      ];
    case "setup":
      return [{ label: words().setUp, line: makeLine("class setup", {}), weight: "main" }];
    case "bottle":
      return [{ label: words().allBottles, line: makeLine("batch status", {}), weight: "main" }];
    case "rate":
      return [
        ...[1, 2, 3, 4, 5].map((rating) => ({
          label: `${rating}`,
          line: makeLine("roll rate", { roll: step.roll, rating }),
        })),
        { label: words().looksWrong, line: makeLine("roll fault", { roll: step.roll }) },
      ];
    case "no-sheet":
      return [{ label: words().filmsAndDevelopers, line: makeLine("sheet list", {}), weight: "main" }];
    case "plan":
      return [
        { label: words().makePlan, line: makeLine("plan", {}), weight: "main" },
        ...(step.isFirst ? [] : [{ label: words().contactSheet, line: makeLine("contact sheet", {}) }]),
        { label: words().filmsAndDevelopers, line: makeLine("sheet list", {}) },
      ];
  }
}

function alwaysThere(role: Role): string {
  const { always, alwaysThere: say } = words();
  const all = [
    ...always.student,
    ...(mayActAs(role, "aide") ? always.aide : []),
    ...(mayActAs(role, "teacher") ? always.teacher : []),
  ];
  return say(all.join(", "));
}
