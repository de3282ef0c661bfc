import { spawn, type ChildProcess } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { findBarriers } from "./axe.ts";
import { launch, openPage, optionField, settled, shoot, SIZES } from "./browser.ts";

/*
 * A teacher's first day, from the address that `npm start` prints to a class that can develop, by what the page offers: with
 * every tap and every letter counted. The film, the bath and the times are invented.
 */

const MAIN = join(import.meta.dirname, "..", "..", "dist", "bot", "main.js");
/** Of somebody who does this for the first time: our own estimate, no source. */
const SECONDS_A_TAP = 4;
const SECONDS_A_LETTER = 0.5;
const MOST_SECONDS = 300;
/** However busy the machine is. */
const PATIENCE = { timeout: 60_000 };

const TABLE = "EI\t18 °C\t20 °C\t24 °C\n50\t11:00\t9:00\t6 1/2\n100\t13\t10.5 min\t-";

const LANGUAGES = {
  en: {
    locale: "en-GB",
    lookAround: "Look around as its teacher",
    menu: "Menu",
    mine: "Make this my class",
    className: "Name of the class",
    yourName: "Your name",
    make: "Make the class",
    goIn: "Go in",
    send: "Send",
    tanks: "Enter the tanks",
    paste: "Paste a table, or a file",
    developer: "Enter a developer",
    fixer: "Enter a fixer",
    showCode: "Show the code and its picture",
    close: "Close",
    later: "Later",
    trial: "Start the trial run",
    mark: "Trial R1",
    over: "Trial R1 is over.",
    title: "Before the first film",
    makePlan: "Make a plan",
  },
  de: {
    locale: "de-DE",
    lookAround: "Als Lehrkraft umsehen",
    menu: "Menü",
    mine: "Meinen Kurs anlegen",
    className: "Name des Kurses",
    yourName: "Dein Name",
    make: "Kurs anlegen",
    goIn: "Hineingehen",
    send: "Senden",
    tanks: "Dosen angeben",
    paste: "Tabelle oder Datei einfügen",
    developer: "Entwickler angeben",
    fixer: "Fixierbad angeben",
    showCode: "Code und Bild zeigen",
    close: "Schließen",
    later: "Später",
    trial: "Probelauf starten",
    mark: "Probelauf R1",
    over: "Probelauf R1 ist vorbei.",
    title: "Vor dem ersten Film",
    makePlan: "Plan machen",
  },
} as const;

let browser: Browser;
let bot: ChildProcess;
let url = "";
const data = mkdtempSync(join(tmpdir(), "sinkside-first-day-"));

