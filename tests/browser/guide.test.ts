import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startRoom, type RoomServer } from "../support/room-server.ts";
import { findBarriers } from "./axe.ts";
import { needing } from "../support/needs.ts";
import { buildPage, launch, openPage, settled, shoot } from "./browser.ts";

let browser: Browser;
let room: RoomServer;

describe("the tour", needing("chromium"), () => {
  beforeAll(async () => {
    const [launched, pageDir] = await Promise.all([launch(), buildPage()]);
    browser = launched;
    room = await startRoom({ pageDir });
  });
  afterAll(async () => {
    await browser?.close();
    await room?.stop();
  });

  test("shows a whole run at sixty times the speed and leaves nothing in the class", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    const startedAt = performance.now();
    await page.getByRole("button", { name: "Show me round" }).click();
    await page.getByRole("button", { name: "Ask for the time" }).click();
    await shoot(page, "phone-tour-plan");
    await page.getByRole("button", { name: "Start the run" }).click();
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).click();
    const cue = page.locator("dialog.cue");
    await cue.waitFor();
    await shoot(page, "phone-tour-call");
    expect(await findBarriers(page)).toEqual([]);
    const done = page.getByRole("button", { name: "That was it: to the room" });
    // Whatever wants an answer is answered with its first key.
    while (!(await done.isVisible())) {
      const waits = page.locator(".run.is-waiting .key.main");
      const key = (await cue.isVisible()) ? cue.locator(".key.main") : waits;
      await key
        .first()
        .click({ timeout: 1000 })
        .catch(() => undefined);
    }
    await shoot(page, "phone-tour-end");
    console.info(`the tour took ${Math.round((performance.now() - startedAt) / 1000)} s`);
    await page.waitForTimeout(200);
    await settled(page);
    await done.click();
    await page.getByRole("button", { name: "Join as student" }).waitFor();
    expect(room.stores.runs.open(1)).toEqual([]);
    expect(room.stores.members.list(1)).toEqual([]);
    expect(complaints).toEqual([]);
  });

  test("can be left at any time", async () => {
    const { page } = await openPage(browser, room.url, "desk");
    await page.getByRole("button", { name: "Show me round" }).click();
    await page.getByRole("button", { name: "Ask for the time" }).click();
    await shoot(page, "desk-tour");
    await page.getByRole("button", { name: "Leave the tour" }).click();
    await page.getByRole("button", { name: "Join as student" }).waitFor();
  });
});
