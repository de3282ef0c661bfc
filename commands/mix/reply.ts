import type { Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeDilution } from "../../store/shapes/sheet.ts";
import { formatDilution, formatNumber } from "../speech/wording.ts";
import type { Diluted, DiluteFault } from "./dilute.ts";
import type { Tempered, TemperFault } from "./temper.ts";
import { scaldCautions } from "../batch/hazards.ts";
import { STRENGTH_TOLERANCE } from "../plan/cautions.ts";
import type { AskedDilution } from "./strength.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/* Every sentence of /mix dilute and /mix temper. */

const words = inEach({ en, de });

type Words<F extends { readonly code: string }> = {
  readonly [C in F["code"]]: (fault: Extract<F, { code: C }>) => string;
};

const DILUTE_FAULT_TEXT: Words<DiluteFault> = {
  ERR_NOTHING_GIVEN: () => words().nothingGiven,
  ERR_SUM: ({ concentrateMl, waterMl, totalMl }) => words().sum(concentrateMl, waterMl, totalMl),
  ERR_OTHER_DILUTION: ({ asked, givenTenths, rightWaterMl }) =>
    words().otherDilution(`1+${formatNumber(givenTenths / 10)}`, formatDilution(asked), rightWaterMl),
  ERR_TOO_LITTLE: ({ leastTotalMl }) => words().tooLittle(leastTotalMl),
  ERR_STOCK_HAS_NO_WATER: () => words().stockHasNoWater,
};

export function diluteFault(fault: DiluteFault): string {
  return (DILUTE_FAULT_TEXT[fault.code] as (fault: DiluteFault) => string)(fault);
}

function strengthWords({ off, waterMl, concentrateMl }: Diluted): string[] {
  if (Math.abs(off) <= STRENGTH_TOLERANCE) return [];
  const mixed = `1+${formatNumber(Math.round((waterMl / concentrateMl) * 10) / 10)}`;
  return [words().strength(Math.round(off * 100), mixed)];
}

export function dilutedReply(mix: Diluted, dilution: AskedDilution): Reply {
  const { percent, wasRatio } = dilution;
  const head =
    mix.waterMl === 0
      ? words().stockOnly(mix.concentrateMl)
      : words().diluted(mix.concentrateMl, mix.waterMl, mix.totalMl, formatDilution(dilution));
  const lines = [
    mix.isChecked ? words().isRight(head) : head,
    ...(percent ? [words().percent(formatNumber(percent.have), formatNumber(percent.want))] : []),
    ...strengthWords(mix),
    ...(wasRatio ? [words().readRatio(formatDilution(dilution))] : []),
    dilution.waterParts === 0 ? words().stockCare : words().howToMix,
  ];
  return {
    text: lines.join("\n"),
    fields: {
      concentrateMl: mix.concentrateMl,
      waterMl: mix.waterMl,
      totalMl: mix.totalMl,
      dilution: makeDilution(dilution),
    },
  };
}

const TEMPER_FAULT_TEXT: Words<TemperFault> = {
  ERR_NO_WATER_LEFT: ({ concentrateMl, totalMl }) => words().noWaterLeft(concentrateMl, totalMl),
  ERR_HOT_IS_COLD: ({ coldTenthsC, hotTenthsC }) => words().hotIsCold(hotTenthsC, coldTenthsC),
  ERR_TOO_COOL_TO_REACH: ({ nearestTenthsC }) => words().hotFallsShort(nearestTenthsC),
  ERR_TOO_WARM_TO_REACH: ({ nearestTenthsC }) => words().coldFallsShort(nearestTenthsC),
};

export function temperFault(fault: TemperFault): string {
  return (TEMPER_FAULT_TEXT[fault.code] as (fault: TemperFault) => string)(fault);
}

export function temperedReply(mix: Tempered, totalMl: number, hotTenthsC: number, wasRatio: boolean): Reply {
  const { hotMl, coldMl, concentrateMl, reachedTenthsC } = mix;
  const lines = [
    concentrateMl > 0
      ? words().temperedWith(hotMl, coldMl, concentrateMl, totalMl, reachedTenthsC)
      : words().tempered(hotMl, coldMl, totalMl, reachedTenthsC),
    ...(wasRatio ? [words().readParts] : []),
    ...(hotMl > 0 ? scaldCautions(hotTenthsC) : []),
    words().jugTakesHeat,
    ...(concentrateMl > 0 ? [words().howToMix] : []),
  ];
  return { text: lines.join("\n"), fields: { hotMl, coldMl, concentrateMl, totalMl, reachedTenthsC } };
}
