import type { Reply } from "../define.ts";
import { makeDilution } from "../measure.ts";
import { formatBothScales, formatDilution, formatMl, formatTenthsC } from "../wording.ts";
import type { Diluted, DiluteFault } from "./dilute.ts";
import type { Tempered, TemperFault } from "./temper.ts";
import type { Dilution } from "../sheet/sheet.ts";

/* Every sentence of /mix dilute and /mix temper. */

type Words<F extends { readonly code: string }> = {
  readonly [C in F["code"]]: (fault: Extract<F, { code: C }>) => string;
};

const DILUTE_FAULT_TEXT: Words<DiluteFault> = {
  ERR_NOTHING_GIVEN: () =>
    "Say how much: `total:300 ml`, or `concentrate:` or `water:` if that is what you have.",
  ERR_SUM: ({ concentrateMl, waterMl, totalMl }) =>
    `${formatMl(concentrateMl)} and ${formatMl(waterMl)} do not make ${formatMl(totalMl)}. Measure again, or leave the total out.`,
  ERR_OTHER_DILUTION: ({ asked, givenTenths, rightWaterMl }) =>
    `That is 1+${givenTenths / 10}, not ${formatDilution(asked)}. For ${formatDilution(asked)} that much concentrate takes ${formatMl(rightWaterMl)} of water.`,
  ERR_TOO_LITTLE: ({ leastTotalMl }) =>
    `That is less than 1 ml of concentrate. Make at least ${formatMl(leastTotalMl)}, and more if you can't measure so little.`,
  ERR_STOCK_HAS_NO_WATER: () => "Stock takes no water. Say how much you need: `total:300 ml`.",
};

export function diluteFault(fault: DiluteFault): string {
  return (DILUTE_FAULT_TEXT[fault.code] as (fault: DiluteFault) => string)(fault);
}

export const ACID_NOTE =
  "Acid goes into water, never water into acid. Gloves and eye protection on; the label comes first.";

export function dilutedReply(mix: Diluted, dilution: Dilution, wasRatio: boolean): Reply {
  const head =
    mix.waterMl === 0
      ? `**${formatMl(mix.concentrateMl)}** of stock, no water.`
      : `**${formatMl(mix.concentrateMl)} concentrate + ${formatMl(mix.waterMl)} water** = ${formatMl(mix.totalMl)} at ${formatDilution(dilution)}.`;
  const lines = [
    mix.isChecked ? `${head} That is right.` : head,
    ...(wasRatio ? [`I read it as ${formatDilution(dilution)}: makers' 1:9 means 1+9.`] : []),
    `Water first, then the concentrate. ${ACID_NOTE}`,
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
  ERR_NO_WATER_LEFT: ({ concentrateMl, totalMl }) =>
    `${formatMl(concentrateMl)} of concentrate leave no room for water in ${formatMl(totalMl)}. Stand the bottle in warm or cold water instead, and measure.`,
  ERR_HOT_IS_COLD: ({ coldTenthsC, hotTenthsC }) =>
    `The hot water (${formatTenthsC(hotTenthsC)}) is colder than the cold (${formatTenthsC(coldTenthsC)}). Swap them.`,
  ERR_TOO_COOL_TO_REACH: ({ nearestTenthsC }) =>
    `Even all hot water does not reach that. The nearest is ${formatBothScales(nearestTenthsC)}: use hotter water.`,
  ERR_TOO_WARM_TO_REACH: ({ nearestTenthsC }) =>
    `Even all cold water does not reach that. The nearest is ${formatBothScales(nearestTenthsC)}: cool the vessel from outside with ice water, never put ice into the bath.`,
};

export function temperFault(fault: TemperFault): string {
  return (TEMPER_FAULT_TEXT[fault.code] as (fault: TemperFault) => string)(fault);
}

export function temperedReply(mix: Tempered, totalMl: number, wasRatio: boolean): Reply {
  const concentrate = mix.concentrateMl > 0 ? ` + ${formatMl(mix.concentrateMl)} concentrate` : "";
  const lines = [
    `**${formatMl(mix.hotMl)} hot + ${formatMl(mix.coldMl)} cold${concentrate}** = ${formatMl(totalMl)} at ${formatBothScales(mix.reachedTenthsC)}.`,
    ...(wasRatio ? ["I read the dilution as parts: makers' 1:9 means 1+9."] : []),
    "The jug takes some heat too: measure, then correct with a little hot or cold.",
  ];
  return {
    text: lines.join("\n"),
    fields: {
      hotMl: mix.hotMl,
      coldMl: mix.coldMl,
      concentrateMl: mix.concentrateMl,
      totalMl,
      reachedTenthsC: mix.reachedTenthsC,
    },
  };
}
