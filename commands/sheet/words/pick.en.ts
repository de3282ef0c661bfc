import { countOf } from "../../speech/wording.ts";

export const en = {
  noSheets:
    "This class has no developing times yet. A data sheet holds the maker's times for one film in one developer. An aide or the teacher adds one with `/sheet add`.",
  more: (count: number) => `${count} more`,
  several: (sheets: string) => `Several data sheets fit: ${sheets}. Say which developer and dilution.`,
  noPair: (film: string, count: number, sheets: string) =>
    `There is no data sheet for ${film} with that developer and dilution. There ${count === 1 ? "is" : "are"} ${sheets}.`,
  meant: (typed: string, names: readonly string[]) =>
    `There is no film ${typed}. Did you mean ${names.join(" or ")}?`,
  unknown: (typed: string, count: number) =>
    `There is no film ${typed}. See the ${countOf(count, "data sheet")} there are with \`/sheet list\`.`,
};
export type PickWords = typeof en;
