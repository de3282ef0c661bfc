import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";

const MAIN = join(import.meta.dirname, "..", "..", "dist", "bot", "main.js");

export interface BotProcess {
  readonly child: ChildProcess;
  /** Address of the room; resolves once the process says it is ready, rejects where it ends before. */
  readonly ready: Promise<string>;
  /** Everything it wrote to both streams so far. */
  output(): string;
  kill(signal?: NodeJS.Signals): Promise<number | null>;
  /** Waits for the process to end by itself; its exit code. */
  ended(): Promise<number | null>;
}

/** Starts the built process on a store, on any free port. */
export function startProcess(data: string, env: Readonly<Record<string, string>> = {}): BotProcess {
  const { DISCORD_TOKEN: _token, ...inherited } = process.env;
  const child = spawn(process.execPath, [MAIN], {
    env: { ...inherited, SINKSIDE_DATA: data, ROOM_PORT: "0", LOG_LEVEL: "warn", ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let output = "";
  const exit = once(child, "exit").then(([code]) => code as number | null);
  const ready = new Promise<string>((resolve, reject) => {
    const read = (chunk: Buffer): void => {
      output += chunk.toString();
      const address = /ready: open (\S+)/.exec(output)?.[1];
      if (address) resolve(address);
    };
    child.stdout.on("data", read);
    child.stderr.on("data", read);
    void exit.then((code) => reject(new Error(`ended with ${code}: ${output}`)));
  });
  ready.catch(() => {});
  return {
    child,
    ready,
    output: () => output,
    async kill(signal = "SIGKILL") {
      child.kill(signal);
      return exit;
    },
    ended: () => exit,
  };
}
