import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readCsv } from "../../../../commands/roll/export/file.ts";
import { startRoom, type OpenPage, type RoomServer, type Visitor } from "../../../support/room-server.ts";

let room: RoomServer;
beforeEach(async () => {
  room = await startRoom();
});
afterEach(async () => {
  await room.stop();
});

async function come(name: string, role: "student" | "teacher" = "student"): Promise<[Visitor, OpenPage]> {
  const visitor = room.visitor();
  await visitor.joinDemo(name, role);
  return [visitor, await visitor.open()];
}

const NOTE = "the light trap leaked at frame twelve";
/** Her name, her words, and figures that were answered with the number of her roll or run. */
const OF_MINA = /Mina|light trap|dropped the|\b[LRP]1\b/i;

async function developOne(mina: OpenPage): Promise<void> {
  await mina.says("plan film:Lantern 400 ei:320 developer:House MQ dilution:1+1 temp:20");
  await mina.says("run start");
  await mina.says("run stop reason:dropped the tank in the sink sure:yes");
  await mina.says(`roll note roll:L1 note:${NOTE}`);
}

/** Everything a person's feed holds when their page is opened anew, files and pictures included. */
async function readable(visitor: Visitor): Promise<string[]> {
  const page = await visitor.open();
  const { events } = await page.hears("events");
  page.socket.close();
  const links = events.flatMap(({ files, pictures }) => [
    ...files.map(({ href }) => href),
    ...pictures.map(({ src }) => src),
  ]);
  const bodies = await Promise.all(links.map(async (link) => (await visitor.get(link)).text()));
  return [...events.map((event) => JSON.stringify(event)), ...bodies];
}

describe.each([
  [
    "themselves",
    async (mina: OpenPage) => {
      mina.send({ type: "line", id: "erase-myself", text: "mine erase name:Mina" });
      await mina.hears("gone");
    },
  ],
  ["by the teacher", (_: OpenPage, iris: OpenPage) => iris.says("class forget person:Mina sure:yes")],
])("what others were shown of somebody who was erased %s", (_, erase) => {
  test("is in nobody's feed, answers, files or open page", async () => {
    const [, mina] = await come("Mina");
    const [benVisits, ben] = await come("Ben");
    const [irisVisits, iris] = await come("Iris", "teacher");
    await developOne(mina);
    for (const line of ["roll show roll:1", "roll find", "roll find leaked", "batch list"])
      await ben.says(line);
    for (const line of [
      "roll export as:csv",
      "roll export as:json",
      "class report",
      "roll find person:Mina",
      "plan show",
    ])
      await iris.says(line);
    await iris.says(`roll note roll:L1 note:${NOTE}`);
    const before = [...(await readable(benVisits)), ...(await readable(irisVisits))].join("\n");
    expect(before).toMatch(/Mina/);
    expect(before).toContain(NOTE);
    expect(before).toContain('"person":"Mina"');
    const [csv] = (await iris.hears("events", ({ events }) => events.some(({ files }) => files.length > 0)))
      .events;

    await erase(mina, iris);
    for (const [visitor, page] of [
      [benVisits, ben],
      [irisVisits, iris],
    ] as const) {
      // An open page forgets what it had and gets what is left.
      const isRenewed = (each: { text: string }): boolean => each.text.includes("**Taken out:**");
      const { events } = await page.hears(
        "events",
        ({ isReset, events: got }) => isReset && got.some(isRenewed),
      );
      const left = [...(await readable(visitor)), ...events.map((event) => JSON.stringify(event))];
      expect(left.filter((each) => OF_MINA.test(each))).toEqual([]);
    }
    // The file is made of the log as it is by now: her roll is there, and nobody's.
    const file = await irisVisits.get(csv?.files[0]?.href ?? "");
    expect(readCsv(await file.text())).toMatchObject([{ roll: 1, person: "Somebody", note: "" }]);
  });
});
