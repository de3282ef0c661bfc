import { expect, test } from "vitest";
import { createRoom, type Room } from "../../support/room.ts";

/* Whatever hinders a plan, its time is told first, and the way on is a key. 9:00 at 20 °C is a row of the demo's invented sheet. */

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";
const mix = (room: Room, what: string): void =>
  void expect(room.asks("Jo", `/batch mix ${what}`, "aide").kind).toBe("done");

interface Hindered {
  readonly before: (room: Room) => void;
  readonly more: string;
  readonly code: string;
  /** The key that leads on; null: only an aide or the teacher can help, and the sentence says so. */
  readonly key: string | null;
}

const FIXER = "kind:fixer product:Harbour Fix volume:1 l dilution:1+4 capacity:12 films/l clearing:30 s";
const CASES: Readonly<Record<string, Hindered>> = {
  "a tank there is not": { before: () => {}, more: "tank:77", code: "ERR_UNKNOWN_TANK", key: "Tank 1" },
  "a bottle that was thrown away, with another at hand": {
    before(room) {
      mix(room, FIXER);
      mix(room, FIXER);
      room.says("Jo", "/batch discard batch:B1 to:silver", "aide");
    },
    more: "fixbatch:B1",
    code: "ERR_UNKNOWN_BATCH",
    key: "Take B2",
  },
  "a bottle that is out of date, with another at hand": {
    before(room) {
      mix(room, `${FIXER} mixed:2025-01-01 full:1 month part:1 month`);
      mix(room, FIXER);
    },
    more: "fixbatch:B1",
    code: "ERR_BATCH_WORN",
    key: "Take B2",
  },
  "no bottle that is fit": {
    before: (room) => mix(room, `${FIXER} mixed:2025-01-01 full:1 month part:1 month`),
    more: "",
    code: "ERR_NO_BATCH_READY",
    key: null,
  },
  "a developer of which too little is left": {
    before: (room) => mix(room, "kind:developer product:House MQ volume:100 ml use:once"),
    more: "tank:3 rolls:2",
    code: "ERR_BATCH_ROOM",
    key: null,
  },
};

test.each(Object.entries(CASES))("%s: the time all the same, then what hinders the start", (_, each) => {
  const room = createRoom();
  each.before(room);
  const { kind, code, reply } = room.asks("Mina", `${PLAN} ${each.more}`);
  expect({ kind, code }).toEqual({ kind: "refused", code: each.code });
  expect(reply.text).toMatch(
    /^\*\*9:00\*\* at 20 °C \(68 °F\): Lantern 400 in House MQ 1\+1\. But this can't start/,
  );
  if (each.key === null) return expect(reply.text).toContain("/batch mix");
  expect(room.press("Mina", each.key)).toMatch(/^\*\*9:00\*\*[^]*Plan P1\./);
});

test("the time told all the same, and that on a sheet's key, is the one that was asked for", () => {
  const room = createRoom();
  const asked = "agitation:continuous room:14";
  const first = (text: string): string => /\*\*\d+:\d\d\*\*/.exec(text)?.[0] ?? text;
  const planned = first(room.says("Mina", `${PLAN} ${asked}`));
  expect(planned).not.toBe("**9:00**");
  expect(first(room.asks("Mina", `${PLAN} ${asked} tank:77`).reply.text)).toBe(planned);
  const which = room.asks("Mina", `/plan film:Lantern 400 temp:20 ${asked}`);
  const labels = which.reply.actions?.map(({ label }) => label);
  expect(labels).toContain(`${planned.replaceAll("*", "")} · House MQ 1+1`);
  // One of several films in a bath that is used once has no time; the first has.
  expect(room.asks("Mina", `${PLAN} filmsdone:3`).reply.text).toMatch(/^\*\*9:00\*\* at 20 °C/);
});

test("an estimate is told with its spread, asked in a sentence or hindered: between two rows, 20 and 24 °C", () => {
  const room = createRoom();
  const planned = room.says("Mina", PLAN.replace("temp:20", "temp:21"));
  const [, time, low, high] =
    /^\*\*(\S+)\*\* at 21 °C \(69.8 °F\), estimate: (\S+) to (\S+)/.exec(planned) ?? [];
  const sheet = `**${time}** at 21 °C (69.8 °F), estimated ${low} to ${high}: Lantern 400 in House MQ 1+1`;
  const hindered = room.asks("Mina", `${PLAN.replace("temp:20", "temp:21")} tank:77`).reply.text;
  expect(hindered).toContain(`${sheet}. But this can't start`);
  expect(room.says("Mina", "/ask text:how long for lantern 400 in house mq 1+1 at 21?")).toContain(
    `${sheet}, EI 400.`,
  );
});

test("a class without any bottle or tank plans by the sheet alone", () => {
  const room = createRoom();
  for (const { number } of room.stores.tanks.list(1)) room.stores.tanks.remove(1, number);
  const { kind, reply } = room.asks("Mina", PLAN);
  expect(kind).toBe("done");
  expect(reply.text).toContain("9:00");
});
