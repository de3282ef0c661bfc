import { describe, expect, test } from "vitest";
import { hasChromium, joinDemo, openPage, shoot, type } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* One's own panel, above the log: what is in it before a run, and after one is gone. */

describe.skipIf(!hasChromium)("the panel", { timeout: 60_000 }, () => {
  openRoomForEach();

  test("a plan that was made stands in the panel with its time and a Start in reach of the thumb", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await type(page, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    const card = page.locator(".run.is-planned");
    const start = card.getByRole("button", { name: "Start", exact: true });
    await start.waitFor();
    expect(await card.locator(".planned").textContent()).toBe("P1: 9:00 in House MQ 1+1 at 20 °C");
    expect(await page.locator(".no-run").count()).toBe(0);
    const box = await start.boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(56);
    expect((box?.y ?? 9999) + (box?.height ?? 0)).toBeLessThan(844 / 2);
    await shoot(page, "phone-panel-plan");
    // It is the store's, not this page's: a reload shows it again.
    await page.reload();
    await start.click();
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).waitFor();
    expect(await card.count()).toBe(0);
    expect(room.stores.runs.open(1).map(({ number }) => number)).toEqual([1]);
    expect(complaints).toEqual([]);
  });

  test("a plan of yesterday is no invitation any more, and nobody sees another's", async () => {
    const mina = await openPage(browser, room.url, "phone");
    await joinDemo(mina.page, "Mina");
    await type(mina.page, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    await mina.page.locator(".run.is-planned").waitFor();
    const tomas = await openPage(browser, room.url, "phone");
    await joinDemo(tomas.page, "Tomas");
    await tomas.page.locator(".no-run").waitFor();
    expect(await tomas.page.locator(".run.is-planned").count()).toBe(0);
    room.clock.advance(13 * 3600);
    await mina.page.reload();
    await mina.page.locator(".no-run").waitFor();
  });
});
