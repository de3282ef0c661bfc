import { countOf } from "../../speech/wording.ts";

export const en = {
  nothingToLay: "These rolls have no frame that could be laid: all are lost, or they were never cut.",
  tooManyRolls: (most: number) =>
    `At most ${most} rolls at once. Make a contact sheet of some of them first.`,
  paperSmall: (paper: string, widthMm: number, heightMm: number) =>
    `**${paper} is too small**: one strip needs ${widthMm} x ${heightMm} mm. Name larger paper (\`size:11x14\`), or cut shorter strips.`,
  noEnlarger:
    "The layout, without an exposure: no enlarger is in the list yet. An aide or the teacher names one with `/print enlarger`.",
  whichEnlarger: "Which enlarger? Name it for the exposure: `enlarger:1`.",
  noStanding: (name: string) =>
    `**${name} has no standing exposure yet**: make a strip with clear film edge, then \`/contact exposure\`.`,
  expose: (setting: string, name: string) => `${setting}: the standing exposure of ${name}.`,
  corrected: (setting: string, before: string, stops: string, name: string) =>
    `${setting}: ${stops} from the standing ${before} of ${name}.`,
  untried: "That standing exposure was worked out, not tried.",
  short: "Under 2 s a lamp is still glowing up: better a smaller aperture.",
  laid: (rolls: string, strips: number, paper: string, sheets: number, isWide: boolean) =>
    `${rolls}: ${countOf(strips, "strip")} on ${sheets === 1 ? "one sheet" : `${sheets} sheets`} of ${paper}, ${isWide ? "long side across" : "upright"}. Emulsion down, on the paper's emulsion, under clean glass.`,
  sleevesIn:
    "Through the sleeve it gets a little softer; what a sleeve adds is our estimate (12 mm along, 6 mm across): lay yours down first.",
  sleevesOut: "Strips lie edge to edge. Hold them by their edges.",
  drawn: (most: number) => `The first ${most} sheets are drawn.`,
  marks: (roll: string, marks: string) => `${roll}: ${marks}.`,
  photo: "Photo of the contact sheet",
  picture: {
    title: (paper: string, number: number, of: number) =>
      `Contact sheet, ${paper}${of === 1 ? "" : `, ${number} of ${of}`}`,
    strips: (roll: string, strips: string, marks: number) =>
      `${roll} frames ${strips}${marks === 0 ? "" : `, ${countOf(marks, "mark")}`}`,
    legend: { best: "best", print: "to print", unsharp: "not sharp" },
  },
};
export type ContactWords = typeof en;
