import type { Enlarger } from "../../../store/shapes/enlarger.ts";
import type { Print, PrintBody } from "../../../store/shapes/print.ts";
import type { FieldValue, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber } from "../../speech/wording.ts";
import { type BoxOfPaper, type Part, sumOf } from "../adjust.ts";
import { cautionLines, partLine } from "../adjust-words.ts";
import { timerCost } from "../light.ts";
import { localTenths } from "../locals.ts";
import { stopsWord } from "../print-words.ts";
import { headLine, recipeLines, showAction } from "../recipe-words.ts";
import { formatSize } from "../sizes.ts";
import { formatExposure } from "../stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface Again {
  readonly print: Print;
  readonly exact: number;
  readonly setTenths: number;
  readonly timerTenths: number;
  readonly parts: readonly Part[];
  readonly enlarger: Enlarger | null;
}

export const tooLong = (): string => words().tooLong;

export function againReply(again: Again): Reply {
  const { print, exact, setTenths, timerTenths, parts, enlarger } = again;
  const body = bodyToday(again);
  const cost = timerCost(exact, setTenths);
  const before = formatExposure(print.body.exposureTenths);
  return {
    text: [
      words().again(headLine(print)),
      ...recipeLines(body),
      parts.length === 0 ? words().asItWas : words().changed(before, stopsWord(sumOf(parts), true)),
      ...parts.map((part) => `- ${partLine(part)}`),
      ...(Math.abs(cost) >= 0.02 ? [words().cost(stopsWord(cost, true), formatExposure(timerTenths))] : []),
      ...cautionLines(parts, exact, enlarger),
    ].join("\n"),
    fields: {
      print: print.number,
      setTenths,
      exactSeconds: Math.round(exact * 1000) / 1000,
      stops: Math.round(sumOf(parts) * 1000) / 1000,
      parts: parts.map(({ kind, stops, basis }): FieldValue => ({
        kind,
        stops: Math.round(stops * 1000) / 1000,
        basis,
      })),
      locals: body.locals.map((local) => ({
        ...local,
        tenths: localTenths(local, setTenths / 10, timerTenths),
      })),
      gradeTenths: body.gradeTenths,
      paper: body.paper?.number ?? null,
    },
    actions: [{ label: words().log, line: logLine(again, body), weight: "main" }, showAction(print)],
  };
}

/** The recipe as it is today: what did not change stands as it was, burns and dodges in stops. */
function bodyToday({ print, setTenths, timerTenths, parts, enlarger }: Again): PrintBody {
  const valueOf = <T>(kind: Part["kind"]): T | undefined =>
    parts.find((part) => part.kind === kind)?.to as T | undefined;
  const { body } = print;
  const paper = valueOf<BoxOfPaper>("paper");
  const head = valueOf<number>("height");
  const isMoved = parts.some(({ kind }) => kind === "size" || kind === "times" || kind === "lens");
  return {
    ...body,
    exposureTenths: setTenths,
    gradeTenths: valueOf<number>("grade") ?? paper?.gradeTenths ?? body.gradeTenths,
    apertureTenths: valueOf<number>("aperture") ?? body.apertureTenths,
    // Another size is another height, and nobody has said which.
    headMm: head === undefined ? (isMoved ? null : body.headMm) : Math.round(head),
    size: valueOf<PrintBody["size"]>("size") ?? body.size,
    paper: paper ?? body.paper,
    enlarger: enlarger && { ...enlarger, timerTenths },
  };
}

/** A button has little room: what is as it was is left out. */
function logLine({ print, setTenths, enlarger, parts }: Again, body: PrintBody): string {
  const isNew = (kind: Part["kind"]): boolean => parts.some((part) => part.kind === kind);
  return makeLine("print log", {
    as: makeNumber("print", print.number),
    seconds: setTenths / 10,
    ...(isNew("grade") && body.gradeTenths !== null
      ? { grade: body.gradeTenths < 0 ? "00" : body.gradeTenths / 10 }
      : {}),
    ...(isNew("aperture") && body.apertureTenths !== null ? { aperture: body.apertureTenths / 10 } : {}),
    ...(isNew("height") && body.headMm !== null ? { height: body.headMm / 10 } : {}),
    ...(isNew("size") && body.size !== null ? { size: formatSize(body.size) } : {}),
    ...(isNew("paper") && body.paper !== null ? { paper: body.paper.number } : {}),
    ...(enlarger !== null && enlarger.number !== print.body.enlarger?.number
      ? { enlarger: enlarger.number }
      : {}),
  });
}
