import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { advance } from "../../commands/run/machine.ts";
import { aPlan, aRun } from "../support/make.ts";
import { needing } from "../support/needs.ts";
import { findBarriers } from "./axe.ts";
import { openPage, settled, shoot } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* Every size of window: the wall with few tanks and with all, and a phone on its side, narrow, or magnified. */

const NAMES = [
  "Amina",
  "Bjarne",
  "Charlotte",
  "Dmitri",
  "Elif",
  "Friederike",
  "Gustavo",
  "Hanneke",
  "Ines",
  "Jonathan",
];

/** A class at work: of each ten one tank is late, one not begun, two end soon. */
function putToWork(tanks: number): void {
  const now = room.clock.now();
  for (let tank = 1; tank <= tanks; tank += 1) {
    const personId = `room:wall${tank}`;
    const name = `${NAMES[tank % NAMES.length]} ${tank}`;
    room.stores.members.see(1, { id: personId, name }, "student", now);
    const fresh = aRun({ personId, plan: aPlan({ tank }), startedAtMs: now - 3600_000 });
    const run = room.stores.runs.add(fresh);
    const ago = [575, 30, 90, 150, 210, 270, 330, 420, 500][tank % 10];
    if (ago === undefined) continue;
    const poured = advance(run, { kind: "next", step: 0, sure: true, atMs: now - ago * 1000 });
    if (!poured.ok) throw new Error(poured.fault.code);
    const ended = ago >= 540 ? advance(poured.value, { kind: "elapsed", atMs: now }) : poured;
    if (ended.ok) room.stores.runs.save(ended.value);
  }
}

const SCREENS = [
  [1280, 720],
  [3840, 2160],
] as const;

/** Runs in the browser: what is not wholly within the window, by its words. */
const CUT_ON_WALL = `[...document.querySelectorAll(".wall-tank, .wall-join img, .wall-join .code, .wall-digits, .wall-tank h2 strong")]
  .filter((part) => {
    const { left, top, right, bottom } = part.getBoundingClientRect();
    const box = part.closest(".wall-tank")?.getBoundingClientRect();
    if (box && (top < box.top - 1 || bottom > box.bottom + 1 || left < box.left - 1)) return true;
    return left < -1 || top < -1 || right > innerWidth + 1 || bottom > innerHeight + 1;
  }).map((part) => part.className + " " + part.textContent)`;
/** Of the window's height: how high the digits of each tank are drawn. */
const DIGITS = `[...document.querySelectorAll(".wall-digits > span:first-child")]
  .map((part) => parseFloat(getComputedStyle(part).fontSize) * 0.67 / innerHeight)`;
const OVERFULL = `[...document.querySelectorAll(".wall-digits")].filter((part) => part.scrollWidth > part.clientWidth + 1)
  .map((part) => part.textContent)`;

describe("the board", needing("chromium"), () => {
  openRoomForEach();

  test.each([1, 8, 24, 30])("with %d tanks is one screen, with the way in, at every size", async (tanks) => {
    putToWork(tanks);
    const { page, complaints } = await openPage(browser, room.url, "desk");
    await page.getByRole("button", { name: "Look around as its teacher" }).click();
    await page.locator(".link.is-open").waitFor();
    await page.goto(`${room.url}/board`);
    await page.locator(".wall-join img").waitFor();
    await expect.poll(() => page.locator(".wall-tank").count()).toBe(tanks);
    for (const [width, height] of SCREENS) {
      await page.setViewportSize({ width, height });
      await expect.poll(() => page.evaluate(CUT_ON_WALL)).toEqual([]);
      await expect.poll(() => page.evaluate(OVERFULL)).toEqual([]);
      await expect.poll(() => page.evaluate<number>(`Math.min(...${DIGITS})`)).toBeGreaterThan(0.037);
      // Nobody can press there but the way back and what keeps the screen on.
      expect(await page.locator(".wall button").count()).toBe(0);
      expect(await page.locator(".wall").textContent()).not.toMatch(/[Pp]ress|[Tt]ap/);
      await shoot(page, `board-${tanks}-${width}`);
    }
    expect(await findBarriers(page)).toEqual([]);
    expect(complaints).toEqual([]);
  });

  test("speaks German with thirty tanks, and red in a dark room", async () => {
    room.stores.classes.setHabits(1, { ...room.stores.classes.get(1)!.habits, language: "de" });
    putToWork(30);
    const { page } = await openPage(browser, room.url, "desk", "de-DE");
    await page.getByRole("button", { name: "Als Lehrkraft umsehen" }).click();
    await page.locator(".link.is-open").waitFor();
    await page.goto(`${room.url}/board`);
    await page.locator(".wall-join img").waitFor();
    await expect.poll(() => page.locator(".wall-tank").count()).toBe(30);
    await page.setViewportSize({ width: 1280, height: 720 });
    await expect.poll(() => page.evaluate(CUT_ON_WALL)).toEqual([]);
    expect(await page.locator(".wall").textContent()).not.toMatch(/[Dd]rück|[Tt]ippe/);
    await shoot(page, "board-30-german");
    await page.evaluate(`document.documentElement.dataset.theme = "safelight"`);
    await shoot(page, "board-30-red");
  });
});

