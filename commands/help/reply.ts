import type { Action, Reply, Role } from "../define.ts";
import { mayActAs } from "../define.ts";
import type { Mark } from "../batch/marks.ts";
import { makeLine } from "../line.ts";
import { countOf, makeNumber } from "../wording.ts";
import type { NextStep } from "./next-step.ts";

/* The next sensible step for this person now: one thing first, then what is always there. */

export function helpReply(step: NextStep, role: Role, commands: readonly string[]): Reply {
  return {
    text: `${wordsOf(step)}\n${alwaysThere(role)}`,
    actions: actionsOf(step),
    fields: { next: step.kind, commands: [...commands] },
  };
}

const MARK_WORDS = {
  "test-overdue": "is due for a test with a scrap of film",
  exhausted: "is worn out: nobody must use it. Collect it and mix fresh",
  "out-of-date": "is out of date. Test it or throw it away as local rules say, and mix fresh",
  "last-films": "is nearly worn out. Mix the next one",
  tired: "is getting tired. Keep an eye on it",
  "out-of-date-soon": "goes out of date soon. Mix the next one in time",
} as const satisfies Record<Mark, string>;

function wordsOf(step: NextStep): string {
  switch (step.kind) {
    case "run": {
      const { run, title, now, phase } = step.view;
      const others = step.others > 0 ? ` (and ${countOf(step.others, "run")} more)` : "";
      return phase === "waiting"
        ? `**${run} waits for you: ${title.toLowerCase()}.** ${now}${others}`
        : `**${run}, ${title.toLowerCase()}.** ${now} I call you when it is time.${others}`;
    }
    case "start":
      return [
        step.bellWarning,
        `**Your plan ${makeNumber("plan", step.plan)} is ready.** Load the film in the dark, fill a measure with developer, then press Start.`,
      ]
        .filter(Boolean)
        .join("\n");
    case "setup":
      return `**The class is not set up yet:** ${countOf(step.missing, "part")} to go, a minute or two.`;
    case "bottle":
      return `**${step.label}** ${MARK_WORDS[step.mark]}.`;
    case "rate":
      return `**How did ${makeNumber("roll", step.roll)} come out?** Hold the dry film before a light and rate it, 1 (unusable) to 5 (prints by itself). If something looks wrong, look for its cause.`;
    case "no-sheet":
      return "**The class has no sheet yet:** the times of a film in a developer. A teacher or an aide adds one with `/sheet add`.";
    case "plan":
      return step.isFirst
        ? "**Begin with a plan.** Measure how warm the developer is, then say which film and how warm:\n`/plan film:… temp:20`\nI work out the times; then I call you at every step."
        : "**Make a plan** for the next film: `/plan film:… temp:20`";
  }
}

function actionsOf(step: NextStep): Action[] {
  switch (step.kind) {
    case "run":
      return [...step.view.actions, { label: "Where am I?", line: makeLine("run status", {}) }];
    case "start":
      return [
        {
          label: "Start",
          line: makeLine("run start", { plan: makeNumber("plan", step.plan) }),
          weight: "main",
        },
      ];
    case "setup":
      return [{ label: "Set up the class", line: makeLine("class setup", {}), weight: "main" }];
    case "bottle":
      return [{ label: "All bottles", line: makeLine("batch status", {}), weight: "main" }];
    case "rate":
      return [
        ...[1, 2, 3, 4, 5].map((rating) => ({
          label: `${rating}`,
          line: makeLine("roll rate", { roll: step.roll, rating }),
        })),
        { label: "Something looks wrong", line: makeLine("roll fault", { roll: step.roll }) },
      ];
    case "no-sheet":
    case "plan":
      return [{ label: "Films and developers", line: makeLine("sheet list", {}) }];
  }
}

function alwaysThere(role: Role): string {
  const all = [
    "`/run status` (where your film is)",
    "`/roll find` (the log)",
    "`/sheet list` (films and developers)",
    "`/caution` (safety and waste)",
  ];
  if (mayActAs(role, "aide")) all.push("`/batch status` (bottles)");
  if (mayActAs(role, "teacher")) all.push("`/class board`, `/class fit`, `/class say`");
  return `Always there: ${all.join(", ")}. What I keep of you: \`/mine show\`.`;
}
