import { describe, expect, it } from "vitest";
import { nextSitting, sittingNow } from "../../../commands/plan/bell.ts";
import { addPeriods, parseClock, parseDays } from "../../../commands/class/periods.ts";
import { formatPeriod } from "../../../commands/class/period-words.ts";

describe("days", () => {
  it.each([
    ["mon", [1]],
    ["Mondays", [1]],
    ["mon, wed", [1, 3]],
    ["tues and thurs", [2, 4]],
    ["mon-fri", [1, 2, 3, 4, 5]],
    ["sat to mon", [1, 6, 7]],
    ["weekdays", [1, 2, 3, 4, 5]],
    ["daily", [1, 2, 3, 4, 5, 6, 7]],
  ])("%s is read", (text, days) => {
    expect(parseDays(text)).toEqual({ ok: true, value: days });
  });

  it.each(["", "m", "s", "someday", "mon-", "mon-wed-fri", "1"])("%j is refused", (text) => {
    expect(parseDays(text)).toMatchObject({ ok: false, fault: { code: "ERR_NO_DAYS" } });
  });
});

describe("clock times", () => {
  it.each([
    ["18:00", 1080],
    ["18.30", 1110],
    ["18h30", 1110],
    ["0930", 570],
    ["6 pm", 1080],
    ["6:30pm", 1110],
    ["12 am", 0],
    ["12 pm", 720],
    ["0:00", 0],
    ["24:00", 1440],
  ])("%s is read", (text, minute) => {
    expect(parseClock(text)).toEqual({ ok: true, value: minute });
  });

  it.each(["18", "", "25:00", "24:01", "18:60", "13 pm", "0 am", "half past six", "-1:00"])(
    "%j is refused",
    (text) => {
      expect(parseClock(text)).toMatchObject({ ok: false, fault: { code: "ERR_NO_CLOCK" } });
    },
  );
});

const evening = { weekday: 4, startMinute: 1080, endMinute: 1230, name: "Evening class" };

describe("the list of periods", () => {
  it("stays in the order of the week", () => {
    const added = addPeriods([evening], [{ ...evening, weekday: 1 }]);
    expect(added.ok && added.value.map(formatPeriod)).toEqual([
      "Monday 18:00-20:30, Evening class",
      "Thursday 18:00-20:30, Evening class",
    ]);
  });

  it("replaces a period of the same day and start", () => {
    const added = addPeriods([evening], [{ ...evening, endMinute: 1260 }]);
    expect(added).toMatchObject({ ok: true, value: [{ endMinute: 1260 }] });
  });

  it("refuses one that runs into another, and a bell before its start", () => {
    expect(addPeriods([evening], [{ ...evening, startMinute: 1200, endMinute: 1300 }])).toMatchObject({
      fault: { code: "ERR_OVERLAP", other: evening },
    });
    expect(addPeriods([], [{ ...evening, endMinute: 1080 }])).toMatchObject({
      fault: { code: "ERR_BELL_BEFORE_START" },
    });
  });

  it("lets one begin at the bell of the one before", () => {
    expect(addPeriods([evening], [{ ...evening, startMinute: 1230, endMinute: 1300 }]).ok).toBe(true);
  });
});

// Thursday, 15 January 2026, 18:00 in Lisbon (UTC).
const THURSDAY_18 = Date.UTC(2026, 0, 15, 18);

describe("the bell", () => {
  it("is on from the very start and off at the bell itself", () => {
    expect(sittingNow([evening], "UTC", THURSDAY_18 - 1)).toBeNull();
    expect(sittingNow([evening], "UTC", THURSDAY_18)?.endsAtMs).toBe(THURSDAY_18 + 150 * 60_000);
    expect(sittingNow([evening], "UTC", THURSDAY_18 + 150 * 60_000)).toBeNull();
  });

  it("is the class's own clock, wherever the computer stands", () => {
    // 18:00 in Chatham (UTC+13:45 in January) is 04:15 UTC.
    expect(nextSitting([evening], "Pacific/Chatham", Date.UTC(2026, 0, 14, 12))?.startsAtMs).toBe(
      Date.UTC(2026, 0, 15, 4, 15),
    );
  });

  it("is found a week ahead, and nowhere without periods", () => {
    expect(nextSitting([evening], "UTC", THURSDAY_18)?.startsAtMs).toBe(THURSDAY_18 + 7 * 86_400_000);
    expect(nextSitting([], "UTC", THURSDAY_18)).toBeNull();
  });

  // IANA time zone database, Europe/Berlin: 2026-03-29 02:00 becomes 03:00; 2026-10-25 03:00 becomes 02:00.
  it("keeps the wall clock over a change to summer time and back", () => {
    const night = { weekday: 7, startMinute: 60, endMinute: 240, name: "" };
    const spring = nextSitting([night], "Europe/Berlin", Date.UTC(2026, 2, 28, 12));
    expect(spring && spring.endsAtMs - spring.startsAtMs).toBe(2 * 3_600_000);
    const autumn = nextSitting([night], "Europe/Berlin", Date.UTC(2026, 9, 24, 12));
    expect(autumn && autumn.endsAtMs - autumn.startsAtMs).toBe(4 * 3_600_000);
  });
});
