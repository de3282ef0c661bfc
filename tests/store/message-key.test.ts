import fc from "fast-check";
import { expect, test } from "vitest";
import { chatOf, makeChatKey, parseChatKey } from "../../store/shapes/chat-key.ts";
import {
  changeToldBy,
  makeMessageKey,
  parseMessageKey,
  sayKeys,
  type MessageKey,
} from "../../store/shapes/message-key.ts";
import { cuesOf } from "../../commands/run/cues.ts";
import { aRun } from "../support/make.ts";

const id = fc.integer({ min: 1, max: 1_000_000 });
const small = fc.integer({ min: 0, max: 30 });
const run = aRun({ phase: { kind: "running", step: 0, startedAtMs: 0, endsAtMs: 540_000 } });
const cue = fc.constantFrom(...cuesOf(run).map(({ key }) => key));
const keys: fc.Arbitrary<MessageKey> = fc.oneof(
  fc.record({ kind: fc.constant("cue" as const), run: id, cue }),
  fc.record({
    kind: fc.constant("redirect" as const),
    run: id,
    step: small,
    batch: id,
    to: fc.option(id.map((number) => `B${number}`)),
  }),
  fc.record({
    kind: fc.constant("warning" as const),
    batch: id,
    mark: fc.integer({ min: 0, max: 5 }),
    arm: small,
    teacher: fc.option(small),
  }),
  fc.record({
    kind: fc.constant("fault" as const),
    batch: id,
    fault: fc.constant("1x9k3fz"),
    teacher: small,
  }),
  fc.record({
    kind: fc.constant("digest" as const),
    class: id,
    name: fc.constantFrom("261126.1080", "260101.0w"),
  }),
  fc.record({ kind: fc.constantFrom("erasure" as const, "reprieve" as const), class: small, erasure: id }),
  fc.record({ kind: fc.constant("unreached" as const), run: id, teacher: small }),
  fc.record({
    kind: fc.constant("chat-off" as const),
    class: id,
    teacher: small,
    minute: fc.integer({ min: 29_000_000, max: 40_000_000 }),
  }),
  fc.record({ kind: fc.constant("wash-anew" as const), run: id, schedule: small }),
  fc.record({ kind: fc.constantFrom("changed" as const, "pressed" as const), run: id, schedule: small }),
  fc.record({ kind: fc.constant("turn" as const), run: id, turn: small }),
  fc.record({ kind: fc.constant("lights-wait" as const), say: id, part: small }),
  fc.record({
    kind: fc.constant("chat-slow" as const),
    class: id,
    teacher: small,
    hour: fc.integer({ min: 480_000, max: 700_000 }),
  }),
  fc.record({ kind: fc.constant("say" as const), say: id, part: fc.integer({ min: 0, max: 999 }) }),
);

test("a message's key tells what it is, in 25 characters that chats take", () => {
  fc.assert(
    fc.property(keys, (key) => {
      const text = makeMessageKey(key);
      expect(text).toMatch(/^[\w.-]{1,25}$/);
      expect(parseMessageKey(text)).toEqual(key);
    }),
  );
});

test("two messages never share a key", () => {
  fc.assert(
    fc.property(keys, keys, (one, other) => {
      const isSame = JSON.stringify(one) === JSON.stringify(other);
      expect(makeMessageKey(one) === makeMessageKey(other)).toBe(isSame);
    }),
  );
});

test("all keys of a word to many lie in its range, and no other's do", () => {
  fc.assert(
    fc.property(id, fc.integer({ min: 0, max: 999 }), id, (say, part, other) => {
      const { from, until } = sayKeys(say);
      const isWithin = (key: string): boolean => key >= from && key < until;
      expect(isWithin(makeMessageKey({ kind: "say", say, part }))).toBe(true);
      expect(isWithin(makeMessageKey({ kind: "say", say: other, part }))).toBe(other === say);
    }),
  );
});

test("what somebody else has changed in a run is told from the run's own calls", () => {
  const changes: MessageKey[] = [
    { kind: "redirect", run: 7, step: 3, batch: 2, to: null },
    { kind: "wash-anew", run: 7, schedule: 4 },
    { kind: "changed", run: 7, schedule: 4 },
    { kind: "lost", run: 7 },
  ];
  const others: MessageKey[] = [
    { kind: "turn", run: 7, turn: 1 },
    { kind: "pressed", run: 7, schedule: 4 },
    { kind: "unreached", run: 7, teacher: 0 },
    { kind: "say", say: 1, part: 2 },
    ...cuesOf(run).map(({ key }): MessageKey => ({ kind: "cue", run: 7, cue: key })),
  ];
  expect(changes.map(makeMessageKey).map(changeToldBy)).toEqual([{ step: 3 }, {}, {}, {}]);
  expect(others.map(makeMessageKey).filter(changeToldBy)).toEqual([]);
});

test("a key of no known kind is none", () => {
  for (const text of ["", "hello", "x1.2", "say.1", "a.b.c.d.e", "erase.1.q2"])
    expect(parseMessageKey(text)).toBeUndefined();
});

test("a class's or a person's key names its chat first", () => {
  fc.assert(
    fc.property(fc.constantFrom("room", "discord"), fc.string(), (chat, name) => {
      expect(parseChatKey(makeChatKey(chat, name))).toEqual({ chat, id: name });
      expect(chatOf(makeChatKey(chat, name))).toBe(chat);
    }),
  );
});
