import { z } from "zod";
import { defineCommand, type Context, type Reply } from "../define.ts";
import * as words from "./reply.ts";

export const help = defineCommand({
  name: "help",
  summary: "The next sensible step for you now",
  options: z.object({}),
  who: "student",
  visibility: "private",
  handle: (_, context) => nextStep(context),
});

function nextStep({ stores, class: { id }, person }: Context): Reply {
  const runs = stores.runs.open(id, person.id);
  if (runs.length > 0) return say(words.runsGoing(runs.length), words.statusAction);
  const plan = stores.plans.latest(id, person.id);
  const run = stores.runs.latest(id, person.id);
  if (plan && (!run || plan.madeAt > run.startedAtMs))
    return say(words.planReady(plan.number), words.startAction(plan.number));
  if (stores.sheets.list(id).length === 0) return say(words.noSheetYet, words.sheetsAction);
  return say(words.noPlanYet, words.sheetsAction);
}

function say(text: string, action: typeof words.statusAction): Reply {
  return words.helpReply(`${text}\n${words.alwaysThere}`, [action], []);
}
