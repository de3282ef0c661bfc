import type { Mark } from "../../batch/marks.ts";
import { countOf } from "../../speech/wording.ts";

const more = (others: number): string => (others > 0 ? ` (and ${countOf(others, "run")} more)` : "");

export const en = {
  /** `title`: the step's; `now`: what to do in it; `others`: this person's further runs. */
  waiting: (run: string, title: string, now: string, others: number) =>
    `**${run} waits for you: ${title.toLowerCase()}.** ${now}${more(others)}`,
  going: (run: string, title: string, now: string, others: number) =>
    `**${run}, ${title.toLowerCase()}.** ${now} I call you when it is time.${more(others)}`,
  planReady: (plan: string) =>
    `**Your plan ${plan} is ready.** Load the film in total darkness, fill a measure with developer, then press Start.`,
  firstDay: (title: string, how: string) => `**Next before the first film: ${title}.** ${how}`,
  notSetUp: (parts: number) =>
    `**The class is not set up yet:** ${countOf(parts, "part")} to go, a minute or two.`,
  bottle: {
    "test-overdue": (label: string) => `**${label}** is due for a test with a scrap of film.`,
    "replenish-due": (label: string) => `**${label}** wants its replenisher: how much, its status says.`,
    exhausted: (label: string) => `**${label}** is exhausted: nobody must use it. Collect it and mix fresh.`,
    "out-of-date": (label: string) =>
      `**${label}** is out of date. Test it or throw it away as local rules say, and mix fresh.`,
    "last-films": (label: string) => `**${label}** is nearly exhausted. Mix the next one.`,
    tired: (label: string) => `**${label}** is getting tired. Keep an eye on it.`,
    "out-of-date-soon": (label: string) => `**${label}** goes out of date soon. Mix the next one in time.`,
  } satisfies Record<Mark, (label: string) => string>,
  rate: (roll: string) =>
    `**How did ${roll} come out?** Hold the dry film before a light and rate it, 1 (unusable) to 5 (prints easily). If something looks wrong, look for its cause.`,
  noSheet: "**The class has no developing times yet.** An aide or the teacher adds them with `/sheet add`.",
  firstPlan:
    "**Begin with a plan.** Measure how warm the developer is, then say which film and how warm:\n`/plan film:… temp:20`\nI work out the times; then I call you at every step. Load film in total darkness: phones, watches and red lights off.",
  nextPlan:
    "**Make a plan** for the next film: `/plan film:… temp:20`\nOr go on with a developed one: its contact sheet, then a test strip and the print.",
  whereAmI: "Where am I?",
  start: "Start",
  setUp: "Set up the class",
  allBottles: "All bottles",
  looksWrong: "Something looks wrong",
  makePlan: "Make a plan",
  contactSheet: "Contact sheet of my newest roll",
  filmsAndDevelopers: "Films and developers",
  always: {
    student: [
      "`/run status` (where your film is)",
      "`/roll find` (the log)",
      "`/contact sheet`, `/print strip` and `/tray plan` (prints)",
      "`/sheet list` (films and developers)",
      "`/caution` (safety and waste)",
    ],
    aide: ["`/batch status` (bottles)"],
    teacher: ["`/class board`, `/class turns`, `/class say`"],
  },
  alwaysThere: (list: string) =>
    `Always there: ${list}. Or ask in your own words: \`how long left\`. What I keep about you: \`/mine show\`.`,
};
export type HelpWords = typeof en;
