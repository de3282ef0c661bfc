import { PermissionFlagsBits } from "discord-api-types/v10";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openClassroom } from "../support/gateway/classroom.ts";
import type { Answer } from "../support/gateway/interactions.ts";
import { STUDENT_PERMISSIONS, type User } from "../support/gateway/world.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/* One roll on Discord, from the teacher's sheet to the log, all of it invented. */

let classroom: Awaited<ReturnType<typeof openClassroom>>;
let teacher: User;
let mina: User;

beforeEach(async () => {
  classroom = await openClassroom();
  const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
  teacher = classroom.gateway.addUser("Teacher", { permissions });
  mina = classroom.gateway.addUser("Mina");
});
afterEach(async () => {
  const { violations } = classroom.gateway;
  await classroom.stop();
  expect(violations).toEqual([]);
});

/** Presses the button of that label, wherever its newest message is. */
function press(user: User, label: string): Promise<Answer> {
  const { ledger, press: pressLine } = classroom.gateway;
  const lines = ledger.messages
    .toReversed()
    .flatMap(({ components }) =>
      components
        .flatMap((row) => (row.type === 1 ? row.components : []))
        .flatMap((each) =>
          each.type === 2 && "custom_id" in each && each.label === label ? [each.custom_id] : [],
        ),
    );
  if (lines[0] === undefined) throw new Error(`${user.name} sees no button ${label}`);
  return pressLine(user, lines[0]);
}

/** What the bot said to one person unasked, with its buttons. */
const cuesTo = (user: User): string[] =>
  classroom.gateway
    .messagesTo(user)
    .filter(({ interactionId }) => interactionId === undefined)
    .map(({ content }) => content)
    // Said once, at the first start.
    .filter((content) => !content.startsWith("Your calls come here."));

async function startRoll(): Promise<void> {
  const { gateway } = classroom;
  expect((await gateway.slash(teacher, "sheet add", SHEET)).text).toContain("Lantern 400");
  await gateway.slash(teacher, "tank add", { numbers: "1", reels: 1, volume: "300 ml" });
  const plan = await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C", tank: "1" });
  expect(plan).toMatchObject({ callback: 4, isPrivate: true });
  expect(plan.text).toContain("**9:00** at 20 °C");
  expect((await press(mina, "Start")).text).toContain("Pour in the developer");
}

test("a student's roll: plan, start, every cue alone to her, and the log", async () => {
  const { gateway } = classroom;
  await startRoll();
  expect((await press(mina, "Tank is full")).text).toContain("**9:00** left in the developer");
  await classroom.tick();
  expect(cuesTo(mina)).toHaveLength(1);
  expect(cuesTo(mina)[0]).toContain("Agitate 30 s.");
  await classroom.pass(480);
  expect(cuesTo(mina)).toHaveLength(9);
  await classroom.pass(35);
  expect(cuesTo(mina).at(-1)).toContain("**Pour out in 15 s.** Get ready: rinse 1.");
  await classroom.pass(15);
  expect(cuesTo(mina).at(-1)).toContain("Pour out now");
  await classroom.pass(10);
  expect(cuesTo(mina).at(-1)).toContain("Now: rinse 1.");
  for (const label of [
    "Water is in",
    "Water is in",
    "Fixer is in",
    "Wash is running",
    "Wetting agent is in",
    "Film hangs",
  ]) {
    expect((await press(mina, label)).text).toMatch(/left (in|for) /);
    await classroom.pass(1200);
  }
  expect((await press(mina, "Cut and sleeved")).text).toContain("In the log as L1.");
  expect((await gateway.slash(mina, "roll show")).text).toContain("Developer: 9:00 (planned 9:00)");
  const nonces = gateway.ledger.messages.flatMap(({ nonce }) => nonce ?? []);
  expect(new Set(nonces).size).toBe(nonces.length);
  expect(classroom.log.lines.filter(({ level }) => level === "error" || level === "warn")).toEqual([]);
});

test("a student who takes no direct messages is called by name in the class's channel", async () => {
  await startRoll();
  mina.isClosed = true;
  await press(mina, "Tank is full");
  await classroom.tick();
  const { gateway } = classroom;
  const called = gateway
    .messagesIn(gateway.channel.id)
    .filter(({ calledIds }) => calledIds.includes(mina.id));
  expect(called).toHaveLength(1);
  expect(called[0]?.content).toContain("Agitate 30 s.");
});

test("the line drops and the platform repeats itself: the tank is full once, each cue comes once", async () => {
  const { gateway } = classroom;
  await startRoll();
  await press(mina, "Tank is full");
  gateway.socket.state.repeatsOnResume = 50;
  gateway.socket.drop();
  gateway.faults.add("POST", /^\/channels\/\d+\/messages$/, { kind: "cut", after: true });
  await classroom.pass(3);
  await gateway.until(() => gateway.socket.state.resumes === 1);
  expect((await gateway.slash(mina, "run status")).text).toContain("R1");
  expect(cuesTo(mina)).toHaveLength(1);
  expect((await gateway.slash(mina, "run stop")).text).toMatch(/^Stop \*\*R1, tank 1\*\*\?/);
});

test("what a student types is completed from the class's own sheets", async () => {
  const { gateway } = classroom;
  await gateway.slash(teacher, "sheet add", SHEET);
  const { choices } = await gateway.complete(mina, "plan make", "film", "lan");
  expect(choices).toEqual([{ name: "Lantern 400", value: "Lantern 400" }]);
});

test("a student isn't shown what is the teacher's; where a server shows it, the bot refuses, to them alone", async () => {
  await expect(async () => classroom.gateway.slash(mina, "sheet add", SHEET)).rejects.toThrow(
    "/staff-sheet is not shown to Mina",
  );
  classroom.gateway.opened.add("staff-sheet");
  const answer = await classroom.gateway.slash(mina, "sheet add", SHEET);
  expect(answer).toMatchObject({ isPrivate: true });
  expect(answer.text).toContain("Only an aide or the teacher may use");
});
