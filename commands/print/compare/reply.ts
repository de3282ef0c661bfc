import type { Print } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { formatBothScales, instant, makeNumber, plain, saySeconds } from "../../speech/wording.ts";
import { stopsBetween } from "../light.ts";
import { sayPrintFault } from "../look-words.ts";
import { gradeWord, localWord, paperName, stopsWord } from "../print-words.ts";
import { againAction, fromWords } from "../recipe-words.ts";
import { formatSize } from "../sizes.ts";
import { formatAperture, formatDistance, formatExposure } from "../stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

type RowKey = keyof typeof en.rows;

/** In stops: by them two prints of other times were burned in alike. */
const localsOf = ({ body }: Print): string => body.locals.map(localWord).join("; ");

/** Everything that is compared, in words; empty: nobody said. */
const ROWS: readonly (readonly [RowKey, (print: Print) => string])[] = [
  ["title", ({ title }) => plain(title)],
  ["from", (print) => fromWords(print)],
  ["exposure", ({ body }) => formatExposure(body.exposureTenths)],
  ["grade", ({ body }) => gradeWord(body.paper?.gradeTenths ?? body.gradeTenths)],
  ["aperture", ({ body }) => (body.apertureTenths === null ? "" : formatAperture(body.apertureTenths))],
  ["head", ({ body }) => (body.headMm === null ? "" : formatDistance(body.headMm))],
  ["size", ({ body }) => (body.size === null ? "" : formatSize(body.size))],
  ["locals", localsOf],
  ["paper", ({ body }) => (body.paper === null ? "" : paperName(body.paper))],
  [
    "enlarger",
    ({ body }) =>
      body.enlarger === null
        ? ""
        : `${makeNumber("enlarger", body.enlarger.number)} ${plain(body.enlarger.name)}`,
  ],
  ["developer", ({ body }) => plain(body.developer ?? "")],
  ["developed", ({ body }) => (body.developSeconds === null ? "" : saySeconds(body.developSeconds))],
  ["temperature", ({ body }) => (body.tenthsC === null ? "" : formatBothScales(body.tenthsC))],
  ["rating", ({ rating }) => (rating === null ? "" : `${rating}`)],
  ["fault", ({ fault }) => plain(sayPrintFault(fault))],
  ["note", ({ note }) => plain(note.slice(0, 200))],
];

export function comparedReply(one: Print, other: Print): Reply {
  const rows = ROWS.map(([key, say]) => ({ key, a: say(one), b: say(other) }));
  const different = rows.filter(({ a, b }) => a !== b);
  const same = rows.filter(({ a, b }) => a === b && a !== "");
  const stops = stopsBetween(one.body.exposureTenths, other.body.exposureTenths);
  const name = (print: Print): string =>
    words().name(makeNumber("print", print.number), plain(print.personName), instant(print.madeAt, "date"));
  return {
    text: [
      words().head(name(one), name(other)),
      ...(different.length === 0 ? [words().alike] : []),
      ...different.map(({ key, a, b }) => {
        const line = words().row(words().rows[key], a || words().notSaid, b || words().notSaid);
        return `- ${line}${key === "exposure" ? ` (${stopsWord(stops, true)})` : ""}`;
      }),
      ...(same.length === 0 ? [] : [words().same(same.map(({ key }) => words().rows[key]).join(", "))]),
    ].join("\n"),
    fields: {
      prints: [one.number, other.number],
      stops: Math.round(stops * 1000) / 1000,
      different: different.map(({ key }) => key),
    },
    actions: [againAction(one), againAction(other)].map((action, at) => ({
      ...action,
      label: `${makeNumber("print", (at === 0 ? one : other).number)}: ${action.label}`,
    })),
  };
}
