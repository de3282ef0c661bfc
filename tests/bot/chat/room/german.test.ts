import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readyPlanOf } from "../../../../commands/plan/ready.ts";
import { createRoom } from "../../../support/room.ts";
import { startRoom, type RoomServer, type Visitor } from "../../../support/room-server.ts";

let room: RoomServer;
let teacher: Visitor;

beforeAll(async () => {
  room = await startRoom();
  teacher = room.visitor();
  await teacher.joinDemo("Demo teacher", "teacher");
});
afterAll(() => room.stop());

describe("a wall", () => {
  test("speaks the class's language, each person's own page and desk theirs", async () => {
    const mina = room.visitor();
    await mina.joinDemo("Mina");
    const own = await mina.open();
    own.send({ type: "language", language: "de" });
    await own.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    await own.says("/run start");
    await own.hears("views", ({ views }) => views[0]?.title === "Entwickler");

    const wall = await teacher.open();
    wall.send({ type: "watch", on: true });
    const isMinas = (title: string) => (message: { rows: readonly { owner: string; title: string }[] }) =>
      message.rows.some((row) => row.owner === "Mina" && row.title === title);
    await wall.hears("wall", isMinas("Developer"));

    await wall.says("/class setup language:de");
    await wall.hears("wall", isMinas("Entwickler"));
    // Mina's own choice changes nothing on the wall.
    const before = wall.got.length;
    own.send({ type: "language", language: "en" });
    await own.hears("views", ({ views }) => views[0]?.title === "Developer");
    wall.send({ type: "watch", on: true });
    const later = await wall.hears("wall", (message) => wall.got.indexOf(message) >= before);
    expect(isMinas("Entwickler")(later)).toBe(true);

    const iris = room.visitor();
    await iris.joinDemo("Demo teacher", "teacher");
    const desk = await iris.open();
    desk.send({ type: "language", language: "en" });
    desk.send({ type: "watch", on: true, from: "desk" });
    await desk.hears("wall", isMinas("Developer"));
    // A class's language changes nothing at a desk; its person's does.
    desk.send({ type: "language", language: "de" });
    await desk.hears("wall", isMinas("Entwickler"));
    await wall.says("/class setup language:en");
  });
});

describe("a class that is made in the room", () => {
  const body = { name: "Fotokurs am Hafen", zone: "Europe/Berlin", teacher: "Iris" };

  test("is spoken to in the language of the page that made it", async () => {
    expect((await teacher.post("/api/classes", { ...body, language: "xx" })).status).toBe(400);
    const demo = teacher.cookie;
    expect((await teacher.post("/api/classes", { ...body, language: "de" })).status).toBe(200);
    const made = () => room.stores.classes.list().at(-1);
    expect(made()).toMatchObject({ name: body.name, habits: { language: "de" } });
    teacher.cookie = demo;
    expect((await teacher.post("/api/classes", { ...body, name: "No word of it" })).status).toBe(200);
    expect(made()).toMatchObject({ name: "No word of it", habits: { language: "en" } });
    teacher.cookie = demo;
  });
});

test("a plan that waits to be started stands in its owner's language", () => {
  const memory = createRoom();
  memory.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20.5");
  const ready = () => readyPlanOf(memory.stores, 1, "room:mina", memory.clock.now());
  expect(ready()).toMatchObject({ plan: "P1", temperature: "20.5 °C" });
  memory.stores.members.chooseLanguage(1, "room:mina", "de");
  expect(ready()).toMatchObject({ plan: "P1", temperature: "20,5 °C" });
});
