import { expect, test } from "vitest";
import { createDispatch } from "../../bot/calls/dispatch.ts";
import type { Role } from "../../store/shapes/person.ts";
import { commands } from "../../commands/index.ts";
import { sheetSchema } from "../../store/shapes/sheet.ts";
import { openStores } from "../../store/index.ts";
import { createFakeClock } from "../support/clock.ts";
import { EVERY_COMMAND, type Options } from "../support/every-command.ts";
import { aSheet } from "../support/make.ts";
import { createMemoryLog } from "../support/room.ts";
import { EVERY_PRINT } from "../../store/shapes/print.ts";
import { aNewRoll } from "../support/rolls.ts";

/* Two classes in one store: nothing that is asked in one, by anybody, shows a word of the other. */

const MARK = "Xanthic";

function setUp() {
  const stores = openStores(":memory:");
  const clock = createFakeClock();
  const dispatch = createDispatch({ commands, stores, clock, log: createMemoryLog() });
  const callIn = (classKey: string) => (name: string, options: Options, role: Role, person: string) =>
    dispatch.run(
      {
        callId: null,
        name,
        options,
        person: { id: `room:${person.toLowerCase()}`, name: person },
        role,
        place: { classKey, className: `Class ${classKey}`, channelRef: null },
      },
      clock.now(),
    );
  return { stores, clock, dispatch, inOne: callIn("room:one"), inTwo: callIn("room:two") };
}

/** A class in which everything bears the mark. */
function fill({ stores, clock, inOne }: ReturnType<typeof setUp>): void {
  const person = `${MARK} Reed`;
  inOne("help", {}, "teacher", person);
  const id = stores.classes.find("room:one")?.id ?? 0;
  const film = `${MARK} 400`;
  stores.sheets.save(id, sheetSchema.parse(aSheet({ film, developer: `${MARK} MQ` })), null, clock.now());
  const ask = (name: string, options: Options): void => {
    const answered = inOne(name, options, "teacher", person);
    expect([name, answered.kind, answered.reply.text]).toEqual([name, "done", answered.reply.text]);
  };
  ask("tank add", { numbers: "1-3", reels: 2, volume: "500 ml" });
  ask("tank report", { tank: 1, fault: `${MARK} leak` });
  ask("batch mix", { kind: "fixer", product: `${MARK} Fix`, volume: "1 l" });
  ask("batch restock", { product: `${MARK} Fix`, kind: "fixer", size: "1 l", dilution: "1+4", packs: 1 });
  ask("plan", { film, temp: "20C", tank: "T2" });
  ask("run start", {});
  ask("run next", {});
  ask("tray set", { developer: `${MARK} Print` });
  ask("tray plan", { paper: "fibre", temp: "20C" });
  ask("run start", {});
  ask("tray lamp", { lamp: `${MARK} lamp`, after: 3 });
  ask("class periods", { days: "daily", from: "0:00", to: "24:00", name: `${MARK} hours` });
  ask("class say", { text: `${MARK} says` });
  stores.rolls.add(
    aNewRoll({
      classId: id,
      personName: person,
      personId: `room:${person.toLowerCase()}`,
      film,
      runId: null as never,
    }),
  );
  ask("roll note", { roll: "L1", note: `${MARK} note` });
  ask("print enlarger", { enlarger: 1, name: `${MARK} bench` });
  ask("print paper", { paper: 1, name: `${MARK} Gloss` });
  ask("print strip", { base: "8", paper: 1 });
  ask("print log", { seconds: "10", paper: 1, title: `${MARK} pier`, note: `${MARK} note` });
}

