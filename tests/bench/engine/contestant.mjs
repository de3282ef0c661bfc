/*
 * One contestant in a process of its own: arms its timers, notes by how much each is late, and says so. Given as JSON: what to
 * run and with how many timers. `mode` is "measure"; "leave": arm, and wait to be killed; or "resume": what an earlier
 * process has left.
 */
import { monitorEventLoopDelay, performance } from "node:perf_hooks";
import { setTimeout as wait } from "node:timers/promises";
import { createWork, NO_WORK } from "./work.mjs";

const task = JSON.parse(process.argv[2]);
const { file, name, mode, count, windowMs, allowanceMs, patienceMs } = task;
const makers = await import(file);
const { step, together } = task.works ? await createWork(task) : NO_WORK;
const contestant = await makers[name]({ ...task, together });
if (mode === "resume") await resume();
else await measure();

/** Prints the instant of the first timer: whoever started this process knows when that was. */
async function resume() {
  await contestant.resume(() => process.send({ firstAt: Date.now() }));
}

async function measure() {
  const startAt = Date.now() + allowanceMs;
  const dues = makeDues(startAt);
  const lateness = [];
  let fired = 0;
  let finish;
  const finished = new Promise((resolve) => void (finish = resolve));
  const armedAt = performance.now();
  // The same instant for all: what a contestant keeps is kept by then, where it keeps anything.
  await contestant.arm(dues, (dueAt) => {
    step(dueAt);
    fired += 1;
    lateness.push(Date.now() - dueAt);
    if (fired === count) finish();
  });
  const armMs = performance.now() - armedAt;
  if (mode === "leave") return void process.send({ armMs });
  const isArmed = Date.now() <= startAt;
  await wait(Math.max(0, startAt - Date.now()));
  process.send({ starts: true });
  const loop = monitorEventLoopDelay({ resolution: 5 });
  loop.enable();
  const cpu = process.cpuUsage();
  await Promise.race([finished, wait(windowMs + patienceMs)]);
  const { user, system } = process.cpuUsage(cpu);
  loop.disable();
  lateness.sort((a, b) => a - b);
  const at = (share) => lateness[Math.min(lateness.length - 1, Math.floor(lateness.length * share))] ?? null;
  await contestant.stop?.().catch?.(() => {});
  process.send({
    armMs,
    isArmed,
    fired,
    early: lateness.filter((ms) => ms < 0).length,
    late: [at(0.5), at(0.99), at(1)],
    more: contestant.figures?.() ?? {},
    cpuSeconds: (user + system) / 1e6,
    blockedMs: loop.max / 1e6,
    mostMb: process.resourceUsage().maxRSS / 1024,
  });
}

/** Anywhere in the window, alike for all: a linear congruential generator (Numerical Recipes, 2nd edition, 7.1). */
function makeDues(startAt) {
  let state = 1;
  return Array.from({ length: count }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return startAt + Math.floor((state / 2 ** 32) * windowMs);
  });
}
