import { beforeEach, describe, expect, test } from "vitest";
import { z } from "zod";
import { createDispatch, type PlainCall } from "../../../bot/calls/dispatch.ts";
import type { CommandCall } from "../../../bot/chat/port.ts";
import { defineCommand, UserError, type Reply } from "../../../commands/define.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock } from "../../support/clock.ts";
import { aPlan, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

const echo = defineCommand({
  name: "try echo",
  summary: "says it back",
  options: () => ({
    word: z.string().min(1).max(10).describe("A word"),
    count: z.coerce.number().int().min(1).max(3).default(1).describe("How often"),
    way: z.enum(["loud", "soft"]).optional().describe("Which way"),
  }),
  who: "student",
  visibility: "class",
  complete: { word: (typed) => [{ label: `${typed}!`, value: typed }] },
  handle: ({ word, count }, { person }) => ({ text: `${person.name}: ${word.repeat(count)}` }),
});
const aides = defineCommand({
  name: "try mix",
  summary: "for aides",
  options: () => ({}),
  who: "aide",
  visibility: "private",
  handle: (_, { now }) => ({ text: String(now) }),
});
const forStaff = defineCommand({
  name: "try staff",
  summary: "for aides, with a word",
  options: () => ({ word: z.string().optional().describe("A word") }),
  who: "aide",
  visibility: "private",
  complete: { word: (typed) => [{ label: `${typed}!`, value: typed }] },
  handle: () => ({ text: "" }),
});
const breaks = defineCommand({
  name: "try break",
  summary: "breaks half-way",
  options: () => ({ how: z.enum(["bug", "user"]).describe("How") }),
  who: "student",
  visibility: "private",
  handle({ how }, context) {
    context.stores.plans.add(context.class.id, context.person.id, aPlan(), context.now);
    throw how === "user"
      ? new UserError("ERR_NOBODY", "Try something else.")
      : new Error("secret: connection string");
  },
});

let stores: OpenedStores;
let log: ReturnType<typeof createMemoryLog>;
let dispatch: ReturnType<typeof createDispatch>;

beforeEach(() => {
  stores = openStores(":memory:");
  log = createMemoryLog();
  dispatch = createDispatch({
    commands: [echo, aides, forStaff, breaks],
    stores,
    clock: createFakeClock(),
    log,
  });
});

const call = (name: string, options: object = {}, over: Partial<PlainCall> = {}): PlainCall => ({
  callId: null,
  name,
  options: options as Record<string, unknown>,
  person: { id: "room:mina", name: "Mina" },
  role: "student",
  place: { classKey: "room:1", className: "Invented class", channelRef: null },
  ...over,
});

describe("a call", () => {
  test("is answered by its handler, with what the options say", () => {
    expect(dispatch.run(call("try echo", { word: "hi", count: "2" }), START)).toMatchObject({
      kind: "done",
      visibility: "class",
      reply: { text: "Mina: hihi" },
    });
  });

  test("names every option that is wrong, and what would be right", () => {
    const { reply, visibility } = dispatch.run(
      call("try echo", { count: "9", way: "odd", wrod: "x" }),
      START,
    );
    expect(reply.text.split("\n")).toEqual([
      "`/try echo` has no option wrod. Did you mean word?",
      "word is missing. Add `word:…` (a word).",
      "count:9 is too large: at most 3.",
      "There is no way:odd. Use loud or soft.",
    ]);
    expect(visibility).toBe("private");
  });

  test("with a text far too long says how long it may be", () => {
    expect(dispatch.run(call("try echo", { word: "x".repeat(5000) }), START).reply.text).toBe(
      "word is too long: 5000 characters, at most 10.",
    );
  });

  test("of an unknown command offers the near ones", () => {
    expect(dispatch.run(call("try eco"), START).reply.text).toBe(
      "There is no `/try eco`. Did you mean `/try echo`?",
    );
  });

  test("beyond the caller's role is refused", () => {
    expect(dispatch.run(call("try mix"), START)).toMatchObject({ kind: "refused", code: "ERR_ROLE" });
    expect(dispatch.run(call("try mix", {}, { role: "teacher" }), START).kind).toBe("done");
  });

  test("that breaks shows nothing of the fault, logs it, and leaves nothing half-done", () => {
    const { reply, kind } = dispatch.run(call("try break", { how: "bug" }), START);
    expect(kind).toBe("broken");
    expect(reply.text).not.toContain("secret");
    expect(log.lines.some(({ level }) => level === "error")).toBe(true);
    expect(stores.db.prepare("select count(*) as n from plans").get()).toEqual({ n: 0 });
  });

  test("that is refused leaves nothing half-done either", () => {
    expect(dispatch.run(call("try break", { how: "user" }), START).reply.text).toBe("Try something else.");
    expect(stores.db.prepare("select count(*) as n from plans").get()).toEqual({ n: 0 });
  });

  test("delivered twice does its work once", () => {
    const twice = call("try echo", { word: "hi" }, { callId: "discord:1" });
    expect(dispatch.run(twice, START).kind).toBe("done");
    expect(dispatch.run(twice, START + 5).kind).toBe("repeat");
  });

  test("from a terminal does not change who the person is", () => {
    dispatch.run(call("try echo", { word: "a" }), START);
    dispatch.run(call("try mix", {}, { role: "teacher", isVisit: true }), START);
    expect(stores.members.find(1, "room:mina")?.role).toBe("student");
  });

  test("two people of one name stay two people", () => {
    dispatch.run(call("try echo", { word: "a" }), START);
    const other = dispatch.run(
      call("try echo", { word: "a" }, { person: { id: "room:other", name: "mina" } }),
      START,
    );
    expect(other.reply.text).toBe("mina 2: a");
  });
});

describe("answering", () => {
  const answers: Reply[] = [];
  const asking = (answer: CommandCall["answer"]): CommandCall => ({
    ...call("try echo", { word: "hi" }, { callId: "c1" }),
    answer,
  });

  test("an answer that can't be given is logged and not tried again", async () => {
    let tries = 0;
    await dispatch.onCommand(
      asking(async () => {
        tries += 1;
        throw new Error("socket closed");
      }),
    );
    expect(tries).toBe(1);
    expect(log.lines.map(({ message }) => message)).toContain("an answer could not be given");
  });

  test("a repeat is not answered again", async () => {
    const answer = async (reply: Reply): Promise<void> => void answers.push(reply);
    await dispatch.onCommand(asking(answer));
    await dispatch.onCommand(asking(answer));
    expect(answers).toHaveLength(1);
  });

  test("completions come from the command", () => {
    const request = { ...call("try echo"), option: "word", typed: "la", others: {} };
    // Who types in a class that is not known yet makes none.
    expect(dispatch.onComplete(request)).toEqual([]);
    expect(stores.classes.list()).toEqual([]);
    dispatch.run(call("try echo", { word: "hi" }), START);
    const written = (): unknown => stores.db.prepare("select total_changes() as n").get();
    const before = written();
    expect(dispatch.onComplete(request)).toEqual([{ label: "la!", value: "la" }]);
    const stranger = { ...request, person: { id: "room:new", name: "Somebody new" } };
    expect(dispatch.onComplete(stranger)).toEqual([{ label: "la!", value: "la" }]);
    expect(written()).toEqual(before);
    expect(dispatch.onComplete({ ...request, option: "count" })).toEqual([]);
  });
});

describe("names that every object has", () => {
  const NAMES = ["constructor", "toString", "valueOf", "hasOwnProperty", "__proto__", "__defineGetter__"];

  test.each(NAMES)("%s is no option: it is refused plainly, and nothing is offered for it", (name) => {
    const options = JSON.parse(`{"word": "hey", "${name}": "x"}`) as Record<string, unknown>;
    const answered = dispatch.run(call("try echo", options), START);
    expect([answered.kind, answered.code]).toEqual(["refused", "ERR_OPTIONS"]);
    expect(answered.reply.text).toContain("takes");
    expect(dispatch.onComplete({ ...call("try echo"), option: name, typed: "a", others: {} })).toEqual([]);
  });
});

test("nothing is offered to whom the command would refuse", () => {
  dispatch.run(call("try echo", { word: "hi" }), START);
  const asked = { ...call("try staff"), option: "word", typed: "a", others: {} };
  expect(dispatch.onComplete(asked)).toEqual([]);
  expect(dispatch.onComplete({ ...asked, role: "aide" })).toEqual([{ label: "a!", value: "a" }]);
});
