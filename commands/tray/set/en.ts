import type { TrayLine } from "../../../store/shapes/tray-line.ts";
import { saySeconds } from "../../speech/wording.ts";

export const en = {
  busy: (number: number) =>
    `Prints are in the trays of line ${number}. Take the line off the list once they are out.`,
  noName: "Name the paper developer of this line: `developer:`, as on its pack.",
  tooMany: (most: number) => `The class has ${most} lines of trays, which is all there is room for.`,
  removed: (number: number) => `Line ${number} is gone from the list.`,
  notThere: (number: number) => `There was no line ${number}.`,
  saved: (number: number, bath: string, rc: number, fibre: number, at: string) =>
    `**Trays ${number}**: ${bath}, resin-coated **${saySeconds(rc)}**, fibre **${saySeconds(fibre)}** at ${at}.`,
  places: ({ developPlaces, stopPlaces, fixPlaces, washPlaces, baths, stop, drainSeconds }: TrayLine) =>
    `Prints of 8x10 in at once: developer ${developPlaces}, ${stop === "acid" ? "stop bath" : "rinse"} ${stopPlaces}, ${baths === 2 ? "each of two fixers" : "fixer"} ${fixPlaces}, wash ${washPlaces}. Lifted out ${saySeconds(drainSeconds)} before the end, to drain.`,
  per10: (factor: string) => `Its time follows the temperature by a factor of ${factor} in 10 °C.`,
  factor: (factor: string) => `Prints are developed for ${factor} times their first appearance.`,
  usual:
    "These times are only the usual ones: give the maker's with `rc:` and `fibre:`, and find the least time for full black (`/tray black`).",
  next: "Next: mix its baths, each with its label: `/batch mix kind:paper-developer`, `kind:paper-stop`, `kind:paper-fixer`.",
  makePlan: "Plan a print",
};
export type SetWords = typeof en;
