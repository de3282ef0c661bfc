import type { Enlarger } from "../../store/shapes/enlarger.ts";
import { inEach } from "../speech/language.ts";
import { formatNumber, joinAnd, makeNumber, plain } from "../speech/wording.ts";
import type { AdjustFault, BoxOfPaper, Part, PartKind } from "./adjust.ts";
import { factorOf } from "./light.ts";
import { stopsWord } from "./print-words.ts";
import { formatSize } from "./sizes.ts";
import { formatAperture, formatDistance, formatExposure, formatGrade } from "./stops.ts";
import { de } from "./words/adjust.de.ts";
import { en } from "./words/adjust.en.ts";
import type { PaperSize } from "../../store/shapes/paper.ts";

/* A changed exposure in words: what each part does to the light, and what that rests on. */

const words = inEach({ en, de });

/** Of one part: `aperture f/8 to f/11: +1 stop`, and what it rests on. */
export function partLine(part: Part): string {
  const { kind, stops, basis, from, to } = part;
  const name = words().parts[kind];
  const change =
    kind === "dry" ? words().percent(to as number) : words().change(sayValue(kind, from), sayValue(kind, to));
  return words().part(name, change, stopsWord(stops, true), words().bases[basis]);
}

function sayValue(kind: PartKind, value: Part["from"]): string {
  if (value === null) return "";
  switch (kind) {
    case "paper":
      return boxName(value as BoxOfPaper);
    case "size":
      return formatSize(value as PaperSize);
    case "aperture":
      return formatAperture(value as number);
    case "grade":
      return formatGrade(value as number);
    case "height":
    case "lens":
      return formatDistance(value as number);
    case "times":
      return words().times(formatNumber(value as number));
    case "meter":
      return formatExposure(Math.round((value as number) * 10));
    case "density":
    case "dry":
      return formatNumber(value as number);
  }
}

const boxName = ({ number, name, lot }: BoxOfPaper): string =>
  [`${makeNumber("paper", number)} ${plain(name)}`, ...(lot === null ? [] : [words().lot(plain(lot))])].join(
    " ",
  );

/** What must be said beside the parts: limits of a law, a rival rule, figures that nobody has. Each once. */
export function cautionLines(parts: readonly Part[], seconds: number, enlarger: Enlarger | null): string[] {
  const isLaw = parts.some(({ basis, stops }) => (basis === "law" || basis === "square") && stops !== 0);
  const rival = parts.find((part) => part.rival !== null && Math.abs(part.rival - part.stops) > 0.02);
  return [
    ...(isLaw
      ? [
          enlarger?.light === "diffuse"
            ? words().lawDiffuse
            : enlarger
              ? words().lawCondenser
              : words().lawEither,
        ]
      : []),
    ...(rival && rival.rival !== null
      ? [words().rival(formatExposure(Math.round(10 * seconds * factorOf(rival.rival - rival.stops))))]
      : []),
    ...(parts.some(({ basis }) => basis === "area") ? [words().areaOnly] : []),
    ...(parts.some(({ kind, basis }) => kind === "grade" && basis === "rule") ? [words().filtersDiffer] : []),
    ...(parts.some(({ basis }) => basis === "unknown") ? [words().unknownSpeed] : []),
    ...(parts.some(({ kind }) => kind === "dry") ? [words().dryPublished] : []),
  ];
}

export function faultOfAdjust(fault: AdjustFault): string {
  switch (fault.code) {
    case "ERR_FROM_WHAT":
      return words().fromWhat(fault.option);
    case "ERR_ONE_ENLARGEMENT":
      return words().oneEnlargement(joinAnd(fault.options));
    case "ERR_HEAD_LOW":
      return words().headLow(formatDistance(4 * fault.lensMm), fault.lensMm);
  }
}
