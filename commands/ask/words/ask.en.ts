import type { Intent } from "../rules.ts";

export const en = {
  /** Keys: what may have been meant. */
  meant: {
    time: "How long for a film?",
    start: "Start",
    next: "The next bath is in",
    poured: "I poured a while ago",
    where: "Where am I?",
    left: "How long left?",
    stop: "Stop the run",
    wait: "Can it wait?",
    undo: "I pressed the wrong button",
    warmer: "Another temperature",
    good: "Is the chemistry good?",
    age: "How old is it?",
    who: "Who has which tank?",
    look: "My film looks wrong",
    word: "What does a word mean?",
    waste: "Where does it go?",
    amount: "How much do I need?",
    films: "Which films are there?",
    printing: "Making prints",
    warmth: "How warm should it be?",
    baths: "How long is a bath?",
    agitate: "How often do I agitate?",
    missed: "I forgot to agitate",
    silent: "I hear no call",
    reel: "The film won't go on the reel",
    lid: "Can I open the tank?",
    leak: "The tank leaks",
    lights: "Can the light go on?",
    hang: "Where does it dry?",
    mishap: "Something went wrong in the tank",
    wear: "What do I wear?",
    smell: "It smells",
    exposed: "Light got in",
    leader: "The film is in its cassette",
    tint: "The bath has a colour",
    calls: "How do the calls go?",
    phone: "My phone or page is gone",
    turn: "When is it my turn?",
    expired: "My film is out of date",
    several: "Several films at once",
    faster: "Can it go faster?",
    worry: "Is my film spoilt?",
    harm: "First aid",
    hello: "Hello",
    thanks: "Thanks",
    help: "Help",
  } satisfies Record<Intent, string>,
  torn: "That can mean two things. Which?",
  unread: "I did not get that. Did you mean one of these?",
  timeAt: (time: string, index: number) => `${time}, EI ${index}.`,
  timeKey: (time: string, bath: string) => `${time} · ${bath}`,
  planKey: "Make the plan",
  twenty:
    "That is for 20 °C (68 °F). Measure your developer and say how warm it is: the time changes with it.",
  chooseSheet: "In which developer?",
  noTime: (sheet: string, temperature: string) => `${sheet} has no time at ${temperature}.`,
  whichFilm: "Which film is it?",
  noFilms: "There are no developing times yet. An aide or the teacher adds them.",
  sayFilm: "Or type its name and how warm the developer is, like “Lantern 400, 20 degrees”.",
  planFirst: "First a plan: it works out the time. Then you start it.",
  developed: (roll: string) =>
    `**Your newest film is in the log as ${roll}.** When it is dry: cut it, put it in its sleeve, then make a contact sheet.`,
  developedUnlogged:
    "**When it is dry: cut it and put it in its sleeve.** A film that I have called through to the end is in the log; then I lay out its contact sheet. A new one begins with a plan.",
  makePlan: "Make a plan",
  pressStart: (plan: string) =>
    `**Plan ${plan} is ready.** Press Start when the film is in the tank and the developer stands ready.`,
  start: "Start",
  noRun: "You have no film in a tank.",
  pressIt: "I change nothing by myself: press the button when it is so.",
  whenPoured: (run: string) => `**When did you pour, ${run}?** Press it, and every call of this bath moves.`,
  pouredAgo: (run: string, ago: string) => `${run}: poured ${ago} ago`,
  ago: (ago: string) => `${ago} ago`,
  nothingStopped:
    "Nothing is stopped yet. The bath keeps working whatever I do: stop only if you finish by the clock.",
  stopRun: (run: string) => `Stop ${run}`,
  cannotWait:
    "**A film in a bath goes on: there is no pause.** Before the next bath you may take a moment; the clock starts when you press.",
  undo: "**Nothing that is poured can be taken back.** But the clock can be put right: say when the bath really went in.",
  newTemperature: (run: string, temperature: string) => `${run}: ${temperature} now`,
  pressTemperature: (temperature: string) =>
    `**${temperature} in the tank?** Press it, and I work out the time that is left.`,
  measure: "**How warm is it now?** Measure in the tank and type it, like “21.5 degrees”.",
  warmIt: "Bring a bath to its temperature",
  noBottle: "No bottle of that is in the bottle book.",
  otherBottles: "All bottles",
  tankFree: (tank: number) => `**Tank ${tank} is free.**`,
  tankReported: (tank: number, condition: string) => `**Tank ${tank} is free**, but reported: ${condition}.`,
  tankUnknown: (tank: number) => `There is no tank ${tank}.`,
  /** `until`: when the step ends; null where it waits. */
  tankOf: (tank: number, person: string, step: string, until: string | null) =>
    `**Tank ${tank}: ${person}**, ${step}${until === null ? "" : ` until ${until}`}.`,
  freeTanks: (tanks: string) => `Free: ${tanks}.`,
  noFreeTank: "No tank is free.",
  noRoll: "You have no roll in the log yet. The cause is looked for with the roll's own record.",
  noTerm: "Which word? Ask like “what is stop bath”.",
  amountOf: (plan: string, total: string, parts: string) =>
    `**Plan ${plan}: ${total}** of developer, ${parts}.`,
  parts: (concentrate: string, water: string) => `${concentrate} and ${water} of water`,
  stockOnly: "undiluted",
  mixTotal: "It depends on the tank: a plan says it.",
  makeStrip:
    "**A test strip shows which time is right.** Say the shortest time: you get what to set the timer to, bar after bar. Then press the bar that is right.",
  stripKey: "Make a test strip",
  layContact:
    "**A contact sheet** shows all frames of a roll at their own size: you get how the strips lie on the paper, and how long to expose.",
  contactKey: "Contact sheet of my newest roll",
  noPrintToRepeat:
    "**You have no print in the log yet.** Write one in with its seconds, and it can be made again on any paper and size.",
  noSuchPrint: "None of your prints in the log is that one.",
  allPrints: "All prints in the log",
  againKey: "My newest print again",
  inTrays:
    "**It depends on paper and developer.** Plan the print: you get its time in each tray, and a call for each.",
  traysKey: "Plan a print",
  whiteLight:
    "**Only when all paper is covered: ask aloud.** Undeveloped and unfixed prints, open boxes and open film would be lost. An aide or the teacher announces white light.",
  whoInTrays: "Who is at the trays",
  /** `asked`: the time of the bath that was asked for; empty: of all. */
  trayTimes: (asked: string, paper: string, developer: string, temperature: string, all: string) =>
    asked === ""
      ? `**${all}**: ${paper} in ${developer} at ${temperature}.`
      : `**${asked}** for ${paper}. All of it in ${developer} at ${temperature}: ${all}.`,
  lampSafe: (lamp: string, time: string) =>
    `**${time} in all under ${lamp}**, by the class's own test. It adds up, before and after the exposure.`,
  lampUnsafe: (lamp: string) => `**${lamp} is not safe: don't open paper under it.**`,
  noLamp:
    "**Nobody has tested it yet.** Paper may lose its highlights unseen: keep it covered, and ask an aide to test the lamp.",
  lampAndFilm: "That is for paper. Load film in total darkness: no safelight at all.",
  printing: "**What would you like to do?** First a strip, then the print, then the trays.",
  printLooks: "**Something wrong with a print?** Its cause is looked for with the print's own record.",
  printDark: "**Too dark: give it less light.** Half the time is one stop less; a test strip shows how much.",
  printPale:
    "**Too pale: give it more light,** and leave it in the developer for the whole time. Twice the time is one stop more; a test strip shows how much.",
  whichGrade:
    "**Begin with grade 2.** For a flat negative take a harder one (3 to 4), for a hard one a softer (0 to 1). Measure the negative, and I name the grade.",
  gradeKey: "Grade from a measured negative",
  printHard: "**Only black and white, little grey: take a softer grade.** Then a test strip, for the time.",
  printFlat:
    "**No real black or white: take a harder grade,** and leave it in the developer for the whole time. Then a test strip, for the time.",
  printUnlogged:
    "**Write the print into the log first,** with its seconds: then its cause is looked for with its own record. Or begin with a test strip.",
  printFault: "My newest print looks wrong",
  hello: "Hello. I keep the time of your film and call you at every step.",
  thanks: "You are welcome.",
  cautions: "All cautions",
};
export type AskWords = typeof en;
