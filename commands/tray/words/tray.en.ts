import type { PaperKind } from "../../../store/shapes/paper.ts";
import { countOf, saySeconds } from "../../speech/wording.ts";

export const en = {
  noLines: "The class has no line of trays yet. An aide or the teacher sets one up: `/tray set developer:…`.",
  unknownLine: (number: number, known: string) =>
    `There is no line of trays ${number}. The class has ${known}.`,
  prints: (count: number) => countOf(count, "print"),
  papers: { "resin-coated": "resin-coated paper", fibre: "fibre paper" } satisfies Record<
    PaperKind,
    string
  > as Record<PaperKind, string>,
  noSuchPaper: (typed: string) =>
    `There is no paper ${typed}. Write resin-coated or fibre, or the number of your box, like X2: \`/print gear\` lists them.`,
  cautions: {
    WARN_TRAY_COLD: (temperature: string) =>
      `The developer is at ${temperature}: under 16 °C (60 °F) hydroquinone hardly works. Warm it first.`,
    WARN_TRAY_WARM: (temperature: string) =>
      `The developer is at ${temperature}: warm developer fogs the paper and stains it yellow. Cool it.`,
    WARN_TRAYS_APART: (degrees: string) =>
      `The trays are ${degrees} °C apart: keep them within 2.8 °C (5 °F) of each other.`,
    WARN_LEAST_TIME: (seconds: number) =>
      `The developer's own time is shorter than the class's trial allows: ${saySeconds(seconds)} is what full black needs.`,
    WARN_STAIN: (seconds: number) => `From ${saySeconds(seconds)} on it began to stain in the class's trial.`,
    WARN_ONE_BATH:
      "One fixing bath for prints that are to last: it ends at 0.5 g of silver in a litre, long before it looks exhausted. Two baths, one after the other, last longer.",
    WARN_SILVER_UNKNOWN: (batch: string, low: string, high: string) =>
      `Nobody has tested the silver in ${batch}: by its prints it carries ${low} to ${high} g/l, a rule of thumb. For prints that last, measure it with a silver test strip: \`/batch test\`.`,
    WARN_FILM_CALLS: (run: string) =>
      `Your film ${run} calls you before these prints are fixed: they can't wait then, and nor can the film. Ask somebody to move the prints.`,
    NOTE_DRYER:
      "Resin-coated paper never goes into a hot drum dryer: it melts on. Hang it or lay it on a rack.",
    NOTE_TRAYS:
      "Gloves on, a pair of tongs for each bath and never in another: fingers warm the baths and carry them on.",
  },
};
export type TrayWords = typeof en;
