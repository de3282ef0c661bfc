import { describe, expect, test } from "vitest";
import { evidenceWords } from "../../../commands/class/digest/evidence-words.ts";
import { formatShelfLife, parseCapacity, parseShelfLife } from "../../../commands/batch/figures.ts";
import { parseDay } from "../../../commands/batch/dates.ts";
import { gaugesPicture } from "../../../commands/batch/picture.ts";
import { HOUSE_SOURCES, OWN_FIRST } from "../../../commands/batch/presets.ts";
import { sourceWords } from "../../../commands/batch/source-words.ts";
import { traceOf } from "../../../commands/batch/trace.ts";
import { wornAtPourWords } from "../../../commands/batch/refusal-words.ts";
import { forms } from "../../../commands/batch/words/form.de.ts";
import { commands } from "../../../commands/index.ts";
import { speaking } from "../../../commands/speech/language.ts";
import type { Reply } from "../../../commands/define.ts";
import { aBatch, aDeveloper, DAY_MS, ledger, mixed, tested, used } from "../../support/batch.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { START } from "../../support/make.ts";
import { createRoom, type Room } from "../../support/room.ts";

const FIXER =
  "/batch mix kind:fixer product:Pier Fix dilution:1+4 volume:1 l capacity:20 films/l clearing:0:45";
const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1";

/** Every command about bottles, and every way in which one is refused; the demo class is invented. */
const LINES = [
  "/batch status",
  "/batch shelf",
  "/batch waste",
  "/batch restock product:Pier Fix packs:2",
  "/batch restock product:Pier Fix packs:2 kind:fixer size:1 l dilution:1+4",
  "/batch restock product:Pier Fix",
  "/batch restock product:Pier Fix packs:-9",
  "/batch restock product:Slip MQ packs:1 kind:developer size:2 l form:powder dilution:stock",
  "/batch shelf",
  FIXER,
  "/batch mix kind:developer product:Slip MQ dilution:stock volume:5 l",
  "/batch mix kind:stop product:Pier Stop dilution:1:19 volume:1 l",
  "/batch mix kind:wash-aid product:Pier Aid dilution:1+9 volume:1 l part:2 Wochen",
  "/batch mix kind:wetting-agent product:Pier Wet dilution:1+200 volume:1 l",
  "/batch mix kind:fixer product:Pier Fix volume:9 l mixed:morgen",
  "/batch mix kind:fixer product:Pier Fix volume:2 l bottle:1 l",
  "/batch mix kind:fixer product:Pier Fix volume:2 l capacity:10 films/l tabular:20 films/l",
  "/batch mix kind:fixer product:Pier Fix volume:2 l capacity:viel",
  "/batch mix kind:fixer product:Pier Fix volume:2 l full:lange",
  "/batch mix kind:fixer product:Pier Fix volume:2 l mixed:neulich",
  "/batch status",
  "/batch status batch:B2",
  "/batch status batch:B77",
  "/batch test batch:B1",
  "/batch test batch:B2 clearing:0:45",
  "/batch test batch:B1 clearing:0:50 ph:5.5 silver:3.5",
  "/batch test batch:B1 ph:5.5",
  "/batch correct batch:B1 reason:Probe",
  "/batch correct batch:B1 reason:Probe line:99",
  "/batch correct batch:B1 reason:Probe line:1",
  "/batch correct batch:B1 reason:Probe line:2",
  "/batch correct batch:B1 reason:Probe line:2",
  "/batch correct batch:B1 reason:Probe rolls:0.1",
  "/batch correct batch:B1 reason:Vormittag rolls:2.25 ml:-50",
  "/batch topup batch:B1 add:300 ml remove:300 ml",
  "/batch topup batch:B1 add:300 ml remove:300 ml to:drain",
  "/batch topup batch:B1 add:900 ml",
  "/batch topup batch:B1 add:300 ml remove:9 l to:silver",
  "/batch topup batch:B1 add:300 ml remove:300 ml to:silver",
  "/batch allow batch:B1 reason:Eile",
  "/batch take batch:B1",
  "/batch take batch:B1 run:R99",
  "/batch take batch:B1 run:xx",
  "/batch correct batch:B1 reason:Vormittag rolls:30",
  "/batch allow batch:B1 reason:Eile person:Wer",
  "/batch allow batch:B1 reason:Eile",
  "/batch status batch:B1",
  "/batch test batch:B1 clearing:1:40",
  "/batch status",
  "/batch discard batch:B1 to:drain",
  "/batch discard batch:B1 to:silver ml:9 l",
  "/batch discard batch:B1 to:silver ml:200 ml",
  "/batch discard batch:B3 to:drain",
  "/batch discard batch:B4 to:supplier",
  "/batch discard batch:B1 to:silver",
  "/batch test batch:B1 ph:5",
  "/batch ledger batch:B1",
  "/batch ledger batch:B1 page:1",
  "/batch waste",
  "/batch handover to:Sammelstelle date:morgen",
  "/batch handover to:Sammelstelle ml:90 l",
  "/batch handover to:Sammelstelle ml:100 ml",
  "/batch handover to:Sammelstelle",
  "/batch handover to:Sammelstelle",
  "/batch waste",
  FIXER,
  FIXER,
  FIXER,
  "/batch rotate fresh:B6",
  "/batch pair first:B2 second:B6",
  "/batch pair first:B6 second:B6",
  "/batch pair first:B1 second:B6",
  "/batch pair first:B6 second:B7",
  "/batch rotate fresh:B7",
  "/batch rotate fresh:B8",
  FIXER,
  "/batch rotate fresh:B9",
  FIXER,
  "/batch rotate fresh:B10",
  "/batch mix kind:developer product:Slip MQ dilution:stock volume:1 l bottle:2 l replenish:70 ml",
  "/batch topup batch:B11 add:140 ml",
  "/batch topup batch:B10 add:70 ml as:replenisher",
  "/batch correct batch:B11 ml:1900 reason:Probe",
];

