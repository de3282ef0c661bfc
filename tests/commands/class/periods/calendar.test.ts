import { eventName } from "../../../../commands/class/periods/file-words.ts";
import { describe, expect, it } from "vitest";
import { Temporal } from "temporal-polyfill";
import { ianaClock, ownClock } from "../../../../commands/class/periods/zone.ts";
import { findClashes, readCalendar } from "../../../../commands/class/periods/calendar.ts";
import { createRoom } from "../../../support/room.ts";
import { formatPeriod } from "../../../../commands/class/period-words.ts";

function calendar(...lines: string[]): string {
  return ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//invented//EN", ...lines, "END:VCALENDAR", ""].join(
    "\r\n",
  );
}

function event(name: string, ...lines: string[]): string[] {
  return ["BEGIN:VEVENT", `UID:${name}@invented`, `SUMMARY:${name}`, ...lines, "END:VEVENT"];
}

function read(text: string, zone: string, now: number) {
  const result = readCalendar(text, zone, now, eventName);
  return result.ok
    ? { ...result.value, periods: result.value.periods.map(formatPeriod) }
    : result.fault.map((fault) => `${fault.code} ${"name" in fault ? fault.name : ""}`.trim());
}

/* Rules and starts as printed in RFC 5545, 3.8.5.3; the length of an hour is ours, since the examples have none. */
describe("the examples of RFC 5545, 3.8.5.3", () => {
  const SEPTEMBER_1997 = Date.UTC(1997, 8, 1, 12);
  const inNewYork = (rule: string): ReturnType<typeof read> =>
    read(
      calendar(
        ...event(
          "Example",
          "DTSTART;TZID=America/New_York:19970902T090000",
          "DURATION:PT1H",
          `RRULE:${rule}`,
        ),
      ),
      "America/New_York",
      SEPTEMBER_1997,
    );
  const tuesday = "Tuesday 09:00-10:00, Example";
  const thursday = "Thursday 09:00-10:00, Example";

  it.each([
    ["Weekly for 10 occurrences", "FREQ=WEEKLY;COUNT=10", [tuesday]],
    ["Weekly until December 24, 1997", "FREQ=WEEKLY;UNTIL=19971224T000000Z", [tuesday]],
    [
      "Weekly on Tuesday and Thursday for five weeks",
      "FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH",
      [tuesday, thursday],
    ],
    ["the same, with COUNT", "FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH", [tuesday, thursday]],
  ])("%s", (_, rule, periods) => {
    expect(inNewYork(rule)).toMatchObject({ periods, skipped: [] });
  });

  it("daily is each day of the week", () => {
    expect(inNewYork("FREQ=DAILY;COUNT=10")).toMatchObject({ periods: { length: 7 } });
  });

  it.each([
    ["Every other week - forever", "FREQ=WEEKLY;INTERVAL=2;WKST=SU"],
    [
      "Every other week on Monday, Wednesday, and Friday",
      "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
    ],
    ["Every other day - forever", "FREQ=DAILY;INTERVAL=2"],
    ["Every day in January, for 3 years", "FREQ=DAILY;UNTIL=20000131T140000Z;BYMONTH=1"],
    ["Monthly on the first Friday for 10 occurrences", "FREQ=MONTHLY;COUNT=10;BYDAY=1FR"],
    ["Every Friday the 13th, forever", "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13"],
  ])("%s is no period of every week", (_, rule) => {
    expect(inNewYork(rule)).toMatchObject({ periods: [], skipped: [{ code: "SKIP_NOT_WEEKLY" }] });
  });

  it("what ended is left out, by UNTIL and by COUNT", () => {
    const at = (rule: string, now: number) =>
      read(
        calendar(...event("Example", "DTSTART:19970902T090000Z", "DTEND:19970902T100000Z", `RRULE:${rule}`)),
        "UTC",
        now,
      );
    for (const rule of ["FREQ=WEEKLY;UNTIL=19971224T000000Z", "FREQ=WEEKLY;COUNT=10"]) {
      expect(at(rule, Date.UTC(1997, 9, 30))).toMatchObject({ periods: { length: 1 } });
      expect(at(rule, Date.UTC(1998, 0, 1))).toMatchObject({ periods: [], skipped: [{ code: "SKIP_OVER" }] });
    }
  });
});

// RFC 5545, 3.6.5: the rules of New York since 2007, under a name that only the file knows.
const HARBOUR_ZONE = [
  "BEGIN:VTIMEZONE",
  "TZID:Harbour time",
  "BEGIN:STANDARD",
  "DTSTART:20071104T020000",
  "RRULE:FREQ=YEARLY;BYMONTH=11;BYDAY=1SU",
  "TZOFFSETFROM:-0400",
  "TZOFFSETTO:-0500",
  "TZNAME:EST",
  "END:STANDARD",
  "BEGIN:DAYLIGHT",
  "DTSTART:20070311T020000",
  "RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=2SU",
  "TZOFFSETFROM:-0500",
  "TZOFFSETTO:-0400",
  "TZNAME:EDT",
  "END:DAYLIGHT",
  "END:VTIMEZONE",
];

