import { expect, test } from "vitest";
import { createDispatch, type PlainCall } from "../../../bot/calls/dispatch.ts";
import { createShares, SHARES } from "../../../bot/calls/shares.ts";
import { commands } from "../../../commands/index.ts";
import { openStores } from "../../../store/index.ts";
import { createFakeClock } from "../../support/clock.ts";
import { createMemoryLog } from "../../support/room.ts";

const DAY_SECONDS = 24 * 3600;

test("one student who writes without end is stopped with a sentence; others, and a film under way, are not", async () => {
  const stores = openStores(":memory:");
  const clock = createFakeClock();
  const dispatch = createDispatch({ commands, stores, clock, log: createMemoryLog() });
  let count = 0;
  const ask = async (over: Partial<PlainCall>): Promise<{ code: string | null; text: string }> => {
    let said = { code: null as string | null, text: "" };
    count += 1;
    await dispatch.onCommand({
      callId: `c${count}`,
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
  const long = { name: "roll find", options: { words: "x".repeat(900_000) } };
  const codes: (string | null)[] = [];
  for (let index = 0; index < 12; index += 1) codes.push((await ask(long)).code);
  expect(codes.filter((code) => code === "ERR_SHARE").length).toBeGreaterThan(0);
  expect((await ask({})).text).toMatch(/far more today than a day's work needs.*Nothing was changed/);
  expect((await ask({ language: "de", person: { id: "room:ben", name: "Ben" } } as never)).code).toBeNull();
  expect((await ask({ name: "run status" })).code).not.toBe("ERR_SHARE");
  clock.advance(DAY_SECONDS);
  expect((await ask({})).code).toBeNull();
});

test("photos have a share of their own, and so has a class; staff are bound by the class's only", () => {
  const shares = createShares();
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
