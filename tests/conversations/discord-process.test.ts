import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { createGateway } from "../support/gateway/gateway.ts";
import type { DoorSheet } from "../../bot/chat/room/wire.ts";
import { BOT_PERMISSIONS, STUDENT_PERMISSIONS } from "../support/gateway/world.ts";
import { startProcess } from "../support/process.ts";
import { createVisitor } from "../support/room-server.ts";

/* The built process on the loopback platform as an operator starts it: nothing set but the token, and a zone. */

test("what it is connected to stands in the log as it comes; its classes take the zone it is given", async () => {
  const gateway = await createGateway({ waitMs: 60_000 });
  const data = mkdtempSync(join(tmpdir(), "sinkside-operator-"));
  const bot = startProcess(data, {
    DISCORD_TOKEN: gateway.token,
    DISCORD_API_URL: gateway.api,
    SINKSIDE_ZONE: "Europe/Lisbon",
    // As where nothing is set.
    LOG_LEVEL: "info",
  });
  const logged = (message: RegExp): Promise<void> =>
    expect.poll(() => message.test(bot.output()), { message: String(message) }).toBe(true);
  try {
    await gateway.until(() => gateway.commands.has(gateway.guild.id), "commands");
    await logged(
      /"as":"sinkside","servers":1,"invite":"https:\/\/discord\.com\/oauth2[^"]+","msg":"connected to Discord"/,
    );
    await logged(
      new RegExp(`"guild":"${gateway.guild.id}".*"commands":\\d+,"msg":"the commands are in place"`),
    );

    // The room's teacher finds the same address in the door; it is none of a student's.
    const url = await bot.ready;
    const [tess, mina] = [createVisitor(url), createVisitor(url)];
    await tess.joinDemo("Tess", "teacher");
    await mina.joinDemo("Mina");
    const { inviteUrl } = (await (await tess.get("/api/door")).json()) as DoorSheet;
    expect(bot.output()).toContain(`"invite":"${inviteUrl}"`);
    const asked = BigInt(new URL(inviteUrl ?? "").searchParams.get("permissions") ?? 0);
    expect(asked).toBe(BOT_PERMISSIONS);
    expect((await mina.get("/api/door")).status).toBe(403);

    const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
    const iris = gateway.addUser("Iris", { permissions });
    expect((await gateway.slash(iris, "class setup")).text).toContain("- Time zone: Europe/Lisbon");

    gateway.socket.drop();
    await logged(/"msg":"the connection was lost; connecting again"/);
    await logged(/"msg":"the connection goes on where it was"/);
    expect((await gateway.slash(iris, "help")).text).not.toBe("");
    expect(gateway.violations).toEqual([]);
  } finally {
    await bot.kill("SIGTERM");
    await gateway.stop();
  }
});
