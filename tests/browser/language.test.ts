import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { summaryOf } from "../../commands/forms.ts";
import { commands } from "../../commands/index.ts";
import { speaking } from "../../commands/speech/language.ts";
import type { Language } from "../../store/shapes/language.ts";
import { viewOf } from "../../commands/run/view.ts";
import { createFakeClock } from "../support/clock.ts";
import { englishIn } from "../support/english.ts";
import { type RoomServer, startRoom } from "../support/room-server.ts";
import { findBarriers } from "./axe.ts";
import { needing } from "../support/needs.ts";
import { buildPage, joinDemo, launch, openPage, optionField, shoot, type } from "./browser.ts";

let browser: Browser;
let room: RoomServer;

/** By the names that languages call themselves. */
async function pick(page: Page, language: "Deutsch" | "English"): Promise<void> {
  await page.locator(".top").getByRole("button").last().click();
  await page.getByRole("radio", { name: language }).check();
  await page
    .getByRole("dialog")
    .getByRole("button", { name: /Schließen|Close/ })
    .click();
  await page.getByRole("dialog").waitFor({ state: "detached" });
}

/** The words on keys that are too narrow for them. */
function overfull(page: Page): Promise<string[]> {
  return page
    .locator("button:visible")
    .evaluateAll((keys) =>
      keys
        .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth)
        .map(({ textContent }) => textContent ?? ""),
    );
}

describe("the language of the page", needing("chromium"), () => {
  beforeAll(async () => {
    const clock = createFakeClock();
    const [launched, pageDir] = await Promise.all([launch(), buildPage()]);
    browser = launched;
    const over = {
      pageDir,
      viewOf: (personId: string, classId: number, language?: Language) =>
        speaking(language ?? room.stores.members.languageOf(classId, personId), () =>
          room.stores.runs.open(classId, personId).map((run) => viewOf(run, "")),
        ),
    };
    room = await startRoom(over, undefined, clock);
  });
  afterAll(async () => {
    await browser?.close();
    await room?.stop();
  });

  test("is picked in the menu: forms, panel and answers speak it at once, with no reload", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await page.evaluate("window.isSamePage = true");
    await pick(page, "Deutsch");
    expect(await page.locator("html").getAttribute("lang")).toBe("de");

    const plan = commands.find(({ name }) => name === "plan");
    await page.getByRole("button", { name: "Plan machen" }).click();
    const form = page.getByRole("dialog");
    await form.getByRole("heading", { name: plan ? summaryOf(plan, "de") : "?" }).waitFor();
    await optionField(form, "film").fill("Lantern 400");
    expect(englishIn(...(await form.locator(".field .is-about").allTextContents()))).toEqual([]);
    await optionField(form, "developer").fill("House MQ");
    await form.getByRole("button", { name: /^Mehr/ }).click();
    await optionField(form, "dilution").fill("1+1");
    await optionField(form, "temp").fill("20,5");
    await optionField(form, "tank").fill("1");
    await shoot(page, "phone-german-form");
    expect(await overfull(page)).toEqual([]);
    expect(await findBarriers(page)).toEqual([]);
    await form.getByRole("button", { name: "Senden" }).click();

    const card = page.locator(".run.is-planned");
    await card.waitFor();
    expect(await card.locator(".planned").textContent()).toMatch(/ in House MQ 1\+1 bei 20,5\u00a0°C$/);
    const answer = (await page.locator(".entry.is-reply").last().textContent()) ?? "";
    expect(answer).toContain("Entwickler");
    expect(englishIn(answer)).toEqual([]);
    await card.getByRole("button", { name: "Start", exact: true }).click();
    await page.locator(".run").getByRole("button", { name: "Dose ist voll" }).waitFor();
    await shoot(page, "phone-german-run");
    expect(await overfull(page)).toEqual([]);

    // And back: the film's own panel changes as well.
    await pick(page, "English");
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).waitFor();
    expect(await page.evaluate("window.isSamePage")).toBe(true);
    await page.reload();
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).waitFor();
    expect(complaints).toEqual([]);
  });

  test("that is chosen while the link is down is told when it is back", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Ben");
    await type(page, "/mine language en");
    await page.locator(".entry.is-reply").first().waitFor();
    const languageOfBen = () =>
      room.stores.members.languageOf(1, room.stores.members.findByName(1, "Ben")?.personId ?? "");
    await page.context().setOffline(true);
    await page.locator(".link.is-lost").waitFor();
    await pick(page, "Deutsch");
    expect(languageOfBen()).toBe("en");
    await page.context().setOffline(false);
    await expect.poll(languageOfBen).toBe("de");
  });

  test("follows a line that was typed", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Lena");
    await type(page, "/mine language de");
    await page.getByRole("button", { name: "Plan machen" }).waitFor();
    expect(await page.locator("html").getAttribute("lang")).toBe("de");
  });

  test("is that of the browser at first: door and tour", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone", "de-AT");
    expect(await page.locator(".door-card strong").first().textContent()).toMatch(/^Hafenwerkstatt/);
    await page.getByRole("button", { name: "Zeig mir alles" }).click();
    await page.getByRole("button", { name: "Nach der Zeit fragen" }).click();
    const answer = page.locator(".entry.is-reply").last();
    await answer.waitFor();
    expect(englishIn((await answer.textContent()) ?? "")).toEqual([]);
    await page.getByRole("button", { name: "Den Lauf beginnen" }).click();
    await page.locator(".run").getByRole("button", { name: "Dose ist voll" }).click();
    const cue = page.locator("dialog.cue");
    await cue.waitFor();
    expect(await cue.textContent()).toMatch(/bewegen|kippen/);
    expect(englishIn((await cue.textContent()) ?? "")).toEqual([]);
    await shoot(page, "phone-german-tour");
    expect(complaints).toEqual([]);
  });
});
