import { expect, test, describe } from "vitest";
import { needing } from "../support/needs.ts";
import { findBarriers } from "./axe.ts";
import { countBright } from "./bright.ts";
import { joinDemo, openPage, pressInCall, shoot, type } from "./browser.ts";
import { listen, wordsSince } from "./heard.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* A test strip that is called, and the call to whoever waits for the trays: on a phone, in the red light. */

/** Runs in the browser: how far the page can be pushed sideways. */
const SIDEWAYS = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

const SAID = {
  en: {
    callIt: "Call it",
    start: "Start",
    on: "Lamp is on",
    off: "Lamp off now.",
    under: "Print is under",
    stop: "In the stop bath",
    wait: "Wait: I call you when it is your turn.",
    turn: "Your turn: put it in now.",
  },
  de: {
    callIt: "Mit Signalen",
    start: "Start",
    on: "Licht ist an",
    off: "Licht aus.",
    under: "Abzug ist untergetaucht",
    stop: "Im Stoppbad",
    wait: "Warte: Du bekommst ein Signal, wenn du dran bist.",
    turn: "Du bist dran: Leg ihn jetzt ein.",
  },
} as const;

describe("beside the enlarger", needing("chromium"), () => {
  openRoomForEach();

  test.each([
    ["phone", "en"],
    ["narrow", "de"],
  ] as const)("a strip's bars are called, and a turn at the trays (%s, %s)", async (size, language) => {
    const said = SAID[language];
    const open = async (name: string) => {
      const opened = await openPage(browser, room.url, size);
      await joinDemo(opened.page, name);
      const personId = room.stores.members.findByName(1, name)?.personId ?? "";
      room.stores.members.chooseLanguage(1, personId, language);
      await opened.page.evaluate('document.documentElement.dataset.theme = "safelight"');
      return opened;
    };
    const { page, complaints } = await open("Mina");
    const look = async (view: string): Promise<void> => {
      await shoot(page, `${size}-${language}-${view}`);
      expect.soft(await findBarriers(page), view).toEqual([]);
      expect.soft(await page.evaluate(SIDEWAYS), `${view} sideways`).toBeLessThanOrEqual(0);
      expect.soft(await countBright(page), `${view} bright`).toBe(0);
    };

    await type(page, "/print strip base:20 seconds:10 bars:3");
    await page.getByRole("button", { name: said.callIt, exact: true }).last().click();
    await page.locator(".entry").getByRole("button", { name: said.start, exact: true }).last().click();
    await page.locator(".run").getByRole("button", { name: said.on }).click();
    await page.locator(".run", { hasText: /(Exposure|Belichtung) 1/ }).waitFor();
    await look("strip-run");
    room.clock.advance(20);
    await page.locator("dialog.cue", { hasText: said.off }).waitFor();
    await look("strip-call");
    await pressInCall(page, said.on);
    await type(page, "/run stop sure:yes");

    // Ola's two prints fill the first tray.
    const ola = await open("Ola");
    await type(ola.page, "/tray plan paper:resin-coated temp:20C prints:2");
    await type(ola.page, "/run start");
    await ola.page.locator(".run").getByRole("button", { name: said.under }).click();
    await type(page, "/tray plan paper:resin-coated temp:20C prints:2");
    await type(page, "/run start");
    await page.locator(".run", { hasText: said.wait }).waitFor();
    await look("turn-wait");
    room.clock.advance(60);
    await pressInCall(ola.page, said.stop);
    await page.locator("dialog.cue", { hasText: said.turn }).waitFor();
    await look("turn-call");
    await pressInCall(page, said.under);
    await page.locator("dialog.cue").waitFor({ state: "hidden" });
    expect(complaints).toEqual([]);
    await ola.page.close();
  });
});

/** However busy the machine is. */
const PATIENCE = { timeout: 60_000 };

const TANK = {
  en: {
    start: "Start",
    locale: "en-GB",
    label: "Command",
    take: "Take tank 1",
    insist: "Wait for tank 2",
    wait: "Wait: I call you when it is your turn.",
    turn: "Your turn: tank 2 is free.",
    anew: "A wet print came into the wash",
    gotIt: "Got it",
  },
  de: {
    start: "Start",
    locale: "de-DE",
    label: "Befehl",
    take: "Dose 1 nehmen",
    insist: "Auf Dose 2 warten",
    wait: "Warte: Du bekommst ein Signal, wenn du dran bist.",
    turn: "Du bist dran: Dose 2 ist frei.",
    anew: "Ein nasser Abzug kam in die Wässerung",
    gotIt: "Verstanden",
  },
} as const;

describe("what somebody else does", needing("chromium"), () => {
  openRoomForEach();

  test.each([
    ["phone", "de"],
    ["narrow", "en"],
  ] as const)(
    "a tank that is given back, and a wash begun again, are called (%s, %s)",
    async (size, language) => {
      const said = TANK[language];
      const { page, complaints } = await openPage(browser, room.url, size, said.locale, listen);
      await joinDemo(page, "Mina", said.locale);
      room.stores.members.chooseLanguage(
        1,
        room.stores.members.findByName(1, "Mina")?.personId ?? "",
        language,
      );
      const say = (line: string): Promise<void> => type(page, line, said.label);
      const look = async (view: string): Promise<void> => {
        await shoot(page, `${size}-${language}-${view}`);
        expect.soft(await findBarriers(page), view).toEqual([]);
        expect.soft(await page.evaluate(SIDEWAYS), `${view} sideways`).toBeLessThanOrEqual(0);
      };
      const ola = await openPage(browser, room.url, size);
      await joinDemo(ola.page, "Ola");
      const film = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:2";
      await type(ola.page, film);
      await type(ola.page, "/run start");
      await ola.page.locator(".run").waitFor();
      await say(film);
      await page.locator(".entry").getByRole("button", { name: said.start, exact: true }).last().click();
      await page.getByRole("button", { name: said.take }).waitFor();
      await look("tank-taken");
      await page.getByRole("button", { name: said.insist }).click();
      await page.locator(".run", { hasText: said.wait }).waitFor();
      await look("tank-wait");
      await type(ola.page, "/run stop sure:yes");
      await page.locator("dialog.cue", { hasText: said.turn }).waitFor();
      await look("tank-call");
      await type(ola.page, "/tray plan paper:resin-coated temp:20C");
      await say("/run stop sure:yes");
      await page.locator("dialog.cue").waitFor({ state: "hidden" });

      await say("/tray plan paper:resin-coated temp:20C");
      await say("/run start");
      for (const step of [0, 1, 2, 3]) await say(`/run next step:${step} sure:yes`);
      await page.locator(".run", { hasText: /(Wash|Wässerung)/ }).waitFor();
      const before = await page.evaluate<number>("Date.now()");
      await type(ola.page, "/run start");
      for (const step of [0, 1, 2, 3]) await type(ola.page, `/run next step:${step} sure:yes`);
      await page.locator("dialog.cue", { hasText: said.anew }).waitFor();
      await look("wash-anew");
      // What the room's words sound like.
      await expect.poll(() => wordsSince(page, before), PATIENCE).toBe(1);
      await pressInCall(page, said.gotIt);
      await page.locator("dialog.cue").waitFor({ state: "hidden" });
      expect(complaints).toEqual([]);
    },
  );
});
