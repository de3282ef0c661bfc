import { describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { findBarriers } from "./axe.ts";
import { countBright } from "./bright.ts";
import { joinDemo, openPage, shoot, type } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* A strip, its reading and the print made after it, on a phone beside the enlarger: in the red light, with one hand. */

/** Runs in the browser: how far the page can be pushed sideways. */
const SIDEWAYS = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

const SAID = {
  en: {
    bar: "Bar 3",
    read: "(bar 3).",
    log: "Log the print",
    logged: "is in the log",
    again: "Print it again",
    asItWas: "As it was",
  },
  de: {
    bar: "Feld 3",
    read: "(Feld 3).",
    log: "Abzug eintragen",
    logged: "steht im Buch",
    again: "Noch einmal machen",
    asItWas: "Wie er war",
  },
} as const;

describe("a print on the page", needing("chromium"), () => {
  openRoomForEach();

  test.each([
    ["phone", "en"],
    ["narrow", "de"],
  ] as const)("from its strip to its recipe, by presses alone (%s, %s)", async (size, language) => {
    const said = SAID[language];
    const { page, complaints } = await openPage(browser, room.url, size);
    await joinDemo(page, "Mina");
    room.stores.enlargers.save(1, { number: 1, name: "Left", light: "diffuse", lensMm: 50, timerTenths: 1 });
    const personId = room.stores.members.findByName(1, "Mina")?.personId ?? "";
    room.stores.members.chooseLanguage(1, personId, language);
    await page.evaluate('document.documentElement.dataset.theme = "safelight"');
    const look = async (view: string): Promise<void> => {
      await shoot(page, `${size}-${language}-${view}`);
      expect.soft(await findBarriers(page), view).toEqual([]);
      expect.soft(await page.evaluate(SIDEWAYS), `${view} sideways`).toBeLessThanOrEqual(0);
      expect.soft(await countBright(page), `${view} bright`).toBe(0);
    };

    await type(page, "/print strip base:8 step:1/3 bars:7 grade:2");
    const bar = page.getByRole("button", { name: said.bar, exact: true }).last();
    await bar.waitFor();
    await look("strip");
    await bar.click();
    await page.locator(".entry.is-reply", { hasText: said.read }).last().waitFor();
    await look("read");
    await page.getByRole("button", { name: said.log, exact: true }).last().click();
    await page.locator(".entry.is-reply", { hasText: said.logged }).last().waitFor();
    await look("logged");
    await page.getByRole("button", { name: said.again, exact: true }).last().click();
    await page.locator(".entry.is-reply", { hasText: said.asItWas }).last().waitFor();
    await look("again");
    expect(complaints).toEqual([]);
  });
});
