import { afterEach, expect, test } from "vitest";
import { aPlan } from "../../support/make.ts";
import { startRoom, type RoomServer } from "../../support/room-server.ts";

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
  expect(cue.events[0]?.text).toContain("**30 s** agitate");
  const views = await page.hears("views", (each) => each.views[0]?.phase === "running");
  expect(views.views[0]).toMatchObject({ run: "R1", tank: 2, title: "Developer", stepNumber: 1 });
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
    actions: [],
    pictures: [],
    attachments: [],
  };
  const me = room.stores.members.findByName(1, "Mina")?.personId ?? "";
  await room.room.send({ ...key, key: "1", personId: me, text: "one", dueAt: room.clock.now() });
  await room.room.send({ ...key, key: "2", personId: null, text: "two", dueAt: room.clock.now() });
  const after = await mina.open(last);
  expect(after.feed()).toEqual(["one", "two"]);
});
