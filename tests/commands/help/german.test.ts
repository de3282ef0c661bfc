import { describe, expect, test } from "vitest";
import { type Mark, MARKS } from "../../../commands/batch/marks.ts";
import type { Role } from "../../../store/shapes/person.ts";
import type { NextStep } from "../../../commands/help/next-step.ts";
import { helpReply } from "../../../commands/help/reply.ts";
import { speaking } from "../../../commands/speech/language.ts";
import { viewOf } from "../../../commands/run/view.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { aRun, START } from "../../support/make.ts";
import { createRoom } from "../../support/room.ts";

const german = (step: () => NextStep, role: Role = "student") =>
  speaking("de", () => helpReply(step(), role, [], START));
const firstLine = (step: () => NextStep): string => german(step).text.split("\n")[0] ?? "";
const view = () => viewOf(aRun(), "Mina");
const bottle = (mark: Mark) => (): NextStep => ({ kind: "bottle", label: "B4", mark });

const STEPS: (() => NextStep)[] = [
  () => ({ kind: "run", view: view(), others: 0 }),
  () => ({ kind: "run", view: { ...view(), phase: "waiting" }, others: 2 }),
  () => ({ kind: "start", plan: 4, bellWarning: "" }),
  () => ({ kind: "setup", missing: 3 }),
  ...MARKS.map(bottle),
  () => ({ kind: "rate", roll: 9 }),
  () => ({ kind: "no-sheet" }),
  () => ({ kind: "plan", isFirst: true }),
  () => ({ kind: "plan", isFirst: false }),
];

describe("the next step in German", () => {
  test("is said without an English word, to everybody, with its buttons", () => {
    for (const step of STEPS)
      for (const role of ["student", "aide", "teacher"] as const) {
        const { text, actions = [] } = german(step, role);
        for (const part of [text.replace(/`[^`]*`/g, ""), ...actions.map(({ label }) => label)])
          expect(ENGLISH_WORDS.exec(part)?.[0], part).toBe(undefined);
      }
  });

  test("counts one and many", () => {
    expect(firstLine(() => ({ kind: "setup", missing: 1 }))).toBe(
      "**Der Kurs ist noch nicht eingerichtet:** 1 Teil fehlt, ein bis zwei Minuten.",
    );
    expect(firstLine(() => ({ kind: "setup", missing: 3 }))).toContain("3 Teile fehlen");
    expect(firstLine(() => ({ kind: "run", view: view(), others: 1 }))).toMatch(/\(und noch 1 Lauf\)$/);
    expect(firstLine(() => ({ kind: "run", view: view(), others: 2 }))).toMatch(/\(und noch 2 Läufe\)$/);
  });

  test("names the step as a noun, with its capital", () => {
    const waiting = { ...view(), phase: "waiting", title: "Fixierbad" } as const;
    expect(firstLine(() => ({ kind: "run", view: waiting, others: 0 }))).toContain(
      "**R7 wartet auf dich: Fixierbad.**",
    );
    const english = helpReply(
      { kind: "run", view: { ...waiting, title: "Rinse 2" }, others: 0 },
      "student",
      [],
      START,
    );
    expect(english.text).toContain("**R7 waits for you: rinse 2.**");
  });

  test("speaks to each person as they asked, in one class", () => {
    const room = createRoom();
    room.asks("Mina", "/mine language de");
    expect(room.asks("Mina", "/help").reply.text).toBe(
      [
        "**Beginn mit einem Plan.** Miss, wie warm der Entwickler ist, dann sag, welcher Film und wie warm:",
        "`/plan film:… temp:20`",
        "Ich rechne die Zeiten aus; dann bekommst du bei jedem Schritt ein Signal. Film bei völliger Dunkelheit einspulen: Handy, Uhr und Rotlicht aus.",
        "Immer da: `/run status` (wo dein Film ist), `/roll find` (das Filmbuch), `/contact sheet`, `/print strip` und `/tray plan` (Abzüge), `/sheet list` (Filme und Entwickler), `/caution` (Sicherheit und Abfall). Oder frag in eigenen Worten: `wie lange noch`. Was von dir gespeichert ist: `/mine show`.",
      ].join("\n"),
    );
    expect(room.asks("Mina", "/help").reply.actions?.map(({ label }) => label)).toEqual([
      "Plan machen",
      "Filme und Entwickler",
    ]);
    expect(room.asks("Bendix", "/help").reply.text).toContain("**Begin with a plan.**");
  });
});