/** What the lines above are refused for, each at least once. */
const REFUSALS = `
  WHAT_PACK HOW_MUCH NOT_SO_MUCH NOT_YET BOTTLE_TOO_SMALL TABULAR_ABOVE OPTIONS NO_DATE
  UNKNOWN_BATCH NO_READING NOT_A_FIXER NOTHING_TO_CORRECT NO_SUCH_LINE LINE_STAYS TAKEN_BACK
  WHERE_TO SILVER_DRAIN OVERFLOW NOT_WORN NO_RUN UNKNOWN_RUN UNKNOWN_PERSON DISCARDED
  NOTHING_COLLECTED NO_PAIR SAME_BATH BATCH_WORN BOTH_NEW NOT_REPLENISHED
`;

function germanRoom(): Room {
  const room = createRoom();
  for (const person of ["Tess", "Mina"]) room.asks(person, "/mine language de", "teacher");
  room.asks("Tess", "/class setup language:de", "teacher");
  return room;
}

/** Everything of a reply that is read: the text without what is typed and who published it, buttons, pictures. */
function readIn({ text, actions = [], pictures = [] }: Reply): string[] {
  const drawn = pictures.flatMap(({ alt, svg }) => [
    alt,
    ...[...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, word]) => word ?? ""),
  ]);
  const worded = text.replace(/`[^`]*`/g, "").replaceAll("The Darkroom Cookbook", "");
  return [worded, ...actions.map(({ label }) => label), ...drawn];
}

describe("every command about bottles", () => {
  test("answers and refuses in German alone", () => {
    const room = germanRoom();
    const asked = LINES.map((line) => ({ line, ...room.asks("Tess", line, "teacher") }));
    expect(asked.filter(({ kind }) => kind === "broken")).toEqual([]);
    for (const { line, reply } of asked)
      for (const part of readIn(reply))
        expect(ENGLISH_WORDS.exec(part)?.[0], `${line}: ${part}`).toBe(undefined);
    // The lines are what they are meant to be: each command answers at least once, and each refusal is met.
    const done = asked.filter(({ kind }) => kind === "done").map(({ line }) => line.split(" ")[1]);
    const named = Object.keys(forms).map((name) => name.split(" ")[1]);
    expect(named.filter((name) => !done.includes(name))).toEqual(["take"]);
    const codes = asked.flatMap(({ code }) => (code === null ? [] : [code.replace("ERR_", "")]));
    expect([...new Set(codes)].sort()).toEqual(REFUSALS.trim().split(/\s+/).sort());
  });

  test("says the main things as a German darkroom would", () => {
    const room = germanRoom();
    const says = (line: string): string => room.asks("Tess", line, "teacher").reply.text;
    expect(says(FIXER)).toContain("1 l Pier Fix 1+4, Fixierbad, angesetzt am ");
    expect(says("/batch status")).toBe(
      `**1 Flasche**, brauchbar.\n- B1, Pier Fix 1+4: noch 20 Filme, klärt in 0:45; haltbar bis ⟦${START + 60 * DAY_MS}:date⟧`,
    );
    expect(says("/batch correct batch:B1 reason:Vormittag rolls:18.75")).toContain(
      "Vorher: noch 20 Filme. Jetzt: B1, Pier Fix 1+4: noch 1 Film, klärt in etwa 1:27 (frisch 0:45).",
    );
    expect(says("/batch ledger B1")).toContain("richtiggestellt: +18,75 Filme: Vormittag (Tess)");
    expect(says("/batch test batch:B1 clearing:1:31")).toContain(
      "**B1 ist verbraucht: nicht mehr nehmen.** Es klärt in 1:31, frisch waren es 0:45: Beim Doppelten ist Schluss",
    );
    expect(says("/batch allow batch:B1 reason:Eile")).toContain(
      "**Tess** darf B1 trotzdem für eine Dose nehmen (klärt erst in 1:31, frisch in 0:45: mindestens doppelt so lang).",
    );
    expect(says("/batch discard batch:B1 to:drain")).toContain(
      "**Nicht in den Ausguss**: Gebrauchtes Fixierbad enthält Silber.",
    );
  });

  test("is what it was in English", () => {
    const room = createRoom();
    const says = (line: string): string => room.asks("Tess", line, "teacher").reply.text;
    says(FIXER);
    expect(says("/batch correct batch:B1 reason:morning rolls:18.75")).toContain(
      "Before: 20 rolls left. Now: B1, Pier Fix 1+4: 1 roll left, clears in about 1:27 (fresh 0:45).",
    );
    expect(says("/batch ledger B1")).toContain("corrected: +18.75 rolls: morning (Tess)");
    expect(says("/batch discard batch:B1 to:drain")).toContain(
      "**Not down the drain**: used fixer carries silver. Collect B1 (`to:silver`)",
    );
  });
});

describe("a bottle of a run", () => {
  test("is taken, refused and turned away in the words of the run's owner", () => {
    const room = germanRoom();
    for (const line of [FIXER, FIXER]) room.asks("Tess", line, "teacher");
    room.asks("Mina", PLAN);
    room.asks("Mina", "/run start");
    expect(room.asks("Mina", "/batch take batch:B2").reply.text).toBe("**B2** für R1, Fixierbad, 5:00 lang.");
    expect(room.asks("Mina", `${PLAN} fixbatch:B9`).reply.text).toBe(
      "**9:00** bei 20 °C: Lantern 400 in House MQ 1+1. Aber so kann es nicht losgehen:\nEine Flasche B9 gibt es nicht. Die Flaschen zeigt `/batch status`.",
    );
    room.asks("Tess", "/batch correct batch:B2 reason:Vormittag rolls:20", "teacher");
    expect(room.asks("Mina", "/batch take batch:B2").reply.text).toBe(
      "**B2 ist verbraucht**: nicht mehr nehmen. Nimm stattdessen **B1**. Die Lehrkraft oder eine Hilfskraft kann es dir mit Namen erlauben (`/batch allow`).",
    );
  });

  test("that is worn is refused at the pour", () => {
    const words = (instead: number | null) =>
      speaking("de", () => wornAtPourWords("B2", "nichts ist mehr darin", instead));
    expect(words(null)).toBe(
      "**Nimm B2 nicht**: nichts ist mehr darin. Lass den Film im Wasser, das schadet ihm nicht, und sag es der Lehrkraft. Ist es schon drin, muss es eine Hilfskraft oder die Lehrkraft erlauben (`/batch allow`).",
    );
    expect(words(5)).toContain("Nimm stattdessen **B5**; bis dahin ist der Film im Wasser sicher.");
  });
});

describe("what is drawn, kept and typed", () => {
  const worn = traceOf(
    aBatch({ number: 7 }),
    ledger(mixed(1000, 45), used(6), tested(55), used(14)),
    START + DAY_MS,
  );

  test("the gauges carry German words, and no others", () => {
    const stock = traceOf(aDeveloper(), ledger(mixed(5000)), START);
    const { svg, alt } = speaking("de", () => gaugesPicture([worn, stock], START + DAY_MS));
    // Too long to stand beside the product's name.
    expect(svg).toContain(">Stammlösung<");
    expect(svg).toContain(">VERBRAUCHT<");
    expect(svg).toContain(">1 Tag alt, hält noch 59<");
    expect(svg).toContain(">verbraucht bei 1:30<");
    expect(alt).toContain("B7, Pier Fix 1+4: VERBRAUCHT, noch 0 Filme");
    expect(ENGLISH_WORDS.test(svg)).toBe(false);
  });

  test("every source of the house has its German words; a person's own stays as written", () => {
    speaking("de", () => {
      for (const kept of Object.values(HOUSE_SOURCES)) {
        const said = sourceWords(kept);
        expect(said).not.toBe(kept);
        expect(ENGLISH_WORDS.exec(said.replace("The Darkroom Cookbook", ""))).toBe(null);
      }
      expect(sourceWords(`${OWN_FIRST}${HOUSE_SOURCES["wetting-agent"]}`)).toBe(
        "wie beim Ansetzen angegeben; sonst jede Woche frisch: übliche Praxis, ohne Quelle",
      );
      expect(sourceWords("the label of the pack")).toBe("the label of the pack");
    });
    expect(sourceWords(`${OWN_FIRST}${HOUSE_SOURCES.fixer}`)).toBe(`${OWN_FIRST}${HOUSE_SOURCES.fixer}`);
  });

  test("what is said in German can be typed in German", () => {
    for (const hours of [1, 24, 48, 168, 720, 1440, 8640])
      expect(parseShelfLife(speaking("de", () => formatShelfLife(hours)))).toEqual({
        ok: true,
        value: hours,
      });
    expect(parseShelfLife("1 Jahr")).toEqual({ ok: true, value: 8760 });
    expect(parseShelfLife("12 Stunden")).toEqual({ ok: true, value: 12 });
    expect(parseCapacity("20 Filme/l")).toEqual({ ok: true, value: 1600 });
    expect(parseCapacity("7,5 Filme je Liter")).toEqual({ ok: true, value: 600 });
    expect(parseDay("gestern", "UTC", START)).toEqual(parseDay("yesterday", "UTC", START));
  });

  test("the evidence against a bottle agrees in number", () => {
    const evidence = { label: "B7", fault: "streaks", otherFaulty: 1, otherRolls: 40, chance: 1 / 2500 };
    const said = speaking("de", () => evidenceWords({ ...evidence, faulty: 4, rolls: 6 }));
    expect(said.text).toContain("**4 von 6 Filmen durch B7 zeigen ");
    expect(said.text).toContain("sonst sind es in diesen Wochen 1 von 40 Filmen.");
    expect(said.text).toContain("nur in etwa einem von 2.500 Fällen");
    expect(said.actions.map(({ label }) => label)).toEqual(["Filme durch B7", "B7 ansehen"]);
  });

  test("every form of a bottle's command is in German, option by option", () => {
    const ours = commands.filter(({ name }) => name.startsWith("batch "));
    expect(Object.keys(forms).sort()).toEqual(ours.map(({ name }) => name).sort());
    for (const { name, options } of ours) {
      const form = forms[name];
      expect(Object.keys(form?.options ?? {}).sort(), name).toEqual(Object.keys(options.shape).sort());
      for (const text of [form?.summary ?? "", ...Object.values(form?.options ?? {})]) {
        expect(text.length, text).toBeGreaterThan(0);
        expect(text.length, text).toBeLessThanOrEqual(100);
        expect(ENGLISH_WORDS.exec(text)?.[0], text).toBe(undefined);
      }
    }
  });
});
