import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import type { Plan } from "../../store/shapes/plan.ts";
import { aPlan, aStep } from "../support/make.ts";
import { openPage, type Opened, shoot } from "./browser.ts";
import { listen, wordsSince } from "./heard.ts";
import { browser, openRoomForEach, planFor, QUICK, room } from "./room-behind.ts";

/* A tablet at the sink, opened by a teacher, for students without a phone. */

const SOON = { timeout: 60_000 };
const TABLET = { width: 1024, height: 768 };

/** The demo's teacher makes this device one of the sink. */
async function openSink(language = "en-GB"): Promise<Opened> {
  const opened = await openPage(browser, room.url, "desk", language);
  const { page } = opened;
  await page.setViewportSize(TABLET);
  const isGerman = language.startsWith("de");
  await page
    .getByRole("button", { name: isGerman ? "Als Lehrkraft umsehen" : "Look around as its teacher" })
    .click();
  await page.locator(".link.is-open").waitFor();
  await page.getByRole("button", { name: isGerman ? /^Menü$/ : /^Menu$/ }).click();
  await page.getByRole("button", { name: isGerman ? /^Tür/ : /^Door/ }).click();
  await page
    .getByRole("button", { name: isGerman ? "Dieses Gerät dazu machen" : "Make this device one" })
    .click();
  await page.locator(".sink").waitFor();
  return opened;
}

const EIGHT = ["Ada", "Bo", "Cem", "Dora", "Emil", "Femke", "Gül", "Henrike"] as const;

/** All of them are agitated at once, for long; then all pour out at once, as long, which is the longest sentence. */
const TOGETHER = aPlan({
  steps: [
    aStep({
      kind: "develop",
      seconds: 240,
      pourOutSeconds: 60,
      agitation: { initialSeconds: 120, cycleSeconds: 60, burstSeconds: 10, manner: "inversion", taps: 2 },
    }),
    aStep({ kind: "rinse", ordinal: 1 }),
    aStep({ kind: "cut", seconds: null, ml: null }),
  ],
});

/** Somebody new at the sink, with a plan of that tank. */
async function comes(page: Page, name: string, tank: number, plan: Plan = QUICK): Promise<void> {
  await page.locator(".sink-top .key.main").click();
  await page.locator(".sink-desk input").fill(name);
  await page.locator(".sink-desk .command-form .key").click();
  await page.locator(".sink-desk h2", { hasText: name }).waitFor();
  await page.locator(".sink-desk > .key").first().click();
  planFor(name, { ...plan, tank });
  room.room.refresh("room:demo");
}

const tileOf = (page: Page, name: string) => page.locator(".tile", { hasText: name });

async function starts(page: Page, name: string): Promise<void> {
  await tileOf(page, name).getByRole("button", { name: "Start" }).click();
}