describe("clocks", () => {
  it("a zone the file defines agrees with the IANA database, day by day for four years", () => {
    const own = ownClock(HARBOUR_ZONE.join("\r\n"));
    const iana = ianaClock("America/New_York");
    for (let day = 0; day < 4 * 365; day += 1) {
      const noon = Temporal.PlainDateTime.from("2025-01-01T12:00").add({ days: day });
      expect(own?.(noon), String(noon)).toBe(iana?.(noon));
    }
  });

  it("a zone whose clock changes each second is not worked out", () => {
    const hostile = HARBOUR_ZONE.join("\r\n").replaceAll("FREQ=YEARLY", "FREQ=SECONDLY");
    expect(ownClock(hostile)).toBeUndefined();
  });

  const weekly = (start: string) =>
    calendar(...HARBOUR_ZONE, ...event("Lab", start, "DURATION:PT2H", "RRULE:FREQ=WEEKLY"));
  const JANUARY = Date.UTC(2026, 0, 15);
  // 15 January 2026 is a Thursday. 18:00 in New York (UTC-5) is 23:00 UTC and 00:00 on Friday in Berlin.
  it.each([
    ["no zone is the class's clock", "DTSTART:20260115T180000", "Europe/Berlin", "Thursday 18:00-20:00, Lab"],
    ["UTC", "DTSTART:20260115T180000Z", "Europe/Berlin", "Thursday 19:00-21:00, Lab"],
    [
      "an IANA zone",
      "DTSTART;TZID=America/New_York:20260115T180000",
      "Europe/Berlin",
      "Friday 00:00-02:00, Lab",
    ],
    [
      "a zone of the file",
      "DTSTART;TZID=Harbour time:20260115T180000",
      "Europe/Berlin",
      "Friday 00:00-02:00, Lab",
    ],
    [
      "the same zone",
      "DTSTART;TZID=Harbour time:20260115T180000",
      "America/New_York",
      "Thursday 18:00-20:00, Lab",
    ],
  ])("%s", (_, start, zone, period) => {
    expect(read(weekly(start), zone, JANUARY)).toMatchObject({ periods: [period] });
  });

  it("a time in UTC moves on a clock with summer time, and the class is told", () => {
    expect(read(weekly("DTSTART:20260115T180000Z"), "Europe/Berlin", JANUARY)).toMatchObject({
      moving: ["Lab"],
    });
    expect(read(weekly("DTSTART:20260115T180000Z"), "UTC", JANUARY)).toMatchObject({ moving: [] });
    expect(
      read(weekly("DTSTART;TZID=Harbour time:20260115T180000"), "America/New_York", JANUARY),
    ).toMatchObject({ moving: [] });
  });
});

/* A school's file as calendar programs write them: invented. */
const SCHOOL = `\ufeff${calendar(
  ...event(
    "Evening class",
    "DTSTART:20260112T180000",
    "DTEND:20260112T203000",
    "RRULE:FREQ=WEEKLY;BYDAY=MO,TH",
    "EXDATE:20260219T180000",
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    "TRIGGER:-PT15M",
    "DESCRIPTION:Go",
    "END:VALARM",
  ),
  ...event(
    "Open darkroom\\, all welco",
    " me",
    "DTSTART:20260114T140000",
    "DURATION:PT3H",
    "RRULE:FREQ=WEEKLY",
  ),
  ...event("Open day", "DTSTART:20260301T100000", "DTEND:20260301T160000"),
  ...event("Term", "DTSTART;VALUE=DATE:20260112", "RRULE:FREQ=WEEKLY"),
  ...event("Staff", "DTSTART:20260112T080000", "DTEND:20260112T090000", "RRULE:FREQ=WEEKLY;INTERVAL=2"),
  ...event(
    "Old class",
    "STATUS:CANCELLED",
    "DTSTART:20260112T100000",
    "DTEND:20260112T110000",
    "RRULE:FREQ=WEEKLY",
  ),
  ...event(
    "Evening class",
    "RECURRENCE-ID:20260212T180000",
    "DTSTART:20260213T180000",
    "DTEND:20260213T203000",
  ),
)}`;
const NOW = Date.UTC(2026, 0, 15, 12);

