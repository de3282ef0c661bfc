import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PermissionFlagsBits } from "discord-api-types/v10";
import { expect, test } from "vitest";
import { openStores } from "../../store/index.ts";
import type { Fault } from "../support/gateway/faults.ts";
import { createGateway } from "../support/gateway/gateway.ts";
import { STUDENT_PERMISSIONS } from "../support/gateway/world.ts";
import { startProcess, type BotProcess } from "../support/process.ts";
import { SHEET } from "../support/gateway/sheet.ts";

/* The built process, killed while it makes a run's thread: the next one finds what there is, and makes no second. */

test.each([
  ["the request has not arrived", /\/threads$/, "POST", { kind: "hang" }],
  ["it is made and its answer is under way", /\/threads$/, "POST", { kind: "hang", after: true }],
  ["it is known and its person is not in it", /\/thread-members\//, "PUT", { kind: "hang" }],
  ["its person is in it and nothing is noted", /\/messages$/, "POST", { kind: "hang", after: true }],
] as const satisfies readonly (readonly [string, RegExp, string, Fault])[])(
  "killed while %s",
  { timeout: 180_000 },
  async (_, path, method, fault) => {
    const gateway = await createGateway({ waitMs: 60_000 });
    const data = mkdtempSync(join(tmpdir(), "sinkside-threads-"));
    const env = { DISCORD_TOKEN: gateway.token, DISCORD_API_URL: gateway.api };
    let bot: BotProcess = startProcess(data, env);
    try {
      const permissions = STUDENT_PERMISSIONS | PermissionFlagsBits.ManageGuild;
      const teacher = gateway.addUser("Iris", { permissions });
      const mina = gateway.addUser("Mina");
      await gateway.until(() => gateway.commands.has(gateway.guild.id), "commands");
      await gateway.slash(teacher, "sheet add", SHEET);
      await gateway.slash(teacher, "class setup", { channel: gateway.channel.id, threads: "yes" });
      await gateway.slash(mina, "plan make", { film: "Lantern 400", temp: "20C" });
      // Until here the bot has said what it says alone: the next message unasked is the thread's first.
      gateway.faults.add(method, path, fault);
      gateway.begin(mina, "run start", {});
      const isHeld = () => gateway.asked(method, path).some(({ status }) => status !== undefined);
      await gateway.until(isHeld, "the request that is held");
      await bot.kill("SIGKILL");
      expect(stateIn(data)).toEqual(["wanted"]);

      bot = startProcess(data, env);
      const opening = () => gateway.threads().flatMap(({ id }) => gateway.messagesIn(id));
      await gateway.until(
        () => opening().length > 0 && stateIn(data).join() === "open",
        "the thread's first word",
      );
      expect(gateway.threads().map(({ name }) => name)).toEqual(["R1 · Lantern 400"]);
      expect([...(gateway.threads()[0]?.thread?.members ?? [])]).toEqual([mina.id]);

      const channel = gateway.threads()[0];
      if (!channel) throw new Error("there is no thread");
      await gateway.slash(mina, "run next", { run: "R1" }, { channel });
      await gateway.slash(mina, "run correct", { run: "R1", ago: "55" }, { channel });
      const calls = () =>
        opening().filter(({ content }) => content.includes("Agitate") && content.includes("<@"));
      await gateway.until(() => calls().length > 0, "the first call");
      expect(gateway.threads()).toHaveLength(1);
      // The first word is said under one key, whichever process says it.
      expect(new Set(opening().flatMap(({ nonce = [] }) => nonce)).size).toBe(
        opening().filter(({ nonce }) => nonce !== undefined).length,
      );
      expect(gateway.violations).toEqual([]);
    } finally {
      await bot.kill("SIGTERM");
      await gateway.stop();
    }
  },
);

/** What is kept of each run's thread. */
function stateIn(data: string): string[] {
  const stores = openStores(join(data, "sinkside.db"));
  const rows = stores.db.prepare<[], { state: string }>("select state from run_threads").all();
  stores.close();
  return rows.map(({ state }) => state);
}
