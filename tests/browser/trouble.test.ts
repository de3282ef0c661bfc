import { describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, pressInCall, shoot } from "./browser.ts";
import { browser, fallSilent, openRoomForEach, room, startRun } from "./room-behind.ts";

describe("pages of a room that can write nothing", needing("chromium"), () => {
  openRoomForEach();

  test("say so, and why, and call by themselves until it can again", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await startRun(page, "Mina");
    const cue = page.locator("dialog.cue");
    await pressInCall(page, "Got it");
    // The link is there, and still nobody calls.
    fallSilent();
    room.room.tellTrouble(room.clock.now());
    await page.getByText("its disk is full or failing").waitFor();
    await cue.getByText("can't write and calls nobody").waitFor();
    expect(await cue.locator(".cue-does").textContent()).toBe("Agitate 2 s.");
    await shoot(page, "phone-trouble");
    room.room.tellTrouble(null);
    await expect.poll(() => page.locator(".lost").count()).toBe(0);
  });

  test("tell the teacher what to do, also who comes only then, and in German", async () => {
    room.room.tellTrouble(room.clock.now());
    const { page } = await openPage(browser, room.url, "phone", "de");
    await page.getByLabel("Dein Name").fill("Frau Muster");
    await page.getByRole("button", { name: "Als Lehrkraft umsehen" }).click();
    await page.getByText("Schaff jetzt Platz darauf.").waitFor();
    await shoot(page, "phone-trouble-teacher-de");
  });
});