describe("a school's file", () => {
  it("gives its weekly events, and says what was left out and why", () => {
    expect(read(SCHOOL, "Europe/Lisbon", NOW)).toEqual({
      periods: [
        "Monday 18:00-20:30, Evening class",
        "Thursday 18:00-20:30, Evening class",
        "Wednesday 14:00-17:00, Open darkroom, all welcome",
      ],
      skipped: [
        { name: "Open day", code: "SKIP_ONCE" },
        { name: "Term", code: "SKIP_ALL_DAY" },
        { name: "Staff", code: "SKIP_NOT_WEEKLY" },
        { name: "Old class", code: "SKIP_CANCELLED" },
        { name: "Evening class", code: "SKIP_MOVED_ONCE" },
      ],
      withExceptions: ["Evening class"],
      moving: [],
    });
  });

  it("tells all faults at once, each with the event's name", () => {
    const weekly = "RRULE:FREQ=WEEKLY";
    const text = calendar(
      ...event("No start", weekly),
      ...event("No date", "DTSTART:20260230T180000", "DTEND:20260230T190000", weekly),
      ...event("No end", "DTSTART:20260112T180000", weekly),
      ...event("Backwards", "DTSTART:20260112T180000", "DTEND:20260112T170000", weekly),
      ...event("Night", "DTSTART:20260112T230000", "DTEND:20260113T010000", weekly),
      ...event("Mars", "DTSTART;TZID=Mars/Olympus:20260112T180000", "DURATION:PT1H", weekly),
      ...event("Sometimes", "DTSTART:20260112T180000", "DURATION:PT1H", "RRULE:FREQ=SOMETIMES"),
      ...event("Torn", "DTSTART"),
      ...event("First", "DTSTART:20260116T180000", "DURATION:PT2H", weekly),
      ...event("Second", "DTSTART:20260116T190000", "DURATION:PT2H", weekly),
      "BEGIN:VEVENT",
      "DTSTART:20260112T180000",
      weekly,
      "END:VEVENT",
    );
    expect(read(text, "UTC", NOW)).toEqual([
      "ERR_NO_START No start",
      "ERR_NO_DATE No date",
      "ERR_NO_END No end",
      "ERR_END_BEFORE_START Backwards",
      "ERR_OVER_MIDNIGHT Night",
      "ERR_UNKNOWN_ZONE Mars",
      "ERR_BAD_RULE Sometimes",
      "ERR_UNREADABLE Torn",
      "ERR_NO_END Event 11",
      "ERR_CLASH Second",
    ]);
  });

  it.each([
    ["", "ERR_NO_CALENDAR"],
    ["film,developer\nLantern 400,House MQ", "ERR_NO_CALENDAR"],
    [SCHOOL.slice(0, -20), "ERR_CUT_OFF"],
    [calendar(), "ERR_NO_EVENTS"],
  ])("%#: what is no whole calendar is refused", (text, code) => {
    expect(read(text, "UTC", NOW)).toEqual([code]);
  });

  it("clashes with what the class has, but for periods of the same start, which it replaces", () => {
    const evening = { weekday: 4, startMinute: 1080, endMinute: 1230, name: "Evening class" };
    expect(findClashes([evening], [{ ...evening, endMinute: 1200 }])).toEqual([]);
    expect(findClashes([evening], [{ ...evening, startMinute: 1140 }])).toMatchObject([
      { code: "ERR_CLASH", other: evening },
    ]);
  });
});

describe("/class periods file:", () => {
  const line = (text: string, more = ""): string =>
    `/class periods ${more}file:"${text.replace(/(["\\])/g, "\\$1")}"`;

  it("takes the weekly events over and says what it left out", () => {
    const room = createRoom();
    const said = room.says("Iris", line(SCHOOL), "teacher");
    expect(said).toContain("Noted: 3 periods.");
    expect(said).toContain("2. Wednesday 14:00-17:00, Open darkroom, all welcome");
    expect(said).toContain("Left out, since they happen once: Open day.");
    expect(said).toContain("Days off and extra days are not kept; each week is alike here: Evening class.");
    // A second time changes nothing.
    expect(room.says("Iris", line(SCHOOL), "teacher")).toContain("**3 periods** a week");
  });

  it("takes nothing where anything is wrong or in the way, and all in its place where that is said", () => {
    const room = createRoom();
    room.says("Iris", "/class periods days:thu from:17:00 to:19:00 name:Club", "teacher");
    const refused = room.asks("Iris", line(SCHOOL), "teacher");
    expect(refused.code).toBe("ERR_CALENDAR");
    expect(refused.reply.text).toContain(
      "- Thursday 18:00-20:30, Evening class runs into Thursday 17:00-19:00, Club.",
    );
    expect(room.stores.classes.get(1)?.habits.periods).toHaveLength(1);
    expect(room.says("Iris", line(SCHOOL, "replace:yes "), "teacher")).toContain("**3 periods** a week");
    expect(room.stores.classes.get(1)?.habits.periods.map(({ name }) => name)).not.toContain("Club");
  });

  it("says it where a file has nothing weekly", () => {
    const once = calendar(...event("Open day", "DTSTART:20260301T100000", "DTEND:20260301T160000"));
    const refused = createRoom().asks("Iris", line(once), "teacher");
    expect(refused.code).toBe("ERR_NO_WEEKLY");
    expect(refused.reply.text).toContain("Left out, since they happen once: Open day.");
  });
});
