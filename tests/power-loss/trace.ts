import { spawn } from "node:child_process";
import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";

/* What a process did to its files, in order, as the kernel was asked. */

export type Act =
  | { readonly kind: "write"; readonly file: string; readonly at: number; readonly bytes: Buffer }
  | { readonly kind: "truncate"; readonly file: string; readonly size: number }
  | { readonly kind: "sync"; readonly file: string }
  | { readonly kind: "remove"; readonly file: string }
  | { readonly kind: "ack"; readonly number: number };

const CALLS = "openat,close,pwrite64,write,ftruncate,fdatasync,fsync,unlink,unlinkat";

/** Runs a command under strace; acts on files whose path contains `stem`. */
export async function traceRun(command: readonly string[], stem: string, logPath: string): Promise<Act[]> {
  const args = [
    "-f",
    "-qq",
    "-xx",
    "-s",
    "70000",
    "-e",
    `trace=${CALLS}`,
    "-e",
    "signal=none",
    "-o",
    logPath,
  ];
  const child = spawn("strace", [...args, ...command], { stdio: ["ignore", "ignore", "inherit"] });
  await new Promise((resolve, reject) => {
    child.on("exit", resolve);
    child.on("error", reject);
  });
  return readTrace(logPath, stem);
}

async function readTrace(logPath: string, stem: string): Promise<Act[]> {
  const acts: Act[] = [];
  const files = new Map<number, string>();
  const begun = new Map<string, string>();
  for await (const line of createInterface({ input: createReadStream(logPath) })) {
    const [, thread = "", rest = ""] = /^(\d+)\s+(.*)$/.exec(line) ?? [];
    // A call that another thread's call interrupts is written in two parts.
    const unfinished = /^(.*) <unfinished \.\.\.>$/.exec(rest);
    if (unfinished) {
      begun.set(thread, unfinished[1] ?? "");
      continue;
    }
    const resumed = /^<\.\.\. \w+ resumed>(.*)$/.exec(rest);
    const whole = resumed ? (begun.get(thread) ?? "") + (resumed[1] ?? "") : rest;
    const act = readCall(whole, files, stem);
    if (act) acts.push(act);
  }
  return acts;
}

function readCall(call: string, files: Map<number, string>, stem: string): Act | undefined {
  const match = /^(\w+)\((.*)\)\s+= (-?\d+)/.exec(call);
  if (!match) return undefined;
  const [, name, given = "", answer = ""] = match;
  const parts = given.split(", ");
  const file = files.get(Number(parts[0]));
  if (Number(answer) < 0) return undefined;
  switch (name) {
    case "openat": {
      const path = readText(parts[1]).toString();
      if (path.includes(stem)) files.set(Number(answer), path);
      return undefined;
    }
    case "close":
      files.delete(Number(parts[0]));
      return undefined;
    case "write": {
      const said = parts[0] === "1" ? /^ack (\d+)/.exec(readText(parts[1]).toString()) : null;
      return said ? { kind: "ack", number: Number(said[1]) } : undefined;
    }
    case "pwrite64":
      return file ? { kind: "write", file, at: Number(parts[3]), bytes: readText(parts[1]) } : undefined;
    case "ftruncate":
      return file ? { kind: "truncate", file, size: Number(parts[1]) } : undefined;
    case "fdatasync":
    case "fsync":
      return file ? { kind: "sync", file } : undefined;
    default: {
      const path = readText(parts[name === "unlink" ? 0 : 1]).toString();
      return path.includes(stem) ? { kind: "remove", file: path } : undefined;
    }
  }
}

/** `"\x41\x42"`, as the tracer writes every string. */
function readText(text = ""): Buffer {
  return Buffer.from(text.replaceAll(/["]|\\x/g, ""), "hex");
}
