import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { STUDENT_PERMISSIONS, type Channel, type Thread, type User } from "../support/gateway/world.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/* A class that wants a thread for each run: the real commands and the real client on the loopback platform. */

type Classroom = Awaited<ReturnType<typeof openClassroom>>;

let classroom: Classroom;
let gateway: Classroom["gateway"];
let teacher: User;
let mina: User;
const { CreatePrivateThreads, CreatePublicThreads, SendMessagesInThreads, ManageGuild } = PermissionFlagsBits;

beforeEach(async () => {
  classroom = await openClassroom();
  ({ gateway } = classroom);
  teacher = gateway.addUser("Iris", { permissions: STUDENT_PERMISSIONS | ManageGuild });
  mina = gateway.addUser("Mina");
  await gateway.slash(teacher, "sheet add", SHEET);
  await gateway.slash(teacher, "tank add", { numbers: "1-4", reels: 1, volume: "300 ml" });
  await gateway.slash(teacher, "class setup", { channel: gateway.channel.id, threads: "yes" });
});
afterEach(async () => {
  const { violations } = gateway;
  await classroom.stop();
  expect(violations).toEqual([]);
});

/** What the bot has said in a channel unasked. */
const saidIn = ({ id }: Channel): string[] =>
  gateway
    .messagesIn(id)
    .filter(({ interactionId }) => interactionId === undefined)
    .map(({ content }) => content);
const saidAlone = (user: User): string[] =>
  gateway
    .messagesTo(user)
    .filter(({ interactionId }) => interactionId === undefined)
    .map(({ content }) => content);

async function start(user: User = mina, tank = "1", where: { channel?: Channel; isDirect?: boolean } = {}) {
  await gateway.slash(user, "plan make", { film: "Lantern 400", temp: "20C", tank }, where);
  const answer = await gateway.slash(user, "run start", {}, where);
  return answer;
}

/** The thread of a run that has just begun, once its person has been told of it. */
async function startInThread(user: User = mina, tank = "1"): Promise<Channel & { readonly thread: Thread }> {
  const answer = await start(user, tank);
  await gateway.until(() => answer.messages.length === 2, "where calls come");
  const id = /<#(\d+)>/.exec(answer.messages[1]?.content ?? "")?.[1];
  const found = gateway.world.channels.get(id ?? "");
  if (!found?.thread) throw new Error(`no thread in “${answer.text}”`);
  return found as Channel & { readonly thread: Thread };
}

test("a trial has its own as well, so that it shows where a film's calls come", async () => {
  const answer = await gateway.slash(mina, "run trial", {});
  await gateway.until(() => answer.messages.length === 2, "where calls come");
  const [thread] = gateway.threads();
  expect(answer.messages[1]?.content).toContain(`<#${thread?.id}>`);
  expect(thread).toMatchObject({ name: "R1 · Trial Lantern 400", thread: { isPrivate: true } });
  await gateway.press(mina, "run next run:1 step:0");
  await classroom.pass(8);
  const calls = thread ? saidIn(thread).filter((text) => text.includes("Agitate")) : [];
  expect(calls.length).toBeGreaterThan(0);
  expect(saidAlone(mina)).toEqual([]);
});

test("a run has its own, named by tank and film: its person is taken in, told of it, and called there alone", async () => {
  const thread = await startInThread();
  expect(thread).toMatchObject({ name: "R1, tank 1 · Lantern 400", thread: { isPrivate: true } });
  expect([...thread.thread.members]).toEqual([mina.id]);
  const [opening] = gateway.messagesIn(thread.id);
  expect(opening?.content).toMatch(new RegExp(`^<@${mina.id}>\nYour calls come here\\..*R1, tank 1`, "s"));
  // What is next can be done there.
  expect((await gateway.press(mina, "run next run:1 step:0")).text).toContain("left in the developer");
  await classroom.tick();
  await classroom.pass(130);
  const calls = gateway
    .messagesIn(thread.id)
    .filter(({ content, interactionId }) => interactionId === undefined && content.includes("Agitate"));
  expect(calls.length).toBeGreaterThanOrEqual(2);
  expect(calls.every(({ calledIds }) => calledIds.join() === mina.id)).toBe(true);
  expect(saidAlone(mina)).toEqual([]);
  expect(saidIn(gateway.channel)).toEqual([]);
});

