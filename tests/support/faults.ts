import { join } from "node:path";
import { expect } from "vitest";
import { writeMarker } from "../../bot/disk/marker.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { aQuickPlan, pourIn } from "./developing.ts";
import type { BotProcess } from "./process.ts";

/* OpenedStores for the built process to meet faults with. */

/** The exit code of a store that can't be used. */
export const STORE = 73;

export async function refuses(bot: BotProcess, code: number, sentence: RegExp): Promise<void> {
  expect(await bot.ended()).toBe(code);
  expect(bot.output()).toMatch(sentence);
  // A sentence for a person, and no trace of the program's insides.
  expect(bot.output()).not.toMatch(/\n\s+at /);
}

/** A class of one's own, and so something to lose. */
export function prepare(
  data: string,
  more: (stores: OpenedStores, classId: number) => void = () => {},
): void {
  const stores = openStores(join(data, "sinkside.db"));
  const { id } = stores.classes.ensure("room:own", "Evening class", Date.now());
  more(stores, id);
  writeMarker(join(data, "sinkside.db"), stores, Date.now());
  stores.close();
}

/** A quarter of a minute in the developer from `atMs` on, called every two seconds. */
export function beginRun(stores: OpenedStores, classId: number, atMs = Date.now() + 1000): void {
  const began = Math.min(Date.now(), atMs);
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", began);
  pourIn(stores, { classId, plan: aQuickPlan(16, 2), warnSeconds: 0 }, began, atMs);
}
