import type { Print, PrintBody } from "../../store/shapes/print.ts";
import type { Action, FieldValue } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { formatBothScales, instant, makeNumber, plain, saySeconds } from "../speech/wording.ts";
import { sayPrintFault } from "./look-words.ts";
import { USUAL_TIMER_TENTHS } from "./options.ts";
import { enlargerLine, gradeWord, localLine, paperName } from "./print-words.ts";
import { formatSize } from "./sizes.ts";
import { formatAperture, formatDistance, formatExposure } from "./stops.ts";
import { de } from "./words/recipe.de.ts";
import { en } from "./words/recipe.en.ts";

/* A print in words: all that is needed to make it again. */

const words = inEach({ en, de });

export const noPrintYet = (): string => words().noPrintYet;
export const unknownPrint = (typed: string): string => words().unknownPrint(plain(typed.slice(0, 20)));
export const notYourPrint = (): string => words().notYourPrint;

/** `V7 Mina, 26 Nov 2026: Harbour at dusk (L12, frame 12A)`. */
export function headLine(print: Print): string {
  const { number, personName, madeAt, title } = print;
  const head = words().head(makeNumber("print", number), plain(personName), instant(madeAt, "date"));
  const from = fromWords(print);
  return `${head}${title === "" ? "" : `: ${plain(title)}`}${from === "" ? "" : ` (${from})`}`;
}

/** `L12, frame 12A`; empty where nobody said. */
export function fromWords({ roll, frame }: Pick<Print, "roll" | "frame">): string {
  const parts = [
    ...(roll === null ? [] : [makeNumber("roll", roll)]),
    ...(frame === "" ? [] : [words().frame(plain(frame))]),
  ];
  return parts.join(", ");
}

/** What to do, in the order it is done. */
export function recipeLines(body: PrintBody): string[] {
  const { exposureTenths, gradeTenths, apertureTenths, headMm, size, enlarger, paper, locals } = body;
  const timer = enlarger?.timerTenths ?? USUAL_TIMER_TENTHS;
  const at = [
    // A graded paper names its grade itself.
    ...(paper?.gradeTenths == null ? [gradeWord(gradeTenths)] : []),
    ...(apertureTenths === null ? [] : [formatAperture(apertureTenths)]),
    ...(headMm === null ? [] : [words().headAt(formatDistance(headMm))]),
    ...(size === null ? [] : [words().size(formatSize(size))]),
  ];
  return [
    `- **${formatExposure(exposureTenths)}**, ${at.join(", ")}`,
    ...locals.map((local) => `- ${localLine(local, exposureTenths, timer)}`),
    ...(paper === null ? [] : [`- ${paperName(paper)}`]),
    ...(enlarger === null ? [] : [`- ${enlargerLine(enlarger)}`]),
    ...bathLine(body),
  ];
}

function bathLine({ developer, developSeconds, tenthsC }: PrintBody): string[] {
  const parts = [
    ...(developer === null ? [] : [plain(developer)]),
    ...(developSeconds === null ? [] : [saySeconds(developSeconds)]),
    ...(tenthsC === null ? [] : [formatBothScales(tenthsC)]),
  ];
  return parts.length === 0 ? [] : [`- ${words().developed(parts.join(", "))}`];
}

/** What was thought of it. */
export function judgedLines({ rating, fault, note }: Print, cause: string | undefined): string[] {
  return [
    ...(rating === null ? [] : [words().rated(rating)]),
    ...(fault === "" ? [] : [words().fault(plain(sayPrintFault(fault)), cause)]),
    ...(note === "" ? [] : [words().note(plain(note))]),
  ];
}

export const showAction = ({ number }: Pick<Print, "number">): Action => ({
  label: makeNumber("print", number),
  line: makeLine("print show", { print: makeNumber("print", number) }),
});
export const againAction = ({ number }: Pick<Print, "number">): Action => ({
  label: words().again,
  line: makeLine("print again", { print: makeNumber("print", number) }),
});
export const faultAction = ({ number }: Pick<Print, "number">): Action => ({
  label: words().looksWrong,
  line: makeLine("print fault", { print: makeNumber("print", number) }),
});

export function fieldsOf(print: Print): { [key: string]: FieldValue } {
  const { body } = print;
  return {
    print: print.number,
    person: print.personName,
    title: print.title,
    roll: print.roll,
    frame: print.frame,
    madeAtMs: print.madeAt,
    rating: print.rating,
    fault: print.fault,
    cause: body.cause,
    note: print.note,
    exposureTenths: body.exposureTenths,
    gradeTenths: body.gradeTenths,
    apertureTenths: body.apertureTenths,
    headMm: body.headMm,
    size: body.size && { ...body.size },
    locals: body.locals.map((local) => ({ ...local })),
    paper: body.paper?.number ?? null,
    enlarger: body.enlarger?.number ?? null,
    developer: body.developer,
    developSeconds: body.developSeconds,
    tenthsC: body.tenthsC,
  };
}
