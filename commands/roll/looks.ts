/* What is seen on the negatives, and the few questions that tell causes apart. The words are in fault-reply.ts. */

export const LOOKS = [
  "thin",
  "dense",
  "flat",
  "contrasty",
  "blank",
  "milky",
  "coloured",
  "stained",
  "fogged",
  "edge-streaks",
  "hole-streaks",
  "run-streaks",
  "patchy",
  "blank-patches",
  "round-spots",
  "specks",
  "crescents",
  "drying-marks",
  "lines",
  "wrinkled",
  "frilled",
  "reversed",
] as const;
export type Look = (typeof LOOKS)[number];

/** What is asked first, so that nobody has to choose among so many: how it differs from a good negative. */
export const LOOK_GROUPS = {
  light: ["thin", "flat", "blank"],
  dark: ["dense", "contrasty", "fogged"],
  marks: [
    "edge-streaks",
    "hole-streaks",
    "run-streaks",
    "patchy",
    "blank-patches",
    "round-spots",
    "specks",
    "crescents",
    "drying-marks",
    "lines",
  ],
  colour: ["milky", "coloured", "stained", "wrinkled", "frilled", "reversed"],
} as const satisfies Record<string, readonly Look[]>;
export type LookGroup = keyof typeof LOOK_GROUPS;
export const LOOK_GROUP_NAMES = Object.keys(LOOK_GROUPS) as readonly LookGroup[];

/** The edge print: names and numbers that the maker exposed on the border. They show what the developer did. */
export const EDGES = ["dark", "faint", "none"] as const;
export type Edge = (typeof EDGES)[number];

/** The border outside and between the frames. */
export const MARGINS = ["clear", "grey"] as const;
export type Margin = (typeof MARGINS)[number];

/** How far it goes. */
export const EXTENTS = ["everywhere", "patches"] as const;
export type Extent = (typeof EXTENTS)[number];

export interface Answers {
  readonly look: Look;
  readonly edge: Edge | null;
  readonly margin: Margin | null;
  readonly place: Extent | null;
}

export type Question = "edge" | "margin" | "place";

const QUESTION_OF: Partial<Record<Look, Question>> = {
  thin: "edge",
  dense: "edge",
  flat: "edge",
  contrasty: "edge",
  blank: "edge",
  fogged: "margin",
  "edge-streaks": "margin",
  milky: "place",
  coloured: "place",
  stained: "place",
};

/** The question worth asking next; undefined where the look alone says enough. */
export function questionFor(answers: Answers): Question | undefined {
  const question = QUESTION_OF[answers.look];
  return question !== undefined && answers[question] === null ? question : undefined;
}
