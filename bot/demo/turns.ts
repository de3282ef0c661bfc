import type { StepKind } from "../../store/shapes/plan.ts";

/* Who did what on the last evening of the invented class: films first, then prints. Nobody in it exists. */

/** What goes through the baths: a film in its tank, or prints along the trays. */
export interface Turn {
  readonly person: string;
  readonly afterMinutes: number;
  /** Before its plan is made. */
  readonly before?: readonly string[];
  readonly plan: string;
  /** Baths that stayed in otherwise than planned: longer where the next was not at hand, shorter where somebody hurried. */
  readonly seconds?: Partial<Record<StepKind, number>>;
  /** What its owner made of it afterwards. */
  readonly afterwards: readonly string[];
}

const LANTERN = "plan film:Lantern 400 developer:House MQ dilution:1+1";
const QUAY = "plan film:Quay 100 developer:House MQ dilution:1+1";

export const FILMS: readonly Turn[] = [
  {
    person: "Ines",
    afterMinutes: 0,
    plan: `${LANTERN} temp:20 tank:1`,
    afterwards: ["roll rate rating:4", "roll note note:Boats at low tide. Shadows hold."],
  },
  { person: "Tomas", afterMinutes: 2, plan: `${LANTERN} temp:20 tank:2`, afterwards: ["roll rate rating:3"] },
  {
    person: "Wanda",
    afterMinutes: 5,
    plan: `${LANTERN} temp:20 tank:3 ei:800`,
    seconds: { develop: 735 },
    afterwards: ["roll rate rating:3", "roll note note:Crane at night, one stop under on purpose."],
  },
  {
    person: "Bao",
    afterMinutes: 9,
    plan: `${QUAY} temp:20 tank:4`,
    afterwards: ["roll rate rating:5", "roll note note:Rope and rust, sharp to the corners."],
  },
  {
    person: "Ines",
    afterMinutes: 60,
    plan: `${LANTERN} temp:20 tank:1`,
    seconds: { fix: 50 },
    afterwards: [
      "roll fault look:milky place:everywhere cause:short-fixing",
      "roll note note:In a hurry before the bell, and out of the fixer before a minute was over.",
    ],
  },
  {
    person: "Runa",
    afterMinutes: 63,
    plan: `${LANTERN} temp:22 tank:2`,
    afterwards: ["roll note note:First roll ever."],
  },
];

/** What the room for prints has; said by the teacher before it is used. */
export const PRINTING = [
  "print enlarger enlarger:1 name:Window bench light:condenser lens:50 timer:0.5",
  "print paper paper:1 name:Harbour Gloss kind:resin-coated size:18x24 cm",
  "print paper paper:2 name:Harbour Fibre kind:fibre size:24x30 cm",
  "contact exposure enlarger:1 seconds:10 lighter:9 height:50 aperture:8 grade:2 paper:1",
] as const;
const INTO_TRAYS = "tray plan paper:X1 temp:20";
const ON_GLOSS = "paper:1 enlarger:1 aperture:8 developer:Dock Print 1+9 develop:1:00 temp:20";

/** The other half of the evening: a contact sheet, the frames picked on it, a strip, and prints of them. */
export const PRINTS: readonly Turn[] = [
  {
    person: "Ines",
    afterMinutes: 155,
    before: ["contact sheet roll:L1 paper:1 enlarger:1"],
    plan: INTO_TRAYS,
    afterwards: [
      `print log seconds:10 roll:L1 grade:2 height:50 title:Contact sheet ${ON_GLOSS}`,
      "roll frame roll:L1 frame:12 mark:best",
      "roll frame roll:L1 frame:7,21 mark:print",
    ],
  },
  {
    person: "Bao",
    afterMinutes: 158,
    plan: INTO_TRAYS,
    afterwards: [
      `print log seconds:16 roll:L4 frame:3 grade:2 height:40 title:Rope and rust ${ON_GLOSS}`,
      "print rate rating:2",
      "print fault look:dark cause:over-exposure",
      "print note note:Guessed the time, without a strip.",
    ],
  },
  {
    person: "Ines",
    afterMinutes: 175,
    before: ["print strip base:8 step:1/3 bars:5 grade:2 aperture:8 paper:1", "print read bar:3"],
    plan: INTO_TRAYS,
    afterwards: [
      `print log seconds:12.5 roll:L1 frame:12 grade:2 height:40 title:Boats at low tide ${ON_GLOSS}`,
      "print rate rating:3",
      "print note note:Bar 3 of the strip. The sky is empty.",
    ],
  },
  {
    person: "Ines",
    afterMinutes: 190,
    plan: INTO_TRAYS,
    afterwards: [
      "print log as:V3 burn:sky 1/2",
      "print rate rating:5",
      "print note note:The same, with the sky burned in.",
    ],
  },
];
