import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";

/* Two films at a sink with one place, on Discord; all of it is invented. */

let classroom: Awaited<ReturnType<typeof openClassroom>>;
beforeEach(async () => {
  classroom = await openClassroom();
});
afterEach(async () => {
  const { violations } = classroom.gateway;
  await classroom.stop();
  expect(violations).toEqual([]);
});

test("whoever waits for a place at the sink is called alone, once, with the key that begins", async () => {
  const { gateway } = classroom;
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  const teacher = gateway.addUser("Teacher", { permissions });
  const [mina, ben] = [gateway.addUser("Mina"), gateway.addUser("Ben")];
  const sheet = { film: "Lantern 400", developer: "House MQ", dilution: "1+1", temp: "20C" };
  await gateway.slash(teacher, "sheet add", { ...sheet, time: "9:00", speed: 400 });
  await gateway.slash(teacher, "tank add", { numbers: "1-2", reels: 1, volume: "300 ml" });
  await gateway.slash(teacher, "class setup", { sinks: 1 });
  const start = async (user: User, tank: string): Promise<string> => {
    await gateway.slash(user, "plan make", { film: "Lantern 400", temp: "20C", tank });
    return (await gateway.slash(user, "run start", {})).text;
  };
  await start(mina, "1");
  await gateway.slash(mina, "run next", { run: "R1", step: 0 });
  expect(await start(ben, "2")).toContain("**Wait: there is no place at the sink**");
  const turns = () => gateway.messagesTo(ben).filter(({ content }) => content.includes("Your turn"));
  // Developer, two rinses, fixer: the tank stands at the sink until it is in the wash.
  for (let step = 1; step < 4; step += 1) {
    await gateway.slash(mina, "run next", { run: "R1", step, sure: "yes" });
    await classroom.tick();
    expect(turns()).toEqual([]);
  }
  await gateway.slash(mina, "run next", { run: "R1", step: 4, sure: "yes" });
  await classroom.tick();
  await classroom.pass(5);
  expect(turns().map(({ content }) => content.split("\n")[0])).toEqual([
    expect.stringMatching(/^\*\*Your turn: pour in now\.\*\* There is a place at the sink\./),
  ]);
  const keys = turns().flatMap(({ components }) =>
    components.flatMap((row) => (row.type === 1 ? row.components : [])),
  );
  expect(keys.flatMap((key) => ("label" in key ? [key.label] : []))).toContain("Tank is full");
});

test("whoever finds the only tank taken is called alone, once, when its film hangs", async () => {
  const { gateway } = classroom;
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  const teacher = gateway.addUser("Teacher", { permissions });
  const [mina, ben, ola] = [gateway.addUser("Mina"), gateway.addUser("Ben"), gateway.addUser("Ola")];
  const sheet = { film: "Lantern 400", developer: "House MQ", dilution: "1+1", temp: "20C" };
  await gateway.slash(teacher, "sheet add", { ...sheet, time: "9:00", speed: 400 });
  await gateway.slash(teacher, "tank add", { numbers: "1", reels: 1, volume: "300 ml" });
  const start = async (user: User): Promise<string> => {
    await gateway.slash(user, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" });
    return (await gateway.slash(user, "run start", {})).text;
  };
  await start(mina);
  expect(await start(ben)).toContain("**Wait: tank 1 is not free yet.** I call you when it is.");
  expect(await start(ola)).toContain("**Wait: tank 1 is not free yet.** I call you when it is.");
  const turns = (user: User) =>
    gateway.messagesTo(user).filter(({ content }) => content.includes("Your turn"));
  // Developer, two rinses, fixer, wash, wetting agent; then it hangs.
  for (let step = 0; step <= 6; step += 1) {
    await classroom.tick();
    expect(turns(ben)).toEqual([]);
    await gateway.slash(mina, "run next", { run: "R1", step, sure: "yes" });
  }
  await classroom.tick();
  await classroom.pass(5);
  expect(turns(ben).map(({ content }) => content.split("\n")[0])).toEqual([
    expect.stringMatching(/^\*\*Your turn: tank 1 is free\.\*\* Rinse it and dry its reel/),
  ]);
  expect(turns(ola)).toEqual([]);
});