test("two films at once have two threads, and each is called in its own", async () => {
  const ben = gateway.addUser("Ben");
  const [first, second] = [await startInThread(mina, "1"), await startInThread(ben, "2")];
  await gateway.press(mina, "run next run:1 step:0");
  await gateway.press(ben, "run next run:2 step:0");
  await classroom.pass(130);
  expect(
    saidIn(first)
      .slice(1)
      .every((text) => text.includes("R1")),
  ).toBe(true);
  expect(
    saidIn(second)
      .slice(1)
      .every((text) => text.includes("R2")),
  ).toBe(true);
  expect([first, second].map((each) => saidIn(each).length >= 3)).toEqual([true, true]);
});

test("a run that is begun in a thread has its own beside that, in the class's channel", async () => {
  const first = await startInThread(mina, "1");
  await start(mina, "2", { channel: first });
  const second = await gateway.until(() => gateway.threads()[1]);
  expect(second).toMatchObject({
    name: "R2, tank 2 · Lantern 400",
    thread: { parentId: gateway.channel.id },
  });
  await gateway.slash(teacher, "class setup", { name: "Harbour" }, { channel: first });
  expect(classroom.stores.classes.channelRef(1)).toBe(gateway.channel.id);
});

test("a key there that somebody else presses is answered as it is everywhere", async () => {
  await startInThread();
  const ben = gateway.addUser("Ben");
  const there = (await gateway.press(ben, "run next run:1 step:0")).text;
  classroom.stores.runThreads.lose(1);
  const alone = gateway.addUser("Cleo");
  await gateway.slash(alone, "help");
  expect(there).toBe((await gateway.slash(alone, "run next", { run: "R1", step: 0 })).text);
});

