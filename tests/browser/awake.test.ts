import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { joinDemo, openPage, pressInCall, type } from "./browser.ts";
import { browser, CALM, openRoomForEach, planFor, room, startRun } from "./room-behind.ts";

/* A phone in a run: its screen is kept on, and when it is dark its lock screen says what comes next. */

const SOON = { timeout: 60_000 };

/** Notes each lock that the browser gives, and lets the page be hidden and shown as a browser would. */
const NOTE_LOCKS = `
  window.locks = [];
  const request = WakeLock.prototype.request;
  WakeLock.prototype.request = async function (type) {
    const lock = await request.call(this, type);
    locks.push(lock);
    return lock;
  };
`;
const HIDE = `
  window.turn = async (state) => {
    Object.defineProperty(document, "visibilityState", { value: state, configurable: true });
    if (state === "hidden") for (const lock of locks) await lock.release();
    document.dispatchEvent(new Event("visibilitychange"));
  };
`;
const held = (page: Page): Promise<boolean[]> => page.evaluate("locks.map(({ released }) => !released)");

/** A browser without the lock, or one that a low battery makes refuse it. */
const NO_LOCK = `delete Navigator.prototype.wakeLock;`;
const REFUSED_LOCK = `WakeLock.prototype.request = () => Promise.reject(new DOMException("low battery", "NotAllowedError"));`;

interface Video {
  readonly isPaused: boolean;
  readonly seconds: number;
  readonly tracks: string[];
  readonly loudest: number;
}

/** What the video is and does: its own clock, and the loudest of what can be heard of it (0 to 1). */
const LOOK_AT_VIDEO = `(async () => {
  const video = document.querySelector("video.wake-video");
  if (!video) return null;
  const context = new AudioContext();
  const analyser = context.createAnalyser();
  context.createMediaStreamSource(video.srcObject).connect(analyser);
  await new Promise((resolve) => setTimeout(resolve, 100));
  const samples = new Float32Array(analyser.fftSize);
  analyser.getFloatTimeDomainData(samples);
  await context.close();
  return {
    isPaused: video.paused,
    seconds: video.currentTime,
    tracks: video.srcObject.getTracks().map(({ kind, readyState }) => kind + " " + readyState).sort(),
    loudest: Math.max(...samples.map(Math.abs)),
  };
})()`;

describe("the screen of a phone in a run", () => {
  openRoomForEach();

  async function openWith(script: string): Promise<Page> {
    const { page } = await openPage(browser, room.url, "phone", "en-GB", async (fresh) => {
      await fresh.addInitScript(script);
    });
    await joinDemo(page, "Mina");
    return page;
  }

  test("is locked on from the start, again after the page was hidden, and let go at the end", async () => {
    const page = await openWith(NOTE_LOCKS + HIDE);
    expect(await held(page)).toEqual([]);
    await startRun(page, "Mina", CALM);
    await expect.poll(() => held(page), SOON).toEqual([true]);
    await page.evaluate(`turn("hidden")`);
    await expect.poll(() => held(page), SOON).toEqual([false]);
    await page.evaluate(`turn("visible")`);
    await expect.poll(() => held(page), SOON).toEqual([false, true]);
    await pressInCall(page, "Got it");
    await type(page, "/run stop sure:yes");
    await expect.poll(() => held(page), SOON).toEqual([false, false]);
  });

  test.each([
    ["has no lock", NO_LOCK],
    ["refuses it", REFUSED_LOCK],
  ])("is kept on by a silent video in the page where the browser %s", async (_, script) => {
    const page = await openWith(`window.locks = [];${script}${HIDE}`);
    const look = (): Promise<Video | null> => page.evaluate<Video | null>(LOOK_AT_VIDEO);
    expect(await look()).toBeNull();
    await startRun(page, "Mina", CALM);
    // The touch on the call's key plays it at the latest.
    await pressInCall(page, "Got it");
    await expect.poll(async () => (await look())?.isPaused, SOON).toBe(false);
    const before = await look();
    // A stream, which goes on for as long as it is wanted and needs no loop.
    expect(before?.tracks).toEqual(["audio live", "video live"]);
    expect(before?.loudest).toBe(0);
    await expect
      .poll(async () => (await look())?.seconds, SOON)
      .toBeGreaterThan((before?.seconds ?? Infinity) + 1);
    // Hidden, browsers may pause it.
    await page.evaluate(`turn("hidden"), document.querySelector("video.wake-video").pause()`);
    expect((await look())?.isPaused).toBe(true);
    await page.evaluate(`turn("visible")`);
    await expect.poll(async () => (await look())?.isPaused, SOON).toBe(false);
    await type(page, "/run stop sure:yes");
    await expect.poll(async () => (await look())?.isPaused, SOON).toBe(true);
  });
});

describe("the lock screen of a phone in a run", () => {
  openRoomForEach();

  const title = (page: Page): Promise<string | null> =>
    page.evaluate(`navigator.mediaSession.metadata && navigator.mediaSession.metadata.title`);

  test("names the next call with its time, and whose tank; after a pause there the film goes on, and the page says so", async () => {
    const { page } = await openPage(browser, room.url, "phone", "en-GB", async (fresh) => {
      await fresh.addInitScript(`
        window.fromOutside = {};
        const set = MediaSession.prototype.setActionHandler;
        MediaSession.prototype.setActionHandler = function (action, handler) {
          fromOutside[action] = handler;
          return set.call(this, action, handler);
        };
      `);
    });
    await joinDemo(page, "Mina");
    planFor("Mina", CALM);
    await type(page, "/run start");
    expect(await title(page)).toBeNull();
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).click();
    await pressInCall(page, "Got it");
    // The demo's class goes by UTC; the next agitation is a minute after the tank was full.
    const member = room.stores.members.findByName(1, "Mina");
    const phase = room.stores.runs.open(1, member?.personId ?? "")[0]?.phase;
    const startedAt = phase?.kind === "running" ? phase.startedAtMs : Number.NaN;
    const next = new Date(startedAt + 60_000).toISOString().slice(11, 19);
    await expect.poll(() => title(page), SOON).toMatch(new RegExp(`^${next} Agitate`, "i"));
    expect(await page.evaluate("navigator.mediaSession.metadata.artist")).toBe("R1 · Tank 2");
    await page.evaluate("fromOutside.pause()");
    await page
      .getByText(/paused/i)
      .first()
      .waitFor();
    const [run] = room.stores.runs.open(1, member?.personId ?? "");
    expect(run?.phase.kind).toBe("running");
    await page.evaluate("fromOutside.play()");
    await expect.poll(() => page.getByText(/paused/i).count(), SOON).toBe(0);
    await type(page, "/run stop sure:yes");
    await expect.poll(() => title(page), SOON).toBeNull();
  });
});
