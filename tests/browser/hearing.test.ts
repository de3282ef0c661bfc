import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { joinDemo, launch, openPage, pressInCall, shoot, type } from "./browser.ts";
import { listen, notesSince, soundsSince, trackNow, wordsSince } from "./heard.ts";
import { CALM, openRoomForEach, planFor, QUICK, room, startRun } from "./room-behind.ts";

/* Calls are heard, or the page says that they are not: in a browser that holds sound back until a touch, as phones do. */

const SOON = { timeout: 60_000 };

/** The teacher says something to all: this page shows it and sounds it once. */
async function seeAndHearWord(page: Page): Promise<void> {
  const teacher = room.visitor();
  await teacher.joinDemo("Lena", "teacher");
  const desk = await teacher.open();
  const before = await page.evaluate<number>("Date.now()");
  await desk.says("/class say Lights on in a minute.");
  await page.locator("dialog.cue", { hasText: "Lights on in a minute." }).waitFor();
  await expect.poll(() => wordsSince(page, before), SOON).toBe(1);
  desk.socket.close();
}

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
    // Seen by the page itself: a client that looks at it is a touch to Chromium, and it may sound then.
    await page.addInitScript(`new MutationObserver(() => {
      if (document.querySelector(".sound-bar")) console.log("asked for a touch");
    }).observe(document, { childList: true, subtree: true });`);
    const isAsked = page.waitForEvent("console", (message) => message.text() === "asked for a touch");
    await page.reload();
    await isAsked;
    const bar = page.getByText("Tap once for sound").last();
    await bar.waitFor();
    await shoot(page, "phone-tap-for-sound");
    await bar.click();
    await expect.poll(() => page.getByText("Tap once for sound").count()).toBe(0);
    await expect.poll(async () => (await trackNow(page))?.isPaused).toBe(false);
    await page.context().close();
  });

  test("a word to all is heard beside the track, which knows nothing of it", async () => {
    const { page } = await openPage(strict, room.url, "phone", "en-GB", listen);
    await joinDemo(page, "Mina");
    await startRun(page, "Mina", CALM);
    await pressInCall(page, "Got it");
    await expect.poll(async () => (await trackNow(page))?.positionMs).toBeGreaterThan(500);
    await seeAndHearWord(page);
    await page.context().close();
  });

  test("the first call is heard, though the touch that lets the page sound is the one that starts the film", async () => {
    const { page } = await openPage(strict, room.url, "phone", "en-GB", listen);
    await joinDemo(page, "Mina");
    planFor("Mina", CALM);
    await type(page, "/run start");
    await page.locator(".run.is-waiting").waitFor();
    await page.reload();
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).click();
    // An agitation of tank 2, five half tones up: twice the same.
    const agitation = async (): Promise<number[]> =>
      (await soundsSince(page, 0)).map(({ hertz }) => hertz).filter((hertz) => Math.abs(hertz - 988) < 25);
    await expect.poll(agitation, SOON).toHaveLength(2);
    await page.context().close();
  });

  test("a word is seen and heard on a phone that had answered later ones in another class", async () => {
    const { page } = await openPage(strict, room.url, "phone", "en-GB", async (fresh) => {
      await listen(fresh);
      await fresh.addInitScript(
        `localStorage.getItem("sinkside.name") ?? localStorage.setItem("sinkside.answered since", '{"words":5000}')`,
      );
    });
    await joinDemo(page, "Mina");
    await seeAndHearWord(page);
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

  /** In place of the machine's voice: what it is given to say. */
  const VOICE = `
    window.said = [];
    speechSynthesis.cancel = () => undefined;
    speechSynthesis.speak = ({ text, lang }) => said.push({ text, lang });
  `;

  test.each([
    ["en-GB", "Say calls aloud", { text: "Agitate, 5 seconds. Tank 2.", lang: "en-GB" }],
    ["de-DE", "Signale vorlesen", { text: "Bewegen, 5 Sekunden. Dose 2.", lang: "de-DE" }],
  ] as const)(
    "a call is said aloud where somebody wants it, in their language: %s",
    async (language, label, first) => {
      const { page } = await openPage(strict, room.url, "phone", language, (fresh) =>
        fresh.addInitScript(VOICE).then(() => undefined),
      );
      const isGerman = language === "de-DE";
      await joinDemo(page, "Mina", language);
      planFor("Mina", QUICK);
      await type(page, "/run start", isGerman ? "Befehl" : "Command");
      await page
        .locator(".run")
        .getByRole("button", { name: isGerman ? "Dose ist voll" : "Tank is full" })
        .waitFor();
      await page.getByRole("button", { name: isGerman ? "Menü" : "Menu", exact: true }).click();
      await page.getByLabel(label).check();
      await page.getByRole("button", { name: isGerman ? "Schließen" : "Close", exact: true }).click();
      await page
        .locator(".run")
        .getByRole("button", { name: isGerman ? "Dose ist voll" : "Tank is full" })
        .click();
      await expect.poll(() => page.evaluate("said[0]"), { timeout: 60_000 }).toEqual(first);
      await page.context().close();
    },
  );
});
