import ICAL from "ical.js";
import { Temporal } from "temporal-polyfill";

/* The clocks a calendar file counts by. */

/** Turns a wall-clock time of its zone into an instant, ms since the epoch. */
export type ZoneClock = (time: Temporal.PlainDateTime) => number;

export const UTC_CLOCK: ZoneClock = (time) => time.toZonedDateTime("UTC").epochMilliseconds;

/** The clock of a zone of the IANA time zone database; undefined for a name that is none. */
export function ianaClock(name: string): ZoneClock | undefined {
  try {
    Temporal.PlainDateTime.from("2026-01-01T00:00").toZonedDateTime(name);
  } catch {
    return undefined;
  }
  return (time) => time.toZonedDateTime(name).epochMilliseconds;
}

/**
 * The clock a file defines itself (RFC 5545, 3.6.5); undefined where it can't be read, or where its rules are not yearly
 * ones: no law changes a clock each second, and working that out would take for ever.
 */
export function ownClock(block: string): ZoneClock | undefined {
  try {
    const zone = new ICAL.Component(ICAL.parse(block));
    const observances = [
      ...zone.getAllSubcomponents("standard"),
      ...zone.getAllSubcomponents("daylight"),
    ].map((each) => each.getFirstPropertyValue("rrule"));
    const isYearly = observances.every(
      (rule) => rule === null || (rule instanceof ICAL.Recur && rule.freq === "YEARLY"),
    );
    if (observances.length === 0 || !isYearly) return undefined;
    const clock = new ICAL.Timezone(zone);
    return (time) => {
      const { year, month, day, hour, minute, second } = time;
      const wall = new ICAL.Time(
        { year, month, day, hour, minute, second, isDate: false },
        ICAL.Timezone.localTimezone,
      );
      return UTC_CLOCK(time) - clock.utcOffset(wall) * 1000;
    };
  } catch {
    return undefined;
  }
}
