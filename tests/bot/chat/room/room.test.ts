import { afterEach, expect, test } from "vitest";
import { aPlan } from "../../../support/make.ts";
import { startRoom, type RoomServer } from "../../../support/room-server.ts";

let server: RoomServer | undefined;
afterEach(async () => {
  await server?.stop();
  server = undefined;
});

async function open(): Promise<RoomServer> {
  server = await startRoom();
  return server;
}

/** Puts a plan of this person into the store, as `/plan` would. */
function plan(room: RoomServer, name: string): void {
  const member = room.stores.members.findByName(1, name);
  room.stores.plans.add(1, member?.personId ?? "", aPlan({ tank: 2 }), room.clock.now());
}

test("a student joins the demo, starts a run and is called at the first agitation", async () => {
  const room = await open();
  const mina = room.visitor();
  expect((await mina.joinDemo("Mina")).status).toBe(200);
  plan(room, "Mina");
  const page = await mina.open();
  await page.says("/run start");
  expect(page.feed()[1]).toContain("Next:");
  await page.says("run next step:0");
  await room.pass(1);
  const cue = await page.hears("events", ({ events }) => events.some(({ kind }) => kind === "cue"));
  expect(cue.events[0]?.text).toContain("**Agitate 30 s.**");
  const views = await page.hears("views", (each) => each.views[0]?.phase === "running");
  expect(views.views[0]).toMatchObject({ run: 1, tank: 2, title: "Developer", stepNumber: 1 });
});

test("a page that comes back gets exactly what it missed", async () => {
  const room = await open();
  const mina = room.visitor();
  await mina.joinDemo("Mina");
  const before = await mina.open();
  await before.says("/help");
  const last = Math.max(
    ...before.got.flatMap((each) => (each.type === "events" ? each.events : [])).map(({ id }) => id),
  );
  before.socket.close();
  const key = {
    classKey: "room:demo",
    channelRef: null,
    mentions: [],
    runs: [],
    actions: [],
    pictures: [],
    attachments: [],
  };
  const me = room.stores.members.findByName(1, "Mina")?.personId ?? "";
  await room.room.send({ ...key, key: "1", personId: me, text: "one", dueAt: room.clock.now() });
  await room.room.send({ ...key, key: "2", personId: null, text: "two", dueAt: room.clock.now() });
  const after = await mina.open(last);
  expect(after.feed()).toEqual(["one", "two"]);
  expect(await after.hears("events")).toMatchObject({ isReset: false });
});

test("a page that has read further than the room's store, since that was restored, is shown all anew", async () => {
  const room = await open();
  const mina = room.visitor();
  await mina.joinDemo("Mina");
  const before = await mina.open();
  await before.says("/help");
  const after = await mina.open(100_000);
  expect(await after.hears("events")).toMatchObject({ isReset: true });
  expect(after.feed()).toEqual(before.feed());
});

test("the plan that waits goes to its owner's pages, and goes away with its start", async () => {
  const room = await open();
  const mina = room.visitor();
  await mina.joinDemo("Mina");
  const page = await mina.open();
  expect((await page.hears("welcome")).plan).toBeNull();
  await page.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  const made = await page.hears("views", ({ plan: ready }) => ready !== null);
  expect(made.plan).toEqual({
    plan: "P1",
    time: "9:00",
    bath: "House MQ 1+1",
    temperature: "20 °C",
    film: "Lantern 400",
    tank: 1,
    line: "run start plan:1",
  });
  expect(made.views).toEqual([]);
  await page.says(made.plan?.line ?? "");
  const started = await page.hears("views", ({ views }) => views.length === 1);
  expect(started.plan).toBeNull();
  const again = await mina.open();
  expect((await again.hears("welcome")).plan).toBeNull();
});

test("who erases themselves hears it on every page of theirs, and it is kept nowhere", async () => {
  const room = await open();
  const mina = room.visitor();
  await mina.joinDemo("Mina");
  const page = await mina.open();
  const other = await mina.open();
  const me = room.stores.members.findByName(1, "Mina")?.personId ?? "";
  await page.says("/help");
  page.send({ type: "line", id: "erase-000001", text: "/mine erase name:Mina" });
  for (const each of [page, other])
    expect((await each.hears("gone")).farewell).toContain("I know you no more");
  expect(room.stores.messages.newest(1, me, 10)).toEqual([]);
  expect(await (await mina.get("/api/me")).json()).toMatchObject({ state: "out" });
});
