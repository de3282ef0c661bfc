import { keepRun } from "../../../commands/run/keep.ts";
import { beforeEach, describe, expect, test } from "vitest";
import { composeBundle, composeOne } from "../../../bot/deliver/compose.ts";
import { settleDue } from "../../support/settle.ts";
import type { Language } from "../../../store/shapes/language.ts";
import { advance } from "../../../commands/run/machine.ts";
import { renderInstants } from "../../../commands/speech/wording.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import type { Owed } from "../../../store/owed.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { aPlan, START } from "../../support/make.ts";
import { createMemoryLog, createRoom } from "../../support/room.ts";

const WHERE = { classKey: "room:1", channelRef: null };
/** As a chat shows them: `HH:MM:SS`, and seconds from `now`. */
const shown = (text: string, now: number): string =>
  renderInstants(text, (atMs, style) =>
    style === "relative" ? `${(atMs - now) / 1000} s` : new Date(atMs).toISOString().slice(11, 19),
  );

let stores: OpenedStores;
let classId: number;

beforeEach(() => {
  stores = openStores(":memory:");
  classId = stores.classes.add("room:1", "Invented class", "UTC", false, START).id;
});

/** A run with its developer in, from START on. */
function develops(name: string, language: Language | null, tank: number): void {
  const personId = `room:${name.toLowerCase()}`;
  stores.members.see(classId, { id: personId, name }, "student", START);
  if (language) stores.members.chooseLanguage(classId, personId, language);
  const run = stores.runs.add({
    classId,
    personId,
    plan: aPlan({ tank }),
    warnSeconds: 15,
    startedAtMs: START,
    schedule: 0,
    phase: { kind: "waiting", step: 0, sinceMs: START },
    marks: [],
    deviations: [],
  });
  const begun = advance(run, { kind: "next", step: 0, sure: false, atMs: START });
  if (!begun.ok) throw new Error(begun.fault.code);
  stores.atomically(() => keepRun(stores, begun.value, START));
}

/** Settles what is due `seconds` after START, and gives what is owed by it. */
function settle(seconds: number): Owed[] {
  const before = new Set(stores.outbox.ready(START + 1e7, 1000).map(({ id }) => id));
  settleDue({ stores, log: createMemoryLog() }, START + seconds * 1000);
  const ids = stores.outbox.ready(START + 1e7, 1000).map(({ id }) => id);
  return stores.outbox.load(ids.filter((id) => !before.has(id)));
}

function only(owed: readonly Owed[]): Owed {
  const [first] = owed;
  if (!first || owed.length !== 1) throw new Error(`${owed.length} are owed`);
  return first;
}

describe("a call to somebody who reads German", () => {
  beforeEach(() => develops("Mina", "de", 3));

  test("on time, early, and late on its way, decided on time", () => {
    settle(0);
    const owed = only(settle(60));
    const at = (seconds: number) => composeOne(owed, WHERE, START + seconds * 1000);
    const cue =
      "**5 s bewegen.** Dose kippen und wieder aufrichten, dann 2-mal fest aufklopfen. 1:00 von 9:00.";
    expect(at(60)).toMatchObject({ text: `${cue}\n_R1, Dose 3_`, language: "de", personId: "room:mina" });
    expect(shown(at(57).text, START + 57_000)).toBe(`Um 18:01:00, 3 s:\n${cue}\n_R1, Dose 3_`);
    expect(shown(at(64).text, START + 64_000)).toBe(
      `${cue}\n**4 s zu spät**: Das war für 18:01:00. Tu es jetzt, wenn noch nicht geschehen.\n_R1, Dose 3_`,
    );
  });

  test("decided late, with what was missed; later still on its way, as late as it is then", () => {
    const owed = only(settle(190));
    const at = (seconds: number) => shown(composeOne(owed, WHERE, START + seconds * 1000).text, 0);
    const said = (late: string): string =>
      [
        "**5 s bewegen.** Dose kippen und wieder aufrichten, dann 2-mal fest aufklopfen. 3:10 von 9:00.",
        `**${late} zu spät**: Das war für 18:03:00. 3 Signale davor sind ausgefallen. Tu es jetzt, wenn noch nicht geschehen.`,
        "_R1, Dose 3_",
      ].join("\n");
    expect(at(190)).toBe(said("10 s"));
    expect(at(205)).toBe(said("25 s"));
  });

  test("has its buttons in German, with the lines as they are typed", () => {
    settle(520);
    const owed = only(settle(530));
    expect(composeOne(owed, WHERE, START + 530_000)).toMatchObject({
      runs: [{ number: 1, tank: 3 }],
      text: "**Jetzt ausgießen (10 s).** Gieß den Entwickler aus. Er wird nur einmal benutzt: in den Kanister oder Ausguss, den dein Kurs dafür nimmt. Dann: Zwischenwässerung 1.\n_R1, Dose 3_",
      actions: [{ label: "Wasser ist drin", line: "run next run:1 step:1", weight: "main" }],
    });
  });
});

