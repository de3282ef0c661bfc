import { execFileSync, spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import {
  chmodSync,
  chownSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needing } from "../support/needs.ts";

/* What is given away: the package of `npm pack`, the unit file, the container file. */

const root = join(import.meta.dirname, "..", "..");
const deploy = join(root, "bot", "deploy");
/** Of whoever owns nothing here. */
const NOBODY = 65_534;
const isRoot = process.getuid?.() === 0;

let folder: string;
let code: string;
let files: string[];

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sinkside-package-"));
  // Built already, before all tests.
  execFileSync("npm", ["pack", "--ignore-scripts", "--silent", "--pack-destination", folder], { cwd: root });
  const [packed = ""] = readdirSync(folder);
  execFileSync("tar", ["-xzf", packed], { cwd: folder });
  code = join(folder, "package");
  files = readdirSync(code, { recursive: true, withFileTypes: true, encoding: "utf8" })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(code.length + 1));
  // As npm would: beside it what it depends on.
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  execFileSync("chmod", ["-R", "a-w,a+rX", code]);
  chmodSync(folder, 0o755);
});
afterAll(() => {
  execFileSync("chmod", ["-R", "u+w", code]);
  rmSync(folder, { recursive: true, force: true });
});

describe("the package", () => {
  test("holds the built program and how to keep it, and nothing else", () => {
    const tops = new Set(files.map((file) => file.split("/")[0]));
    expect([...tops].sort()).toEqual(["LICENSE", "README.md", "bot", "dist", "package.json"]);
    expect(files.filter((file) => file.startsWith("bot/")).sort()).toEqual([
      "bot/deploy/Dockerfile",
      "bot/deploy/sinkside.service",
    ]);
    expect(files.filter((file) => /\.tsx?$|\.db|\.test\.|\.env/.test(file))).toEqual([]);
  });

  test("names programs that are in it, each to be run as it is", () => {
    const { bin } = JSON.parse(readFileSync(join(code, "package.json"), "utf8")) as {
      bin: Record<string, string>;
    };
    expect(Object.keys(bin).sort()).toEqual([
      "sinkside",
      "sinkside-ask",
      "sinkside-backup",
      "sinkside-restore",
    ]);
    for (const path of Object.values(bin))
      expect(readFileSync(join(code, path), "utf8"), path).toMatch(/^#!\/usr\/bin\/env node\n/);
  });

  test(
    "runs from an empty folder, as somebody who may not write where it lies",
    { timeout: 600_000 },
    async () => {
      const home = join(folder, "home");
      mkdirSync(home);
      if (isRoot) chownSync(home, NOBODY, NOBODY);
      const user = isRoot ? { uid: NOBODY, gid: NOBODY } : {};
      const env = { PATH: process.env["PATH"], HOME: home, ROOM_PORT: "0" };
      const given = { cwd: home, env, ...user };
      const bot = spawn(process.execPath, [join(code, "dist", "bot", "main.js")], {
        ...given,
        stdio: ["ignore", "pipe", "pipe"],
      });
      let said = "";
      bot.stderr.on("data", (chunk: Buffer) => void (said += chunk.toString()));
      const url = await new Promise<string>((resolve, reject) => {
        bot.stdout.on("data", (chunk: Buffer) => {
          said += chunk.toString();
          const found = /open (http:\S+)/.exec(said)?.[1];
          if (found) resolve(found);
        });
        bot.once("exit", (ended) => reject(new Error(`ended with ${ended}: ${said}`)));
      });
      expect(await (await fetch(url)).text()).toContain("<title>");
      const program = (name: string): string => join(code, "dist", "bot", name);
      const asked = execFileSync(process.execPath, [program("ask.js"), "/tank list"], given).toString();
      expect(asked).toContain("Tank 1");
      expect(execFileSync(process.execPath, [program("backup.js")], given).toString()).toContain(
        "found whole",
      );
      bot.kill("SIGTERM");
      const [ended] = (await once(bot, "exit")) as [number | null];
      expect(ended, said).toBe(0);
      // What it wrote lies in the folder it was started in, and only there.
      expect(readdirSync(home)).toEqual(["data"]);
      const now = readdirSync(code, { recursive: true, withFileTypes: true }).filter((entry) =>
        entry.isFile(),
      );
      expect(now).toHaveLength(files.length);
    },
  );
});

describe("to keep it running", () => {
  test("the unit file is one that systemd takes", needing("systemd"), () => {
    const { status, stdout, stderr } = spawnSync("systemd-analyze", [
      "verify",
      join(deploy, "sinkside.service"),
    ]);
    // Of a setting it does not know it only warns.
    expect(`${stdout.toString()}${stderr.toString()}`).toBe("");
    expect(status).toBe(0);
  });

  test("the unit file starts a program of the package, and gives up where the program says that trying again is no use", () => {
    const unit = readFileSync(join(deploy, "sinkside.service"), "utf8");
    expect(files).toContain(/^ExecStart=\S+ node (\S+)$/m.exec(unit)?.[1]);
    const main = readFileSync(join(root, "bot", "main.ts"), "utf8");
    const codes = ["config", "store", "held", "token"].map(
      (name) => new RegExp(`${name}: (\\d+)`).exec(main)?.[1],
    );
    expect(/^RestartPreventExitStatus=(.*)$/m.exec(unit)?.[1]?.split(" ").sort()).toEqual(codes.sort());
  });

  test("the container file copies and starts what is there, as nobody in particular, with its data outside", () => {
    const lines = readFileSync(join(deploy, "Dockerfile"), "utf8").split("\n");
    const of = (word: string): string[] =>
      lines.filter((line) => line.startsWith(`${word} `)).map((line) => line.slice(word.length + 1));
    expect(files).toContain((JSON.parse(of("CMD")[0] ?? "[]") as string[])[1]);
    const data = /SINKSIDE_DATA=(\S+)/.exec(of("ENV")[0] ?? "")?.[1];
    expect(of("VOLUME")).toEqual([data]);
    expect(of("USER")).toEqual(["node"]);
    const copied = of("COPY").filter((line) => line.startsWith("--from=build"));
    for (const line of copied)
      for (const source of line
        .split(" ")
        .slice(1, -1)
        .map((each) => each.replace("/opt/sinkside/", "")))
        expect(readdirSync(root), source).toContain(source);
  });

  test("nothing that a class wrote gets into the image", () => {
    const ignored = readFileSync(join(root, ".dockerignore"), "utf8").split("\n");
    expect(ignored).toEqual(
      expect.arrayContaining(["data", "**/*.db", "**/*.db-*", "**/*.db.*", "**/*.env"]),
    );
    // Whatever git is told to leave out is left out here, too.
    const ofGit = readFileSync(join(root, ".gitignore"), "utf8").split("\n").filter(Boolean);
    expect(ignored).toEqual(expect.arrayContaining(ofGit.map((line) => line.replace(/\/$/, ""))));
  });
});
