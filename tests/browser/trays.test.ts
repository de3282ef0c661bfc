import { describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { aLine, aTrayPlan } from "../support/trays.ts";
import { countBright } from "./bright.ts";
import { joinDemo, openPage, shoot } from "./browser.ts";
import { browser, openRoomForEach, planFor, room } from "./room-behind.ts";

/* Prints on a phone in the darkroom: the dim red light, both languages, no line cut off. */

const SIDEWAYS = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

describe.each([
  ["en-GB", "Print is under", "I see it", "Keep rocking the tray."],
  ["de-DE", "Abzug ist untergetaucht", "Ich sehe es", "Schale ständig schaukeln."],
] as const)("prints in %s", needing("chromium"), (language, under, iSeeIt, rocking) => {
  openRoomForEach();

  test("the plan, the tray that runs and the call that ends it fit a phone, in red alone", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone", language);
    const german = language === "de-DE";
    await joinDemo(page, "Mina", language);
    await page.evaluate('document.documentElement.dataset.theme = "safelight"');
    const say = async (line: string): Promise<void> => {
      const input = page.getByRole("combobox").first();
      await input.fill(line);
      await input.press("Escape");
      await input.press("Enter");
    };
    await say("/tray plan paper:fibre temp:20C factor:10");
    await page
      .getByText(german ? "Barytpapier" : "fibre paper")
      .first()
      .waitFor();
    await shoot(page, `trays-${language}-plan`);
    planFor("Mina", aTrayPlan({ line: aLine({ factor: 10 }) }));
    await say("/run start");
    await page.locator(".run").getByRole("button", { name: under }).click();
    await page.locator(".run").getByText(rocking).waitFor();
    await page.locator(".run").getByRole("button", { name: iSeeIt }).waitFor();
    await shoot(page, `trays-${language}-run`);
    expect(await countBright(page)).toBe(0);
    expect(await page.evaluate(SIDEWAYS)).toBeLessThanOrEqual(0);
    // Lifting out begins 10 s before the minute is over.
    room.clock.advance(51);
    await page.locator("dialog.cue").waitFor();
    await shoot(page, `trays-${language}-call`);
    expect(await page.evaluate(SIDEWAYS)).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });
});
