import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { aPlan } from "../support/make.ts";
import { joinDemo, openPage, settled, shoot, SIZES, type Size } from "./browser.ts";
import { browser, openRoomForEach, planFor, room } from "./room-behind.ts";

/* The smallest phone, in German: no key of a call below the fold, and none over what one reads. */

const SOON = { timeout: 60_000 };

async function send(page: Page, line: string): Promise<void> {
  const input = page.getByRole("combobox");
  await input.fill(line);
  await input.press("Escape");
  await input.press("Enter");
}

/** Keys of the call that is shown and do not lie whole in the window. */
async function keysOutOfView(page: Page, size: Size): Promise<string[]> {
  const out: string[] = [];
  for (const key of await page.locator("dialog.cue .cue-keys button").all()) {
    const box = await key.boundingBox();
    if (!box || box.y < 0 || box.y + box.height > SIZES[size].height)
      out.push((await key.textContent()) ?? "");
  }
  return out;
}

describe("a small phone in German", needing("chromium"), () => {
  openRoomForEach();

  test.each(["narrow", "phone"] as const)(
    "a run that the teacher put right: all that is said, and each key (%s)",
    async (size: Size) => {
      const { page, complaints } = await openPage(browser, room.url, size, "de-DE");
      await joinDemo(page, "Mina", "de-DE");
      planFor("Mina", aPlan({ tank: 2 }));
      await send(page, "/run start");
      await page.locator(".run.is-waiting").waitFor();
      await send(page, "/run next run:R1");
      await page.locator("dialog.cue.is-agitate-first").waitFor();
      room.clock.advance(40);
      const teacher = room.visitor();
      await teacher.joinDemo("Lena", "teacher");
      const elsewhere = await teacher.open();
      await elsewhere.says("/run correct run:R1 ago:0:20");

      const word = page.locator("dialog.cue.is-word");
      await word.waitFor(SOON);
      await settled(page);
      expect(await word.locator("button").allTextContents()).toContain("Verstanden");
      await expect.poll(() => keysOutOfView(page, size)).toEqual([]);
      // Words and keys have a place each, without scrolling.
      expect(await word.evaluate((each) => each.scrollHeight - each.clientHeight)).toBeLessThanOrEqual(0);
      await shoot(page, `${size}-german-corrected`);
      elsewhere.socket.close();
      expect(complaints).toEqual([]);
    },
  );

  test("a form's first two fields stand under its title", async () => {
    const { page, complaints } = await openPage(browser, room.url, "narrow", "de-DE");
    await joinDemo(page, "Mina", "de-DE");
    await page.getByRole("button", { name: "Plan machen" }).first().click();
    const fields = page.locator("dialog.sheet .field input");
    await fields.first().waitFor();
    await page.locator("dialog.sheet .field input:focus").waitFor();
    await shoot(page, "narrow-german-form");
    const second = await fields.nth(1).boundingBox();
    expect((second?.y ?? 9999) + (second?.height ?? 0)).toBeLessThanOrEqual(SIZES.narrow.height);
    expect(complaints).toEqual([]);
  });

  test("no key lies over the newest reply once it has begun; it comes where one reads far above", async () => {
    const { page, complaints } = await openPage(browser, room.url, "narrow", "de-DE");
    await joinDemo(page, "Mina", "de-DE");
    await send(page, "/help");
    await send(page, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    const newest = page.locator(".entry").last();
    await newest.getByRole("button", { name: "Kurve zeigen" }).waitFor();
    const entries = page.locator(".entries");
    const key = page.getByRole("button", { name: "Zum Neuesten" });
    // It is higher than what is left of the window, so its beginning is what one sees.
    expect(await newest.evaluate((each) => each.clientHeight)).toBeGreaterThan(
      await entries.evaluate((each) => each.clientHeight),
    );
    await expect
      .poll(() =>
        newest.evaluate(
          (each) =>
            each.getBoundingClientRect().top -
            (each.closest(".entries")?.getBoundingClientRect().top ?? Number.NaN),
        ),
      )
      .toBeLessThan(2);
    await expect.poll(() => key.count()).toBe(0);
    await entries.evaluate((each) => void (each.scrollTop = 0));
    await key.waitFor();
    await key.click();
    await expect.poll(() => key.count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});
