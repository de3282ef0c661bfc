import { describe, expect, test } from "vitest";
import { renderPicture } from "../../bot/chat/picture.ts";
import { aNewRoll } from "../support/rolls.ts";
import { findBarriers } from "./axe.ts";
import { countBright } from "./bright.ts";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, shoot, type } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/** An invented contact sheet: white paper, dark frames. */
const SHEET = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40"><rect width="60" height="40" fill="#fff"/>${Array.from(
  { length: 12 },
  (_, at) =>
    `<rect x="${2 + (at % 4) * 14.5}" y="${2 + Math.floor(at / 4) * 12.5}" width="12.5" height="10" fill="#333"/>`,
).join("")}</svg>`;

/** Runs in the browser. */
const WIDTH = '[...document.querySelectorAll(".photo img")].at(-1)?.naturalWidth ?? 0';

describe("a roll's photo on the page", needing("chromium"), () => {
  openRoomForEach();

  test.each(["phone", "desk"] as const)(
    "is added with a press, seen, and opened larger (%s)",
    async (size) => {
      const { page, complaints } = await openPage(browser, room.url, size);
      await joinDemo(page, "Mina");
      const personId = room.stores.members.findByName(1, "Mina")?.personId ?? "";
      room.stores.rolls.add(aNewRoll({ classId: 1, personId, runId: null as never }));
      await type(page, "/roll show L1");
      const shown = page.locator(".entry.is-reply").last();
      await shown.getByText("Add a photo").waitFor();
      expect(await shown.getByText("Take one now").isVisible()).toBe(size === "phone");
      expect(await findBarriers(page)).toEqual([]);
      const file = {
        name: "<img src=x>.png",
        mimeType: "image/png",
        buffer: await renderPicture(SHEET, 600),
      };
      await page.getByLabel("Add a photo").last().setInputFiles(file);

      const entry = page.locator(".entry.is-reply", { hasText: "The photo is with L1." });
      await entry.locator(".photo img").waitFor();
      await expect.poll(() => page.evaluate(WIDTH)).toBe(600);
      await shoot(page, `${size}-photo`);
      await page.evaluate('document.documentElement.dataset.theme = "safelight"');
      expect(await countBright(page)).toBe(0);
      await shoot(page, `${size}-photo-safelight`);
      await entry.getByRole("button", { name: "Show larger: Contact sheet of L1" }).click();
      await page.getByRole("button", { name: "Larger", exact: true }).click();
      expect(await countBright(page)).toBe(0);
      const saved = page.waitForEvent("download");
      await page.getByText("Save as picture").click();
      expect((await saved).suggestedFilename()).toBe("L1.png");
      await page.getByRole("button", { name: "Close", exact: true }).click();
      expect(complaints).toEqual([]);
    },
  );

  test("that is none is refused in words beside its key", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    const personId = room.stores.members.findByName(1, "Mina")?.personId ?? "";
    room.stores.rolls.add(aNewRoll({ classId: 1, personId, runId: null as never }));
    await type(page, "/roll photo L1");
    const file = { name: "page.png", mimeType: "image/png", buffer: Buffer.from("<html>") };
    await page.getByLabel("Add a photo").last().setInputFiles(file);
    await page.getByRole("alert").getByText("That is no JPEG and no PNG.").waitFor();
    expect(await page.locator(".photo img").count()).toBe(0);
  });

  test("that is very large is made smaller on the phone before it is sent", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    const personId = room.stores.members.findByName(1, "Mina")?.personId ?? "";
    room.stores.rolls.add(aNewRoll({ classId: 1, personId, runId: null as never }));
    await type(page, "/roll photo L1");
    const small = await renderPicture(SHEET, 5000);
    // What hangs behind the end makes it more than the room would take.
    const buffer = Buffer.concat([small, Buffer.alloc(9 * 1024 * 1024)]);
    await page
      .getByLabel("Add a photo")
      .last()
      .setInputFiles({ name: "a.png", mimeType: "image/png", buffer });
    await page.locator(".photo img").waitFor();
    await expect.poll(() => page.evaluate(WIDTH)).toBe(4000);
    expect(room.stores.photos.find(1)?.mediaType).toBe("image/jpeg");
  });
});
