import { describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, shoot, type } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* One's own panel, above the log: what is in it before a run, and after one is gone. */

describe("the panel", needing("chromium"), () => {
  openRoomForEach();

  test("a plan that was made stands in the panel with its time and a Start in reach of the thumb", async () => {
    const { page, complaints } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await type(page, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    const card = page.locator(".run.is-planned");
    const start = card.getByRole("button", { name: "Start", exact: true });
    await start.waitFor();
    expect(await card.locator(".planned").textContent()).toBe("P1: 9:00 in House MQ 1+1 at 20\u00a0°C");
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

  test("who erases themselves is put out by itself, and nothing of them is left on any page", async () => {
    const teacher = await openPage(browser, room.url, "desk");
    await teacher.page.getByRole("button", { name: "Look around as its teacher" }).click();
    await teacher.page.locator(".link.is-open").waitFor();
    const { page, complaints } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Quilla");
    const personId = room.stores.members.findByName(1, "Quilla")?.personId ?? "";
    await type(page, "/help");
    await page.locator(".entry.is-reply").waitFor();
    // Something of hers that the whole class sees.
    room.stores.messages.add({
      classId: 1,
      personId: null,
      authorId: personId,
      key: "seen by all",
      at: room.clock.now(),
      body: { kind: "notice", text: "A bottle was mixed.", author: "Quilla" },
    });
    await teacher.page.reload();
    await teacher.page.getByText("A bottle was mixed.").waitFor();
    await type(page, "/mine erase name:Quilla");

    await page.getByRole("button", { name: "Join as student" }).waitFor();
    expect(await page.getByRole("status").textContent()).toContain("I know you no more");
    await shoot(page, "phone-farewell");
    expect(await page.getByLabel("Your name").inputValue()).toBe("");
    expect(await page.evaluate("JSON.stringify(localStorage)")).not.toContain("Quilla");
    await expect.poll(() => teacher.page.getByText("A bottle was mixed.").count()).toBe(0);
    expect(room.stores.messages.newest(1, personId, 100)).toEqual([]);
    expect(everyRow()).not.toContain(personId);
    expect(everyRow()).not.toContain("Quilla");

    // The name is free, and who takes it is somebody else.
    const other = await openPage(browser, room.url, "phone");
    await joinDemo(other.page, "Quilla");
    expect(await other.page.locator(".entry").count()).toBe(0);
    expect(room.stores.members.findByName(1, "Quilla")?.personId).not.toBe(personId);
    expect([...complaints, ...teacher.complaints]).toEqual([]);
  });
});

/** Everything in every table of the store, as text. */
function everyRow(): string {
  const { db } = room.stores;
  const tables = db
    .prepare<[], { name: string }>("select name from sqlite_master where type = 'table'")
    .all()
    .map(({ name }) => name);
  expect(tables).toContain("messages");
  return tables.map((name) => JSON.stringify(db.prepare(`select * from "${name}"`).all())).join("\n");
}
