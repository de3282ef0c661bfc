import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { pourIn } from "../support/developing.ts";
import { aPlan } from "../support/make.ts";
import { needing } from "../support/needs.ts";
import { findBarriers } from "./axe.ts";
import { openPage, shoot, SIZES } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* A teacher's page with all the tanks of a class and an evening's log: what is out of sight costs little and is there. */

const TANKS = 30;
const ENTRIES = 120;

/** Each a little further on than the one before it. */
function putToWork(): void {
  for (let tank = 1; tank <= TANKS; tank += 1) {
    const personId = `room:desk${tank}`;
    const now = room.clock.now();
    room.stores.members.see(1, { id: personId, name: `Mina ${tank}` }, "student", now);
    pourIn(room.stores, { personId, plan: aPlan({ tank }) }, now, now - tank * 5000);
  }
}

function fillLog(): void {
  for (let at = 1; at <= ENTRIES; at += 1)
    room.stores.messages.add({
      classId: 1,
      personId: null,
      authorId: null,
      key: null,
      at: room.clock.now(),
      body: {
        kind: "notice",
        text: `${at === 1 ? "before all others" : `invented ${at}`}${"\nand a line more".repeat(at % 4)}`,
      },
    });
}

async function openDesk(language: "en-GB" | "de-DE" = "en-GB"): Promise<Page> {
  const { page } = await openPage(browser, room.url, "desk", language);
  const key = language === "de-DE" ? "Als Lehrkraft umsehen" : "Look around as its teacher";
  await page.getByRole("button", { name: key }).click();
  await page.locator(".link.is-open").waitFor();
  return page;
}

/** Runs in the browser: begins to count how often the first and the last tank that is running are drawn anew. */
const WATCH = `(() => {
  const cards = [...document.querySelectorAll(".class-runs .run.is-running")];
  window.drawn = [0, 0];
  [cards[0], cards.at(-1)].forEach((card, which) => new MutationObserver(() => { window.drawn[which] += 1; })
    .observe(card, { subtree: true, childList: true, characterData: true }));
})()`;
const drawn = (page: Page): Promise<[number, number]> => page.evaluate("window.drawn");

/** Runs in the browser: the entry at the upper edge of the log, and where it is. */
const AT_EDGE = `(() => {
  const log = document.querySelector(".entries").getBoundingClientRect();
  const entry = [...document.querySelectorAll(".entry")].find((each) => each.getBoundingClientRect().bottom > log.top + 1);
  return [entry.textContent, Math.round((entry.getBoundingClientRect().top - log.top) / 4)];
})()`;

describe("a teacher's desk", needing("chromium"), () => {
  openRoomForEach();

  test("counts the tanks in sight each second, and those far down seldom until they are looked at", async () => {
    putToWork();
    const page = await openDesk();
    const cards = page.locator(".class-runs .run.is-running");
    await expect.poll(() => cards.count()).toBe(TANKS);
    await page.evaluate(WATCH);
    await expect.poll(async () => (await drawn(page))[0]).toBeGreaterThanOrEqual(8);
    const [near, far] = await drawn(page);
    expect(far).toBeLessThanOrEqual(near / 2);

    await cards.last().scrollIntoViewIfNeeded();
    await page.evaluate("window.drawn.fill(0)");
    await expect.poll(async () => (await drawn(page))[1]).toBeGreaterThanOrEqual(8);
    const [left, reached] = await drawn(page);
    expect(left).toBeLessThanOrEqual(reached / 2);
  });

  test.each(["en-GB", "de-DE"] as const)(
    "shows its log's end while what was said before comes, and hides nothing of it (%s)",
    async (language) => {
      putToWork();
      fillLog();
      const page = await openDesk(language);
      await expect.poll(() => page.locator(".entry").count()).toBe(ENTRIES);
      const newest = page.locator(".entry").last();
      await expect
        .poll(() => newest.evaluate((entry) => entry.checkVisibility({ contentVisibilityAuto: true })))
        .toBe(true);
      expect(await newest.textContent()).toContain(`invented ${ENTRIES}`);
      // The oldest is many windows further up, and found.
      expect(await page.evaluate(`find("before all others")`)).toBe(true);
      expect(await findBarriers(page)).toEqual([]);
      await shoot(page, `desk-thirty-${language}`);
      await page.setViewportSize(SIZES.narrow);
      await shoot(page, `narrow-thirty-${language}`);
    },
  );

  test("keeps the entry that is read where it is while what was said before it comes", async () => {
    fillLog();
    const page = await openDesk();
    await expect.poll(() => page.locator(".entry").count()).toBeGreaterThan(15);
    await page.waitForTimeout(300);
    await page.locator(".entries").hover();
    await page.mouse.wheel(0, -400);
    await page.waitForTimeout(100);
    const read = await page.evaluate(AT_EDGE);
    await expect.poll(() => page.locator(".entry").count()).toBe(ENTRIES);
    expect(await page.evaluate(AT_EDGE)).toEqual(read);
  });
});
