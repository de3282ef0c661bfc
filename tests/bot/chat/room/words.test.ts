import { expect, test } from "vitest";
import { stepAt } from "../../../../store/shapes/run.ts";
import { startRoom } from "../../../support/room-server.ts";

/* A word to many is a call on every page but its speaker's, and only whose page showed it has it. */

test("who has a word is who was shown it, not the channel it went to", async () => {
  const room = await startRoom();
  const open = async (name: string, role: "student" | "teacher" = "student") => {
    const visitor = room.visitor();
    await visitor.joinDemo(name, role);
    return visitor.open();
  };
  const mina = await open("Mina");
  const ben = await open("Ben");
  const lena = await open("Lena", "teacher");
  await lena.says("/class say Fixer B4 is retired.");
  await room.pass(0);
  const isIt = ({ text }: { text: string }): boolean => text.includes("Fixer B4");
  const heardBy = async (page: typeof mina) =>
    (
      await page.hears("events", ({ events }) => events.some((each) => each.isWord && isIt(each)))
    ).events.find(isIt);
  const word = await heardBy(mina);
  expect(word?.isWord).toBe(true);
  expect((await heardBy(ben))?.isWord).toBe(true);
  const own = (
    await lena.hears("events", ({ events }) => events.some((each) => each.kind === "notice" && isIt(each)))
  ).events.find(isIt);
  expect(own?.isWord).toBe(false);

  const asked = async (): Promise<string> => {
    await lena.says("/class said");
    return lena.feed().at(-1) ?? "";
  };
  expect(await asked()).toContain("**0 of 2**");
  mina.send({ type: "shown", id: word?.id });
  // Told twice, it is still once; another entry is no word.
  mina.send({ type: "shown", id: word?.id });
  mina.send({ type: "shown", id: 1 });
  await mina.says("/help");
  const answer = await asked();
  expect(answer).toContain("**1 of 2**");
  expect(answer).toContain("Mina: has it");
  expect(answer).toContain("Ben: not shown yet");
  for (const page of [mina, ben, lena]) page.socket.close();
  await room.stop();
});

test("whose wash a wet print begins again is called on their page, and nobody else; the run's own calls are none such", async () => {
  const room = await startRoom();
  const open = async (name: string) => {
    const visitor = room.visitor();
    await visitor.joinDemo(name);
    return visitor.open();
  };
  const [mina, ben] = [await open("Mina"), await open("Ben")];
  const toWash = async (page: typeof mina, run: number) => {
    await page.says("/tray plan paper:resin-coated temp:20C");
    await page.says("/run start");
    for (let step = 0; step < 4; step += 1) await page.says(`/run next run:${run} step:${step} sure:yes`);
  };
  await toWash(mina, 1);
  await toWash(ben, 2);
  await room.pass(0);
  const isIt = ({ text }: { text: string }): boolean => text.includes("A wet print came into the wash");
  const { events } = await mina.hears("events", (each) => each.events.some(isIt));
  expect(events.find(isIt)).toMatchObject({ kind: "cue", isChange: true, runs: [{ number: 1, trays: 1 }] });
  await room.pass(300);
  await mina.hears("events", (each) => each.events.some(({ text }) => text.includes("Take it out")));
  const changes = (page: typeof mina): number =>
    page.got.flatMap((each) => (each.type === "events" ? each.events : [])).filter(({ isChange }) => isChange)
      .length;
  expect([changes(mina), changes(ben)]).toEqual([1, 0]);
});

test("a bath that is given another bottle says which bath it is, each time anew", async () => {
  const room = await startRoom();
  const open = async (name: string, role: "student" | "teacher") => {
    const visitor = room.visitor();
    await visitor.joinDemo(name, role);
    return visitor.open();
  };
  const [mina, iris] = [await open("Mina", "student"), await open("Iris", "teacher")];
  const mixFixer = () =>
    iris.says(
      "/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4 clearing:30 s capacity:12 films/l",
    );
  await mixFixer();
  await mina.says("/plan film:Quay 100 developer:Pier Fine temp:20C tank:1");
  await mina.says("/run start");
  await mina.says("/run next");
  await iris.says("/batch test batch:B1 clearing:70 s");
  await room.pass(0);
  await mixFixer();
  await room.pass(0);
  const isNamed = ({ text }: { text: string }): boolean => text.includes("Take B2, not B1");
  await mina.hears("events", (each) => each.events.some(isNamed));
  const told = mina.got
    .flatMap((each) => (each.type === "events" ? each.events : []))
    .filter(({ rebottled }) => rebottled !== undefined);
  const [none, other] = told;
  expect(told).toHaveLength(2);
  expect(none?.text).toContain("Don't pour in B1");
  expect(other?.rebottled).toBe(none?.rebottled);
  const [run] = room.stores.runs.open(1);
  expect(run && stepAt(run, none?.rebottled ?? 0)?.kind).toBe("fix");
  await room.stop();
});
