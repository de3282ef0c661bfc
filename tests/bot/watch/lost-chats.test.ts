import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { inventDemo } from "../../../bot/demo/demo.ts";
import { openStores } from "../../../store/index.ts";
import { createGateway } from "../../support/gateway/gateway.ts";
import { aQuickPlan, pourIn } from "../../support/developing.ts";
import { startProcess, type BotProcess } from "../../support/process.ts";

/* The built process, one of whose chats can go on no longer. */

let bot: BotProcess | undefined;
afterEach(async () => void (await bot?.kill("SIGKILL")));

test.each(["en", "de"] as const)(
  "a token that is rejected turns its chat off and ends nothing else; the teacher is told (%s)",
  async (language) => {
    const gateway = await createGateway();
    gateway.revoke();
    const data = mkdtempSync(join(tmpdir(), "sinkside-lost-"));
    const path = join(data, "sinkside.db");
    const stores = openStores(path);
    const now = Date.now();
    const demo = inventDemo(stores, "UTC", now);
    if (!demo) throw new Error("no demo class");
    stores.atomically(() => {
      stores.members.see(demo.id, { id: "room:tess", name: "Tess" }, "teacher", now);
      stores.members.chooseLanguage(demo.id, "room:tess", language);
      stores.members.see(demo.id, { id: "room:mina", name: "Mina" }, "student", now);
      pourIn(
        stores,
        { classId: demo.id, personId: "room:mina", plan: aQuickPlan(20, 2), warnSeconds: 0 },
        now + 2000,
      );
    });
    const heard = stores.db.prepare<[string], { text: string }>(
      "select body ->> 'text' as text from messages where person_id = ? order by id",
    );
    bot = startProcess(data, {
      BACKUP_CRON: "off",
      DISCORD_TOKEN: "a-token-that-was-reset",
      DISCORD_API_URL: gateway.api,
      METRICS_PORT: "0",
      LOG_LEVEL: "info",
    });
    await bot.ready;
    const figures = await until(() => /"url":"(http:[^"]+)","msg":"figures/.exec(bot?.output() ?? "")?.[1]);
    const told = await until(() => heard.all("room:tess").find(({ text }) => text.includes("Discord")));
    expect(told.text).toMatch(language === "de" ? /^\*\*Discord ist abgeschaltet/ : /^\*\*Discord is off/);
    // The room's calls come, and go on coming.
    const before = heard.all("room:mina").length;
    await until(() => heard.all("room:mina").length > before + 1 || undefined);
    expect(bot.child.exitCode, bot.output()).toBeNull();
    expect(bot.output()).toMatch(/"chat":"discord".*rejected the bot's token.*others go on/);
    const health = (await (await fetch(`${figures}/health`)).json()) as object;
    expect(health).toMatchObject({
      status: "chat-off",
      chatsOff: { discord: expect.stringContaining("rejected the bot's token") },
    });
    stores.close();
    await gateway.stop();
  },
  60_000,
);

async function until<T>(look: () => T | undefined): Promise<T> {
  for (;;) {
    const found = look();
    if (found !== undefined) return found;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