/** Numbers and names of the other class, asked for outright. */
const PROBES: readonly (readonly [string, Options])[] = [
  ["roll show", { roll: "L1" }],
  ["roll find", { words: "Xan" }],
  ["roll find", { film: `${MARK} 400` }],
  ["roll find", { person: `${MARK} Reed` }],
  ["roll fault", { roll: "L1", look: "thin" }],
  ["roll note", { roll: "L1", note: "mine now" }],
  ["print show", { print: "V1" }],
  ["print again", { print: "V1" }],
  ["print note", { print: "V1", note: "mine now" }],
  ["print fault", { print: "V1", look: "pale" }],
  ["print find", { words: "pier" }],
  ["print find", { person: `${MARK} Reed` }],
  ["print log", { as: "V1" }],
  ["print time", { seconds: "10", paper: "1 to 1" }],
  ["run status", { run: "R1" }],
  ["run next", { run: "R1" }],
  ["run stop", { run: "R1", sure: "yes" }],
  ["run start", { plan: "P1" }],
  ["plan curve", { plan: "P1" }],
  ["plan", { film: `${MARK} 400`, temp: "20C" }],
  ["sheet show", { film: `${MARK} 400` }],
  ["batch ledger", { batch: "B1" }],
  ["batch discard", { batch: "B1", to: "silver" }],
  ["tank clear", { tank: 1 }],
  ["class said", { say: 1 }],
  ["class role", { person: `${MARK} Reed`, role: "aide" }],
  ["class forget", { person: `${MARK} Reed`, sure: "yes" }],
];

/** The asker's own words come back in a refusal; everything else of the other class would be a leak. */
function withoutOwnWords(text: string, options: Options): string {
  return Object.values(options).reduce<string>((rest, value) => rest.replaceAll(String(value), ""), text);
}

test.each(["student", "aide", "teacher"] as const)("a %s sees nothing of another class", (role) => {
  const setting = setUp();
  fill(setting);
  const { stores, inTwo } = setting;
  const before = snapshotOf(setting);
  const asked = [...Object.entries(EVERY_COMMAND), ...PROBES] as readonly (readonly [string, Options])[];
  for (const [name, options] of asked) {
    const { reply, kind } = inTwo(name, options, role, "Ola");
    expect(kind, name).not.toBe("broken");
    expect(withoutOwnWords(JSON.stringify(reply), options), name).not.toContain(MARK);
  }
  expect(snapshotOf(setting)).toEqual(before);
  expect(stores.classes.list()).toHaveLength(2);
});

/** Everything class one holds. */
function snapshotOf({ stores }: ReturnType<typeof setUp>): unknown {
  const id = stores.classes.find("room:one")?.id ?? 0;
  return {
    runs: stores.runs.open(id),
    rolls: stores.rolls.find(id, 1),
    prints: stores.prints.search(id, EVERY_PRINT, 10, 0),
    papers: stores.papers.list(id),
    enlargers: stores.enlargers.list(id),
    members: stores.members.list(id),
    tanks: stores.tanks.list(id),
    batches: stores.batches.list(id).map((batch) => stores.batches.lines(batch.id)),
  };
}

test("no completion offers what another class has", () => {
  const setting = setUp();
  fill(setting);
  setting.inTwo("help", {}, "teacher", "Ola");
  for (const command of commands)
    for (const option of Object.keys(command.complete ?? {}))
      for (const typed of ["", "x", "Xan", "1", "L1", "B"]) {
        const offered = setting.dispatch.onComplete({
          name: command.name,
          option,
          typed,
          others: {},
          person: { id: "room:ola", name: "Ola" },
          role: "teacher",
          place: { classKey: "room:two", className: "Two", channelRef: null },
        });
        expect(JSON.stringify(offered), `${command.name} ${option} ${typed}`).not.toContain(MARK);
      }
});

test("a private message speaks of the class its person was last seen in, and of no other", () => {
  const { stores, inOne, inTwo, clock } = setUp();
  inOne("help", {}, "student", "Mina");
  clock.advance(1);
  inTwo("help", {}, "student", "Mina");
  expect(stores.members.lastClass("room:mina")).toBe(stores.classes.find("room:two")?.id);
});
