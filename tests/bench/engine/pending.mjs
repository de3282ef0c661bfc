/*
 * The engine in a process of its own, on a store that an earlier one left: says when it is ready, when the first call was
 * said, and what it holds in memory once it is at rest. Given as JSON what `ours.mjs` is given.
 */
import { readFileSync } from "node:fs";
import { setTimeout as wait } from "node:timers/promises";
import { loadParts, sinkside } from "./ours.mjs";

const REST_MS = 3000;

const task = JSON.parse(process.argv[2]);
await loadParts(task.dist);
const loadedAt = Date.now();
let firstAt;
const engine = await sinkside(task);
await engine.resume(() => void (firstAt ??= Date.now()));
const readyAt = Date.now();
await wait(REST_MS);
const mb = Number(/VmRSS:\s+(\d+)/.exec(readFileSync("/proc/self/status", "utf8"))?.[1]) / 1024;
process.send({ openMs: readyAt - loadedAt, firstAt, mb });
