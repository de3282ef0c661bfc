import { expect, test } from "vitest";
import { DEMO_KEY } from "../../../bot/demo/demo.ts";
import type { Outcome } from "../../../bot/chat/port.ts";
import type { Run } from "../../../store/shapes/run.ts";
import { aQuickPlan, pourIn } from "../../support/developing.ts";
import { createRoom, type Room } from "../../support/room.ts";

/*
 * A call that nobody heard is counted by the next one that is said. What is owed is worked out here by hand: 36 s of developer,
 * agitated for 1 s each 3 s, poured out 10 s before the end, with a word 15 s before that: calls at 0, 3, 6, 9, 11, 12, …
 */

const WAIT: Outcome = { kind: "later", afterMs: 1500 };

async function developing(): Promise<{ room: Room; run: Run }> {
  const room = createRoom();
  const { id: classId } = room.stores.classes.find(DEMO_KEY) ?? { id: 0 };
  room.stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", room.clock.now());
  const shared = { classId, personId: "room:mina", plan: aQuickPlan(36, 3, { pourOutSeconds: 10 }) };
  const run = pourIn(room.stores, { ...shared, warnSeconds: 15 }, room.clock.now());
  await room.tick();
  await room.pass(4);
  expect(room.news("Mina")).toHaveLength(2);
  return { room, run };
}

/** How many calls each message tells as missed. */
const told = (texts: readonly string[]): number[] =>
  texts.map((text) => Number(/(\d+) calls? before (?:it|this) w(?:as|ere) missed/.exec(text)?.[1] ?? 0));

test("where the call that would count the missed ones is overtaken itself, the next one counts it too", async () => {
  const { room } = await developing();
  room.away(8.1);
  await room.tick();
  const heard = room.news("Mina");
  expect(heard).toEqual([
    expect.stringMatching(/^\*\*Agitate 1 s\.\*\* .*\n\*\*3 calls before this were missed\.\*\*/),
  ]);
  // Six were owed by now: two were heard before, one now, and three are told.
  expect(2 + heard.length + (told(heard)[0] ?? 0)).toBe(6);
});

test("what a chat put off until it was of no use is counted once, and not again", async () => {
  const { room } = await developing();
  // The call at 6 s is not taken, and when it may be tried again no time is left for it before the one at 9 s.
  room.outcomes.push({ kind: "later", afterMs: 2000 });
  await room.pass(5);
  expect(told(room.news("Mina"))).toEqual([1]);
  await room.pass(3);
  expect(told(room.news("Mina"))).toEqual([0, 0]);
});

test("where no time is left for a late agitation before the next, it is missed, and not called any more", async () => {
  const room = createRoom();
  const { id: classId } = room.stores.classes.find(DEMO_KEY) ?? { id: 0 };
  room.stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", room.clock.now());
  // Agitated for 1 s each 60 s.
  const shared = { classId, personId: "room:mina", plan: aQuickPlan(300, 60), warnSeconds: 15 };
  pourIn(room.stores, shared, room.clock.now());
  await room.tick();
  room.news();
  room.away(119.5);
  await room.tick();
  expect(room.news("Mina")).toEqual([]);
  await room.pass(1);
  expect(told(room.news("Mina"))).toEqual([1]);
  room.away(117.5);
  await room.tick();
  expect(room.news("Mina")).toEqual([
    expect.stringMatching(/58 s late\*\*: .* Do it now if you have not yet\.$/m),
  ]);
});

test("what a person never got since the step came to its end is told with the end", async () => {
  const { room, run } = await developing();
  await room.pass(21);
  room.news();
  // Neither the call to pour out at 26 s nor what comes after it is taken until the end of the step.
  room.outcomes.push(...Array.from({ length: 5 }, () => WAIT));
  await room.pass(11);
  const [end, ...more] = room.news("Mina");
  expect(more).toEqual([]);
  expect(end).toMatch(/^\*\*Now: rinse.*\n\*\*1 call before this was missed\.\*\*/);
  expect(room.stores.outbox.unsaidOf(run.id, 2000)).toBe(1);
});

test("one that the chat refuses for good is counted too", async () => {
  const { room } = await developing();
  // Refused alone, then in the class's channel.
  room.outcomes.push({ kind: "refused", detail: "closed" }, { kind: "refused", detail: "closed" });
  await room.pass(5);
  expect(told(room.news("Mina"))).toEqual([1]);
});

test("what its person did unasked, before it was late, was not missed", async () => {
  const { room, run } = await developing();
  room.outcomes.push(WAIT);
  await room.pass(2);
  room.says("Mina", `/run correct run:R${run.number} ago:7`);
  await room.pass(4);
  // As poured in a second sooner than was thought: calls at 8 s and, to get ready, at 10 s.
  expect(told(room.news("Mina"))).toEqual([0, 0]);
});
