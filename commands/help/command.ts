import { waitingPlanOf } from "../plan/ready.ts";
import { withLeftOut } from "../unreadable.ts";
import { chatOf } from "../../store/shapes/chat-key.ts";
import { labelOf } from "../batch/batch-words.ts";
import { type Mark, reachedMarks } from "../batch/marks.ts";
import { type FirstDayFacts, firstDayFacts, nextFirstStep } from "../class/first-day.ts";
import { bellWarning } from "../plan/outlast-words.ts";
import { isSet, keysFor } from "../class/setup.ts";
import { WHO, whoMay } from "../who.ts";
import { type Context, defineCommand } from "../define.ts";
import { mayActAs } from "../../store/shapes/person.ts";
import { EVERY_ROLL } from "../../store/shapes/roll.ts";
import { viewOf } from "../run/view.ts";
import { type HelpFacts, nextStep } from "./next-step.ts";
import { helpReply } from "./reply.ts";

/** A roll is asked about while its owner may still remember. */
const ASKED_FOR_MS = 14 * 86_400_000;
/** The worst first. */
const URGENT: readonly Mark[] = ["exhausted", "out-of-date", "test-overdue", "replenish-due", "last-films"];

export const help = defineCommand({
  name: "help",
  summary: "The next sensible step for you now",
  options: () => ({}),
  who: whoMay("help"),
  visibility: "private",
  handle(_, context) {
    const names = Object.entries(WHO).filter(([, who]) => mayActAs(context.role, who));
    const firstDay = context.role === "teacher" ? firstDayFacts(context.stores, context.class.id) : undefined;
    const reply = helpReply(
      nextStep(factsOf(context, firstDay)),
      context.role,
      names.map(([name]) => name),
      context.now,
      firstDay,
    );
    return context.role === "teacher" ? withLeftOut(context, ["tank", "run", "habit"], reply) : reply;
  },
});

function factsOf(context: Context, firstDay: FirstDayFacts | undefined): HelpFacts {
  const { stores, class: school, person, role, now } = context;
  const runs = stores.runs.open(school.id, person.id).map((run) => viewOf(run, person.name));
  const own = { ...EVERY_ROLL, person: { id: person.id, name: null } };
  const { rolls, total } = stores.rolls.search(school.id, own, 5, 0);
  const unrated = rolls.find(
    ({ rating, outcome, endedAt }) =>
      rating === null && outcome === "finished" && now - endedAt < ASKED_FOR_MS,
  );
  return {
    role,
    runs: runs.toSorted((a, b) => Number(b.phase === "waiting") - Number(a.phase === "waiting")),
    plan: planOf(context),
    firstStep: (firstDay && nextFirstStep(firstDay)) ?? null,
    setupMissing: setupMissing(context),
    bottles: mayActAs(role, "aide") ? bottlesOf(context) : [],
    unratedRoll: unrated?.number ?? null,
    sheets: stores.sheets.list(school.id).length,
    rollsEver: total,
  };
}

function planOf({ stores, class: school, person, now }: Context): HelpFacts["plan"] {
  const stored = waitingPlanOf(stores, school.id, person.id, now);
  if (!stored) return null;
  return { number: stored.number, bellWarning: bellWarning(stored.plan, school, now) };
}

function setupMissing({ stores, class: school, here }: Context): number {
  const facts = {
    class: school,
    chat: chatOf(school.key),
    channelRef: stores.classes.channelRef(school.id),
    channelName: null,
    threads: null,
    missingPermissions: here?.missingPermissions ?? [],
    tanks: stores.tanks.list(school.id).length,
    sheets: stores.sheets.list(school.id).length,
    joinCode: null,
  };
  return keysFor(facts).filter((key) => !isSet(key, facts)).length;
}

function bottlesOf({ stores, class: { id }, now }: Context): HelpFacts["bottles"] {
  return stores.batches
    .standing(id)
    .flatMap((batch) =>
      reachedMarks(batch, stores.batches.lines(batch.id), now).map(({ mark }) => ({
        label: labelOf(batch),
        mark,
      })),
    )
    .filter(({ mark }) => URGENT.includes(mark))
    .sort((a, b) => URGENT.indexOf(a.mark) - URGENT.indexOf(b.mark));
}
