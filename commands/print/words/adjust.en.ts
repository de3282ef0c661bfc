import type { Basis, PartKind } from "../adjust.ts";

export const en = {
  parts: {
    aperture: "aperture",
    grade: "grade",
    paper: "paper",
    height: "head",
    lens: "lens to paper",
    size: "size",
    times: "enlarged",
    meter: "meter",
    density: "density",
    dry: "dry-down",
  } satisfies Record<PartKind, string>,
  change: (from: string, to: string) => `${from} to ${to}`,
  percent: (percent: number) => `${percent} %`,
  lot: (lot: string) => `(lot ${lot})`,
  times: (times: string) => `${times}x`,
  part: (name: string, change: string, stops: string, basis: string) =>
    `${name} ${change}: ${stops} (${basis})`,
  bases: {
    series: "exact, by the series of f-numbers",
    square: "light falls with the square of the distance",
    law: "enlargement plus 1, squared",
    area: "by the areas of the prints",
    measured: "measured by the class",
    rule: "published: 4 to 5 want twice the light",
    speed: "by the speeds of the papers",
    unknown: "not known, nothing allowed for",
    meter: "as the meter reads",
    density: "10 to the difference",
    dry: "as given",
  } satisfies Record<Basis, string>,
  lawDiffuse: "This law holds for diffuse light, as your enlarger has.",
  lawCondenser: "**A condenser's light does not keep to this law**: take it as a start and make a strip.",
  lawEither: "This law holds for diffuse light. With a condenser it does not: make a strip there.",
  rival: (seconds: string) =>
    `The plain rule of areas says ${seconds}: a little too much, most with small prints.`,
  areaOnly:
    "With `negative:` I would know how much is enlarged. The areas alone give a little too much light: make a strip.",
  filtersDiffer:
    "Sources differ on filters: equal speed holds only near the maker's light. Another printer's own light wanted 1.22 times from 2 to 1 1/2. Measure yours: `/print measure`.",
  unknownSpeed:
    "Of one of the two papers no speed is known: make a strip on both and tell me with `/print measure`.",
  dryPublished: "Published trials have 8 to 12 % for dry-down, one goes to 15. Measure your paper's.",
  fromWhat: (option: string) =>
    `Say what \`${option}\` was as well, like \`${option}:… to …\`, or name a print to go on from.`,
  oneEnlargement: (options: string) => `${options} all say how large the picture is. One of them is enough.`,
  headLow: (least: string, lensMm: number) =>
    `A ${lensMm} mm lens draws sharp from ${least} on. \`height\` is from the negative to the paper: measure it again.`,
};
export type AdjustWords = typeof en;
