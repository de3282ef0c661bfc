import type { Task } from "../tasks.ts";

type Lines = Readonly<Record<Task, readonly string[]>>;

const TITLES: Readonly<Record<Task, string>> = {
  mixing: "Mixing chemistry",
  developing: "Developing",
  fixing: "Fixing",
  printing: "Trays, dryers and light",
  waste: "Waste",
  spill: "Spills and first aid",
};

// Sources: US Army T.O. 33B-1-1 (acid into water); Anchell, The Darkroom Cookbook, 3rd ed., p. 171 (acids and bleach);
// NIOSH pocket guide (hydroquinone: skin sensitiser; sulfur dioxide); university and school safety guidance (gloves,
// eyewear, no food, ventilation of about 10-12 air changes an hour, no powdered developer near anyone pregnant).
const LINES: Lines = {
  mixing: [
    "Gloves and splash goggles on. Window or fan on: about 10 air changes an hour.",
    "Acid into water, never water into acid.",
    "Never bring acid and household bleach together: it gives off harmful gas.",
    "Powders: no draught, no breathing over the bag, and not near anyone pregnant.",
    "Label every bottle: what, when, by whom. Never a drinks bottle.",
  ],
  developing: [
    "Load film in total darkness: phones, watches and red lights off.",
    "Gloves on: developing agents can make the skin allergic for life.",
    "Nothing to eat or drink in the room. Hands washed before you leave it.",
    "In the eye: rinse with running water for 15 minutes, call the teacher at once.",
  ],
  fixing: [
    "Fixer goes back into its bottle: it is used again, and it carries silver.",
    "Acid fixer and stop bath smell of sulfur dioxide or vinegar: keep the air moving. With asthma, tell the teacher first.",
  ],
  // US Navy drafting manual (hands in trays); school guidance (rubber gloves, tongs); club rules (a pair for each bath, four
  // people, covered trays, no paper towels on acid); US Army SS0509-8 (a drum dryer runs at 82 °C, no resin-coated paper).
  printing: [
    "Tongs, not fingers: a pair for each tray, never in another. Rubber gloves on at the developer.",
    "Cover trays that nobody uses, fan on. In a small room at most four people.",
    "Carry no full tray: ladle or siphon it out. Wipe up acid with much water, not with a paper towel.",
    "A fibre dryer is hot (drum dryers run at 82 °C, 180 °F): hands off the drum, no resin-coated paper into it, and unplug it after use.",
    "Before white light: boxes closed, nothing on the easels, and call it out. `/tray lights` warns all at the trays.",
  ],
  waste: [
    "Used fixer carries silver: collect it, never pour it away.",
    "Other baths: into the waste jug or the drain your class uses for them. Local rules decide, and a septic tank is not a sewer.",
    "Don't mix wastes: acid into fixer sets gas free.",
  ],
  spill: [
    "Say it aloud, so that nobody slips. Gloves on, wipe up, rinse with much water.",
    "On the skin: rinse for several minutes. In the eye: 15 minutes of running water, and call the teacher at once.",
    "Swallowed: do not make them vomit. Call the poison centre or the emergency number, with the bottle in your hand.",
  ],
};

export const en = {
  titles: TITLES,
  lines: LINES,
  defer:
    "The label on the bottle, its safety data sheet and your school's rules come first. If they differ from this, follow them and ask the teacher.",
};
export type ReplyWords = typeof en;