test("in German, for who reads it", async () => {
  const lena = gateway.addUser("Lena", { locale: "de" });
  const answer = await start(lena, "2");
  await gateway.until(() => answer.messages.length === 2, "where calls come");
  expect(answer.messages[1]).toMatchObject({
    content: expect.stringMatching(/^\*\*Deine Signale kommen in <#\d+>: Mach dort weiter\.\*\*$/),
    isPrivate: true,
  });
  const [thread] = gateway.threads();
  expect(thread?.name).toBe("R1, Dose 2 · Lantern 400");
  expect(thread && saidIn(thread)[0]).toContain("Deine Signale kommen hier an.");
});

test("it is closed some minutes after the run is over, not before", async () => {
  const { thread } = await startInThread();
  await gateway.slash(mina, "run stop", { run: "R1", sure: "yes" });
  classroom.clock.advance(9 * 60);
  const before = gateway.asked("PATCH", /^\/channels\/\d+$/).length;
  await new Promise((resolve) => setTimeout(resolve, 0));
  expect([thread.isArchived, before]).toEqual([false, 0]);
  classroom.clock.advance(2 * 60);
  await gateway.until(() => thread.isArchived, "the thread is closed");
  expect(gateway.asked("PATCH", /^\/channels\/\d+$/)).toHaveLength(1);
});

describe("who begins elsewhere has none", () => {
  test.each([
    ["in a direct message", () => ({ isDirect: true })],
    ["in another channel", () => ({ channel: gateway.addChannel(gateway.guild.id, "print room") })],
  ])("%s", async (_, where) => {
    await gateway.slash(mina, "help");
    await start(mina, "1", where());
    await gateway.until(() => saidAlone(mina).length > 0, "a word alone");
    expect(gateway.threads()).toEqual([]);
  });

  test("nor does anybody in a class that wants none", async () => {
    await gateway.slash(teacher, "class setup", { threads: "no" });
    await start();
    await gateway.until(() => saidAlone(mina).length > 0, "a word alone");
    expect(gateway.threads()).toEqual([]);
  });
});

describe("what the bot may do", () => {
  const setup = async (): Promise<string> =>
    (await gateway.slash(teacher, "class setup", { threads: "yes" })).text;

  /** As the server's manager takes it away: the client hears of it. */
  function deny(bits: bigint): void {
    const channel = gateway.addChannel(gateway.guild.id, "class", bits);
    classroom.stores.classes.setChannelRef(1, channel.id);
    Object.assign(gateway, { channel });
  }

  test("is said at the set-up: all of it", async () => {
    expect(await setup()).toContain("- A thread for each run: yes, for runs started in the class channel\n");
  });

  test("may it make public ones only, it makes those, and the set-up says who sees them", async () => {
    deny(CreatePrivateThreads);
    const { channel } = gateway;
    const { text } = await gateway.slash(teacher, "class setup", { threads: "yes" }, { channel });
    expect(text).toContain("everybody there sees them, since I may not Create Private Threads");
    await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" }, { channel });
    await gateway.slash(mina, "run start", {}, { channel });
    const thread = await gateway.until(() => gateway.threads()[0]);
    expect(thread.thread?.isPrivate).toBe(false);
  });

  test.each([
    [CreatePrivateThreads | CreatePublicThreads, "Create Private Threads"],
    [SendMessagesInThreads, "Send Messages in Threads"],
  ])(
    "lacks it what it takes (%i), the set-up names that, and Start says where calls come",
    async (bits, name) => {
      deny(bits);
      const { channel } = gateway;
      const { text } = await gateway.slash(teacher, "class setup", { threads: "yes" }, { channel });
      expect(text).toContain(`yes, but I may not ${name} there, and calls come by direct message`);
      expect(text).toContain(`turn on ${name}`);
      await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" }, { channel });
      const answer = await gateway.slash(mina, "run start", {}, { channel });
      await gateway.until(() => answer.messages.length === 2, "where calls come");
      expect(answer.messages[1]?.content).toBe(
        `A thread for your film could not be opened: in the class channel I lack ${name} (a server manager can give it). **Your calls come by direct message.**`,
      );
      expect(gateway.threads()).toEqual([]);
      expect(saidAlone(mina)).toHaveLength(1);
    },
  );
});

describe("where a thread can't be had, or written in any more, calls come as they do without", () => {
  test.each([
    ["refused", { kind: "status", status: 403, code: 160006 }],
    ["a server that breaks", { kind: "status", status: 500 }],
    ["a connection that breaks", { kind: "cut" }],
    ["a limit of a minute", { kind: "limit", seconds: 60, scope: "shared" }],
  ] as const)("%s as it is made", async (_, fault) => {
    gateway.faults.add("POST", /\/threads$/, fault);
    const answer = await start();
    await gateway.until(() => answer.messages.length === 2, "where calls come");
    expect(answer.messages[1]?.content).toBe(
      "A thread for your film could not be opened. **Your calls come by direct message.**",
    );
    await gateway.press(mina, "run next run:1 step:0");
    await classroom.pass(70);
    expect(saidAlone(mina).some((text) => text.includes("Agitate"))).toBe(true);
    expect(gateway.threads()).toEqual([]);
  });

  test.each([
    ["deleted", ({ id }: Channel) => void gateway.world.channels.delete(id)],
    [
      "closed and locked",
      ({ thread }: Channel) => void Object.assign(thread ?? {}, { isArchived: true, isLocked: true }),
    ],
    ["forbidden", () => void (gateway.channel.denied = SendMessagesInThreads)],
  ])("%s while the run goes on", async (_, spoil) => {
    const thread = await startInThread();
    await gateway.press(mina, "run next run:1 step:0");
    spoil(thread);
    await classroom.pass(130);
    const calls = saidAlone(mina).filter((text) => text.includes("Agitate"));
    expect(calls.length).toBeGreaterThanOrEqual(2);
    // Tried once: every further call goes where it is heard, at once.
    const tried = gateway.requests.filter(
      ({ path, status = 0 }) => path.includes(thread.id) && status >= 400,
    );
    expect(tried).toHaveLength(1);
  });

  test("and in the class's channel by name, where direct messages are closed", async () => {
    mina.isClosed = true;
    const thread = await startInThread();
    await gateway.press(mina, "run next run:1 step:0");
    gateway.world.channels.delete(thread.id);
    await classroom.pass(130);
    expect(
      saidIn(gateway.channel).some((text) => text.includes(`<@${mina.id}>`) && text.includes("Agitate")),
    ).toBe(true);
  });

  test("one that is merely archived is opened by the next call", async () => {
    const thread = await startInThread();
    await gateway.press(mina, "run next run:1 step:0");
    thread.thread.isArchived = true;
    await classroom.pass(70);
    expect(saidIn(thread).some((text) => text.includes("Agitate"))).toBe(true);
    expect(thread.thread.isArchived).toBe(false);
  });
});

test.each([
  ["the connection breaks", { kind: "cut", after: true }],
  ["the server breaks", { kind: "status", status: 502, after: true }],
  ["something in between answers", { kind: "instead", body: "<html>", after: true }],
] as const)(
  "made, though %s before it is told: that one is taken, and no second is made",
  async (_, fault) => {
    gateway.faults.add("POST", /\/threads$/, fault);
    const thread = await startInThread();
    expect(gateway.threads()).toEqual([thread]);
  },
);

test("a run's thread is forgotten with its person", async () => {
  await startInThread();
  expect(classroom.stores.runThreads.refOf(1)).not.toBeNull();
  await gateway.slash(mina, "run stop", { run: "R1", sure: "yes" });
  await gateway.slash(mina, "mine erase", { name: "Mina" });
  expect(classroom.stores.db.prepare("select * from run_threads").all()).toEqual([]);
});
