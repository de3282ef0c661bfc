import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { createGateway } from "../support/gateway/gateway.ts";
import { STUDENT_PERMISSIONS } from "../support/gateway/world.ts";
import { startProcess } from "../support/process.ts";

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
