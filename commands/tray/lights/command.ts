import { z } from "zod";
import { isTrayRun, type TrayRun, waitsToBegin } from "../../../store/shapes/run.ts";
import { isTrayPlan } from "../../../store/shapes/tray.ts";
import { waitingPlansOf } from "../../plan/ready.ts";
import { owe } from "../../owe.ts";
import { defineCommand, UserError, type Context } from "../../define.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber } from "../../speech/wording.ts";
import { durationIn } from "../../speech/quantity.ts";
import { whoMay } from "../../who.ts";
import { isPaperOpen } from "../places.ts";
import * as words from "./reply.ts";

const WARNING_SECONDS = { least: 10, most: 600 };
const USUAL_SECONDS = 60;
/** Whoever is warned may call to wait for so long after the light was to come. */
const ANSWER_MS = 15 * 60_000;

export const trayLights = defineCommand({
  name: "tray lights",
  summary: "White light is to come on: who has paper open? Warns all at the trays, or says who is not ready",
  options: () => ({
    in: durationIn(WARNING_SECONDS).default(USUAL_SECONDS).describe("How long from now, like 60 s"),
    sure: z.enum(["yes", "no"]).default("no").describe("I have seen that all paper is covered"),
  }),
  who: whoMay("tray lights"),
  visibility: "private",
  handle({ in: seconds, sure }, context) {
    const { stores, class: school, now, person } = context;
    const open = stores.runs.open(school.id).filter(isTrayRun).filter(isInLight);
    if (open.length > 0 && sure !== "yes")
      throw new UserError("ERR_PAPER_OPEN", words.paperOpen(open.map((run) => openFact(context, run))), [
        {
          label: words.allCovered(),
          line: makeLine("tray lights", { in: `${seconds} s`, sure: "yes" }),
          weight: "danger",
        },
      ]);
    const people = peopleAtTrays(context).filter((id) => id !== person.id);
    const say = stores.says.add(school.id, "trays", words.warningBody(seconds), now);
    for (const [part, personId] of people.entries())
      owe(
        stores,
        {
          of: { kind: "say", say: say.id, part },
          classId: school.id,
          personId,
          by: person.id,
          say: () => ({
            text: words.warning(now + seconds * 1000, seconds),
            actions: [{ label: words.waitLabel(), line: "tray wait", weight: "danger" }],
          }),
        },
        now,
      );
    return words.lightsReply(say.number, people.length, seconds, now);
  },
});

/** In the first trays, or on its way between them. */
const isInLight = (run: TrayRun): boolean => isPaperOpen(run) && !waitsToBegin(run);

function openFact({ stores, class: { id } }: Context, run: TrayRun): words.OpenPaper {
  return {
    run: makeNumber("run", run.number),
    person: stores.members.find(id, run.personId)?.name ?? "",
    untilMs: fixedAtMs(run),
  };
}

/** When the last of its fixing baths before the wash begins to be over; null: it waits for somebody. */
function fixedAtMs({ phase, plan }: TrayRun): number | null {
  if (phase.kind !== "running") return null;
  const fixed = plan.steps.findIndex(({ kind }) => kind === "fix");
  const rest = plan.steps.slice(phase.step + 1, fixed + 1);
  return phase.endsAtMs + rest.reduce((sum, { seconds }) => sum + (seconds ?? 0) * 1000, 0);
}

/** With prints in the trays, or a plan for some: theirs may lie on the easel. */
function peopleAtTrays({ stores, class: { id }, now }: Context): string[] {
  const inTrays = stores.runs
    .open(id)
    .filter(isTrayRun)
    .map(({ personId }) => personId);
  const planned = stores.members.list(id).flatMap(({ personId }) => {
    const waiting = waitingPlansOf(stores, id, personId, now);
    return waiting.some(({ plan }) => isTrayPlan(plan)) ? [personId] : [];
  });
  return [...new Set([...inTrays, ...planned])];
}

export const trayWait = defineCommand({
  name: "tray wait",
  summary: "White light was announced: tell whoever asked that your paper is open",
  options: () => ({}),
  who: whoMay("tray wait"),
  visibility: "private",
  handle(_, context) {
    const { stores, class: school, now, person } = context;
    const newest = stores.says.newest(school.id);
    const askedBy = newest ? stores.says.reached(newest).find(({ by }) => by !== null)?.by : undefined;
    if (newest?.audience !== "trays" || !askedBy || now - newest.saidAt > ANSWER_MS)
      throw new UserError("ERR_NO_LIGHTS", words.nobodyAsked());
    const part = stores.members.list(school.id).findIndex(({ personId }) => personId === person.id);
    owe(
      stores,
      {
        of: { kind: "lights-wait", say: newest.id, part: Math.max(0, part) },
        classId: school.id,
        personId: askedBy,
        say: () => ({ text: words.waitText(person.name) }),
      },
      now,
    );
    return words.waitReply(stores.members.find(school.id, askedBy)?.name ?? "");
  },
});
