import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { createGateway, type Seen } from "../support/gateway/gateway.ts";
import { STUDENT_PERMISSIONS } from "../support/gateway/world.ts";
import { startProcess } from "../support/process.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/* Thirty who start at once, each to be called in a thread: the built process within the platform's published limits. */

/** Answers to interactions don't count. */
const isCounted = ({ path }: Seen): boolean => !/\/(interactions|webhooks)\//.test(path);

function mostInASecond(requests: readonly Seen[]): number {
  const at = requests.filter(isCounted).map((each) => each.at);
  return Math.max(...at.map((from) => at.filter((each) => each >= from && each < from + 1000).length));
}

test("thirty threads are made, nobody is refused as too fast, and each is called in their own", async () => {
  const gateway = await createGateway({ waitMs: 120_000 });
  const data = mkdtempSync(join(tmpdir(), "sinkside-class-"));
  const bot = startProcess(data, { DISCORD_TOKEN: gateway.token, DISCORD_API_URL: gateway.api });
  try {
    const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
    const teacher = gateway.addUser("Iris", { permissions });
    await gateway.until(() => gateway.commands.has(gateway.guild.id), "commands");
    await gateway.slash(teacher, "sheet add", SHEET);
    await gateway.slash(teacher, "class setup", { channel: gateway.channel.id, threads: "yes" });
    const students = Array.from({ length: 30 }, (_, index) => gateway.addUser(`Person ${index}`));
    for (const student of students)
      await gateway.slash(student, "plan make", { film: "Lantern 400", temp: "20C" });
    const answers = await Promise.all(students.map((student) => gateway.slash(student, "run start")));
    await gateway.until(() => answers.every(({ messages }) => messages.length === 2), "where calls come");
    expect(answers.filter(({ text }) => !text.includes("Your calls come in <#"))).toEqual([]);
    expect(gateway.threads()).toHaveLength(30);

    await Promise.all(students.map((student) => gateway.slash(student, "run next")));
    const called = (id: string): boolean =>
      gateway
        .messagesIn(id)
        .some(({ content, interactionId }) => interactionId === undefined && content.includes("Agitate"));
    await gateway.until(() => gateway.threads().every(({ id }) => called(id)), "a call for each");
    expect(gateway.requests.filter(({ status }) => status === 429)).toEqual([]);
    expect(mostInASecond(gateway.requests)).toBeLessThanOrEqual(50);
    expect(gateway.violations).toEqual([]);
  } finally {
    await bot.kill("SIGTERM");
    await gateway.stop();
  }
});
