import ICAL from "ical.js";
import type { SchoolClass } from "../../store/shapes/school.ts";
import { inEach, speaking } from "../speech/language.ts";
import { dueDigests, type DueDigest } from "./digest/times.ts";
import { de } from "./words/calendar-feed.de.ts";
import { en } from "./words/calendar-feed.en.ts";

/* A class's periods and digests for a calendar (iCalendar, RFC 5545). No names of people are in it. */

const words = inEach({ en, de });

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;
/** Half a year lies ahead; a calendar looks again long before it is over. */
const WEEKS = 26;

/**
 * The text of the calendar file, from the day before `nowMs` on. Each period and digest stands there by itself, at its instant in
 * UTC, so that summer time needs no rules in the file and no calendar can take them otherwise than the class's clock does.
 */
export function makeCalendar(school: SchoolClass, nowMs: number): string {
  const { habits, zone } = school;
  const calendar = new ICAL.Component("vcalendar");
  calendar.updatePropertyWithValue("version", "2.0");
  calendar.updatePropertyWithValue("prodid", "-//Sinkside//EN");
  addText(calendar, "name", school.name);
  for (let week = 0; week < WEEKS; week += 1) {
    const from = nowMs - DAY_MS + week * 7 * DAY_MS;
    for (const due of dueDigests(habits, zone, from, from + 7 * DAY_MS))
      speaking(habits.language, () => addEvents(calendar, school, due, nowMs));
  }
  return `${calendar.toString()}\r\n`;
}

function addEvents(calendar: ICAL.Component, school: SchoolClass, due: DueDigest, nowMs: number): void {
  const uid = `${due.name}.${school.id}@sinkside`;
  const { period, startsAtMs, dueAtMs } = due;
  if (!period) {
    addEvent(calendar, { uid, stamp: nowMs, summary: words().weekDigest, start: dueAtMs, minutes: 0 });
    return;
  }
  addEvent(calendar, {
    uid,
    stamp: nowMs,
    summary: words().period(period.name),
    start: startsAtMs,
    minutes: period.endMinute - period.startMinute,
  });
  if (dueAtMs < startsAtMs)
    addEvent(calendar, {
      uid: `d${uid}`,
      stamp: nowMs,
      summary: words().periodDigest,
      start: dueAtMs,
      minutes: 0,
    });
}

interface CalendarEvent {
  readonly uid: string;
  readonly stamp: number;
  readonly summary: string;
  readonly start: number;
  /** 0: a moment. */
  readonly minutes: number;
}

function addEvent(calendar: ICAL.Component, { uid, stamp, summary, start, minutes }: CalendarEvent): void {
  const event = new ICAL.Component("vevent");
  event.updatePropertyWithValue("uid", uid);
  event.updatePropertyWithValue("dtstamp", inUtc(stamp));
  event.updatePropertyWithValue("dtstart", inUtc(start));
  if (minutes > 0) event.updatePropertyWithValue("dtend", inUtc(start + minutes * MINUTE_MS));
  addText(event, "summary", summary);
  // Nobody is busy while the class is told something.
  event.updatePropertyWithValue("transp", minutes > 0 ? "OPAQUE" : "TRANSPARENT");
  calendar.addSubcomponent(event);
}

/** Names are people's: the library leaves a line end of some kinds as it is, and with it a property of theirs would begin. */
function addText(to: ICAL.Component, name: string, text: string): void {
  to.updatePropertyWithValue(name, text.replaceAll(/[\p{Cc}\u2028\u2029]+/gu, " ").trim());
}

const inUtc = (atMs: number): ICAL.Time => ICAL.Time.fromJSDate(new Date(atMs), true);
