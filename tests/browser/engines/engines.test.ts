import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { englishIn } from "../../support/english.ts";
import { openCertificate } from "../../../bot/chat/room/https.ts";
import { makeCertificate } from "../../support/certificate.ts";
import { createMemoryLog } from "../../support/room.ts";
import { needing } from "../../support/needs.ts";
import { buildPage } from "../browser.ts";
import { openRoomBehind, planFor, QUICK, room } from "../room-behind.ts";
import type { Hand, LaunchedEngine, OpenOptions } from "./hand.ts";
import { CHROMIUM, FIREFOX } from "./playwright.ts";
import {
  answerCall,
  comeToSink,
  count,
  findBarriers,
  gone,
  joinDemo,
  listenToTrack,
  onsetsOfTrack,
  openSink,
  pickGerman,
  pressAt,
  pressAway,
  read,
  say,
  see,
  shoot,
  until,
} from "./steps.ts";
import { BROWSER_ENDED, WEBKIT } from "./webkit.ts";

/* The way through a film, in each engine that students' phones have. */

let pageDir: string;
const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1";
const GONE = { count: 1, condition: BROWSER_ENDED };

describe.each([CHROMIUM, FIREFOX, WEBKIT])("in $name", ({ launch, needs }) => {
  let engine: LaunchedEngine;
  const hands: Hand[] = [];
  async function openPage(options?: OpenOptions): Promise<Hand> {
    const hand = await engine.open(room.url, options);
    hands.push(hand);
    // The document is there before its view is.
    await see(hand, "#app > *");
    return hand;
  }
  const openEngine = (): void => {
    beforeAll(async () => {
      [engine, pageDir] = await Promise.all([launch(), buildPage()]);
    });
    afterAll(() => engine.close());
    afterEach(async () => {
      for (const hand of hands.splice(0)) await hand.close();
    });
  };

  describe("a student", { ...needing(...needs), retry: GONE }, () => {
    openEngine();
    openRoomBehind(() => pageDir);

    test("joins, plans, starts, is called, is called again, and changes the bath", async () => {
      const hand = await openPage();
      await joinDemo(hand, "Mina");
      await say(hand, PLAN);
      await see(hand, ".run.is-planned");
      // The number first: 9:00 at 20 °C is the row of the demo's invented sheet.
      expect(await read(hand, ".entry.is-reply strong")).toContain("9:00");
      await shoot(hand, "plan");
      await pressAt(hand, ".run.is-planned .key.main");
      await pressAt(hand, ".run.is-waiting .key.main");
      await see(hand, "dialog.cue");
      expect(await read(hand, "dialog.cue .cue-words")).toMatch(/agitate/i);
      await shoot(hand, "call");
      await answerCall(hand);
      await until(hand, `/^8:/.test(document.querySelector(".countdown .digits")?.textContent)`);
      expect(await hand.complaints()).toEqual([]);
    });

    test("is called every few seconds, answers, and changes the bath when it is called to", async () => {
      const hand = await openPage();
      await joinDemo(hand, "Mina");
      const [develop, ...others] = QUICK.steps;
      await beginQuick(hand, "Mina", { steps: [{ ...develop!, seconds: 20 }, ...others] });
      const isRinsing = `document.querySelector(".run h3")?.textContent.includes("Rinse")`;
      while (
        !(
          await until<string>(hand, `${isRinsing} ? "rinse" : document.querySelector("dialog.cue") && "call"`)
        ).startsWith("r")
      )
        await answerCall(hand);
      // At the start, after 5 s, and to pour out, 10 s before the end.
      expect(await count(hand, ".entry.is-cue")).toBeGreaterThanOrEqual(3);
      await shoot(hand, "rinse");
      expect(await hand.complaints()).toEqual([]);
    });

    test("loads the page anew in the middle of a run, and goes on where the film is", async () => {
      const hand = await openPage();
      await joinDemo(hand, "Mina");
      await beginQuick(hand, "Mina");
      await see(hand, "dialog.cue");
      await answerCall(hand);
      await hand.reload();
      await see(hand, ".run.is-running .countdown");
      // The next call comes to the page as it is now.
      await see(hand, "dialog.cue");
      await answerCall(hand);
      expect(await hand.complaints()).toEqual([]);
    });

    test("with two tanks reads German, and each tank calls", async () => {
      const hand = await openPage();
      await joinDemo(hand, "Lena");
      await pickGerman(hand);
      for (const tank of [2, 3]) {
        planFor("Lena", { ...QUICK, tank });
        await say(hand, "/run start");
        await until(hand, `document.querySelectorAll(".run.is-waiting").length === ${tank - 1}`);
      }
      await pressAway(hand, ".run.is-waiting .key.main");
      const called = new Set<string>();
      for (let call = 0; call < 8 && called.size < 2; call += 1) {
        const said = await read(hand, "dialog.cue");
        expect(englishIn(said)).toEqual([]);
        for (const tank of said.match(/Dose \d/g) ?? []) called.add(tank);
        if (call === 0) await shoot(hand, "german-call");
        await answerCall(hand);
      }
      expect([...called].sort()).toEqual(["Dose 2", "Dose 3"]);
      expect(await hand.complaints()).toEqual([]);
    });

    test("has the calls ahead as a sound track, in step with them", async () => {
      const hand = await openPage();
      await joinDemo(hand, "Mina");
      await listenToTrack(hand);
      await beginQuick(hand, "Mina");
      await until(hand, "track.files.some((file) => file.size > 100_000)", "a track");
      const onsets = await onsetsOfTrack(hand);
      expect(onsets.length).toBeGreaterThan(8);
      for (let call = 1; call < 8; call += 1)
        expect(Math.abs((onsets[call] ?? 0) - (onsets[0] ?? 0) - call * 5), `call ${call}`).toBeLessThan(
          0.02,
        );
      // Firefox plays nothing where the machine has no device for sound.
      if (hand.engine !== "firefox") await until(hand, "track.element?.currentTime > 1", "the track to play");
      if (hand.engine !== "firefox") await hearsWordOnce(hand);
      expect(await hand.complaints()).toEqual([]);
    });

    test("without a phone takes a place at the sink's tablet, is called there, and reads a word to all", async () => {
      const hand = await openPage({ size: "desk" });
      await openSink(hand);
      await comeToSink(hand, "Ada");
      planFor("Ada", { ...QUICK, tank: 2 });
      await hand.reload();
      await until(hand, `document.querySelector(".tile")?.textContent.includes("House MQ")`, "the plan");
      const key = ".tile .tile-keys .key.main:not(:disabled)";
      await pressAt(hand, key);
      await see(hand, ".tile.is-waiting");
      await pressAt(hand, key);
      await see(hand, ".tile.is-called");
      expect(await read(hand, ".tile-call")).toMatch(/agitate/i);
      await shoot(hand, "sink");
      await pressAt(hand, key);
      const teacher = room.visitor();
      await teacher.joinDemo("Iris", "teacher");
      await (await teacher.open()).says("class say text:Fixer B4 is spent, use B5");
      await see(hand, ".sink-word");
      expect(await read(hand, ".sink-word-text")).toContain("Fixer B4 is spent");
      await shoot(hand, "sink-word");
      await pressAt(hand, ".sink-word .key:not(:disabled)");
      await gone(hand, ".sink-word");
      expect(await findBarriers(hand)).toEqual([]);
      expect(await hand.complaints()).toEqual([]);
    });

    test("meets no barrier at the door, in the room, in a call", async () => {
      const hand = await openPage();
      expect(await findBarriers(hand), "door").toEqual([]);
      await joinDemo(hand, "Mina");
      expect(await findBarriers(hand), "empty room").toEqual([]);
      await beginQuick(hand, "Mina");
      await see(hand, "dialog.cue");
      expect(await findBarriers(hand), "call").toEqual([]);
    });
  });

  describe("a student over https", { ...needing(...needs, "openssl"), retry: GONE }, () => {
    openEngine();
    openRoomBehind(
      () => pageDir,
      () => ({ certificate: openCertificate(makeCertificate(), Date.now(), createMemoryLog()) }),
    );

    test("is sent there from http, joins and is called, with all that a page may do only there", async () => {
      expect(room.url).toMatch(/^https:/);
      const hand = await openPage();
      // Firefox complains of what a page that is left was still fetching.
      await until(hand, `document.querySelector(".door") && document.fonts.status === "loaded"`);
      await hand.goto(room.url.replace("https:", "http:"));
      expect(await hand.ask("location.protocol")).toBe("https:");
      expect(await hand.ask("isSecureContext")).toBe(true);
      await joinDemo(hand, "Mina");
      await beginQuick(hand, "Mina");
      await see(hand, "dialog.cue");
      await answerCall(hand);
      // No browser lets a worker stay that came under a certificate nobody vouches for.
      const ofTheCertificate = /certificate|service ?worker|fetching the script/i;
      expect((await hand.complaints()).filter((each) => !ofTheCertificate.test(each))).toEqual([]);
    });
  });
});

/** Twelve calls in a minute of developer. */
async function beginQuick(hand: Hand, name: string, over: Partial<typeof QUICK> = {}): Promise<void> {
  planFor(name, { ...QUICK, ...over });
  await say(hand, "/run start");
  await pressAt(hand, ".run.is-waiting .key.main");
}

/** What the track knows nothing of is heard from the page, once. */
async function hearsWordOnce(hand: Hand): Promise<void> {
  await hand.run(`
    window.notes = [];
    const { start } = OscillatorNode.prototype;
    OscillatorNode.prototype.start = function (at) {
      notes.push(Math.round(this.frequency.value));
      return start.call(this, at);
    };
  `);
  const teacher = room.visitor();
  await teacher.joinDemo("Iris", "teacher");
  await (await teacher.open()).says("class say text:Lights on in a minute");
  await until(hand, "notes.includes(659)", "the word's lower note");
  expect(await hand.ask("notes.filter((hertz) => hertz === 659).length")).toBe(1);
}
