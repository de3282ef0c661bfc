import type { Action, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import type { RetemperFault } from "../plan/retemper.ts";
import { describeAgitation, doingOf, labelOf, leavingOf, titleOf } from "../plan/step-words.ts";
import { countOf, formatBothScales, formatSeconds, instant, makeNumber, saySeconds } from "../wording.ts";
import type { RunFault } from "./machine.ts";
import { currentStep, pourOutAtMs, stepAt, type Run } from "./run.ts";

/* What a run says when it is asked. What it says unasked is in cue-words.ts. */

/** `R7, tank 3`. */
export function nameOf(run: Run): string {
  const number = makeNumber("run", run.number);
  return run.plan.tank === null ? number : `${number}, tank ${run.plan.tank}`;
}

/** The button that begins a step; it names the step, so that an old one is recognised. */
export function nextAction(run: Run, step: number): Action[] {
  const next = stepAt(run, step);
  if (!next) return [];
  return [{ label: labelOf(next), line: makeLine("run next", { run: run.number, step }), weight: "main" }];
}

const statusAction = (run: Run): Action => ({
  label: "Where am I?",
  line: makeLine("run status", { run: run.number }),
});

export function startedReply(run: Run): Reply {
  const { plan } = run;
  const develop = plan.steps.find(({ kind }) => kind === "develop") ?? plan.steps[0];
  const first = plan.steps[0];
  const text = [
    `**${nameOf(run)}**: ${saySeconds(develop?.seconds ?? 0)} in the developer at ${formatBothScales(plan.tenthsC)}.`,
    first ? `Next: ${doingOf(first)}` : "",
  ].join("\n");
  return { text, fields: fieldsOf(run), actions: [...nextAction(run, 0), stopAction(run)] };
}

export function stopAction(run: Run): Action {
  return { label: "Stop this run", line: makeLine("run stop", { run: run.number }), weight: "danger" };
}

/** The answer to a change: where the film is now, and the one next thing to do. */
export function changedReply(run: Run, now: number): Reply {
  return { text: whereIs(run, now), fields: fieldsOf(run), actions: actionsOf(run) };
}

function actionsOf(run: Run): Action[] {
  if (run.phase.kind === "waiting") return [...nextAction(run, run.phase.step), statusAction(run)];
  if (run.phase.kind === "running") return [...nextAction(run, run.phase.step + 1), statusAction(run)];
  return [];
}

function whereIs(run: Run, now: number): string {
  const { phase } = run;
  const name = `**${nameOf(run)}**`;
  if (phase.kind === "finished") return `${name} is finished. Well done: the negatives are in the log.`;
  if (phase.kind === "stopped")
    return `${name} is stopped at ${titleOf(stepAt(run, phase.step) ?? { kind: "cut", ordinal: 0 })}. The log keeps it.`;
  const step = currentStep(run);
  if (!step) return name;
  if (phase.kind === "waiting") return `${name}, ${titleOf(step).toLowerCase()}. ${doingOf(step)}`;
  const left = Math.max(0, Math.ceil((phase.endsAtMs - now) / 1000));
  const lines = [
    `**${formatSeconds(left)}** left in ${titleOf(step).toLowerCase()}, until ${instant(phase.endsAtMs, "time")} (${name}).`,
  ];
  if (step.agitation) lines.push(`Agitate: ${describeAgitation(step.agitation)}.`);
  const outAtMs = pourOutAtMs(step, phase.endsAtMs);
  if (step.pourOutSeconds > 0) {
    lines.push(
      now >= outAtMs
        ? `Pour out now. ${leavingOf(step)}`
        : `Pour out at ${instant(outAtMs, "time")}, ${instant(outAtMs, "relative")}.`,
    );
  }
  return lines.join("\n");
}

export function movedReply(run: Run, now: number): Reply {
  return {
    ...changedReply(run, now),
    text: `Noted. Every call of this step has moved.\n${whereIs(run, now)}`,
  };
}

export function newTemperatureReply(run: Run, tenthsC: number, leftBefore: number, now: number): Reply {
  const left = run.phase.kind === "running" ? Math.ceil((run.phase.endsAtMs - now) / 1000) : 0;
  const change = left - leftBefore;
  const words =
    change === 0
      ? "The time stays as it is."
      : `**${saySeconds(Math.abs(change))} ${change > 0 ? "longer" : "shorter"}**: ${formatSeconds(left)} left instead of ${formatSeconds(leftBefore)}.`;
  return {
    ...changedReply(run, now),
    text: `${formatBothScales(tenthsC)} in the tank. ${words} What the film has had so far counts as planned.\n${whereIs(run, now)}`,
  };
}

export function statusReply(runs: readonly Run[], now: number, ownerOf: (run: Run) => string | null): Reply {
  if (runs.length === 0) return { text: "No run is going. Make one with `/plan`.", fields: { runs: [] } };
  const lines = runs.map((run) => {
    const owner = ownerOf(run);
    return `${owner === null ? "" : `${owner}: `}${whereIs(run, now)}`;
  });
  const only = runs.length === 1 ? runs[0] : undefined;
  return {
    text: lines.join("\n\n"),
    fields: { runs: runs.map(fieldsOf) },
    actions: only ? actionsOf(only).filter(({ line }) => !line.startsWith("run status")) : [],
  };
}

export function fieldsOf(run: Run): { [key: string]: string | number | null } {
  const step = currentStep(run);
  return {
    run: run.number,
    tank: run.plan.tank,
    phase: run.phase.kind,
    step: "step" in run.phase ? run.phase.step : null,
    stepKind: step?.kind ?? null,
    stepCount: run.plan.steps.length,
    startedAtMs: run.phase.kind === "running" ? run.phase.startedAtMs : null,
    endsAtMs: run.phase.kind === "running" ? run.phase.endsAtMs : null,
  };
}

type FaultWords = { [Fault in RunFault as Fault["code"]]: (fault: Fault, run: Run) => string };

const FAULT_WORDS: FaultWords = {
  ERR_RUN_OVER: (_, run) => `${nameOf(run)} is over. Nothing is changed. See it with \`/roll find\`.`,
  ERR_OLD_BUTTON: ({ step }, run) =>
    `That button is from another step. Nothing is changed: ${nameOf(run)} is at ${titleAt(run, step)}. Use the newest button.`,
  ERR_ALREADY_RUNNING: ({ step, leftSeconds }, run) =>
    `Got it already: ${titleAt(run, step)} is running, ${formatSeconds(leftSeconds)} left.`,
  ERR_TOO_EARLY: ({ step, leftSeconds }, run) =>
    `${formatSeconds(leftSeconds)} are left in ${titleAt(run, step)}. Nothing is changed. Is the next bath really in already?`,
  ERR_BEFORE_LAST_STEP: ({ step, mostSeconds }, run) =>
    `${titleAt(run, step)} can't have begun before the bath in front of it. Say at most ${saySeconds(mostSeconds)} ago.`,
  ERR_NOTHING_RUNNING: ({ step }, run) =>
    `${nameOf(run)} waits for ${titleAt(run, step)}: no bath is timed now. Put it in first, then give its temperature.`,
  ERR_POURING_OUT: (_, run) =>
    `Pour-out of ${nameOf(run)} has begun: a new temperature changes nothing now. Pour out.`,
};

function titleAt(run: Run, step: number): string {
  const at = stepAt(run, step);
  return at ? titleOf(at).toLowerCase() : "the end";
}

/** The sentence for a refused change, with the button that helps. */
export function faultWords(fault: RunFault, run: Run): { text: string; actions: Action[] } {
  const word = FAULT_WORDS[fault.code] as (fault: RunFault, run: Run) => string;
  const actions =
    fault.code === "ERR_TOO_EARLY"
      ? [
          {
            label: "Yes, it is in",
            line: makeLine("run next", { run: run.number, step: fault.step + 1, sure: "yes" }),
            weight: "danger" as const,
          },
          statusAction(run),
        ]
      : actionsOf(run);
  return { text: word(fault, run), actions };
}

export function sureToStop(run: Run): Reply {
  return {
    text: `Stop **${nameOf(run)}**? The film stays where it is and no more calls come. The log keeps what was done.`,
    actions: [
      {
        label: "Yes, stop it",
        line: makeLine("run stop", { run: run.number, sure: "yes" }),
        weight: "danger",
      },
      statusAction(run),
    ],
  };
}

export function overReply(run: Run, rolls: readonly { readonly number: number }[]): Reply {
  const labels = rolls.map(({ number }) => makeNumber("roll", number));
  const kept = labels.length > 0 ? `In the log as ${labels.join(", ")}.` : "";
  const first = rolls[0];
  const head =
    run.phase.kind === "finished"
      ? `**${nameOf(run)}** is finished. ${countOf(run.plan.rolls, "roll")} of negatives, ready for the contact sheet.`
      : `**${nameOf(run)}** is stopped.`;
  return {
    text: `${head} ${kept}`.trim(),
    fields: { ...fieldsOf(run), rolls: rolls.map(({ number }) => number) },
    actions: first ? [{ label: "Show the roll", line: makeLine("roll show", { roll: first.number }) }] : [],
  };
}

export const WHICH_RUN = (runs: readonly Run[], verb: string): { text: string; actions: Action[] } => ({
  text: `You have ${runs.length} runs going. Say which: ${runs.map(nameOf).join("; ")}.`,
  actions: runs.slice(0, 5).map((run) => ({ label: nameOf(run), line: makeLine(verb, { run: run.number }) })),
});

export const NO_RUN = "You have no run going. Make a plan first: `/plan`.";
export const NOT_YOURS = (name: string): string =>
  `${name} belongs to somebody else. Only its owner, an aide or the teacher can change it.`;
export const UNKNOWN_RUN = (text: string): string => `I know no run ${text}. See yours with \`/run status\`.`;
export const UNKNOWN_PLAN = (text: string): string =>
  `I know no plan ${text}. Make one with \`/plan\`, then press Start.`;
export const NO_PLAN = "You have made no plan yet. Make one with `/plan`, then press Start.";
export const NOTHING_TO_CORRECT =
  "Say what to correct: `ago:20` if you poured 20 s ago, or `temp:21.5` for a new temperature.";
export const TANK_BUSY = (tank: number, name: string): string =>
  `Tank ${tank} is in use by ${name}. Take another tank, or stop that run first.`;
export function TEMPERATURE_REFUSED(fault: RetemperFault): string {
  const nearest =
    "nearestTenthsC" in fault
      ? ` The sheet goes to ${formatBothScales(fault.nearestTenthsC)}: bring the tank back to that.`
      : "";
  return `The sheet gives no time for that temperature. Nothing is changed.${nearest}`;
}