describe("a tablet at the sink", () => {
  openRoomForEach();

  test("two persons, two tanks: both are called, each answers with their own key, and a reload loses nothing", async () => {
    const { page, complaints } = await openSink();
    for (const [name, tank] of [
      ["Ada", 2],
      ["Bo", 5],
    ] as const) {
      await comes(page, name, tank);
      await page.reload();
      await starts(page, name);
    }
    for (const name of ["Ada", "Bo"])
      await tileOf(page, name).getByRole("button", { name: "Tank is full" }).click();
    await tileOf(page, "Ada").and(page.locator(".is-called")).waitFor();
    await tileOf(page, "Bo").and(page.locator(".is-called")).waitFor();
    expect(await page.locator(".tile.is-called").count()).toBe(2);
    // One's key is not the other's.
    await tileOf(page, "Ada").getByRole("button", { name: "Got it" }).click();
    await tileOf(page, "Bo").and(page.locator(".is-called")).waitFor();
    await page.reload();
    await page.locator(".tile").nth(1).waitFor();
    await tileOf(page, "Ada").filter({ hasText: "Tank 2" }).waitFor();
    await tileOf(page, "Bo").filter({ hasText: "Tank 5" }).waitFor();
    await tileOf(page, "Bo").and(page.locator(".is-called")).waitFor();
    await tileOf(page, "Bo").getByRole("button", { name: "Got it" }).click();
    const pressed = room.stores.db
      .prepare<[], { line: string; name: string; device: string }>(
        "select line, name, device from sink_presses join members using (class_id, person_id) order by sink_presses.id",
      )
      .all();
    expect(pressed.map(({ name, line }) => `${name} ${line}`)).toEqual([
      "Ada run start plan:1",
      "Bo run start plan:2",
      "Ada run next run:1 step:0",
      "Bo run next run:2 step:0",
    ]);
    expect(new Set(pressed.map(({ device }) => device)).size).toBe(1);
    expect(complaints).toEqual([]);
  });

  test("a word to all is over the tanks with a sound, until each has pressed their own key", async () => {
    const { page, complaints } = await openSink();
    await listen(page);
    for (const name of ["Ada", "Bo"]) await comes(page, name, name === "Ada" ? 2 : 5);
    await page.reload();
    await tileOf(page, "Bo").waitFor();
    await page.locator("h1").click();
    await expect.poll(() => page.locator(".sink-sound").count(), SOON).toBe(0);
    const teacher = room.visitor();
    await teacher.joinDemo("Iris", "teacher");
    const iris = await teacher.open();
    const before = await page.evaluate<number>("Date.now()");
    await iris.says("class say text:Fixer B4 is spent, use B5");
    const word = page.locator(".sink-word", { hasText: "Fixer B4 is spent" });
    await word.waitFor();
    // 988 and 659 Hz: a word's, and no call's.
    await expect.poll(() => wordsSince(page, before), SOON).toBe(1);
    await shoot(page, "sink-word");
    await word.getByRole("button", { name: "Ada: got it" }).click();
    await expect.poll(() => word.getByRole("button").allTextContents(), SOON).toEqual(["Bo: got it"]);
    await expect
      .poll(async () => {
        await iris.says("class said");
        return iris.feed().at(-1);
      }, SOON)
      .toMatch(/Ada: has it since/);
    await word.getByRole("button", { name: "Bo: got it" }).click();
    await word.waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
  });

  test.each([["en-GB"], ["de-DE"]])(
    "eight tanks fit 1024 by 768 without scrolling, keys of 64 px: %s",
    async (language) => {
      const { page, complaints } = await openSink(language);
      for (const [at, name] of EIGHT.entries()) await comes(page, name, at + 1);
      await page.reload();
      await page.locator(".tile").nth(7).waitFor();
      for (const name of ["Ada", "Bo", "Cem", "Dora", "Emil", "Femke", "Gül"]) await starts(page, name);
      for (const name of ["Ada", "Bo", "Cem", "Dora"])
        await tileOf(page, name)
          .getByRole("button", { name: language === "en-GB" ? "Tank is full" : "Dose ist voll" })
          .click();
      await page.locator(".tile.is-called").nth(3).waitFor();
      await shoot(page, `sink-eight-${language}`);
      const scrolls = await page.evaluate<number[]>(
        `[document.documentElement, document.querySelector(".sink-tiles")].map((each) => each.scrollHeight - each.clientHeight)`,
      );
      const keys = await Promise.all(
        (await page.locator(".sink button").all()).map((key) => key.boundingBox()),
      );
      expect(scrolls).toEqual([0, 0]);
      expect(keys.length).toBeGreaterThan(16);
      for (const key of keys) {
        expect(Math.min(key?.width ?? 0, key?.height ?? 0)).toBeGreaterThanOrEqual(64);
        expect((key?.y ?? 0) + (key?.height ?? 0)).toBeLessThanOrEqual(TABLET.height);
      }
      await page.locator(".sink-top .key.main").click();
      await shoot(page, `sink-choose-${language}`);
      await page.locator(".sink-desk > .key").first().click();
      await tileOf(page, "Henrike").getByRole("button").last().click();
      await shoot(page, `sink-desk-${language}`);
      expect(complaints).toEqual([]);
    },
  );

  /** What of the calls can't be read whole or answered, by the tile's words. */
  const hidden = (page: Page): Promise<string[]> =>
    page.evaluate<string[]>(
      `[...document.querySelectorAll(".tile.is-called")].filter((tile) => {
        const words = tile.querySelector(".tile-call");
        const key = tile.querySelector(".tile-keys .main").getBoundingClientRect();
        const box = words.getBoundingClientRect();
        return words.scrollHeight > words.clientHeight + 1 || words.scrollWidth > words.clientWidth + 1 ||
          box.bottom > key.top + 1 || key.bottom > innerHeight;
      }).map((tile) => tile.textContent)`,
    );

  test.each([["en-GB"], ["de-DE"]])(
    "beside somebody's plan, seven calls at once are read whole and can be answered: %s",
    async (language) => {
      const { page, complaints } = await openSink(language);
      const tanks = EIGHT.slice(0, 7);
      for (const [at, name] of EIGHT.entries()) await comes(page, name, at + 1, TOGETHER);
      await page.reload();
      await page.locator(".tile").nth(7).waitFor();
      for (const name of tanks) await starts(page, name);
      for (const name of tanks)
        await tileOf(page, name)
          .getByRole("button", { name: language === "en-GB" ? "Tank is full" : "Dose ist voll" })
          .click();
      await page.locator(".tile.is-called").nth(6).waitFor();
      await tileOf(page, "Henrike").getByRole("button").last().click();
      await page.locator(".sink-desk").waitFor();
      await shoot(page, `sink-desk-agitate-${language}`);
      expect(await hidden(page)).toEqual([]);
      room.clock.advance(182);
      const pouring = language === "en-GB" ? "Pour out now" : "Jetzt ausgießen";
      await expect.poll(() => page.locator(".tile-call", { hasText: pouring }).count(), SOON).toBe(7);
      await shoot(page, `sink-desk-pour-out-${language}`);
      expect(await hidden(page)).toEqual([]);
      expect(complaints).toEqual([]);
    },
  );
});
