import type { Local } from "../../store/shapes/print.ts";
import { fail, ok } from "../result.ts";
import { factorOf, onTimer, stopsBetween } from "./light.ts";
import { formatStops, parseFraction, type Parse, tidy } from "./stops.ts";

/*
 * Burning and dodging. In stops they survive another base time (a published table for printers is built on that); in seconds
 * or per cent they mean a base time, and are turned into stops by it.
 */

/** As typed: in stops, or in what a base time makes stops of. */
export interface TypedLocal {
  readonly kind: Local["kind"];
  readonly place: string;
  readonly amount: { readonly unit: "stops" | "seconds" | "percent"; readonly value: number };
}

const MOST_LOCALS = 12;
const AMOUNT = "((?:\\d{1,3} )?\\d{1,3}/\\d{1,3}|\\d{1,5}(?:\\.\\d{1,3})?)";
const UNIT = "(s|sec|sek|seconds?|sekunden?|%|percent|prozent|stops?|blenden?)?";

/** `sky 1/2, corner 20 %, face 3 s`: a place and how much, in either order; a bare figure is stops. */
export const parseLocals =
  (kind: Local["kind"]): Parse<TypedLocal[]> =>
  (text) => {
    const wrong = fail({ code: "ERR_NO_LOCAL", typed: text } as const);
    if (text.length > 600) return wrong;
    const parts = text.split(/[;\n]|,(?!\d)/).map((part) => tidy(part));
    if (parts.length > MOST_LOCALS) return wrong;
    const read = parts.map((part) => localOf(kind, part));
    return read.every((each) => each !== undefined) ? ok(read) : wrong;
  };

function localOf(kind: Local["kind"], part: string): TypedLocal | undefined {
  const after = new RegExp(`^(.{1,40}?)[ :]+\\+?-?${AMOUNT} ?${UNIT}$`, "i").exec(part);
  const before = after ? null : new RegExp(`^\\+?-?${AMOUNT} ?${UNIT}[ :]+(.{1,40})$`, "i").exec(part);
  const [place, amount, unit] = after
    ? [after[1], after[2], after[3]]
    : [before?.[3], before?.[1], before?.[2]];
  const value = parseFraction(amount ?? "");
  if (!place || value === undefined || value <= 0) return undefined;
  const written = (unit ?? "").toLowerCase();
  const kindOfUnit = /^s(ec|ek|$)/.test(written) ? "seconds" : /^(%|p)/.test(written) ? "percent" : "stops";
  return { kind, place: place.trim(), amount: { unit: kindOfUnit, value } };
}

/** In stops by its base time; undefined: more than there is to hold back, or more than anybody burns in. */
export function toLocal({ kind, place, amount }: TypedLocal, baseSeconds: number): Local | undefined {
  const sign = kind === "burn" ? 1 : -1;
  const share = amount.unit === "seconds" ? amount.value / baseSeconds : amount.value / 100;
  const stops =
    amount.unit === "stops" ? amount.value : Math.abs(stopsBetween(1, Math.max(0, 1 + sign * share)));
  const milliStops = Math.round(stops * 1000);
  return milliStops >= 1 && milliStops <= 8000 && place !== "" ? { kind, place, milliStops } : undefined;
}

/** Seconds to add, or to hold back within the base time: 1/3 stop of 25.4 s is 5.24 s held back. */
export function localSeconds({ kind, milliStops }: Local, baseSeconds: number): number {
  const factor = factorOf((kind === "burn" ? 1 : -1) * (milliStops / 1000));
  return Math.abs(baseSeconds * factor - baseSeconds);
}

/** The same as this timer can be set, tenths of a second. */
export const localTenths = (local: Local, baseSeconds: number, timerTenths: number): number =>
  onTimer(localSeconds(local, baseSeconds), timerTenths);

/** `sky 1/2, corner 0.85`: what parseLocals reads back as the same. */
export const makeLocals = (locals: readonly Local[]): string =>
  locals
    .map(
      ({ place, milliStops }) =>
        `${place} ${milliStops % 1000 === 0 ? milliStops / 1000 : formatPlain(milliStops)}`,
    )
    .join(", ");

/** Decimals with a point, whoever reads: it is typed back. */
function formatPlain(milliStops: number): string {
  const fraction = formatStops(milliStops / 1000);
  return fraction.includes("/") ? fraction : String(milliStops / 1000);
}
