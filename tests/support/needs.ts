import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import needs from "../needs.json" with { type: "json" };
import { canMakeDisk } from "./tmpfs.ts";

/* What some tests need that npm can't give, and how to have it: `.ci/needs.mjs` installs what is listed in needs.json. */

/** A package of Debian's, or a right. */
export type Need =
  | "chromium"
  | "firefox-esr"
  | "webkit2gtk-driver"
  | "xvfb"
  | "openssl"
  | "strace"
  | "libfaketime"
  | "systemd"
  | "root's right to mount";

declare module "vitest" {
  interface TaskMeta {
    /** What is missing here, so that this test can't be tried. */
    lacks?: readonly Need[];
  }
}

/** Where it is on this machine. */
export function pathOf(need: Need): string | undefined {
  return needs.find((each) => each.package === need)?.files.find((file) => existsSync(file));
}

export function has(need: Need): boolean {
  if (need === "root's right to mount") return canMakeDisk();
  return pathOf(need) !== undefined && (need !== "strace" || canTrace());
}

/** Some containers forbid it, though it is installed. */
function canTrace(): boolean {
  try {
    execFileSync("strace", ["-qq", "-o", "/dev/null", "true"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** Options for a test, or a group of them, that can be tried only where all of these are there. */
export function needing(...wanted: readonly Need[]): { skip: boolean; meta: { lacks?: readonly Need[] } } {
  const lacks = wanted.filter((need) => !has(need));
  return lacks.length > 0 ? { skip: true, meta: { lacks } } : { skip: false, meta: {} };
}
