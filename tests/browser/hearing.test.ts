import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { joinDemo, launch, openPage, shoot } from "./browser.ts";
import { listen, notesSince, trackNow } from "./heard.ts";
import { CALM, openRoomForEach, room, startRun } from "./room-behind.ts";

/* Calls are heard, or the page says that they are not: in a browser that holds sound back until a touch, as phones do. */

describe("sound that is held back", needing("chromium"), () => {
  openRoomForEach();
  let strict: Browser;
  beforeAll(async () => {
    strict = await launch(false);
  });
  afterAll(() => strict?.close());

  test("is asked for after a reload in a run, and comes with one tap", async () => {
    const { page } = await openPage(strict, room.url, "phone", "en-GB", listen);
    await joinDemo(page, "Mina");
    await startRun(page, "Mina", CALM);
    await expect.poll(async () => (await trackNow(page))?.isPaused).toBe(false);
    await page.reload();
    const bar = page.getByText("Tap once for sound").last();
    await bar.waitFor();
    await shoot(page, "phone-tap-for-sound");
    await bar.click();
    await expect.poll(() => page.getByText("Tap once for sound").count()).toBe(0);
    await expect.poll(async () => (await trackNow(page))?.isPaused).toBe(false);
    await page.context().close();
  });

  test("the tour plays a call", async () => {
    const { page } = await openPage(strict, room.url, "phone", "en-GB", listen);
    await page.getByRole("button", { name: "Show me round" }).click();
    await page.getByRole("button", { name: "Ask for the time" }).click();
    await page.getByRole("button", { name: "Start the run" }).click();
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).click();
    await page.locator("dialog.cue").waitFor();
    await expect.poll(() => notesSince(page, 0)).toHaveLength(2);
    await page.context().close();
  });
});
