import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { aPlan, aStep } from "../support/make.ts";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, pressInCall, shoot, type } from "./browser.ts";
import { listen, notesSince, onsetsOfTrack, trackNow, wordsSince } from "./heard.ts";
import { browser, openRoomForEach, planFor, room, startRun } from "./room-behind.ts";

/* A call at the sink: true when it is seen, never answered by accident, heard once. */

/** Called each 2 s, and each call lasts until the next: whenever one looks, one of them holds. */
const UNCEASING = aPlan({
  tank: 3,
  steps: [
    aStep({
      kind: "develop",
      seconds: 90,
      pourOutSeconds: 10,
      agitation: { initialSeconds: 2, cycleSeconds: 2, burstSeconds: 2, manner: "inversion", taps: 0 },
    }),
    aStep({ kind: "rinse", ordinal: 1 }),
    aStep({ kind: "cut", seconds: null, ml: null }),
  ],
});

const cueOf = (page: Page) => page.locator("dialog.cue");
/** Runs in the browser. */
const CARET = "[document.activeElement.selectionStart, document.activeElement.selectionEnd]";

/** The processes that draw pages, by the browser's own account. */
async function drawers(): Promise<number[]> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  await session.detach();
  return processInfo.filter((each) => each.type === "renderer").map(({ id }) => id);
}

/**
 * Lets a page's second last as long as a test needs: in the browser, `stopwatch` stops what the page measures by. `cameHeld`:
 * whether keys were held when a call came into the page, before it was drawn.
 */
async function stopwatch(page: Page): Promise<void> {
  await page.addInitScript(`
    const go = performance.now.bind(performance);
    window.stopwatch = {
      stop: () => { const at = go(); performance.now = () => at; },
      go: () => { performance.now = go; },
    };
    window.cameHeld = [];
    new MutationObserver((changes) => {
      for (const added of changes.flatMap(({ addedNodes }) => [...addedNodes]))
        if (added instanceof Element && (added.matches("dialog.cue") || added.querySelector("dialog.cue")))
          cameHeld.push("held" in document.documentElement.dataset);
    }).observe(document, { childList: true, subtree: true });
  `);
}

const rest = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

