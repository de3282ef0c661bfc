import { describe, expect, test } from "vitest";
import { findBarriers } from "./axe.ts";
import { countBright } from "./bright.ts";
import { needing } from "../support/needs.ts";
import { joinDemo, openPage, optionField, pressInCall, shoot, type } from "./browser.ts";
import { browser, CALM, openRoomForEach, room, startRun } from "./room-behind.ts";

/** Runs in the browser. */
const WIDTH_OF_LAST = '[...document.querySelectorAll(".picture img")].at(-1).naturalWidth';

describe("the room's page", needing("chromium"), () => {
  openRoomForEach();

  test("a scanned code comes in with the page, and a name is all it takes", async () => {
    const code = room.room.firstSecrets.find(({ classKey }) => classKey === "room:1")?.joinCode ?? "";
    const { page, complaints } = await openPage(browser, `${room.url}/#code=${code}`, "phone");
    expect(await page.getByLabel("Class code").inputValue()).toBe(code);
    await page.getByLabel("Your name").fill("Amina");
    await page.getByRole("button", { name: "Join as student" }).click();
    await page.locator(".link.is-open").waitFor();
    expect(await page.locator("h1").textContent()).toBe("Tuesday class");
    expect(new URL(page.url()).hash).toBe("");
    expect(complaints).toEqual([]);
  });

  test("the first load is under 100 KB as it goes over the wire", async () => {
    const context = await browser.newContext({ locale: "en-GB" });
    const page = await context.newPage();
    const sizes: Promise<number>[] = [];
    page.on("requestfinished", (request) => {
      sizes.push(request.sizes().then(({ responseBodySize }) => responseBodySize));
    });
    await page.goto(room.url);
    await page.getByLabel("Your name").waitFor();
    await page.waitForLoadState("networkidle");
    const bytes = (await Promise.all(sizes)).reduce((sum, each) => sum + each, 0);
    console.info(`first load: ${Math.round(bytes / 1024)} KB`);
    expect(bytes).toBeGreaterThan(20_000);
    expect(bytes).toBeLessThan(100 * 1024);
  });

  test("without a link the page says so at once, counts on, calls by itself and then catches up", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await startRun(page, "Mina");
    const cue = page.locator("dialog.cue");
    await pressInCall(page, "Got it");
    await page.context().setOffline(true);
    await page.locator(".lost").waitFor();
    await cue.getByText("own clock").waitFor();
    expect(await cue.locator(".cue-does").textContent()).toBe("Agitate 2 s.");
    await shoot(page, "phone-no-link");
    // Over after its two seconds, by the phone's clock alone.
    await cue.waitFor({ state: "detached" });
    const before = await page.locator(".countdown .digits").textContent();
    await expect.poll(() => page.locator(".countdown .digits").textContent()).not.toBe(before);

    await page.context().setOffline(false);
    await page.locator(".link.is-open").waitFor();
    // Every call that was said meanwhile is in the log.
    await expect.poll(() => page.locator(".entry.is-cue").count()).toBeGreaterThan(1);
    await expect.poll(() => page.locator(".lost").count()).toBe(0);
  });

  test("a phone that slept over the end of a bath wakes to the one call that matters", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await startRun(page, "Mina");
    await page.context().setOffline(true);
    room.clock.advance(75);
    await room.pass(0);
    await page.context().setOffline(false);
    const cue = page.locator("dialog.cue");
    await cue.getByText("late").waitFor();
    expect(await cue.locator(".cue-does").textContent()).toBe("Now: rinse 1.");
    await shoot(page, "phone-late");
    await pressInCall(page, "Water is in");
    await cue.waitFor({ state: "detached" });
    expect(await page.locator(".run h3").first().textContent()).toContain("Rinse");
  });

  test("what could not be sent while fresh is asked about, not sent late", async () => {
    const { page } = await openPage(browser, room.url, "desk");
    await joinDemo(page, "Mina");
    await page.context().setOffline(true);
    await page.locator(".lost").waitFor();
    await type(page, "/help");
    await new Promise((resolve) => setTimeout(resolve, 5200));
    await page.context().setOffline(false);
    await page.getByRole("button", { name: "Send now" }).click();
    await page.locator(".entry.is-reply").waitFor();
    expect(await page.locator(".stale").count()).toBe(0);
  });

  test("a script in a note stays words", async () => {
    const { page, complaints } = await openPage(browser, room.url, "desk");
    await joinDemo(page, "Mina");
    await type(page, "/roll find <img src=x onerror=\"document.title='owned'\"><script>alert(1)</script>");
    await page.locator(".entry.is-reply").last().waitFor();
    expect(await page.locator(".entry img").count()).toBe(0);
    expect(await page.title()).not.toBe("owned");
    expect(await page.locator(".typed").textContent()).toContain("<script>");
    expect(complaints).toEqual([]);
  });

  test("everything can be done by keys: complete, choose, send, and take back from lately used", async () => {
    const { page } = await openPage(browser, room.url, "desk");
    await joinDemo(page, "Mina");
    const line = page.getByRole("combobox", { name: "Command" });
    await line.focus();
    await page.keyboard.type("/hel");
    await page.getByRole("option", { name: "/help" }).waitFor();
    await page.keyboard.press("Tab");
    expect(await line.inputValue()).toBe("/help ");
    await page.keyboard.press("Enter");
    await page.locator(".entry.is-reply").waitFor();
    await page.keyboard.type("/plan film:Lan");
    await page.getByRole("option", { name: "Lantern 400" }).waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    expect(await line.inputValue()).toBe("/plan film:Lantern 400 ");
    await page.keyboard.type("temp:20 rolls:0 ");
    await page.getByText("rolls: is at least 1").waitFor();
    await line.fill("");
    await page.keyboard.press("ArrowUp");
    expect(await line.inputValue()).toBe("/help");
  });

  test("a form types the line that a practised hand would have typed", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await page.getByRole("button", { name: "Make a plan" }).click();
    const sheet = page.locator("dialog.sheet");
    await sheet.getByRole("button", { name: "Send" }).click();
    await sheet.getByText("Still needed: film").waitFor();
    await optionField(sheet, "film").focus();
    await sheet.getByRole("button", { name: "Lantern 400" }).click();
    await optionField(sheet, "temp").fill("20");
    await optionField(sheet, "developer").focus();
    await sheet.getByRole("button", { name: "House MQ" }).click();
    await sheet.getByRole("button", { name: /^More/ }).click();
    await optionField(sheet, "dilution").fill("1+1");
    await shoot(page, "phone-form");
    await sheet.getByRole("button", { name: "Send" }).click();
    const typed = page.locator(".typed");
    await typed.waitFor();
    expect(await typed.textContent()).toBe("/plan film:Lantern 400 temp:20 developer:House MQ dilution:1+1");
  });

  test("the teacher shows the code, sees every tank, and signs somebody out", async () => {
    const student = await openPage(browser, room.url, "phone");
    await joinDemo(student.page, "Mina");
    await startRun(student.page, "Mina");
    const { page, complaints } = await openPage(browser, room.url, "desk");
    await page.getByRole("button", { name: "Look around as its teacher" }).click();
    await page.locator(".link.is-open").waitFor();
    await page.locator(".class-runs .run").waitFor();
    await page.getByRole("button", { name: "Menu" }).click();
    await page.getByRole("button", { name: "Door: code and people" }).click();
    await page.locator(".join-code img").waitFor();
    expect(await page.locator(".join-code .code").textContent()).toMatch(/^[A-Z0-9]{3}-[A-Z0-9]{3}$/);
    await shoot(page, "desk-door-sheet");
    await page.getByRole("button", { name: "Sign out everywhere" }).click();
    await student.page.getByRole("button", { name: "Join as student" }).waitFor();
    await page.goto(`${room.url}/board`);
    await page.locator(".wall-tank").waitFor();
    expect(await page.locator(".wall-tank h2").textContent()).toBe("2 Mina");
    await shoot(page, "desk-board");
    expect(complaints).toEqual([]);
  });

  test("a bottle the teacher mixes is said to the class, and its picture opens", async () => {
    const student = await openPage(browser, room.url, "phone");
    await joinDemo(student.page, "Mina");
    const { page, complaints } = await openPage(browser, room.url, "desk");
    await page.getByRole("button", { name: "Look around as its teacher" }).click();
    await page.locator(".link.is-open").waitFor();
    await type(page, "/batch mix kind:fixer product:House Fix volume:2 l dilution:1+4");
    const said = student.page.locator(".entry.is-reply").last();
    await said.waitFor();
    expect(await said.locator(".entry-tags").textContent()).toBe("to the class · asked by Demo teacher");
    expect(await said.textContent()).toContain("2 l");
    await type(student.page, "/batch status");
    const picture = student.page.locator(".picture").last();
    await picture.locator("img").waitFor();
    // Loaded and drawn: an image that failed has no width.
    await expect.poll(() => student.page.evaluate(WIDTH_OF_LAST)).toBeGreaterThan(0);
    await picture.click();
    await student.page.getByRole("button", { name: "Larger", exact: true }).click();
    await shoot(student.page, "phone-gauge");
    await student.page.getByRole("button", { name: "Close", exact: true }).click();
    expect([...complaints, ...student.complaints]).toEqual([]);
  });

  test("what was used lately is one tap away", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    await type(page, "/help");
    await page.locator(".entry.is-reply").waitFor();
    expect(await page.getByRole("listbox").count()).toBe(0);
    await page.getByRole("combobox", { name: "Command" }).click();
    await page.getByRole("option", { name: "/help" }).click();
    expect(await page.getByRole("combobox", { name: "Command" }).inputValue()).toBe("/help");
  });

  test("the invented class becomes one's own, and nothing of it comes along", async () => {
    const { page } = await openPage(browser, room.url, "desk");
    await page.getByRole("button", { name: "Look around as its teacher" }).click();
    await page.locator(".link.is-open").waitFor();
    await page.getByRole("button", { name: "Menu" }).click();
    await page.getByRole("button", { name: "Make this my class" }).click();
    await page.getByLabel("Name of the class").fill("Thursday class");
    await page.getByLabel("Your name").fill("Ms Teal");
    await page.getByRole("button", { name: "Make the class" }).click();
    await page.locator(".secrets").waitFor();
    await page.getByRole("button", { name: "Go in" }).click();
    await page.getByRole("heading", { name: "Thursday class" }).waitFor();
    const made = room.stores.classes.list().find(({ name }) => name === "Thursday class");
    expect(made?.demo).toBe(false);
    expect(room.stores.members.list(made?.id ?? 0).map(({ name, role }) => [name, role])).toEqual([
      ["Ms Teal", "teacher"],
    ]);
  });

  test("the page speaks German to who reads German", async () => {
    const { page } = await openPage(browser, room.url, "phone", "de-DE");
    await page.getByRole("button", { name: "Als Schüler:in beitreten" }).waitFor();
    expect(await page.locator("html").getAttribute("lang")).toBe("de");
  });

  test.each(["daylight", "safelight"] as const)("nothing on any view is a barrier (%s)", async (theme) => {
    const { page } = await openPage(browser, room.url, "phone");
    const look = async (view: string): Promise<void> => {
      await page.evaluate(`document.documentElement.dataset.theme = "${theme}"`);
      await shoot(page, `${theme}-${view}`);
      expect(await findBarriers(page), view).toEqual([]);
      if (theme === "safelight") expect(await countBright(page), view).toBe(0);
    };
    await look("door");
    await joinDemo(page, "Mina");
    await look("empty");
    await page.getByRole("combobox", { name: "Command" }).fill("/");
    await page.getByRole("listbox").waitFor();
    await look("choices");
    await page.getByRole("combobox", { name: "Command" }).fill("");
    await startRun(page, "Mina", CALM);
    await look("call");
    await pressInCall(page, "Got it");
    await page.locator("dialog.cue").waitFor({ state: "detached" });
    await look("running");
    await page.getByRole("button", { name: "Menu" }).click();
    await look("menu");
    await page.getByRole("button", { name: "Close", exact: true }).click();
    await page.getByRole("button", { name: "Forms" }).click();
    await look("forms");
    await page.locator(".form-pick").first().click();
    await look("form");
  });
});
