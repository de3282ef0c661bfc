import type { Strip } from "../../../store/shapes/print.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { factorOf, timerCost } from "../light.ts";
import { gradeWord, stopsWord } from "../print-words.ts";
import { formatExposure } from "../stops.ts";
import { finerThan } from "../strip/steps.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** From one grade to another, and what that does to the light. */
export interface Move {
  readonly stops: number;
  readonly basis: "measured" | "rule" | "none";
  readonly from: number | null;
  readonly to: number | null;
}

export interface Reading {
  readonly strip: Strip;
  readonly place: { readonly bar: number; readonly isBetween: boolean };
  readonly seconds: number;
  readonly exact: number;
  readonly setTenths: number;
  readonly move: Move;
}

export const noBar = (bars: number): string => words().noBar(bars);
export const gradeUnknown = (): string => words().gradeUnknown;
export const isGraded = (): string => words().isGraded;

export function readReply({ strip, place, seconds, exact, setTenths, move }: Reading): Reply {
  const cost = timerCost(exact, setTenths);
  const set = formatExposure(setTenths);
  const { bar, isBetween } = place;
  return {
    text: [
      words().set(set, isBetween ? words().between(bar, bar + 1) : words().bar(bar)),
      ...moveLines(move, seconds),
      ...(Math.abs(cost) >= 0.02 ? [words().cost(stopsWord(cost, true))] : []),
      words().next,
    ].join("\n"),
    fields: {
      setTenths,
      exactSeconds: Math.round(exact * 1000) / 1000,
      costStops: Math.round(cost * 1000) / 1000,
      bar,
      isBetween,
      gradeTenths: move.to,
      gradeBasis: move.basis,
    },
    actions: [
      {
        label: words().log,
        line: makeLine("print log", logOptions(strip, move.to, setTenths)),
        weight: "main",
      },
      ...finerAction(strip, setTenths),
    ],
  };
}

function moveLines({ basis, stops, from, to }: Move, seconds: number): string[] {
  if (basis === "none") return [];
  const grades = words().grades(gradeWord(from), gradeWord(to), stopsWord(stops, true));
  if (from === to) return [words().noHarder(gradeWord(to))];
  const before = formatExposure(Math.round(seconds * 10));
  return [`${grades} ${basis === "measured" ? words().measured : words().rule(before)}`];
}

function logOptions(
  strip: Strip,
  gradeTenths: number | null,
  setTenths: number,
): Record<string, string | number> {
  return {
    seconds: setTenths / 10,
    ...(gradeTenths === null ? {} : { grade: gradeTenths < 0 ? "00" : gradeTenths / 10 }),
    ...(strip.paper === null ? {} : { paper: strip.paper }),
    ...(strip.enlarger === null ? {} : { enlarger: strip.enlarger }),
    ...(strip.apertureTenths === null ? {} : { aperture: strip.apertureTenths / 10 }),
  };
}

/** A finer strip of five bars with this time in its middle. */
function finerAction(strip: Strip, setTenths: number) {
  const step = strip.step.kind === "stops" ? finerThan(strip.step.twelfths) : "1/6";
  if (step === undefined) return [];
  const parts = step.split("/").map(Number);
  const stops = (parts[0] ?? 1) / (parts[1] ?? 1);
  const base = Math.max(1, Math.round(setTenths / factorOf(2 * stops)));
  const options = { base: base / 10, step, ...(strip.enlarger === null ? {} : { enlarger: strip.enlarger }) };
  return [{ label: words().finer(stopsWord(stops)), line: makeLine("print strip", options) }];
}
