import { describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { joinDemo, SIZES } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/*
 * WebKit paints words at the places they had in other letters where they were out of sight as theirs came (seen in 5 of 25 loads,
 * and in none of 40 since). That can't be made to happen at will; what it comes of can.
 */

describe("until the page's letters are here", needing("chromium"), () => {
  openRoomForEach();

  test("no entry of the log is left out of the layout; from then on those out of sight are", async () => {
    let letGo: (() => void) | undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const context = await browser.newContext({ viewport: SIZES.phone, locale: "en-GB" });
    const page = await context.newPage();
    await page.route("**/*.woff2", async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(room.url, { waitUntil: "domcontentloaded" });
    await joinDemo(page, "Mina");
    const input = page.getByRole("combobox");
    await input.fill("how much developer");
    await input.press("Escape");
    await input.press("Enter");
    await page.locator(".entry.is-reply").first().waitFor();
    const left = (): Promise<string> =>
      page.evaluate("getComputedStyle(document.querySelector('.entry.is-reply')).contentVisibility");
    expect(await left()).toBe("visible");
    letGo?.();
    await expect.poll(left).toBe("auto");
  });
});