test("in one message to a class each owner reads their own language", () => {
  develops("Mina", "de", 3);
  develops("Frieda", "de", 4);
  develops("Ben", null, 5);
  develops("Kofi", "en", 6);
  settle(0);
  const bundle = composeBundle("k", settle(60), WHERE, START + 64_000);
  expect(shown(bundle.text, 0).split("\n\n")).toEqual([
    "**R1, Dose 3 und R2, Dose 4**\n**5 s bewegen.** Dose kippen und wieder aufrichten, dann 2-mal fest aufklopfen. 1:00 von 9:00.\n**4 s zu spät**: Das war für 18:01:00. Tu es jetzt, wenn noch nicht geschehen.",
    "**R3, tank 5 and R4, tank 6**\n**Agitate 5 s.** Turn the tank over and back, then tap it firmly on the bench 2 times. 1:00 of 9:00.\n**4 s late**: this was for 18:01:00. Do it now if you have not yet.",
  ]);
  expect(bundle.mentions).toEqual(["room:mina", "room:frieda", "room:ben", "room:kofi"]);
  expect(bundle.runs).toEqual([3, 4, 5, 6].map((tank, position) => ({ number: position + 1, tank })));
  const early = composeBundle("k2", settle(120), WHERE, START + 117_000);
  expect(shown(early.text, START + 117_000)).toContain("**R1, Dose 3 und R2, Dose 4**\nUm 18:02:00, 3 s:");
  expect(shown(early.text, START + 117_000)).toContain("**R3, tank 5 and R4, tank 6**\nAt 18:02:00, 3 s:");
  settle(520);
  const out = composeBundle("k3", settle(530), WHERE, START + 530_000);
  expect(out.actions.map(({ label }) => label)).toEqual([
    "R1, Dose 3: Wasser ist drin",
    "R2, Dose 4: Wasser ist drin",
    "R3, tank 5: Water is in",
    "R4, tank 6: Water is in",
  ]);
});

test("in the room a German student's calls are German from the first to the last, and their neighbour's English", async () => {
  const room = createRoom();
  room.says("Mina", "/mine language language:de");
  for (const [name, tank] of [
    ["Mina", 1],
    ["Ben", 2],
  ] as const)
    room.says(name, `/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:${tank}`);
  room.says("Mina", "/run start");
  room.says("Ben", "/run start");
  room.says("Mina", "/run next step:0");
  room.says("Ben", "/run next step:0");
  for (let step = 1; step <= 7; step += 1) {
    await room.pass(1200);
    room.says("Mina", "/run next sure:yes");
    room.says("Ben", "/run next sure:yes");
  }
  const textsTo = (id: string): string[] =>
    room.heard.filter(({ personId }) => personId === id).map(({ text }) => text);
  const [german, english] = [textsTo("room:mina"), textsTo("room:ben")];
  expect(german.length).toBeGreaterThan(20);
  expect(german.filter((text) => ENGLISH_WORDS.test(text))).toEqual([]);
  expect(english).toHaveLength(german.length);
  expect(english.filter((text) => !ENGLISH_WORDS.test(text))).toEqual([]);
  const buttons = room.heard
    .filter(({ personId }) => personId === "room:mina")
    .flatMap((each) => each.actions);
  expect(buttons.map(({ label }) => label)).toContain("Fixierbad ist drin");
  expect(buttons.filter(({ label }) => ENGLISH_WORDS.test(label))).toEqual([]);
});

test("a German student's call after an outage says in German how late it is", async () => {
  const room = createRoom();
  room.says("Mina", "/mine language language:de");
  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  room.press("Mina", "Start");
  room.press("Mina", "Dose ist voll");
  await room.tick();
  room.news();
  room.away(190);
  await room.tick();
  expect(room.news("Mina")[0]).toMatch(
    /^\*\*5 s bewegen\.\*\* .*\n\*\*10 s zu spät\*\*: Das war für \d\d:\d\d:\d\d\. 2 Signale davor sind ausgefallen\. Tu es jetzt, wenn noch nicht geschehen\./,
  );
});
