import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { viewOf } from "../../commands/run/view.ts";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage } from "./browser.ts";
import { listen, soundsSince, trackNow, type Sound } from "./heard.ts";
import { browser, openRoomForEach, planFor, QUICK, room } from "./room-behind.ts";

/* What a phone really sounds, from the page and from its track, while two films run and a class goes on round them. */

const SOON = { timeout: 120_000 };
/** An agitation is two notes of the tank's own pitch: tank 4's is nine half tones over 740 Hz. A word falls. */
const PITCH = 740 * 2 ** (9 / 12);
const WORD = [988, 659] as const;
const isNear = (hertz: number, of: number): boolean => Math.abs(hertz - of) <= 25;

describe("a phone with two tanks", needing("chromium"), () => {
  openRoomForEach();

  test.each([
    ["en-GB", "Command"],
    ["de-DE", "Befehl"],
  ] as const)(
    "sounds each call of both once, and each word, with a correction and a lost link between: %s",
    async (language, label) => {
      const { page, complaints } = await openPage(browser, room.url, "phone", language, listen);
      await joinDemo(page, "Mina", language);
      for (const tank of [1, 4]) planFor("Mina", { ...QUICK, tank });
      const line = page.getByRole("combobox", { name: label });
      for (const text of ["/run start plan:P1", "/run start plan:P2"]) {
        await line.fill(text);
        await line.press("Escape");
        await line.press("Enter");
      }
      await expect.poll(() => page.locator(".run.is-waiting").count()).toBe(2);
      const teacher = room.visitor();
      await teacher.joinDemo("Lena", "teacher");
      const desk = await teacher.open();
      await desk.says("/run next run:R1");
      await page.waitForTimeout(1300);
      await desk.says("/run next run:R2");
      await expect.poll(async () => (await trackNow(page))?.positionMs, SOON).toBeGreaterThan(6000);

      const quiet = await page.evaluate<number>("Date.now()");
      await desk.says("/class say Lights on in a minute.");
      const words = async (): Promise<number[]> =>
        (await soundsSince(page, quiet)).map(({ hertz }) => hertz).filter((hertz) => isNear(hertz, WORD[1]));
      await expect.poll(words, SOON).toHaveLength(1);
      await page.context().setOffline(true);
      await page.locator(".link.is-lost").waitFor();
      await desk.says("/class say The fixer is in tray 4.");
      await page.waitForTimeout(6000);
      await page.context().setOffline(false);
      await expect.poll(words, SOON).toHaveLength(2);
      const files = (): Promise<number> => page.evaluate("heard.files.length");
      const before = await files();
      await desk.says("/run correct run:R1 ago:40");
      await expect.poll(files, SOON).toBeGreaterThan(before);
      await page.waitForTimeout(12_000);

      const sounds = await soundsSince(page, quiet);
      expect(new Set(sounds.map(({ from }) => from))).toEqual(new Set(["page", "track"]));
      const faults = await faultsOf(page, sounds, quiet);
      expect(faults, JSON.stringify(sounds)).toEqual([]);
      // The teacher's two, and that she moved the calls of a tank.
      expect(await words()).toHaveLength(3);
      desk.socket.close();
      expect(complaints).toEqual([]);
    },
  );
});

/** Of the tank whose clock nobody touched: each call since then that had its two notes not once. */
async function faultsOf(page: Page, sounds: readonly Sound[], since: number): Promise<string[]> {
  const run = room.stores.runs.open(1).find(({ plan }) => "tank" in plan && plan.tank === 4);
  if (!run) throw new Error("no run in tank 4");
  const ahead = room.clock.now() - (await page.evaluate<number>("Date.now()"));
  const calls = viewOf(run, "").calls.filter(
    ({ kind, at }) => kind === "agitate" && at - ahead > since + 500 && at < room.clock.now() - 3000,
  );
  expect(calls.length).toBeGreaterThan(2);
  return calls.flatMap(({ at }) => {
    const notes = sounds.filter(
      (sound) => isNear(sound.hertz, PITCH) && Math.abs(sound.at - (at - ahead) - 1000) < 2000,
    );
    return notes.length === 2 ? [] : [`at ${at - ahead - since} ms: ${notes.length} notes`];
  });
}
