import { afterAll, beforeAll, expect, test } from "vitest";
import { inventDemo } from "../../bot/demo/demo.ts";
import { buildPage, joinDemo, launch, openPage, type } from "../browser/browser.ts";
import { listen, trackNow } from "../browser/heard.ts";
import { aPlan, aStep, EACH_MINUTE, START } from "../support/make.ts";
import { needing } from "../support/needs.ts";
import { startRoom, type RoomServer } from "../support/room-server.ts";

/*
 * How far the place where the track plays is from the clock, over minutes: a player has a clock of its own, and a file of
 * ten minutes is followed by the next. TRACK_MINUTES (10) says how long.
 */

const MINUTES = Number(process.env["TRACK_MINUTES"] ?? 10);
const MOST_OFF_MS = 150;
const EVERY_MS = 1000;

let room: RoomServer;
let browser: Awaited<ReturnType<typeof launch>>;

beforeAll(async () => {
  const pageDir = await buildPage();
  browser = await launch();
  const startedAt = performance.now();
  const now = (): number => Math.round(START + performance.now() - startedAt);
  const clock = { now, advance: () => undefined, back: () => undefined };
  room = await startRoom({ pageDir }, (stores, at) => void inventDemo(stores, "UTC", at), clock);
}, 60_000);
afterAll(async () => {
  await browser?.close();
  await room?.stop();
});

test(
  `the track keeps to the clock within ${MOST_OFF_MS} ms for ${MINUTES} min`,
  { timeout: (MINUTES * 60 + 120) * 1000, ...needing("chromium") },
  async () => {
    const { page } = await openPage(browser, room.url, "phone", "en-GB", listen);
    await joinDemo(page, "Mina");
    const steps = [
      aStep({ kind: "develop", seconds: MINUTES * 60 + 120, agitation: EACH_MINUTE, pourOutSeconds: 10 }),
      aStep({ kind: "rinse", ordinal: 1 }),
    ];
    const mina = room.stores.members.findByName(1, "Mina")?.personId ?? "";
    room.stores.plans.add(1, mina, aPlan({ tank: 2, steps }), room.clock.now());
    await type(page, "/run start");
    await page.locator(".run").getByRole("button", { name: "Tank is full" }).click();
    await page.waitForTimeout(4000);
    const off: number[] = [];
    let files = 1;
    for (let seconds = 0; seconds < MINUTES * 60; seconds += EVERY_MS / 1000) {
      await page.waitForTimeout(EVERY_MS);
      const playing = await trackNow(page);
      if (!playing) continue;
      files = await page.evaluate<number>("heard.files.length");
      // In the first moment of a new file the player is still on its way.
      if (playing.sinceMadeMs > 2500) off.push(Math.abs(playing.positionMs - playing.sinceMadeMs));
    }
    off.sort((a, b) => a - b);
    const at = (share: number): number => Math.round(off[Math.ceil(off.length * share) - 1] ?? Number.NaN);
    console.log(
      `off the clock over ${MINUTES} min, ${off.length} looks, ${files} files: p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, most ${at(1)} ms`,
    );
    expect(off.length).toBeGreaterThan(MINUTES * 40);
    expect(at(1)).toBeLessThan(MOST_OFF_MS);
  },
);
