import { describe, expect, test } from "vitest";
import { englishIn } from "../support/english.ts";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, pressInCall, shoot } from "./browser.ts";
import { browser, openRoomForEach, planFor, QUICK, room } from "./room-behind.ts";

/* One person, two tanks, in German: no call hides the other's, and a stopped run's call is gone. */

describe("two tanks of one person", needing("chromium"), () => {
  openRoomForEach();

  test("both call with their tank and their countdown; a stopped one is silent at once", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone", "de-DE");
    await joinDemo(page, "Mina", "de-DE");
    const line = page.getByRole("combobox");
    const send = async (text: string): Promise<void> => {
      await line.fill(text);
      await line.press("Escape");
      await line.press("Enter");
    };
    const cue = page.locator("dialog.cue");
    for (const tank of [2, 5]) planFor("Mina", { ...QUICK, tank });
    for (const plan of ["P1", "P2"]) await send(`/run start plan:${plan}`);
    await expect.poll(() => page.locator(".run.is-waiting").count()).toBe(2);
    // The second by a line, since the first one's call covers the page by then.
    await send("/run next run:R1");
    await cue.waitFor();
    const teacher = room.visitor();
    await teacher.joinDemo("Lena", "teacher");
    const elsewhere = await teacher.open();
    await elsewhere.says("/run next run:R2");
    const other = cue.locator(".cue-others li");
    await other.waitFor();
    const head = (await cue.locator(".cue-head").textContent()) ?? "";
    const beside = (await other.textContent()) ?? "";
    expect([head, beside].map((text) => /R\d · Dose \d/.exec(text)?.[0]).sort()).toEqual([
      "R1 · Dose 2",
      "R2 · Dose 5",
    ]);
    expect(beside).toContain("bewegen");
    const counting = await cue.locator(".cue-left .digits").allTextContents();
    expect(counting).toHaveLength(2);
    for (const left of counting) expect(left).toMatch(/^(1:00|0:[0-5]\d)$/);
    expect(englishIn((await cue.textContent()) ?? "")).toEqual([]);
    await shoot(page, "phone-german-two-tanks");

    const box = await other.boundingBox();
    expect((box?.y ?? 9999) + (box?.height ?? 0)).toBeLessThanOrEqual(844);

    await elsewhere.says("/run stop run:R1 sure:yes");
    // Whose run it was is told who stopped it, whenever nothing is to be done within seconds; the other tank goes on calling.
    const word = page.locator("dialog.cue.is-word");
    const SOON = { timeout: 60_000 };
    await expect.poll(() => word.textContent(), SOON).toMatch(/R1 · Dose 2.*Lena hat diesen Lauf gestoppt:/s);
    await page.locator("dialog.cue:not(.is-word) .cue-head", { hasText: "R2 · Dose 5" }).waitFor();
    await elsewhere.says("/run stop run:R2 sure:yes");
    await page.locator("dialog.cue:not(.is-word)").waitFor({ state: "detached" });
    for (const run of ["R1 · Dose 2", "R2 · Dose 5"]) {
      await word.getByText(run).waitFor();
      await pressInCall(page, "Verstanden");
    }
    await cue.waitFor({ state: "detached" });
    elsewhere.socket.close();
    expect(complaints).toEqual([]);
  });
});