/** A phone on its side; the narrowest; 1280 x 800 magnified twice and four times. */
const WINDOWS = [
  [844, 390],
  [320, 568],
  [640, 400],
  [320, 200],
] as const;

/** Runs in the browser, on an element: whether all of it can be seen. */
const IS_WHOLE = `(part) => {
  part.scrollIntoView({ block: "nearest" });
  const { left, top, right, bottom } = part.getBoundingClientRect();
  const at = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
  return left >= -1 && top >= -1 && right <= innerWidth + 1 && bottom <= innerHeight + 1 && (at === part || part.contains(at));
}`;
/** Runs in the browser: how many pixels of what the empty command line says are cut off. */
const CUT_PLACEHOLDER = `(() => {
  const line = document.querySelector(".composer-line");
  const { paddingLeft, paddingRight } = getComputedStyle(line);
  const words = document.createElement("span");
  words.style.cssText = "position:absolute;white-space:pre;font-family:" + getComputedStyle(line, "::placeholder").fontFamily;
  words.style.fontSize = getComputedStyle(line).fontSize;
  words.textContent = line.placeholder;
  document.body.append(words);
  const { width } = words.getBoundingClientRect();
  words.remove();
  return Math.max(0, Math.ceil(width - (line.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight))));
})()`;
const whole = (page: Page, part: string): Promise<boolean> =>
  page.evaluate(`(${IS_WHOLE})(document.querySelector(${JSON.stringify(part)}))`);

describe("a small window", needing("chromium"), () => {
  openRoomForEach();

  test.each(["en-GB", "de-DE"])(
    "shows the countdown whole, and the step's key can be reached (%s)",
    async (language) => {
      const { page, complaints } = await openPage(browser, room.url, "phone", language);
      await page.locator(".field input").first().fill("Mina");
      await page.locator("form .key.main").click();
      await page.locator(".link.is-open").waitFor();
      const mina = room.stores.members.findByName(1, "Mina")?.personId ?? "";
      room.stores.plans.add(1, mina, aPlan({ tank: 2 }), room.clock.now());
      const desk = room.visitor();
      await desk.joinDemo("Lena", "teacher");
      const elsewhere = await desk.open();
      await page.reload();
      await page.locator(".run.is-planned").waitFor();
      const each = async (view: string, look: () => Promise<void>): Promise<void> => {
        for (const [width, height] of WINDOWS) {
          await page.setViewportSize({ width, height });
          await page.waitForTimeout(150);
          await look();
          await shoot(page, `window-${width}x${height}-${language.slice(0, 2)}-${view}`);
          expect.soft(await findBarriers(page), `${view} ${width}`).toEqual([]);
        }
      };
      const soft = async (part: string, what: string): Promise<void> =>
        expect.soft(await whole(page, part), `${what} at ${JSON.stringify(page.viewportSize())}`).toBe(true);
      await each("planned", async () => {
        await soft(".run.is-planned .key.main", "Start");
        expect.soft(await page.evaluate(CUT_PLACEHOLDER), "cut off the command line's own words").toBe(0);
      });
      await page.setViewportSize({ width: 390, height: 844 });
      await page.locator(".run.is-planned .key.main").click();
      await page.locator(".run.is-waiting").waitFor();
      await each("waiting", () => soft(".run.is-waiting .key.main", "the step's key"));
      await elsewhere.says("/run next run:R1");
      await page.locator("dialog.cue").waitFor();
      await each("agitate", async () => {
        await soft(".cue-burst", "the burst");
        await soft(".cue-keys .key", "the call's key");
      });
      await settled(page);
      await page.locator("dialog.cue .key").click();
      await page.locator("dialog.cue").waitFor({ state: "detached" });
      await settled(page);
      await each("running", async () => {
        await soft(".run .countdown .digits", "the countdown");
        await soft(".run .actions .key", "the next bath's key");
      });
      room.clock.advance(560);
      await room.pass(0);
      await page.locator("dialog.cue .key.main").waitFor();
      await each("change", () => soft(".cue-keys .key.main", "the call's key"));
      elsewhere.socket.close();
      expect(complaints).toEqual([]);
    },
  );
});
