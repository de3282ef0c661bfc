import { type Context, defineCommand, UserError } from "../../define.ts";
import { waitingPlansOf } from "../../plan/ready.ts";
import { whoMay } from "../../who.ts";
import type { Plan } from "../../../store/shapes/plan.ts";
import { isTrial, TRIAL_SPEED } from "../../../store/shapes/run.ts";
import { isFilmPlan } from "../../../store/shapes/tray.ts";
import { freshRun, wantThread } from "../starting.ts";
import { bare, trialPlanOf } from "../trial.ts";
import { noTrialTime, trialGoing, trialStarted } from "../trial-words.ts";

export const runTrial = defineCommand({
  name: "run trial",
  summary: "Try a whole run at 60 times the speed: no film, no bath, nothing of it is kept",
  options: () => ({}),
  who: whoMay("run trial"),
  visibility: "private",
  handle(_, context) {
    const { stores, now, person, class: school } = context;
    const going = stores.runs.open(school.id, person.id).find(isTrial);
    if (going) return trialGoing(going, now);
    const run = stores.runs.add({
      ...freshRun(context, trialPlan(context)),
      speed: TRIAL_SPEED,
    });
    wantThread(context, run);
    return trialStarted(run);
  },
});

/** Of the person's own plan of today, else of the class's first times that make one. */
function trialPlan({ stores, class: school, person, now }: Context): Plan {
  const own = waitingPlansOf(stores, school.id, person.id, now).map(({ plan }) => plan);
  const film = own.find(isFilmPlan);
  if (film) return bare(film);
  for (const { sheet } of stores.sheets.list(school.id)) {
    const made = trialPlanOf(sheet, school.habits);
    if (made.ok) return made.value;
  }
  const { text, actions } = noTrialTime();
  throw new UserError("ERR_NO_SHEETS", text, actions);
}