describe("a call", needing("chromium"), () => {
  openRoomForEach();

  async function start(page: Page, plan = UNCEASING): Promise<void> {
    await joinDemo(page, "Mina");
    planFor("Mina", plan);
    await type(page, "/run start");
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).click();
    await cueOf(page).waitFor();
  }

  test("a page held still over one, five and ten calls wakes to one call, on time, and sounds it once", async () => {
    const { page } = await openPage(browser, room.url, "phone", "en-GB", listen);
    await start(page);
    const phase = room.stores.runs.open(1)[0]?.phase;
    const startedAt = phase?.kind === "running" ? phase.startedAtMs : 0;
    const intoCall = (): number => (room.clock.now() - startedAt) % 2000;
    for (const calls of [1, 5, 10]) {
      const stopped = await drawers();
      for (const pid of stopped) process.kill(pid, "SIGSTOP");
      await rest(calls * 2000);
      // Woken just after a call, so that the next one is not due while this is looked at.
      while (intoCall() < 100 || intoCall() > 400) await rest(20);
      const woken = Date.now();
      for (const pid of stopped) process.kill(pid, "SIGCONT");
      // The next call may have come by the time that this has looked: its tone is not counted.
      const looked = woken + 1300;
      await expect.poll(() => page.evaluate("Date.now()")).toBeGreaterThan(looked);
      expect(await cueOf(page).count()).toBe(1);
      expect(await cueOf(page).locator(".cue-does").textContent()).toBe("Agitate 2 s.");
      expect(
        await notesSince(page, woken - 50, looked),
        `after ${calls} calls: one tone of two notes`,
      ).toHaveLength(2);
    }
    await shoot(page, "phone-woken");
  });

  test("counts its burst down and goes when it is over; then the card says to let it stand", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await startRun(page, "Mina");
    const burst = cueOf(page).locator(".cue-burst");
    const first = Number(await burst.textContent());
    expect(first).toBeLessThanOrEqual(5);
    await expect.poll(async () => Number(await burst.textContent())).toBeLessThan(first);
    expect(await page.locator(".run-now").textContent()).toBe("Agitate 5 s.");
    await expect.poll(() => page.locator(".run-now").textContent(), { interval: 50 }).toBe("Let it stand.");
    expect(await cueOf(page).count()).toBe(0);
  });

  test("200 characters typed while three calls come: no step moves, no character is lost", async () => {
    const { page } = await openPage(browser, room.url, "desk");
    await start(page);
    await page.keyboard.press("Escape");
    const line = page.getByRole("combobox", { name: "Command" });
    await line.focus();
    const text = Array.from({ length: 200 }, (_, at) => (at % 7 === 6 ? " " : "abcdefg".charAt(at % 7))).join(
      "",
    );
    const before = await page.locator(".entry.is-cue").count();
    for (const letter of text) {
      await page.keyboard.press(letter === " " ? "Space" : letter);
      await rest(32);
    }
    await expect.poll(() => page.locator(".entry.is-cue").count()).toBeGreaterThanOrEqual(before + 3);
    expect(await line.inputValue()).toBe(text);
    expect(await page.evaluate(CARET)).toEqual([200, 200]);
    expect(await cueOf(page).locator(".cue-typing").textContent()).toContain("abcdef");
    await shoot(page, "desk-typing-under-a-call");
    // Answered by mouse: what was being typed is where it was, caret and all.
    await page.evaluate("document.activeElement.setSelectionRange(3, 5)");
    await pressInCall(page, "Got it");
    expect(await line.inputValue()).toBe(text);
    expect(await page.evaluate(CARET)).toEqual([3, 5]);
    expect(room.stores.runs.open(1)[0]?.phase).toMatchObject({ kind: "running", step: 0 });
  });

  test("takes no key and no tap in its first second", async () => {
    const { page } = await openPage(browser, room.url, "desk", "en-GB", stopwatch);
    await joinDemo(page, "Mina");
    await startRun(page, "Mina");
    await page.evaluate("stopwatch.stop()");
    room.clock.advance(75);
    await room.pass(0);
    // Seen later, its reminder stands in its place.
    await page.locator("dialog.cue:is(.is-next-bath, .is-nudge)").waitFor();
    const main = cueOf(page).locator(".key.main");
    expect(await main.evaluate((key) => key.matches(":focus"))).toBe(false);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Space");
    await main.click();
    await rest(100);
    expect(room.stores.runs.open(1)[0]?.phase.kind).toBe("waiting");
    await page.evaluate("stopwatch.go()");
    await rest(1100);
    // Its reminder may come only now, and takes no key in its own first second.
    await expect
      .poll(async () => {
        if (await main.isVisible()) await main.press("Enter", { timeout: 1000 }).catch(() => undefined);
        return room.stores.runs.open(1)[0]?.phase;
      })
      .toMatchObject({ kind: "running", step: 1 });
    await cueOf(page).waitFor({ state: "detached" });
    const came = await page.evaluate<boolean[]>("cameHeld");
    expect(came.length).toBeGreaterThan(1);
    expect(came).not.toContain(false);
  });

  test("the keyboard goes back to where it was after the menu, a start and an answer", async () => {
    const { page } = await openPage(browser, room.url, "desk");
    await joinDemo(page, "Mina");
    const focused = (): Promise<string> =>
      page.evaluate("document.activeElement.className || document.activeElement.id");
    await expect.poll(focused).toBe("app");
    const menu = page.getByRole("button", { name: "Menu" });
    await menu.focus();
    await page.keyboard.press("Enter");
    await page.locator("dialog.sheet").waitFor();
    await expect.poll(focused).toBe("sheet");
    await page.keyboard.press("Escape");
    await expect.poll(() => menu.evaluate((key) => key.matches(":focus"))).toBe(true);
    planFor("Mina");
    await type(page, "/help");
    await page.locator(".run.is-planned .key.main").focus();
    await page.keyboard.press("Enter");
    await page.locator(".run.is-waiting").waitFor();
    await expect.poll(focused).toBe("my-runs");
    await page.locator(".run.is-waiting .key.main").focus();
    await page.keyboard.press("Enter");
    await cueOf(page).waitFor();
    await pressInCall(page, "Got it");
    await expect.poll(focused).toMatch(/run is-running|key/);
  });

  test("the track plays the calls ahead, in step, and a correction replaces it at once", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone", "en-GB", listen);
    await joinDemo(page, "Mina");
    await startRun(page, "Mina");
    await expect.poll(async () => (await trackNow(page))?.positionMs ?? 0).toBeGreaterThan(1500);
    const playing = await trackNow(page);
    expect(playing?.isPaused).toBe(false);
    expect(Math.abs((playing?.positionMs ?? 0) - (playing?.sinceMadeMs ?? 0))).toBeLessThan(150);
    const [run] = room.stores.runs.open(1);
    const startedAt = run?.phase.kind === "running" ? run.phase.startedAtMs : 0;
    const onsets = await onsetsOfTrack(page);
    // The first agitation is heard from the page: the track began just after it. The next is 5 s from the start.
    expect(onsets.length).toBeGreaterThan(8);
    expect((onsets[1] ?? 0) - (onsets[0] ?? 0)).toBeCloseTo(5000, -2);
    const files = (): Promise<number> => page.evaluate("heard.files.length");
    const before = await files();
    // While it plays, the page itself is silent.
    const now: number = await page.evaluate("Date.now()");
    await rest(5200);
    expect(await notesSince(page, now)).toEqual([]);
    expect(await files()).toBe(before);
    await type(page, "/run correct ago:30");
    await expect.poll(files).toBe(before + 1);
    const moved = room.stores.runs.open(1)[0]?.phase;
    expect(moved?.kind === "running" ? moved.startedAtMs : 0).toBeLessThan(startedAt);
    await type(page, "/run stop sure:yes");
    await expect.poll(async () => (await trackNow(page))?.isPaused ?? true).toBe(true);
    expect(complaints).toEqual([]);
  });

  test("a pause on the lock screen stops no film, and says so", async () => {
    const { page } = await openPage(browser, room.url, "phone", "en-GB", listen);
    await joinDemo(page, "Mina");
    await startRun(page, "Mina");
    await expect.poll(async () => (await trackNow(page))?.positionMs ?? 0).toBeGreaterThan(500);
    await page.evaluate("heard.elements[0].pause()");
    const bar = page.locator(".sound-bar").first();
    await bar.getByText("the film goes on").or(page.getByText("the film goes on").first()).waitFor();
    expect(room.stores.runs.open(1)[0]?.phase.kind).toBe("running");
    await shoot(page, "phone-sound-paused");
    await page.locator(".sound-bar:visible").last().click();
    await expect.poll(async () => (await trackNow(page))?.isPaused).toBe(false);
    await expect.poll(() => page.locator(".sound-bar").count()).toBe(0);
  });

  test("poured before it was pressed: one tap beside the countdown", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await start(page, aPlan({ tank: 2 }));
    await pressInCall(page, "Got it");
    const startedAt = (): number => {
      const phase = room.stores.runs.open(1)[0]?.phase;
      return phase?.kind === "running" ? phase.startedAtMs : 0;
    };
    const before = startedAt();
    await shoot(page, "phone-poured-earlier");
    await page.getByRole("button", { name: "20 s earlier" }).click();
    // To a second: the key was drawn, and is pressed, by the page's reckoning of the room's clock.
    await expect.poll(() => Math.abs(startedAt() - before + 20_000)).toBeLessThanOrEqual(1500);
    expect(await page.locator(".run .key.main").count()).toBe(0);
    // And a form is found by what people call it.
    await page.getByRole("button", { name: "Forms" }).click();
    await page.getByLabel("Find a form").fill("late");
    expect(await page.locator(".form-pick code").allTextContents()).toContain("/run correct");
  });

  test("a word to everyone is a call, and only whose page showed it counts", async () => {
    const { page } = await openPage(browser, room.url, "phone", "en-GB", listen);
    await joinDemo(page, "Mina");
    const away = room.visitor();
    await away.joinDemo("Ben");
    const teacher = room.visitor();
    await teacher.joinDemo("Lena", "teacher");
    const desk = await teacher.open();
    const from: number = await page.evaluate("Date.now()");
    await desk.says("/class say Fixer B4 is retired. Use B5.");
    await cueOf(page).getByText("Fixer B4 is retired.").waitFor();
    await shoot(page, "phone-word");
    await expect.poll(() => wordsSince(page, from), { timeout: 60_000 }).toBe(1);
    await expect
      .poll(async () => {
        await desk.says("/class said");
        return desk.feed().at(-1) ?? "";
      })
      .toContain("**1 of 2** reached.");
    expect(desk.feed().at(-1)).toContain("Ben: not shown yet");
    await pressInCall(page, "Got it");
    await cueOf(page).waitFor({ state: "detached" });
    desk.socket.close();
  });
});
