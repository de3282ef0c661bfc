import { readFile, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, gzip } from "node:zlib";
import { preact } from "@preact/preset-vite";
import { defineConfig, type Plugin } from "vite";

const root = import.meta.dirname;
const outDir = join(root, "../../../dist/bot/chat/room-page");

/** Writes each text asset compressed beside itself, so that the server has nothing to work out at each load. */
function compress(): Plugin {
  let folder = "";
  return {
    name: "compress",
    apply: "build",
    configResolved(config) {
      folder = join(config.build.outDir, "assets");
    },
    async closeBundle() {
      for (const name of await readdir(folder)) {
        if (!/\.(js|css|svg)$/.test(name)) continue;
        const bytes = await readFile(join(folder, name));
        await writeFile(join(folder, `${name}.br`), await promisify(brotliCompress)(bytes));
        await writeFile(join(folder, `${name}.gz`), await promisify(gzip)(bytes, { level: 9 }));
      }
    },
  };
}

export default defineConfig({
  root,
  publicDir: join(root, "public"),
  plugins: [preact({ devToolsEnabled: false, prefreshEnabled: false }), compress()],
  build: {
    outDir,
    emptyOutDir: true,
    target: ["es2020", "safari14", "chrome87", "firefox90"],
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    reportCompressedSize: false,
  },
});
