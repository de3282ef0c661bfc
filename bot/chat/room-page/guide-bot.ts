import { DEMO_SHEETS } from "../../demo/demo.ts";
import { DEFAULT_HABITS } from "../../../store/shapes/usual-habits.ts";
import type { Reply } from "../../../commands/define.ts";
import { parseLine } from "../../../commands/speech/line.ts";
import { makePlan } from "../../../commands/plan/process.ts";
import { plannedReply } from "../../../commands/plan/reply.ts";
import { bareRequest } from "../../../commands/plan/request.ts";
import { cueMessage } from "../../../commands/run/cue-words.ts";
import { cuesAfter, cuesOf } from "../../../commands/run/cues.ts";
import { advance, type RunEvent } from "../../../commands/run/machine.ts";
import { faultWords } from "../../../commands/run/fault-words.ts";
import { changedReply, movedReply, overReply, startedReply } from "../../../commands/run/reply.ts";
import { nameOf } from "../../../commands/run/run-words.ts";
import { isOver, type Run, type RunName, runNameOf } from "../../../store/shapes/run.ts";
import { settle } from "../../../commands/run/settle.ts";
import type { DueCue } from "../../../store/shapes/cue.ts";
import { viewOf } from "../../../commands/run/view.ts";
import type { PersonView } from "../room/view.ts";

/*
 * The guided run: the real plan, the real run machine and the real words, in the browser alone. Nothing of it reaches
 * the class's store, so there is nothing to clear away afterwards.
 */

export interface GuideCall {
  readonly atMs: number;
  readonly text: string;
  readonly runs: readonly RunName[];
  readonly actions: Reply["actions"];
}

export interface GuideBot {
  /** Answers a line of the tour at this moment; undefined for a line it does not know. */
  say(line: string, nowMs: number): Reply | undefined;
  /** The moment of the next call; undefined where none is coming. */
  nextCallAt(): number | undefined;
  /** The calls due by `nowMs`, each decided at its own moment. */
  callsUntil(nowMs: number): GuideCall[];
  views(): readonly PersonView[];
  readonly stage: "start" | "planned" | "waiting" | "running" | "over";
}

const FORMS = ["plan", "run start", "run next", "run correct", "run status", "run stop"].map((name) => ({
  name,
}));
const TANK = {
  number: 1,
  reels: 1,
  volumeMl: 300,
  format: "any",
  condition: null,
  timeConstantSeconds: null,
} as const;

export function createGuideBot(): GuideBot {
  const [sheet] = DEMO_SHEETS;
  const made = sheet && makePlan({ ...bareRequest(sheet, 200), tank: TANK }, DEFAULT_HABITS);
  if (!made?.ok) throw new Error("the demo's own sheet makes no plan");
  const plan = made.value;
  let isPlanned = false;
  let run: Run | undefined;
  const said = new Set<string>();

  function change(event: RunEvent): Reply | undefined {
    if (!run) return undefined;
    const result = advance(run, event);
    if (!result.ok) return faultWords(result.fault, run, event.atMs);
    run = result.value;
    // What a correction puts into the past is not called any more; the answer says where the film is.
    const left = new Set(cuesAfter(run, event.atMs).map(({ key }) => key));
    for (const { key } of cuesOf(run)) if (!left.has(key)) said.add(key);
    if (isOver(run)) return overReply(run, []);
    return event.kind === "poured" ? movedReply(run, event.atMs) : changedReply(run, event.atMs);
  }

  function start(nowMs: number): Reply {
    run = {
      id: 1,
      number: 1,
      classId: 0,
      personId: "guide",
      plan,
      warnSeconds: DEFAULT_HABITS.warnSeconds,
      startedAtMs: nowMs,
      schedule: 0,
      phase: { kind: "waiting", step: 0, sinceMs: nowMs },
      marks: [],
      deviations: [],
    };
    return startedReply(run);
  }

  /** Calls to come, without reminders: whoever takes the tour may take their time. */
  function coming(): DueCue[] {
    if (!run) return [];
    return cuesOf(run)
      .filter(({ key, kind }) => kind !== "nudge" && !said.has(key))
      .map((cue, id) => ({ ...cue, id, madeAtMs: cue.dueAtMs }));
  }

  return {
    get stage() {
      if (!run) return isPlanned ? "planned" : "start";
      return isOver(run) ? "over" : run.phase.kind === "waiting" ? "waiting" : "running";
    },
    say(line, nowMs) {
      const parsed = parseLine(line, FORMS);
      if (!parsed.ok) return undefined;
      const { name, options } = parsed.value;
      if (name === "plan") {
        isPlanned = true;
        return plannedReply(1, plan, { wasRatio: false, bottleHolds: null, taken: null });
      }
      if (name === "run start") return run && !isOver(run) ? changedReply(run, nowMs) : start(nowMs);
      if (name === "run next") {
        const step = options.step === undefined ? null : Number(options.step);
        return change({ kind: "next", step, sure: options.sure === "yes", atMs: nowMs });
      }
      if (name === "run correct")
        return change({ kind: "poured", agoSeconds: Number.parseInt(options.ago ?? "20", 10), atMs: nowMs });
      if (name === "run stop") return change({ kind: "stop", reason: "", atMs: nowMs });
      return run && changedReply(run, nowMs);
    },
    nextCallAt: () => coming()[0]?.dueAtMs,
    callsUntil(nowMs) {
      const calls: GuideCall[] = [];
      for (let cue = coming()[0]; cue && cue.dueAtMs <= nowMs && run; cue = coming()[0]) {
        const before = run;
        said.add(cue.key);
        const settled = settle(before, [cue], cue.dueAtMs);
        for (const each of settled.said) {
          const { text, actions } = cueMessage(before, each, cue.dueAtMs);
          calls.push({
            atMs: cue.dueAtMs,
            text: `${text}\n_${nameOf(before)}_`,
            runs: [runNameOf(before)],
            actions,
          });
        }
        run = settled.run;
      }
      return calls;
    },
    views: () => (run && !isOver(run) ? [viewOf(run, "")] : []),
  };
}
