import { performance } from "node:perf_hooks";
import { expect, test } from "vitest";
import { createRoom } from "../support/room.ts";

test("who pours when is worked out for thirty tanks in well under a second", () => {
  const room = createRoom();
  room.says("Iris", "/class periods days:thu from:18:00 to:22:00", "teacher");
  const startedAt = performance.now();
  room.says("Iris", "/class turns loads:30 films:2", "teacher");
  const tookMs = performance.now() - startedAt;
  console.log(`${tookMs.toFixed(0)} ms for thirty tanks`);
  expect(tookMs).toBeLessThan(1000);
});
