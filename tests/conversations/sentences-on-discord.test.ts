import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { listButtons } from "../support/gateway/interactions.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";

/* A film developed by sentences: in the class's channel and to the bot alone, with keys for all that changes something. */

let classroom: Awaited<ReturnType<typeof openClassroom>>;
let mina: User;

beforeEach(async () => {
  classroom = await openClassroom();
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  const teacher = classroom.gateway.addUser("Iris", { permissions });
  mina = classroom.gateway.addUser("Mina");
  await classroom.gateway.slash(teacher, "sheet add", {
    film: "Lantern 400",
    speed: 400,
    developer: "House MQ",
    dilution: "1+1",
    temp: "20",
    time: "9:00",
  });
});
afterEach(async () => {
  const { violations } = classroom.gateway;
  await classroom.stop();
  expect(violations).toEqual([]);
});

async function write(text: string, isDirect = true) {
  const [answer] = await classroom.gateway.write(mina, text, { isDirect });
  const keys = listButtons(answer?.components ?? []);
  return {
    text: answer?.content ?? "",
    keys: keys.map((key) => ("label" in key ? key.label : "")),
    lines: keys,
  };
}
const press = async (answer: Awaited<ReturnType<typeof write>>, label: string): Promise<string> => {
  const key = answer.lines[answer.keys.indexOf(label)];
  return (await classroom.gateway.press(mina, key?.custom_id ?? `no key ${label}`)).text;
};

test("from the first question in the channel to a call put right, in sentences", async () => {
  const bot = `<@${classroom.gateway.world.bot.id}>`;
  const asked = await write(`${bot} how long for lantern 400 at 20?`, false);
  expect(asked.text).toContain("**9:00** at 20 °C (68 °F): Lantern 400 in House MQ 1+1");
  expect(await press(asked, "Make the plan")).toContain("9:00");

  const ready = await write("can i start");
  expect(ready.text).toContain("Plan P1 is ready");
  expect(classroom.stores.runs.open(1)).toEqual([]);
  await press(ready, "Start");
  expect(classroom.stores.runs.open(1)).toHaveLength(1);

  await press(await write("its in"), "Tank is full");
  await classroom.pass(40);
  expect((await write("wie lange noch")).text).toContain("8:20");
  const late = await write("i poured it in 20 seconds ago");
  expect(late.keys).toEqual(["R1: poured 20 s ago"]);
  expect((await write("don't stop")).keys).not.toContain("Stop R1");
  expect(classroom.stores.runs.open(1)).toHaveLength(1);
});

test("whoever is in the classes of two servers is asked which, and the one they choose is where they are", async () => {
  const second = classroom.gateway.invite("Print room, Friday");
  await classroom.gateway.until(() => classroom.gateway.commands.has(second.guild.id) || undefined);
  await classroom.gateway.slash(mina, "help");
  classroom.clock.advance(60);
  await classroom.gateway.slash(mina, "help", {}, { channel: second.channel });
  classroom.clock.advance(24 * 3600);
  const question = await write("is the fixer still good");
  expect(question.keys).toEqual(["Print room, Friday", "Harbour workshop, Tuesday evening"]);
  expect(await press(question, "Harbour workshop, Tuesday evening")).toContain("No bottle of that");
  expect((await write("who has tank 3")).text).toMatch(/^_Harbour workshop, Tuesday evening_\n/);
});
