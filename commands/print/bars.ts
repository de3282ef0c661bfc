import type { Strip, StripStep } from "../../store/shapes/print.ts";
import { fail, ok, type Result } from "../result.ts";
import { factorOf, onTimer, stopsBetween } from "./light.ts";

/* A test strip: what each bar gets, and what the timer is set to one time after the other. Bar 1 has the least light. */

export interface Bar {
  /** From 1. */
  readonly number: number;
  /** As the step asks for it, seconds. */
  readonly seconds: number;
  /** What it gets from this timer in all, tenths of a second. */
  readonly totalTenths: number;
  /** What it gets beyond the bar before it. */
  readonly addTenths: number;
  /** What the timer's step costs, in stops: above 0 too much light. */
  readonly cost: number;
}

export type BarsFault = { readonly code: "ERR_STRIP_FINE"; readonly bar: number };

/** The series as the step asks for it, seconds: whole stops from 2 s are 2, 4, 8, 16, 32. */
export function series(baseSeconds: number, step: StripStep, bars: number): number[] {
  return Array.from({ length: bars }, (_, at) =>
    step.kind === "stops"
      ? baseSeconds * factorOf((at * step.twelfths) / 12)
      : baseSeconds + (at * step.tenths) / 10,
  );
}

/**
 * Each total is the nearest this timer can make, and what is added is the difference of two totals: so the roundings never
 * add up over the strip.
 */
export function barsOf(
  strip: Pick<Strip, "baseTenths" | "step" | "bars" | "timerTenths">,
): Result<Bar[], BarsFault> {
  let before = 0;
  const bars = series(strip.baseTenths / 10, strip.step, strip.bars).map((seconds, at): Bar => {
    const totalTenths = onTimer(seconds, strip.timerTenths);
    const bar = {
      number: at + 1,
      seconds,
      totalTenths,
      addTenths: totalTenths - before,
      cost: stopsBetween(seconds * 10, totalTenths),
    };
    before = totalTenths;
    return bar;
  });
  const alike = bars.find(({ addTenths }) => addTenths <= 0);
  return alike ? fail({ code: "ERR_STRIP_FINE", bar: alike.number }) : ok(bars);
}

/** One setting of the timer, and the bars that lie open during it. */
export interface Exposure {
  readonly tenths: number;
  readonly fromBar: number;
  readonly toBar: number;
}

/**
 * In the order they are made. Covering: all bars first, then one less each time. Uncovering: the last bar alone first, then
 * one more each time, so that the base time comes at the end.
 */
export function exposuresOf(bars: readonly Bar[], way: Strip["way"]): Exposure[] {
  const covering = bars.map(({ number, addTenths }): Exposure => ({
    tenths: addTenths,
    fromBar: number,
    toBar: bars.length,
  }));
  return way === "cover" ? covering : covering.toReversed();
}

/** The time a reader of the strip means: a bar, or half-way (in stops) between it and the next. */
export function readBar(
  bars: readonly Bar[],
  at: { readonly bar: number; readonly isBetween: boolean },
): number | undefined {
  const bar = bars[at.bar - 1];
  const next = bars[at.bar];
  if (!bar) return undefined;
  if (!at.isBetween) return bar.totalTenths / 10;
  return next && Math.sqrt(bar.totalTenths * next.totalTenths) / 10;
}

/** Stops from the palest bar to the darkest. */
export function spanOf(bars: readonly Bar[]): number {
  const [first, last] = [bars[0], bars.at(-1)];
  return first && last ? stopsBetween(first.totalTenths, last.totalTenths) : 0;
}

/**
 * Stops to go where no bar is right: half the strip's span, in whole stops (published for five bars of a stop at f/8: all
 * pale f/4, all dark f/16).
 */
export const moveBy = (bars: readonly Bar[]): number => Math.max(1, Math.round(spanOf(bars) / 2));

/** A shorter time than this a lamp that glows up and a hand with a card don't keep well. Common practice, no source. */
export const SHORT_TENTHS = 20;
/** A call in a chat comes within a second or two: bars must be further apart for it. Our judgement, no source. */
export const CALL_TENTHS = 100;