describe("a teacher's first day", { timeout: 240_000, ...needing("chromium") }, () => {
  beforeAll(async () => {
    [browser, url] = await Promise.all([launch(), startBot()]);
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    const isGone = bot && new Promise((resolve) => bot.once("exit", resolve));
    bot?.kill("SIGTERM");
    await isGone;
    rmSync(data, { recursive: true, force: true });
  });

  test.each(["en", "de"] as const)(
    "from the open page to a class that can develop (%s)",
    async (language) => {
      const words = LANGUAGES[language];
      const { page, complaints } = await openPage(browser, url, "desk", words.locale);
      let taps = 0;
      let letters = 0;
      const tap = async (what: Locator): Promise<void> => {
        await what.click();
        taps += 1;
      };
      const key = (name: string): Locator => page.getByRole("button", { name, exact: true }).first();
      const fill = async (name: string, text: string, isPasted = false): Promise<void> => {
        await page.getByLabel(name, { exact: true }).or(optionField(page, name)).first().fill(text);
        taps += 1;
        letters += isPasted ? 2 : text.length;
      };
      const send = (): Promise<void> =>
        tap(page.locator(".command-form").getByRole("button", { name: words.send }));
      const panel = page.getByRole("region", { name: words.title });
      const hasDone = (count: number): Promise<void> =>
        panel
          .locator("li.is-done")
          .nth(count - 1)
          .waitFor(PATIENCE);

      await tap(key(words.lookAround));
      await page.locator(".link.is-open").waitFor();
      await tap(key(words.menu));
      await tap(key(words.mine));
      await fill(words.className, language === "en" ? "Tuesday class" : "Dienstagskurs");
      await fill(words.yourName, "Tess");
      await tap(key(words.make));
      await tap(key(words.goIn));
      // Name and zone were just said.
      await hasDone(1);
      await shoot(page, `first-day-${language}-begins`);

      await tap(panel.getByRole("button", { name: words.tanks }));
      await fill("numbers", "1-12");
      await fill("reels", "2");
      await fill("volume", "500 ml");
      await shoot(page, `first-day-${language}-tanks`);
      await send();
      await hasDone(2);
      await shoot(page, `first-day-${language}-times`);
      expect(await findBarriers(page)).toEqual([]);
      // The same in a hand: the step that is next, and its key, without scrolling.
      await page.setViewportSize(SIZES.phone);
      await expect
        .poll(async () => {
          const main = await panel.getByRole("button", { name: words.paste }).boundingBox();
          const list = await page.locator(".my-runs").boundingBox();
          return main !== null && list !== null && main.y + main.height <= list.y + list.height;
        })
        .toBe(true);
      await shoot(page, `first-day-${language}-in-hand`);
      await page.setViewportSize(SIZES.desk);

      await tap(panel.getByRole("button", { name: words.paste }));
      await fill("file", TABLE, true);
      await fill("film", "Kelp 50");
      await fill("developer", "Brine");
      await fill("dilution", "1+9");
      await fill("speed", "50");
      await shoot(page, `first-day-${language}-table`);
      await send();
      await hasDone(3);

      await tap(panel.getByRole("button", { name: words.developer }));
      await fill("product", "Brine");
      await fill("volume", "2 l");
      await fill("dilution", "1+9");
      await shoot(page, `first-day-${language}-bottle`);
      await send();
      await tap(panel.getByRole("button", { name: words.fixer }));
      await fill("product", "Pier Fix");
      await fill("volume", "1 l");
      await fill("dilution", "1+4");
      await send();
      await hasDone(4);
      await shoot(page, `first-day-${language}-code`);

      await tap(panel.getByRole("button", { name: words.showCode }));
      await page.locator(".join-code .code").waitFor();
      const code = (await page.locator(".join-code .code").textContent()) ?? "";
      await shoot(page, `first-day-${language}-door`);
      await tap(key(words.close));
      await comeIn(code, words.locale, language);
      await hasDone(5);

      await shoot(page, `first-day-${language}-trial`);
      await tap(panel.getByRole("button", { name: words.trial }));
      taps += await goThroughTrial(page, words, `first-day-${language}`);
      await page.locator(".entry.is-reply", { hasText: words.over }).waitFor(PATIENCE);
      // All of it is ticked off: the list is gone, and a film can be planned.
      await panel.waitFor({ state: "detached", ...PATIENCE });
      await key(words.makePlan).waitFor(PATIENCE);
      await shoot(page, `first-day-${language}-done`);

      const seconds = Math.round(taps * SECONDS_A_TAP + letters * SECONDS_A_LETTER);
      console.log(
        `${language}: ${taps} taps, ${letters} letters, about ${seconds} s and the trial's own minute`,
      );
      expect(seconds + 75).toBeLessThanOrEqual(MOST_SECONDS);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );
});

/** A student's phone, with the code that the teacher shows. */
async function comeIn(code: string, locale: string, language: "en" | "de"): Promise<void> {
  const { page } = await openPage(browser, `${url}#code=${code}`, "phone", locale);
  await page.getByLabel(language === "en" ? "Your name" : "Dein Name", { exact: true }).fill("Mina");
  await page.locator(".door-card button.main").click();
  await page.locator(".link.is-open").waitFor();
  await shoot(page, `first-day-${language}-student`);
  await page.context().close();
}

/** Presses whatever begins the next bath until the run is over; returns the presses. */
async function goThroughTrial(
  page: Page,
  words: (typeof LANGUAGES)["en" | "de"],
  shot: string,
): Promise<number> {
  let taps = 0;
  const over = page.locator(".entry.is-reply", { hasText: words.over });
  const inCall = page.locator("dialog.cue.tone-change .cue-keys button.main");
  const onCard = page.locator(".run.is-waiting .actions button.main");
  await page.locator(".run .trial-mark").waitFor(PATIENCE);
  for (let guard = 0; guard < 1000 && (await over.count()) === 0; guard += 1) {
    const isCall = (await inCall.count()) > 0;
    const key = isCall ? inCall : (await page.locator("dialog.cue").count()) === 0 ? onCard : null;
    if (key && (await key.count()) > 0) {
      await settled(page);
      // Between look and press a call may have come or gone.
      const isPressed = await key
        .first()
        .click({ timeout: 3000 })
        .then(
          () => true,
          () => false,
        );
      if (isPressed) taps += 1;
      if (isPressed && taps === 1) {
        await page.locator("dialog.cue").first().waitFor(PATIENCE);
        await shoot(page, `${shot}-call`);
      }
    }
    await page.waitForTimeout(250);
  }
  return taps;
}

function startBot(): Promise<string> {
  bot = spawn(process.execPath, [MAIN], {
    env: { ...process.env, SINKSIDE_DATA: data, ROOM_HOST: "127.0.0.1", ROOM_PORT: "0" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  return new Promise((resolve, reject) => {
    let said = "";
    bot.stdout?.on("data", (chunk: Buffer) => {
      said += String(chunk);
      const found = /open (http:\S+)/.exec(said)?.[1];
      if (found) resolve(found);
    });
    bot.once("exit", (code) => reject(new Error(`the process ended with ${code}: ${said}`)));
  });
}
