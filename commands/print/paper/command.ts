import { z } from "zod";
import { type Paper, PAPER_KINDS, paperSchema } from "../../../store/shapes/paper.ts";
import { defineCommand, UserError } from "../../define.ts";
import { numberIn, textIn, wholeIn } from "../../speech/shaped.ts";
import { setAsideNumber } from "../../unreadable.ts";
import { whoMay } from "../../who.ts";
import { completePaper, findPaper, paperOption, readBy } from "../options.ts";
import { parseSize, USUAL_SIZE } from "../sizes.ts";
import { parseGrade } from "../stops.ts";
import * as words from "./reply.ts";

const { shape } = paperSchema;

export const printPaper = defineCommand({
  name: "print paper",
  summary: "Name a box of paper: kind, size, grade, lot, speed; or set anew what is known of it",
  options: () => ({
    paper: paperOption.describe("The box's number, as it is labelled: 2 or X2"),
    name: textIn(shape.name).optional().describe("What is on the box"),
    kind: z.enum(PAPER_KINDS).optional().describe("What the paper is made of"),
    size: readBy(parseSize).optional().describe("Like 18x24 cm or 8x10 in"),
    grade: readBy(parseGrade)
      .optional()
      .describe("Of a graded paper, like 2; leave it out for variable contrast"),
    lot: textIn(shape.lot).optional().describe("The maker's number on the box"),
    speed: numberIn(z.number().min(1).max(5000))
      .optional()
      .describe("ISO speed from the box or data sheet, like 200"),
    dry: wholeIn(shape.dryDownPercent)
      .optional()
      .describe("How much darker it dries, per cent, if you measured it: 10"),
    remove: z.enum(["yes"]).optional().describe("Take it off the list"),
  }),
  who: whoMay("print paper"),
  visibility: "private",
  complete: { paper: completePaper },
  handle({ paper: number, remove, ...given }, context) {
    const { stores, class: school } = context;
    if (remove === "yes") {
      const setAside = setAsideNumber(context, "paper", number);
      if (setAside) return setAside;
      findPaper(context, number);
      stores.papers.remove(school.id, number);
      return words.removedReply(number);
    }
    const known = stores.papers.find(school.id, number);
    if (!known && given.name === undefined) throw new UserError("ERR_NO_PAPER_NAME", words.noName(number));
    const paper = paperOf(number, given, known);
    stores.papers.save(school.id, paper);
    return words.savedReply(paper, hasNewLot(given.lot, known), isGuessed(given, known));
  },
});

interface Given {
  readonly name?: string | undefined;
  readonly kind?: Paper["kind"] | undefined;
  readonly size?: Paper["size"] | undefined;
  readonly grade?: number | undefined;
  readonly lot?: string | undefined;
  readonly speed?: number | undefined;
  readonly dry?: number | undefined;
}

/** What was measured of another lot, or of another paper, says nothing of this one. */
function paperOf(number: number, given: Given, known: Paper | undefined): Paper {
  const isOther =
    hasNewLot(given.lot, known) ||
    (known !== undefined && given.name !== undefined && given.name !== known.name);
  const kept = isOther ? undefined : known;
  return {
    number,
    name: given.name ?? known?.name ?? "",
    kind: given.kind ?? known?.kind ?? "resin-coated",
    gradeTenths: given.grade ?? known?.gradeTenths ?? null,
    size: given.size ?? known?.size ?? USUAL_SIZE,
    lot: given.lot ?? kept?.lot ?? null,
    speed:
      given.speed === undefined
        ? (kept?.speed ?? null)
        : { tenths: Math.round(given.speed * 10), basis: "box" },
    dryDownPercent: given.dry ?? kept?.dryDownPercent ?? null,
    filters: kept?.filters ?? [],
  };
}

const hasNewLot = (lot: string | undefined, known: Paper | undefined): boolean =>
  known !== undefined && lot !== undefined && lot !== known.lot;

const isGuessed = ({ kind, size }: Given, known: Paper | undefined): boolean =>
  known === undefined && (kind === undefined || size === undefined);
