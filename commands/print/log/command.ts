import { z } from "zod";
import {
  frameSchema,
  type NewPrint,
  noteSchema,
  type Print,
  type PrintBody,
  printBodySchema,
  titleSchema,
} from "../../../store/shapes/print.ts";
import { defineCommand, type Context, UserError } from "../../define.ts";
import { durationIn, temperatureIn } from "../../speech/quantity.ts";
import { textIn } from "../../speech/shaped.ts";
import { parseNumber } from "../../speech/wording.ts";
import { whoMay } from "../../who.ts";
import { completePrint, findPrint } from "../find-print.ts";
import { localsFrom } from "../local-options.ts";
import { parseLocals } from "../locals.ts";
import {
  completeEnlarger,
  completePaper,
  enlargerFor,
  enlargerOption,
  findPaper,
  paperOption,
  readBy,
} from "../options.ts";
import { parseSize } from "../sizes.ts";
import { parseAperture, parseDistance, parseExposure, parseGrade } from "../stops.ts";
import * as words from "./reply.ts";

const { shape } = printBodySchema;

export const printLog = defineCommand({
  name: "print log",
  summary: "Write a print into the log: exposure, grade, paper, burns and dodges, which frame of which roll",
  options: () => ({
    seconds: readBy(parseExposure).optional().describe("The exposure in seconds, like 12.5"),
    as: z
      .string()
      .min(1)
      .max(12)
      .optional()
      .describe("Made as this print, like V7: what you leave out is taken from it"),
    title: textIn(titleSchema).optional().describe("What is on it"),
    roll: z.string().min(1).max(12).optional().describe("Which roll the negative is on, like L12"),
    frame: textIn(frameSchema).optional().describe("Which frame of it, like 12A"),
    grade: readBy(parseGrade).optional().describe("Filter or grade: 00, 2, 2 1/2"),
    paper: paperOption.optional().describe("Which box of paper, like 2 or X2"),
    burn: readBy(parseLocals("burn"))
      .optional()
      .describe("Places burned in and how much: sky 1/2, corner 3 s"),
    dodge: readBy(parseLocals("dodge"))
      .optional()
      .describe("Places dodged and how much: face 1/3, hand 20 %"),
    enlarger: enlargerOption.optional().describe("Which enlarger; the class's only one if left out"),
    aperture: readBy(parseAperture).optional().describe("The lens's f-number, like 8"),
    height: readBy(parseDistance).optional().describe("From the negative to the paper, like 42 cm"),
    size: readBy(parseSize).optional().describe("Size of the print, like 18x24; the paper's if left out"),
    developer: textIn(shape.developer)
      .optional()
      .describe("Which paper developer, like House MQ 1+9, or its label B3"),
    develop: durationIn(shape.developSeconds)
      .optional()
      .describe("How long it was in the developer, like 1:30"),
    temp: temperatureIn(shape.tenthsC).optional().describe("How warm the developer was, like 20C"),
    note: textIn(noteSchema).optional().describe("What you want to remember; found by its words"),
  }),
  who: whoMay("print log"),
  visibility: "private",
  rest: "seconds",
  first: ["seconds", "title", "roll", "frame", "grade", "paper", "burn", "dodge"],
  complete: { as: completePrint, paper: completePaper, enlarger: completeEnlarger },
  handle(input, context) {
    const like = input.as === undefined ? null : findPrint(context, input.as);
    const { stores, class: school, person, now } = context;
    const exposureTenths = input.seconds ?? like?.body.exposureTenths;
    if (exposureTenths === undefined)
      throw new UserError("ERR_NO_EXPOSURE", words.noExposure(), [], { option: "seconds" });
    const print: NewPrint = {
      classId: school.id,
      personId: person.id,
      personName: person.name,
      roll: rollOf(context, input.roll) ?? like?.roll ?? null,
      frame: input.frame ?? like?.frame ?? "",
      title: input.title ?? like?.title ?? "",
      madeAt: now,
      note: input.note ?? "",
      body: bodyOf(input, exposureTenths, like, context),
    };
    return words.loggedReply(stores.prints.add(print));
  },
});

function bodyOf(
  input: {
    readonly grade?: number | undefined;
    readonly paper?: number | undefined;
    readonly burn?: Parameters<typeof localsFrom>[0] | undefined;
    readonly dodge?: Parameters<typeof localsFrom>[0] | undefined;
    readonly enlarger?: number | undefined;
    readonly aperture?: number | undefined;
    readonly height?: number | undefined;
    readonly size?: PrintBody["size"] | undefined;
    readonly developer?: string | undefined;
    readonly develop?: number | undefined;
    readonly temp?: number | undefined;
  },
  exposureTenths: number,
  like: Print | null,
  context: Context,
): PrintBody {
  const before = like?.body ?? null;
  const paper =
    input.paper === undefined ? (paperNow(context, before) ?? null) : findPaper(context, input.paper);
  const enlarger = enlargerFor(context, input.enlarger ?? enlargerNow(context, before));
  const locals =
    input.burn === undefined && input.dodge === undefined
      ? (before?.locals ?? [])
      : localsFrom([...(input.burn ?? []), ...(input.dodge ?? [])], exposureTenths / 10);
  // Another size is another height.
  const headBefore = input.size === undefined ? (before?.headMm ?? null) : null;
  const headMm = input.height === undefined ? headBefore : Math.round(input.height);
  return {
    exposureTenths,
    gradeTenths: paper?.gradeTenths ?? input.grade ?? before?.gradeTenths ?? null,
    locals,
    apertureTenths: input.aperture ?? before?.apertureTenths ?? null,
    headMm,
    size: input.size ?? (input.paper === undefined ? before?.size : undefined) ?? paper?.size ?? null,
    enlarger: enlarger ?? before?.enlarger ?? null,
    paper: paper && withoutFilters(paper),
    developer: input.developer ?? before?.developer ?? null,
    developSeconds: input.develop ?? before?.developSeconds ?? null,
    tenthsC: input.temp ?? before?.tenthsC ?? null,
    cause: null,
  };
}

/** The box as it is today, where the class still has it; else as it was. */
function paperNow({ stores, class: school }: Context, before: PrintBody | null): PrintBody["paper"] {
  return before?.paper ? (stores.papers.find(school.id, before.paper.number) ?? before.paper) : null;
}

function enlargerNow({ stores, class: school }: Context, before: PrintBody | null): number | undefined {
  const number = before?.enlarger?.number;
  return number === undefined ? undefined : stores.enlargers.find(school.id, number)?.number;
}

const withoutFilters = ({
  number,
  name,
  kind,
  gradeTenths,
  size,
  lot,
  speed,
  dryDownPercent,
}: NonNullable<PrintBody["paper"]>) => ({
  number,
  name,
  kind,
  gradeTenths,
  size,
  lot,
  speed,
  dryDownPercent,
});

/** The number of a roll of the log, as it is called. */
function rollOf({ stores, class: school }: Context, text: string | undefined): number | null {
  if (text === undefined) return null;
  const number = parseNumber("roll", text);
  const roll = number === undefined ? undefined : stores.rolls.find(school.id, number);
  if (!roll) throw new UserError("ERR_UNKNOWN_ROLL", words.unknownRoll(text));
  return roll.number;
}
