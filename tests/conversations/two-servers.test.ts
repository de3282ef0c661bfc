import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import { listButtons } from "../support/gateway/interactions.ts";
import type { Channel, User } from "../support/gateway/world.ts";
import { STUDENT_PERMISSIONS } from "../support/gateway/world.ts";

/* One person in the classes of two servers, with a run of the same number in each: the keys of a call alone to her. All invented. */

let classroom: Awaited<ReturnType<typeof openClassroom>>;
let iris: User;
let mina: User;

beforeEach(async () => {
  classroom = await openClassroom();
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  iris = classroom.gateway.addUser("Iris", { permissions });
  mina = classroom.gateway.addUser("Mina");
});
afterEach(async () => {
  const { violations } = classroom.gateway;
  await classroom.stop();
  expect(violations).toEqual([]);
});

/** Tank 1 of that class is full. */
async function pourIn(channel: Channel): Promise<void> {
  const { gateway } = classroom;
  const where = { channel };
  const sheet = { film: "Lantern 400", developer: "House MQ", dilution: "1+1", temp: "20C", time: "9:00" };
  await gateway.slash(iris, "sheet add", { ...sheet, speed: 400 }, where);
  await gateway.slash(iris, "tank add", { numbers: "1", reels: 1, volume: "300 ml" }, where);
  await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" }, where);
  await gateway.slash(mina, "run start", {}, where);
  await gateway.slash(mina, "run next", {}, where);
}
const stepOf = (classId: number): unknown => {
  const [run] = classroom.stores.runs.open(classId);
  return { phase: run?.phase, marks: run?.marks };
};
/** Her messages from the bot that came unasked, oldest first, with the key of that label. */
const callsWith = (label: string) =>
  classroom.gateway
    .messagesTo(mina)
    .filter(({ interactionId }) => interactionId === undefined)
    .flatMap(({ components }) =>
      listButtons(components).filter((key) => "label" in key && key.label === label),
    );

async function setUpBoth(): Promise<void> {
  const { gateway } = classroom;
  const second = gateway.invite("Print room, Friday");
  await gateway.until(() => gateway.commands.has(second.guild.id) || undefined);
  await pourIn(gateway.channel);
  await classroom.pass(20);
  await pourIn(second.channel);
  await classroom.pass(9 * 60);
}

test("a key under a call moves the run of the class it called for, whichever she was in last", async () => {
  await setUpBoth();
  const calls = callsWith("Water is in");
  const [first, second] = [calls[0], calls.at(-1)];
  const before = [stepOf(1), stepOf(2)];
  expect(first?.custom_id).not.toBe(second?.custom_id);
  await classroom.gateway.press(mina, first?.custom_id ?? "none");
  expect(stepOf(1)).not.toEqual(before[0]);
  expect(stepOf(2)).toEqual(before[1]);
  const moved = stepOf(1);
  await classroom.gateway.press(mina, second?.custom_id ?? "none");
  expect(stepOf(2)).not.toEqual(before[1]);
  expect(stepOf(1)).toEqual(moved);
});

test("a key from before keys told their class is of the class its message was for", async () => {
  await setUpBoth();
  const calls = callsWith("Water is in");
  const line = calls.at(-1)?.custom_id.replace(/^#\S+ /, "") ?? "none";
  expect(line).toMatch(/^run next run:1 /);
  for (const key of calls) key.custom_id = line;
  const before = [stepOf(1), stepOf(2)];
  await classroom.gateway.slash(mina, "caution");
  // The newest message with that key: the second class's.
  await classroom.gateway.press(mina, line);
  expect(stepOf(1)).toEqual(before[0]);
  expect(stepOf(2)).not.toEqual(before[1]);
});
