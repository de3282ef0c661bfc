import type { Locator } from "playwright-core";
import { describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, optionField, shoot, type } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* For people who type no commands: what forms ask, what becomes of a refused one, and how far it is to the first call. */

describe("forms", { timeout: 60_000, ...needing("chromium") }, () => {
  openRoomForEach();

  test("from the open page to the first call in at most 8 taps", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    let taps = 0;
    const tap = async (what: Locator): Promise<void> => {
      await what.click();
      taps += 1;
    };
    await page.getByLabel("Your name").fill("Lene");
    await tap(page.getByRole("button", { name: "Join as student" }));
    await page.locator(".link.is-open").waitFor();
    await tap(page.getByRole("button", { name: "Make a plan" }).first());
    // The first field has the focus, and offers the class's films.
    await tap(page.getByRole("button", { name: "Lantern 400" }));
    await tap(optionField(page, "temp"));
    await page.keyboard.type("20");
    await shoot(page, "forms-plan");
    await tap(page.getByRole("button", { name: "Send", exact: true }).last());
    await tap(page.getByRole("button", { name: "9:00 · House MQ 1+1" }));
    await tap(page.locator(".entry.is-reply").last().getByRole("button", { name: "Start" }));
    await tap(page.locator(".run").first().getByRole("button", { name: "Tank is full" }));
    await page.locator("dialog.cue").waitFor();
    console.log(`${taps} taps`);
    expect(taps).toBeLessThanOrEqual(8);
    expect(complaints).toEqual([]);
  });

  test("shows what is needed and folds the rest away; a refused one opens again as it was", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Pelle");
    await page.getByRole("button", { name: "Make a plan" }).first().click();
    const form = page.locator(".command-form");
    expect(await form.locator(".field").count()).toBe(4);
    await form.getByRole("button", { name: /^More/ }).click();
    expect(await form.locator(".field").count()).toBeGreaterThan(15);
    await optionField(form, "film").fill("Lantern 400");
    await optionField(form, "temp").fill("warm");
    await form.getByRole("button", { name: "Send" }).click();
    // The room refused it: the same form, what was typed, what is wrong, and the cursor in that field.
    await form.locator(".form-says").waitFor();
    expect(await form.locator(".form-says").textContent()).toContain("warm");
    expect(await optionField(form, "film").inputValue()).toBe("Lantern 400");
    expect(await optionField(form, "temp").inputValue()).toBe("warm");
    expect(await form.locator("input:focus").getAttribute("id")).toBe(
      await optionField(form, "temp").getAttribute("id"),
    );
    await shoot(page, "forms-refused");
    expect(complaints).toEqual([]);
  });

  test("a command within a reply opens its form, filled in", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Sanne");
    await type(page, "/help");
    await page.locator(".in-line", { hasText: "/plan film:" }).first().click();
    const form = page.locator(".command-form");
    expect(await optionField(form, "temp").inputValue()).toBe("20");
    expect(await optionField(form, "film").inputValue()).toBe("");
    expect(complaints).toEqual([]);
  });

  test("a sentence is answered, and what was typed stays as it was said", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Arvid");
    await type(page, "how long for lanten 400 at 20?");
    const reply = page.locator(".entry.is-reply").last();
    await reply.getByRole("button", { name: "9:00 · House MQ 1+1" }).waitFor();
    expect(await page.locator(".entry.is-line .typed").last().textContent()).toBe(
      "how long for lanten 400 at 20?",
    );
    await shoot(page, "forms-sentence");
    await type(page, "fixer in my eye");
    await page.locator(".entry.is-reply", { hasText: "Eye: rinse now" }).waitFor();
    await shoot(page, "forms-eye");
    expect(complaints).toEqual([]);
  });

  test("a form that is opened before the page knows its commands is there once they have come", async () => {
    let release = (): void => {};
    const slow = new Promise<void>((resolve) => (release = resolve));
    const { page, complaints } = await openPage(browser, room.url, "phone", "en-GB", async (fresh) => {
      await fresh.route("**/api/commands*", async (route) => {
        await slow;
        await route.continue();
      });
    });
    await joinDemo(page, "Mina");
    await page.getByRole("button", { name: "Make a plan" }).click();
    const sheet = page.locator("dialog.sheet");
    await sheet.waitFor();
    expect(await sheet.getByRole("button", { name: "Send" }).count()).toBe(0);
    release();
    await sheet.getByRole("button", { name: "Send" }).click();
    await sheet.getByText("Still needed: film").waitFor();
    expect(complaints).toEqual([]);
  });

  test.each([
    ["en-GB", "Forms", "late", "Put right when you poured"],
    [
      "de-DE",
      "Formulare",
      "zu spät",
      "Berichtigen, wann du eingegossen hast, oder eine neue Temperatur angeben",
    ],
  ] as const)(
    "whoever pressed too late finds the form for it by that word: %s",
    async (language, key, typed, found) => {
      const { page, complaints } = await openPage(browser, room.url, "phone", language);
      await joinDemo(page, "Pelle", language);
      await page.getByRole("button", { name: key, exact: true }).click();
      await page.locator("input.search").fill(typed);
      await page.locator(".form-list li:visible", { hasText: found }).waitFor();
      // Not one among many.
      expect(await page.locator(".form-list li:visible").count()).toBeLessThan(8);
      expect(complaints).toEqual([]);
    },
  );
});
