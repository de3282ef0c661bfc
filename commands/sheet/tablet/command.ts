import { z } from "zod";
import { defineCommand, type InputOf, picks, UserError, type Context } from "../../define.ts";
import { temperatureIn } from "../../speech/quantity.ts";
import { BATH_TENTHS_C } from "../../../store/shapes/limits.ts";
import { addRow } from "../edit.ts";
import { matchSheets } from "../find.ts";
import {
  completeDeveloper,
  completeDilution,
  completeFilm,
  developerOption,
  filmOption,
  sheetDilutionOption,
  sheetsOf,
} from "../options.ts";
import { sheetName } from "../pick.ts";
import { editFault } from "../edit-words.ts";
import { effectiveIndex, ISO_AIM, measure, timeForGradient, type WantedTime } from "./gradient.ts";
import { readStrips } from "./readings.ts";
import { LONGEST_TABLE, readingsOf } from "./table.ts";
import * as words from "./reply.ts";

const options = () => ({
  readings: z
    .string()
    .trim()
    .min(1)
    .max(4000)
    .optional()
    .describe("Time and densities of each strip: 8:00 0.02 0.11 …; 11:00 …"),
  file: z
    .string()
    .min(1)
    .max(LONGEST_TABLE)
    .optional()
    .meta(picks("file"))
    .describe("The same as a table: a row or a column for each time, its time first"),
  step: z.coerce
    .number()
    .min(0.05)
    .max(0.6)
    .default(0.15)
    .describe("Log exposure from step to step: 0.15 is half a stop"),
  fog: z.coerce.number().min(0).max(1).optional().describe("Base and fog, if no reading shows it: 0.25"),
  aim: z.coerce
    .number()
    .min(0.3)
    .max(1.2)
    .default(Math.round(ISO_AIM * 1000) / 1000)
    .describe("The gradient you want, over 1.30 log H: 0.62"),
  metered: z.coerce
    .number()
    .int()
    .min(1)
    .max(60)
    .optional()
    .describe("The step that got what the meter said"),
  ei: z.coerce.number().int().min(1).max(102_400).optional().describe("What the meter was set to"),
  film: filmOption.optional().describe("To keep the time: the film's name"),
  developer: developerOption.optional().describe("To keep the time: the developer's name"),
  dilution: sheetDilutionOption.optional().describe("To keep the time: like 1+9, or stock"),
  temp: temperatureIn(BATH_TENTHS_C).optional().describe("To keep the time: the developer's temperature"),
  save: z.enum(["yes", "no"]).default("no").describe("The time goes into the class's data sheet"),
});
type Input = InputOf<typeof options>;

export const sheetTablet = defineCommand({
  name: "sheet tablet",
  summary: "From a step tablet's densities: gradient, speed, and the time for the gradient you want",
  options,
  who: "aide",
  visibility: "private",
  complete: { film: completeFilm, developer: completeDeveloper, dilution: completeDilution },
  handle(input, context) {
    const typed = input.file === undefined ? input.readings : readingsOf(input.file);
    if (typed === undefined) throw new UserError("ERR_NO_READINGS", words.noReadings());
    const strips = readStrips(typed);
    if (!strips.ok) throw new UserError("ERR_NO_READINGS", words.readingFault(strips.fault));
    const measured = strips.value.map((strip) => measure(strip, input.step, input.fog ?? null));
    const wanted = timeForGradient(measured, input.aim);
    const indexes = measured.map(({ speedLog }) =>
      input.metered === undefined || input.ei === undefined || speedLog === null
        ? null
        : effectiveIndex(speedLog, input.step, input.metered, input.ei),
    );
    const saved = input.save === "yes" ? save(input, wanted, context) : null;
    return words.tabletReply(
      { strips: strips.value, stepLog: input.step, measured, aim: input.aim, wanted, indexes },
      saved,
    );
  },
});

function save(input: Input, wanted: WantedTime | null, context: Context): string {
  const { film, developer, dilution, temp } = input;
  if (!film || !developer || !dilution || temp === undefined)
    throw new UserError("ERR_TABLET_SAVE", words.needForSave());
  if (!wanted) throw new UserError("ERR_TABLET_SAVE", words.nothingToSave());
  const seconds = Math.round(wanted.seconds);
  const before = matchSheets(sheetsOf(context), { film, developer, dilution })[0];
  const date = new Date(context.now).toLocaleDateString("sv", { timeZone: context.class.zone });
  const edited = addRow(before, {
    film,
    developer,
    dilution,
    tenthsC: temp,
    seconds,
    exposureIndex: input.ei ?? null,
    source: words.sourceOf(date, context.person.name).slice(0, 200),
    replace: false,
    boxSpeed: null,
    agitation: null,
    factorPer10C: null,
    minTenthsC: null,
    maxTenthsC: null,
    minConcentrateMl: null,
    tabularGrain: null,
    reuse: null,
  });
  if (!edited.ok) throw new UserError(edited.fault.code, editFault(edited.fault));
  context.stores.sheets.save(context.class.id, edited.value, context.person.id, context.now);
  return words.savedWords(seconds, temp, sheetName(edited.value));
}
