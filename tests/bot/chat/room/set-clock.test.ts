import { afterEach, expect, test } from "vitest";
import { createBegun, viewsIn } from "../../../../bot/chat/room-page/begun.ts";
import { createRoomClock } from "../../../../bot/chat/room-page/clock.ts";
import { openCalls } from "../../../../bot/chat/room-page/calls.ts";
import type { PersonView } from "../../../../bot/chat/room/view.ts";
import type { ToPage } from "../../../../bot/chat/room/wire.ts";
import { aPlan, aRun, START } from "../../../support/make.ts";
import { startRoom, type RoomServer } from "../../../support/room-server.ts";

/*
 * The room's clock is set while a film is in its developer. What a page makes of it is read message by message, as it takes them:
 * at none may it call what is long past, or not yet.
 */

let server: RoomServer;
afterEach(() => server.stop());

/** A page as it takes what comes: its clock, its runs, and what it would call right after each message. */
function aPage() {
  // The phone's own clock is not set, and all is taken within a moment of it.
  const clock = createRoomClock(() => START);
  const begun = createBegun(clock);
  let views: readonly PersonView[] = [];
  return (message: ToPage): string[] => {
    begun.hear(viewsIn(message));
    if ("views" in message) ({ views } = message);
    if (message.type === "welcome") clock.guess(message.now);
    if (message.type === "pong")
      clock.take({ sentAt: message.sentAt, cameAt: message.sentAt, roomNow: message.now });
    return openCalls(views, [], {}, clock.now()).map(({ words }) => words.does);
  };
}

test.each([-600, 600, -20])(
  "by %d s: no page calls anything else for it, whatever comes first, the runs or the time",
  async (by) => {
    server = await startRoom();
    const { stores, clock } = server;
    const mina = server.visitor();
    await mina.joinDemo("Mina");
    const [school] = stores.classes.list();
    const member = stores.members.list(school?.id ?? 0).find(({ name }) => name === "Mina");
    const {
      id: _id,
      number: _number,
      ...draft
    } = aRun({
      classId: school?.id ?? 0,
      personId: member?.personId ?? "",
      plan: aPlan({ tank: 2 }),
    });
    stores.runs.add(draft);
    const page = await mina.open();
    await page.says("run next");
    await server.pass(45);
    page.send({ type: "ping", sentAt: START });
    await page.hears("pong");
    const teacher = server.visitor();
    await teacher.joinDemo("Iris", "teacher");
    const wall = await teacher.open();
    wall.send({ type: "watch", on: true, from: "wall" });
    await wall.hears("wall", ({ rows }) => rows.some(({ tank }) => tank === 2));

    stores.time.shift(by * 1000, { bootId: "b", wallMs: 1, monoMs: 2, uptimeMs: null });
    if (by < 0) clock.back(-by);
    else clock.advance(by);
    page.send({ type: "ping", sentAt: START + 1 });
    await page.hears("pong", ({ sentAt }) => sentAt === START + 1);
    wall.send({ type: "ping", sentAt: START + 1 });
    await wall.hears("pong", ({ sentAt }) => sentAt === START + 1);

    const take = aPage();
    const called = page.got.flatMap((message) => take(message));
    // Before the bath is in nothing is called; 45 s into it, between two agitations, as little.
    expect(called.filter((does) => does !== "Agitate 30 s.")).toEqual([]);
    const kinds = page.got.map(({ type }) => type);
    expect(kinds.lastIndexOf("views")).toBe(kinds.lastIndexOf("pong") - 1);
    const onWall = wall.got.map(({ type }) => type);
    expect(onWall.lastIndexOf("wall")).toBe(onWall.lastIndexOf("pong") - 1);
  },
);

test("runs of others on the wall and one's own move the clock once", () => {
  let byMs = 0;
  const begun = createBegun({ shift: (by) => void (byMs += by) });
  const at = (run: number, begunAt: number) => ({ run, begunAt });
  begun.hear([at(1, 100)]);
  begun.hear([at(1, 100), at(2, 150), at(3, 170)]);
  expect(byMs).toBe(0);
  begun.hear([at(1, 40)]);
  begun.hear([at(2, 90), at(3, 110), at(4, 130)]);
  expect(byMs).toBe(-60);
  begun.hear([at(4, 135), at(2, 95)]);
  expect(byMs).toBe(-55);
  begun.forget();
  begun.hear([at(1, 5000)]);
  expect(byMs).toBe(-55);
});
