import { expect, test } from "vitest";
import { createDispatch } from "../../../bot/calls/dispatch.ts";
import { createShares, SHARES } from "../../../bot/calls/shares.ts";
import { commands } from "../../../commands/index.ts";
import { redaction } from "../../../commands/mine/redact.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock, type FakeClock } from "../../support/clock.ts";
import { createMemoryLog } from "../../support/room.ts";

const DAY_SECONDS = 24 * 3600;

type Said = { code: string | null; text: string };

/** A process on this store: asked, it answers. */
function aProcess(stores: OpenedStores, clock: FakeClock): (over: object) => Promise<Said> {
  const dispatch = createDispatch({ commands, stores, clock, log: createMemoryLog() });
  let count = 0;
  return async (over) => {
    let said: Said = { code: null, text: "" };
    count += 1;
    await dispatch.onCommand({
      callId: `c${count} ${clock.now()}`,
      name: "help",
      options: {},
      person: { id: "room:mina", name: "Mina" },
      role: "student",
      place: { classKey: "room:1", className: "Invented class", channelRef: null },
      async answer({ text }: { text: string }, _visibility: string, code?: string | null) {
        said = { code: code ?? null, text };
      },
      ...over,
    } as never);
    return said;
  };
}

const LONG = { name: "roll find", options: { words: "x".repeat(900_000) } };

test("one student who writes without end is stopped with a sentence; others, and a film under way, are not", async () => {
  const stores = openStores(":memory:");
  const clock = createFakeClock();
  const ask = aProcess(stores, clock);
  const codes: (string | null)[] = [];
  for (let index = 0; index < 12; index += 1) codes.push((await ask(LONG)).code);
  expect(codes.filter((code) => code === "ERR_SHARE").length).toBeGreaterThan(0);
  expect((await ask({})).text).toMatch(/far more today than a day's work needs.*Nothing was changed/);
  expect((await ask({ language: "de", person: { id: "room:ben", name: "Ben" } } as never)).code).toBeNull();
  expect((await ask({ name: "run status" })).code).not.toBe("ERR_SHARE");
  clock.advance(DAY_SECONDS);
  expect((await ask({})).code).toBeNull();
});

test("a start goes on counting, until the day is over; of the erased nothing is counted", async () => {
  const stores = openStores(":memory:");
  const clock = createFakeClock();
  const before = aProcess(stores, clock);
  await before({});
  for (let index = 0; index < 9; index += 1) await before(LONG);
  // What the last call wrote is kept with the next one of anybody.
  await before({ person: { id: "room:ben", name: "Ben" } });
  clock.advance(1);
  const after = aProcess(stores, clock);
  expect((await after({})).code).toBe("ERR_SHARE");
  expect((await after({ person: { id: "room:ben", name: "Ben" } })).code).toBeNull();
  stores.privacy.erasePerson(1, "room:mina", redaction);
  await after({ person: { id: "room:ben", name: "Ben" } });
  expect(peopleCounted(stores)).toEqual(["", "room:ben"]);
  clock.advance(DAY_SECONDS);
  const nextDay = aProcess(stores, clock);
  expect((await nextDay({})).code).toBeNull();
  await nextDay({ person: { id: "room:ben", name: "Ben" } });
  const days = stores.db.prepare<[], { day: number }>("select distinct day from shares").all();
  expect(days).toHaveLength(1);
});

const peopleCounted = ({ db }: OpenedStores): string[] =>
  db
    .prepare<[], { id: string }>("select distinct person_id as id from shares order by id")
    .all()
    .map(({ id }) => id);

test("photos have a share of their own, and so has a class; staff are bound by the class's only", () => {
  const stores = openStores(":memory:");
  const shares = createShares(stores.shares);
  const asked = {
    classKey: "room:1",
    personId: "room:mina",
    isStaff: false,
    isForFilm: false,
    kind: "photos",
  } as const;
  for (let index = 0; index < 30; index += 1) shares.add(asked, 2_000_000, 0);
  expect(shares.spent(asked, 0)).toBe("person");
  expect(shares.spent({ ...asked, kind: "words" }, 0)).toBeUndefined();
  expect(shares.spent({ ...asked, isStaff: true }, 0)).toBeUndefined();
  shares.add({ ...asked, personId: "room:ben" }, SHARES.class.photos, 0);
  expect(shares.spent({ ...asked, personId: "room:ola" }, 0)).toBe("class");
  expect(shares.spent({ ...asked, classKey: "room:2" }, 0)).toBeUndefined();
});
