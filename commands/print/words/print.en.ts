import type { Light } from "../../../store/shapes/enlarger.ts";
import type { FIGURE_BASES, PaperKind } from "../../../store/shapes/paper.ts";
import type { Local } from "../../../store/shapes/print.ts";
import type { PrintFaultCode } from "../stops.ts";

type Kind = "enlarger" | "paper";

export const en = {
  faults: {
    ERR_NO_SECONDS: (typed) => `I can't read ${typed} as an exposure. Write it like 8, 12.5 s or 1:30.`,
    ERR_NO_STOPS: (typed) => `I can't read ${typed} as stops. Write it like 1/3, 1/2 or 1 1/2.`,
    ERR_NO_GRADE: (typed) => `There is no grade ${typed}. Grades are 00, 0 to 5 and the halves: 2 1/2.`,
    ERR_NO_SIZE: (typed) =>
      `I can't read ${typed} as a size of paper. Write it like 8x10, 18x24 cm or 200x250 mm.`,
    ERR_NO_APERTURE: (typed) => `I can't read ${typed} as an f-number. Write it like 8 or 5.6.`,
    ERR_NO_DISTANCE: (typed) => `I can't read ${typed} as a height. Write 5 cm to 5 m, like 42 cm or 16 in.`,
    ERR_NO_NUMBER: (typed) => `I can't read ${typed} here. Write a number, like 1.5.`,
    ERR_NO_LOCAL: (typed) =>
      `I can't read ${typed}. Write each place and how much, like sky 1/2, corner 3 s, edge 20 %; at most 12.`,
    ERR_NO_BAR: (typed) => `I can't read ${typed} as a bar. Write 4, or 4-5 for between the two.`,
    ERR_NO_RANGE: (typed) =>
      `I can't read ${typed} as a negative's range. Write 0.20 to 2.50, like 1.05, or in stops, like 3 1/2 stops.`,
  } satisfies Record<PrintFaultCode, (typed: string) => string>,
  unknown: {
    enlarger: (name: string, have: string) => `There is no enlarger ${name}. The class has ${have}.`,
    paper: (name: string, have: string) => `There is no box of paper ${name}. The class has ${have}.`,
  } satisfies Record<Kind, (name: string, have: string) => string>,
  unknownAndNone: {
    enlarger: (name: string) =>
      `There is no enlarger ${name}: the class has named none yet. The teacher does it with \`/print enlarger\`.`,
    paper: (name: string) =>
      `There is no box of paper ${name}: the class has named none yet. An aide does it with \`/print paper\`.`,
  } satisfies Record<Kind, (name: string) => string>,
  lights: { condenser: "condenser", diffuse: "diffuse light" } satisfies Record<Light, string>,
  kinds: { "resin-coated": "resin-coated", fibre: "fibre" } satisfies Record<PaperKind, string>,
  variable: "variable contrast",
  noFilter: "no filter",
  grade: (grade: string) => `grade ${grade}`,
  stops: (stops: string, isOne: boolean) => `${stops} ${isOne ? "stop" : "stops"}`,
  enlarger: (number: string, name: string, light: string, lensMm: number, step: string) =>
    `**${number}** ${name}: ${light}, ${lensMm} mm lens, timer in steps of ${step}`,
  lot: (lot: string) => `lot ${lot}`,
  bases: { box: "from its box", measured: "measured" } satisfies Record<
    (typeof FIGURE_BASES)[number],
    string
  >,
  speed: (iso: string, basis: string) => `speed ${iso} (${basis})`,
  dryDown: (percent: number) => `dries ${percent} % darker`,
  filters: (count: number) => `${count === 1 ? "1 filter" : `${count} filters`} measured`,
  localName: {
    burn: (place: string, stops: string) => `burn ${place} ${stops}`,
    dodge: (place: string, stops: string) => `dodge ${place} ${stops}`,
  } satisfies Record<Local["kind"], (place: string, stops: string) => string>,
  local: {
    burn: (place: string, stops: string, seconds: string) => `burn ${place} ${stops}: **${seconds}** more`,
    dodge: (place: string, stops: string, seconds: string) =>
      `dodge ${place} ${stops}: hold back **${seconds}**`,
  } satisfies Record<Local["kind"], (place: string, stops: string, seconds: string) => string>,
  tooMuchLocal: (place: string) =>
    `${place}: that is more than can be held back or is ever burned in. Write stops, like 1/3.`,
  tooManyLocals: "Twelve places in one print are enough. Leave some out.",
  gear: "Enlargers and papers",
};
export type PrintWords = typeof en;
