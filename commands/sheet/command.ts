import { z } from "zod";
import { defineCommand, UserError } from "../define.ts";
import { numberIn, textIn, wholeIn } from "../speech/shaped.ts";
import { agitationOption, durationIn, temperatureIn, volumeIn } from "../speech/quantity.ts";
import { BATH_TENTHS_C } from "../../store/shapes/limits.ts";
import { writeCsv } from "./csv.ts";
import { addRow } from "./edit.ts";
import { matchSheets } from "./find.ts";
import { writeJson } from "./json.ts";
import { foldName, slippedFrom } from "./names.ts";
import {
  completeDeveloper,
  completeDilution,
  completeFilm,
  developerOption,
  filmOption,
  reuseOption,
  sheetDilutionOption,
  sheetsOf,
} from "./options.ts";
import { insteadOf, pickSheet } from "./pick.ts";
import { drawSheet } from "./picture.ts";
import * as words from "./reply.ts";
import { saveSheet } from "./save.ts";
import { pointSchema, sheetSchema } from "../../store/shapes/sheet.ts";

const yesNo = z.enum(["yes", "no"]);
const { shape } = sheetSchema;
const point = pointSchema.shape;
const complete = { film: completeFilm, developer: completeDeveloper, dilution: completeDilution };

export const sheetAdd = defineCommand({
  name: "sheet add",
  summary: "Add one time to a data sheet, old or new",
  options: () => ({
    film: filmOption.describe("The film's name"),
    developer: developerOption.describe("The developer's name"),
    dilution: sheetDilutionOption.describe("Concentrate + water, like 1+9, or stock"),
    temp: temperatureIn(point.tenthsC).describe("Temperature of this time, like 20C or 68F"),
    time: durationIn(point.seconds).describe("The time, like 9:00 or 540 s"),
    ei: wholeIn(point.exposureIndex)
      .optional()
      .describe("Exposure index of this time; the film's own speed if left out"),
    speed: wholeIn(shape.boxSpeed).optional().describe("The film's own speed; needed for a new data sheet"),
    source: textIn(point.source).optional().describe("Where the time comes from"),
    agitation: agitationOption
      .optional()
      .describe("What the times assume: first/each/every, in seconds, like 30/5/60"),
    factor: numberIn(shape.factorPer10C)
      .optional()
      .describe("How many times faster the developer works 10 °C hotter, if its maker says"),
    coldest: temperatureIn(BATH_TENTHS_C).optional().describe("Lowest temperature the data sheet allows"),
    hottest: temperatureIn(BATH_TENTHS_C).optional().describe("Highest temperature the data sheet allows"),
    minimum: volumeIn(shape.minConcentrateMl)
      .optional()
      .describe("Minimum of concentrate or stock for one roll, like 100 ml"),
    tabular: yesNo.optional().describe("Tabular-grain film, fixed for three clearing times"),
    reuse: reuseOption.optional().describe("Films in a litre/what they add/most films, like 1/10%/10"),
    replace: yesNo.default("no").describe("Take the place of the time at the same temperature and EI"),
  }),
  who: "aide",
  visibility: "private",
  complete,
  handle(input, context) {
    const before = matchSheets(sheetsOf(context), input)[0];
    const edited = addRow(before, {
      film: foldSpaces(input.film),
      developer: foldSpaces(input.developer),
      dilution: input.dilution,
      tenthsC: input.temp,
      seconds: input.time,
      exposureIndex: input.ei ?? null,
      source: input.source ?? `entered by ${context.person.name}`.slice(0, 200),
      replace: input.replace === "yes",
      boxSpeed: input.speed ?? null,
      agitation: input.agitation ?? null,
      factorPer10C: input.factor ?? null,
      minTenthsC: input.coldest ?? null,
      maxTenthsC: input.hottest ?? null,
      minConcentrateMl: input.minimum ?? null,
      tabularGrain: input.tabular === undefined ? null : input.tabular === "yes",
      reuse: input.reuse ?? null,
    });
    if (!edited.ok) throw new UserError(edited.fault.code, words.clashFault(edited.fault));
    const films = sheetsOf(context).map(({ film }) => film);
    const slipOf = slippedFrom(edited.value.film, films);
    saveSheet(context, edited.value);
    const { wasRatio } = input.dilution;
    return words.added(edited.value, { tenthsC: input.temp, seconds: input.time }, { wasRatio, slipOf });
  },
});

export const sheetShow = defineCommand({
  name: "sheet show",
  summary: "Show a data sheet: its times, its source, its curve",
  options: () => ({
    film: filmOption.describe("The film's name"),
    developer: developerOption.optional().describe("The developer's name"),
    dilution: sheetDilutionOption.optional().describe("Concentrate + water, like 1+9, or stock"),
  }),
  who: "student",
  visibility: "private",
  complete,
  handle(input, context) {
    const picked = pickSheet(sheetsOf(context), input);
    if (!picked.ok) {
      const { code, text } = picked.fault;
      throw new UserError(code, text, [], { instead: insteadOf(picked.fault) });
    }
    return words.shown(picked.value, [drawSheet(picked.value)]);
  },
});

export const sheetList = defineCommand({
  name: "sheet list",
  summary: "List the class's data sheets",
  options: () => ({
    film: filmOption.optional().describe("Part of a film's or developer's name"),
  }),
  who: "student",
  visibility: "private",
  rest: "film",
  complete: { film: completeFilm },
  handle({ film }, context) {
    const wanted = foldName(film ?? "");
    const sheets = sheetsOf(context).filter(
      (sheet) => foldName(sheet.film).includes(wanted) || foldName(sheet.developer).includes(wanted),
    );
    return words.listed(sheets, film);
  },
});

export const sheetExport = defineCommand({
  name: "sheet export",
  summary: "Take the class's data sheets as a file",
  options: () => ({
    format: z.enum(["csv", "json"]).default("csv").describe("What kind of file"),
    film: filmOption.optional().describe("Only the data sheets of this film"),
  }),
  who: "student",
  visibility: "private",
  complete: { film: completeFilm },
  handle({ format, film }, context) {
    const sheets = matchSheets(sheetsOf(context), { film });
    if (sheets.length === 0) throw new UserError("ERR_NO_SHEETS", words.nothingToExport(film));
    return words.exported(sheets, format, format === "csv" ? writeCsv(sheets) : writeJson(sheets));
  },
});

function foldSpaces(name: string): string {
  return name.replace(/\s+/g, " ");
}
