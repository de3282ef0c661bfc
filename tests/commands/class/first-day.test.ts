import { expect, test } from "vitest";
import { type FirstDayFacts, firstDayOf, nextFirstStep } from "../../../commands/class/first-day.ts";
import { sayStep } from "../../../commands/class/first-day-words.ts";
import { type Habits } from "../../../store/shapes/school.ts";
import { DEFAULT_HABITS } from "../../../store/shapes/usual-habits.ts";

/* What counts as done, by what a class has. */

const facts = (over: Partial<FirstDayFacts> = {}, habits: Partial<Habits> = {}): FirstDayFacts => ({
  class: {
    id: 1,
    key: "discord:1",
    name: "Tuesday *class*",
    zone: "Europe/Lisbon",
    demo: false,
    habits: { ...DEFAULT_HABITS, ...habits },
  },
  tanks: 0,
  sheets: 0,
  missing: ["developer", "fixer"],
  joinCode: null,
  hasStudents: false,
  hasChannel: false,
  hasTrial: false,
  ...over,
});
const stateOf = (key: string, of: FirstDayFacts): string | undefined =>
  firstDayOf(of).find((step) => step.key === key)?.state;

test("name and zone are one step: both must have been said", () => {
  expect(stateOf("name", facts({}, { answered: ["name"] }))).toBe("open");
  expect(stateOf("name", facts({}, { answered: ["name", "zone"] }))).toBe("done");
});

test("where a chat has its own door, the way in is the class's channel; in the room it is its code", () => {
  expect(stateOf("code", facts({ hasStudents: true }))).toBe("open");
  expect(stateOf("code", facts({ hasChannel: true }))).toBe("done");
  expect(sayStep(facts(), "code")?.actions[0]).toMatchObject({ line: "class setup channel:here" });
  const room = facts({ joinCode: "abc1de", hasChannel: true });
  expect(stateOf("code", room)).toBe("open");
  expect(stateOf("code", { ...room, hasStudents: true })).toBe("done");
  expect(sayStep(room, "code")?.how).toContain("**ABC-1DE**");
});

test("what is done is done, put off or not; what is put off is no longer next", () => {
  const later = { later: ["name", "tanks"] } satisfies Partial<Habits>;
  expect(nextFirstStep(facts({}, later))).toBe("times");
  expect(stateOf("tanks", facts({ tanks: 3 }, later))).toBe("done");
  const all = facts({ tanks: 1, sheets: 1, missing: [], hasChannel: true, hasTrial: true }, later);
  expect(nextFirstStep(all)).toBe(undefined);
});

test("a name is said as it is, and one too long for a key has none", () => {
  expect(sayStep(facts(), "name")?.how).toContain("Tuesday \\*class\\*");
  const long = facts();
  const named = { ...long, class: { ...long.class, name: "x".repeat(100) } };
  expect(sayStep(named, "name")?.actions.map(({ label }) => label)).toEqual(["Later"]);
});
