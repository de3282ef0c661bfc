import { execSync } from "node:child_process";
import { existsSync, rmSync } from "node:fs";

/*
 * After `npm ci`: builds the program and its page. Where what builds was left out (`--omit=dev`), the program must have been
 * built before.
 */

const root = new URL("../", import.meta.url);
const has = (path) => existsSync(new URL(path, root));

if (has("node_modules/vite/package.json")) {
  // What an older build has left behind would go along into the package.
  rmSync(new URL("dist", root), { recursive: true, force: true });
  execSync("npm run --silent build", { cwd: root, stdio: "inherit" });
} else if (!has("dist/bot/main.js"))
  process.stderr.write("Not built: run `npm ci && npm run build` first, then `npm prune --omit=dev`.\n");
