import { execFileSync } from "node:child_process";

/** Builds the program and its page, so that tests of the real process never run an older one. */
export default function setup(): void {
  execFileSync("npm", ["run", "--silent", "build"], { stdio: "inherit" });
}
