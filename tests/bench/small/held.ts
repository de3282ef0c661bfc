import { existsSync, mkdirSync, readFileSync, rmdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";

/* Holds a process to a share of one core and to so much memory, by the kernel's own control groups. Needs root. */

/**
 * Short, so that a held process runs as a slow one does. In the usual 100 ms one that has used up its share would stand
 * still for up to three quarters of them.
 */
const PERIOD_US = 4000;

export interface Held {
  take(pid: number): void;
  /** Of the periods in which it ran, how many it wanted more in; and the most memory it held, its file cache with it, in MB. */
  told(): { cut: string; mostMb: number };
  /** Once its process has ended. */
  release(): Promise<void>;
}

/** Undefined where this machine has no control groups that may be written. */
export function hold(name: string, share: number, memoryMb: number): Held | undefined {
  const quota = Math.round(PERIOD_US * share);
  const bytes = String(memoryMb * 2 ** 20);
  const isNew = existsSync("/sys/fs/cgroup/cgroup.controllers");
  const folders = isNew
    ? [join("/sys/fs/cgroup", name)]
    : [join("/sys/fs/cgroup/cpu", name), join("/sys/fs/cgroup/memory", name)];
  const [cpu = "", memory = cpu] = folders;
  try {
    for (const folder of folders) mkdirSync(folder, { recursive: true });
    if (isNew) {
      writeFileSync(join(cpu, "cpu.max"), `${quota} ${PERIOD_US}`);
      writeFileSync(join(memory, "memory.max"), bytes);
    } else {
      writeFileSync(join(cpu, "cpu.cfs_period_us"), String(PERIOD_US));
      writeFileSync(join(cpu, "cpu.cfs_quota_us"), String(quota));
      writeFileSync(join(memory, "memory.limit_in_bytes"), bytes);
    }
  } catch {
    return undefined;
  }
  const most = isNew ? "memory.peak" : "memory.max_usage_in_bytes";
  return {
    take(pid) {
      for (const folder of folders) writeFileSync(join(folder, "cgroup.procs"), String(pid));
    },
    told() {
      const stat = readFileSync(join(cpu, "cpu.stat"), "utf8");
      const of = (what: string): string => new RegExp(`${what} (\\d+)`).exec(stat)?.[1] ?? "?";
      const mostMb = Math.round(Number(readFileSync(join(memory, most), "utf8")) / 2 ** 20);
      return { cut: `${of("nr_throttled")} of ${of("nr_periods")}`, mostMb };
    },
    async release() {
      // The kernel takes a moment to let go of what has ended.
      while (readFileSync(join(cpu, "cgroup.procs"), "utf8") !== "") await wait(50);
      await wait(500);
      for (const folder of folders) rmdirSync(folder);
    },
  };
}
