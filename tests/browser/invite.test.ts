import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { de } from "../../bot/chat/room-page/words.de.ts";
import { en } from "../../bot/chat/room-page/words.en.ts";
import { createGateway, type Gateway } from "../support/gateway/gateway.ts";
import { needing } from "../support/needs.ts";
import { startProcess, type BotProcess } from "../support/process.ts";
import { findBarriers } from "./axe.ts";
import { joinDemo, launch, openPage, shoot } from "./browser.ts";

/* The built process with a room and a bot on the loopback platform: the address to add it by is in the room's door, for its teacher. */

const LANGUAGES = [
  ["en", "en-GB", en],
  ["de", "de-DE", de],
] as const;

async function openDoor(page: Page, words: typeof en): Promise<void> {
  await page.locator(".top").getByRole("button").last().click();
  await page.getByRole("dialog").getByRole("button", { name: words.menu.door }).click();
  await page.locator(".keys .join-code").waitFor();
}

describe("the address that adds the bot to a server", needing("chromium"), () => {
  let browser: Browser;
  let gateway: Gateway;
  let bot: BotProcess;
  let url: string;

  beforeAll(async () => {
    browser = await launch();
    gateway = await createGateway({ waitMs: 60_000 });
    const data = mkdtempSync(join(tmpdir(), "sinkside-invite-"));
    bot = startProcess(data, { DISCORD_TOKEN: gateway.token, DISCORD_API_URL: gateway.api });
    url = await bot.ready;
    await gateway.until(() => gateway.commands.has(gateway.guild.id), "commands");
  });
  afterAll(async () => {
    await browser?.close();
    await bot?.kill("SIGTERM");
    await gateway?.stop();
  });

  test.each(LANGUAGES)(
    "stands in the teacher's door (%s), with all the bot needs there",
    async (name, locale, words) => {
      const { page, complaints } = await openPage(browser, url, "phone", locale);
      await page.getByRole("button", { name: words.door.demoTeacher }).click();
      await page.locator(".link.is-open").waitFor();
      await openDoor(page, words);
      const link = page.getByRole("link", { name: words.invite.add });
      await link.scrollIntoViewIfNeeded();
      const address = new URL((await link.getAttribute("href")) ?? "");
      expect(address.origin + address.pathname).toBe("https://discord.com/oauth2/authorize");
      expect(Object.fromEntries(address.searchParams)).toMatchObject({
        client_id: gateway.world.applicationId,
        scope: "bot applications.commands",
      });
      await page.getByText(words.invite.hint).waitFor();
      await shoot(page, `phone-invite-${name}`);
      expect(await findBarriers(page)).toEqual([]);
      expect(complaints).toEqual([]);
    },
  );

  test("is none of a student's", async () => {
    const { page } = await openPage(browser, url, "phone");
    await joinDemo(page, "Mina");
    await page.locator(".top").getByRole("button").last().click();
    await page.getByRole("dialog").waitFor();
    expect(await page.getByRole("dialog").getByRole("button", { name: en.menu.door }).count()).toBe(0);
    expect(await page.getByRole("link", { name: en.invite.add }).count()).toBe(0);
  });
});
