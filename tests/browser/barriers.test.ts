import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { findBarriers } from "./axe.ts";
import { countBright, shareLit } from "./bright.ts";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, pressInCall, shoot, type, type Size } from "./browser.ts";
import { browser, CALM, openRoomForEach, room, startRun } from "./room-behind.ts";

/* Views that only staff or a large screen have, and all of them on the narrowest phone, held against WCAG 2.2 AA. */

type Theme = "daylight" | "safelight";

/** Runs in the browser: keys that stand out of the panel they belong to. */
const CUT_KEYS = `[...document.querySelectorAll(".my-runs .key")].filter((key) =>
  key.getBoundingClientRect().right > key.closest(".my-runs").getBoundingClientRect().right).length`;

/** Runs in the browser. WCAG 1.4.10: at 320 px nothing needs to be scrolled sideways. */
const SIDEWAYS = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

async function look(page: Page, theme: Theme, size: Size, view: string): Promise<void> {
  await page.evaluate(`document.documentElement.dataset.theme = "${theme}"`);
  await shoot(page, `${size}-${theme}-${view}`);
  expect.soft(await findBarriers(page), `${size} ${theme} ${view}`).toEqual([]);
  expect.soft(await page.evaluate(SIDEWAYS), `${size} ${theme} ${view} sideways`).toBeLessThanOrEqual(0);
  expect.soft(await page.evaluate(CUT_KEYS), `${size} ${theme} ${view} cut off`).toBe(0);
  if (theme === "safelight") expect.soft(await countBright(page), `${size} ${theme} ${view} bright`).toBe(0);
}

async function joinTeacher(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Look around as its teacher" }).click();
  await page.locator(".link.is-open").waitFor();
}

describe("no barrier", needing("chromium"), () => {
  openRoomForEach();

  test.each([
    ["desk", "daylight"],
    ["desk", "safelight"],
    ["narrow", "safelight"],
  ] as const)("on what staff see (%s, %s)", async (size, theme) => {
    const student = await openPage(browser, room.url, "phone");
    await joinDemo(student.page, "Mina");
    await startRun(student.page, "Mina", CALM);
    const { page, complaints } = await openPage(browser, room.url, size);
    const at = (view: string): Promise<void> => look(page, theme, size, view);
    await at("door");
    await joinTeacher(page);
    await page.locator(".class-runs").waitFor();
    await at("bench");
    await page.getByRole("button", { name: "Menu" }).click();
    await at("menu");
    await page.getByRole("button", { name: "Door: code and people" }).click();
    await page.locator(".join-code img").waitFor();
    await at("door-sheet");
    await page.getByRole("button", { name: "Close", exact: true }).click();
    await type(page, "/batch mix kind:fixer product:House Fix volume:2 l dilution:1+4");
    await page.locator(".entry.is-reply").last().waitFor();
    await type(page, "/batch status");
    await page.locator(".picture").last().waitFor();
    await at("reply");
    await page.locator(".picture").last().click();
    await page.getByRole("button", { name: "Larger", exact: true }).click();
    await at("picture");
    if (theme === "safelight") expect(await shareLit(page)).toBeLessThan(0.15);
    await page.getByRole("button", { name: "Close", exact: true }).click();
    await page.goto(`${room.url}/board`);
    await page.locator(".wall-tank").waitFor();
    await at("board");
    expect(complaints).toEqual([]);
  });

  test("on what a student sees on the narrowest phone under the safelight", async () => {
    const { page, complaints } = await openPage(browser, room.url, "narrow");
    const at = (view: string): Promise<void> => look(page, "safelight", "narrow", view);
    await joinDemo(page, "Mina");
    await at("empty");
    await type(page, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    await page.locator(".run.is-planned").waitFor();
    await at("plan");
    await startRun(page, "Mina", CALM);
    await at("call");
    await pressInCall(page, "Got it");
    await page.locator("dialog.cue").waitFor({ state: "detached" });
    await at("running");
    await page.getByRole("button", { name: "Forms" }).click();
    await page.locator(".form-pick").first().click();
    await at("form");
    expect(complaints).toEqual([]);
  });

  test("a school's calendar file goes in by the form", async () => {
    const { page } = await openPage(browser, room.url, "desk");
    await joinTeacher(page);
    await page.getByRole("button", { name: "Forms" }).click();
    const sheet = page.locator("dialog.sheet");
    await sheet.getByLabel("Find a form").fill("class periods");
    await sheet.locator(".form-pick").first().click();
    const lines = [
      "BEGIN:VCALENDAR",
      "BEGIN:VEVENT",
      'SUMMARY:The "late" class',
      "DTSTART:20260115T180000",
      "DTEND:20260115T203000",
      "RRULE:FREQ=WEEKLY;BYDAY=MO,TH",
      "END:VEVENT",
      "END:VCALENDAR",
      "",
    ];
    await sheet.locator(".file-input").setInputFiles({
      name: "school.ics",
      mimeType: "text/calendar",
      buffer: Buffer.from(lines.join("\r\n")),
    });
    await sheet.getByRole("button", { name: "Send" }).click();
    await page.getByText("Monday 18:00-20:30").waitFor();
    expect(room.stores.classes.get(1)?.habits.periods.map(({ name }) => name)).toContain('The "late" class');
  });
});
