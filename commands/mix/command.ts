import { z } from "zod";
import { defineCommand, UserError } from "../define.ts";
import { splitVolume } from "../plan/volume.ts";
import { amountOption, dilutionOption, temperatureIn, volumeOption } from "../speech/quantity.ts";
import { BATH_TENTHS_C, TAP_TENTHS_C, TEMPERED_TENTHS_C } from "../../store/shapes/limits.ts";
import { askedDilutionOption } from "./strength.ts";
import { dilute } from "./dilute.ts";
import * as words from "./reply.ts";
import { temper } from "./temper.ts";

export const mixDilute = defineCommand({
  name: "mix dilute",
  summary: "How much concentrate and water, from any one of the amounts; given two, it checks them",
  options: () => ({
    dilution: askedDilutionOption.describe("Concentrate + water, like 1+9; or per cent: 28% to 2%"),
    total: volumeOption.optional().describe("What is to be made, like 300 ml"),
    concentrate: amountOption.optional().describe("The concentrate you have, like 50 ml"),
    water: volumeOption.optional().describe("The water you have, like 450 ml"),
  }),
  who: "student",
  visibility: "private",
  handle({ dilution, total, concentrate, water }, context) {
    const mixed = dilute({
      dilution,
      totalMl: total ?? null,
      concentrateMl: concentrate ?? null,
      waterMl: water ?? null,
      stepMl: context.class.habits.measureStepMl,
    });
    if (!mixed.ok) throw new UserError(mixed.fault.code, words.diluteFault(mixed.fault));
    return words.dilutedReply(mixed.value, dilution);
  },
});

/** A bare number up to this is Celsius here: no hot tap is that cold in Fahrenheit. */
const HOTTEST_BARE_C = 80;
const hotTapOption = z
  .string()
  .max(20)
  .transform((text) => {
    const isBare = /^\s*\d+([.,]\d+)?\s*$/.test(text) && Number.parseFloat(text) <= HOTTEST_BARE_C;
    return isBare ? `${text.trim()} C` : text;
  })
  .pipe(temperatureIn(TAP_TENTHS_C));

export const mixTemper = defineCommand({
  name: "mix temper",
  summary: "How much hot and cold water for a bath of the right volume and temperature",
  options: () => ({
    total: volumeOption.describe("How much bath, like 1 l"),
    target: temperatureIn(TEMPERED_TENTHS_C).describe("How warm it must be, like 20C"),
    cold: temperatureIn(TAP_TENTHS_C).describe("Temperature of the cold tap"),
    hot: hotTapOption.describe("Temperature of the hot tap: 50, 120F"),
    dilution: dilutionOption.optional().describe("If concentrate goes in: like 1+9"),
    concentrate: temperatureIn(BATH_TENTHS_C)
      .optional()
      .describe("Temperature of the concentrate; the room's if left out"),
  }),
  who: "student",
  visibility: "private",
  handle({ total, target, cold, hot, dilution, concentrate }, context) {
    const tempered = temper({
      totalMl: total,
      targetTenthsC: target,
      coldTenthsC: cold,
      hotTenthsC: hot,
      concentrateMl: dilution
        ? splitVolume(total, dilution, context.class.habits.measureStepMl).concentrateMl
        : 0,
      concentrateTenthsC: concentrate ?? context.class.habits.roomTenthsC,
    });
    if (!tempered.ok) throw new UserError(tempered.fault.code, words.temperFault(tempered.fault));
    return words.temperedReply(tempered.value, total, hot, dilution?.wasRatio ?? false);
  },
});
