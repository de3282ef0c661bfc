import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach } from "vitest";
import { inventDemo } from "../../bot/demo/demo.ts";
import type { RoomOptions } from "../../bot/chat/room/options.ts";
import type { FakeClock } from "../support/clock.ts";
import type { AnyPlan } from "../../store/shapes/tray.ts";
import { aPlan, aStep, START } from "../support/make.ts";
import { startRoom, type RoomServer } from "../support/room-server.ts";
import { buildPage, launch, type } from "./browser.ts";

/* The page in a real browser, with the real bot behind it and a clock that runs and can be put forward. */

export let browser: Browser;
export let room: RoomServer;
let pageDir: string;
let beating: NodeJS.Timeout;

function createRunningClock(): FakeClock {
  const startedAt = performance.now();
  let skippedMs = 0;
  return {
    now: () => Math.round(START + performance.now() - startedAt + skippedMs),
    advance: (seconds) => void (skippedMs += seconds * 1000),
    back: (seconds) => void (skippedMs -= seconds * 1000),
  };
}

/** A browser for the whole file, a fresh room for each test. Call it inside `describe`. */
export function openRoomForEach(): void {
  beforeAll(async () => {
    [browser, pageDir] = await Promise.all([launch(), buildPage()]);
  });
  afterAll(() => browser?.close());
  openRoomBehind(() => pageDir);
  afterEach(async () => {
    for (const context of browser.contexts()) await context.close();
  });
}

/** A fresh room for each test, whatever browser looks at it. */
export function openRoomBehind(pageDirOf: () => string, over: () => Partial<RoomOptions> = () => ({})): void {
  beforeEach(async () => {
    const prepare = (stores: RoomServer["stores"], now: number): void => {
      inventDemo(stores, "UTC", now);
      stores.classes.add("room:1", "Tuesday class", "UTC", false, now);
    };
    room = await startRoom({ pageDir: pageDirOf(), ...over() }, prepare, createRunningClock());
    beating = setInterval(() => void room.pass(0), 200);
  });
  afterEach(async () => {
    clearInterval(beating);
    await room.stop();
  });
}

/** Called to agitate each 5 s. */
export const QUICK = aPlan({
  tank: 2,
  steps: [
    aStep({
      kind: "develop",
      seconds: 60,
      pourOutSeconds: 10,
      agitation: { initialSeconds: 5, cycleSeconds: 5, burstSeconds: 2, manner: "inversion", taps: 1 },
    }),
    aStep({ kind: "rinse", ordinal: 1 }),
    aStep({ kind: "cut", seconds: null, ml: null }),
  ],
});

/** The bot calls nobody any more; its pages stay linked. */
export function fallSilent(): void {
  clearInterval(beating);
}

export function planFor(name: string, plan: AnyPlan = QUICK): void {
  const member = room.stores.members.findByName(1, name);
  room.stores.plans.add(1, member?.personId ?? "", plan, room.clock.now());
}

/** Called at the start, and again after a minute: what is looked at meanwhile is covered by no call. */
export const CALM = aPlan({ tank: 2 });

export async function startRun(page: Page, name: string, plan = QUICK): Promise<void> {
  planFor(name, plan);
  await type(page, "/run start");
  await page.locator(".run").getByRole("button", { name: "Tank is full" }).click();
  await page.locator("dialog.cue").waitFor();
}
