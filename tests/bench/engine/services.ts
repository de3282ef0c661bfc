import { execFileSync, spawn, type ChildProcess, type ExecFileSyncOptions } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createConnection, createServer, type AddressInfo } from "node:net";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";

/* What the contestants need that is no part of this project: fetched, started on loopback and ended by the bench itself. */

/** A server that is running, or why there is none. */
export type Service =
  | { readonly kind: "up"; readonly port: number; readonly pid: number; stop(): Promise<void> }
  | { readonly kind: "missing"; readonly why: string };

const quietly: ExecFileSyncOptions = { stdio: ["ignore", "ignore", "pipe"] };

/** Installs packages into a folder of their own; false where they can't be had. */
export function installPeers(folder: string, names: readonly string[]): boolean {
  mkdirSync(folder, { recursive: true });
  if (!existsSync(join(folder, "package.json")))
    writeFileSync(join(folder, "package.json"), '{ "private": true }');
  try {
    execFileSync("npm", ["install", "--no-audit", "--no-fund", "--save-exact", ...names], {
      cwd: folder,
      ...quietly,
    });
    return true;
  } catch {
    return false;
  }
}

/** Append-only file flushed each second, its own default for what must survive; `redis-server` comes by apt where it is missing. */
export async function startRedis(folder: string): Promise<Service> {
  try {
    if (!has("redis-server")) execFileSync("apt-get", ["install", "-y", "-qq", "redis-server"], quietly);
  } catch {
    return { kind: "missing", why: "no redis-server, and apt-get can't install it" };
  }
  mkdirSync(folder, { recursive: true });
  const port = await freePort();
  const flags = ["--bind", "127.0.0.1", "--dir", folder, "--appendonly", "yes", "--save", ""];
  return follow(spawn("redis-server", ["--port", `${port}`, ...flags], { stdio: "ignore" }), port);
}

/** The newest PostgreSQL that is installed, with its own defaults but for the place; it refuses to run as root. */
export async function startPostgres(folder: string): Promise<Service> {
  const [version] = existsSync(HOME) ? readdirSync(HOME).sort((a, b) => Number(b) - Number(a)) : [];
  if (version === undefined) return { kind: "missing", why: `no PostgreSQL in ${HOME}` };
  const bin = join(HOME, version, "bin");
  mkdirSync(folder, { recursive: true });
  const owner = process.getuid?.() === 0 ? ownerOf("postgres") : {};
  if (owner.uid !== undefined) execFileSync("chown", [`${owner.uid}:${owner.gid}`, folder]);
  const options = { ...owner, cwd: folder };
  try {
    execFileSync(join(bin, "initdb"), ["-D", join(folder, "db"), "-U", "bench", "-A", "trust"], {
      ...options,
      ...quietly,
    });
  } catch (error) {
    return { kind: "missing", why: `initdb: ${String(error).slice(0, 200)}` };
  }
  const port = await freePort();
  const place = ["-D", join(folder, "db"), "-k", folder, "-p", `${port}`, "-c", "listen_addresses=127.0.0.1"];
  return follow(spawn(join(bin, "postgres"), place, { ...options, stdio: "ignore" }), port);
}

const HOME = "/usr/lib/postgresql";

function has(program: string): boolean {
  return (process.env.PATH ?? "").split(":").some((folder) => existsSync(join(folder, program)));
}

function ownerOf(name: string): { uid?: number; gid?: number } {
  const fields = readFileSync("/etc/passwd", "utf8")
    .split("\n")
    .find((line) => line.startsWith(`${name}:`))
    ?.split(":");
  return fields ? { uid: Number(fields[2]), gid: Number(fields[3]) } : {};
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

async function follow(child: ChildProcess, port: number): Promise<Service> {
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  for (let tries = 0; tries < 200; tries += 1) {
    if (child.exitCode !== null || child.pid === undefined)
      return { kind: "missing", why: "it ended at once" };
    if (await listens(port)) {
      const stop = async (): Promise<void> => {
        child.kill("SIGINT");
        await ended;
      };
      return { kind: "up", port, pid: child.pid, stop };
    }
    await wait(100);
  }
  child.kill("SIGKILL");
  return { kind: "missing", why: "it does not listen" };
}

function listens(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = createConnection({ host: "127.0.0.1", port });
    socket.once("connect", () => resolve(true)).once("error", () => resolve(false));
    socket.once("connect", () => socket.destroy());
  });
}

interface Seen {
  readonly isFirst: boolean;
  readonly stat: readonly number[];
  readonly kb: number;
}

/** CPU seconds and peak memory of a server with all processes it has started, ended ones included. Linux only. */
export function readServer(pid: number): { cpuSeconds: number; mostMb: number } {
  const seen = readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => readOne(Number(name), pid));
  // Fields 14 to 17 of proc(5): own time, and that of children that have ended, each in user and system mode.
  const ticks = seen.map(({ isFirst, stat }) => sum(stat.slice(11, isFirst ? 15 : 13)));
  return { cpuSeconds: sum(ticks) / 100, mostMb: sum(seen.map(({ kb }) => kb)) / 1024 };
}

function readOne(pid: number, first: number): Seen[] {
  try {
    const stat = (readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1]?.split(" ") ?? []).map(Number);
    if (pid !== first && stat[1] !== first) return [];
    const status = readFileSync(`/proc/${pid}/status`, "utf8");
    const kb = (name: string): number => Number(new RegExp(`${name}:\\s+(\\d+)`).exec(status)?.[1] ?? 0);
    // What they share is not counted once for each.
    return [{ isFirst: pid === first, stat, kb: Math.max(0, kb("VmHWM") - kb("RssShmem")) }];
  } catch {
    // It has just ended.
    return [];
  }
}

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);
