import { readFile, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, gzip } from "node:zlib";
import { preact } from "@preact/preset-vite";
import { Resvg } from "@resvg/resvg-js";
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

/** The mark as home screens want it: as pixels, and with room round it for those that cut it to a shape of their own. */
function icons(): Plugin {
  let folder = "";
  return {
    name: "icons",
    apply: "build",
    configResolved(config) {
      folder = join(config.build.outDir, "assets");
    },
    async closeBundle() {
      const mark = await readFile(join(root, "public", "assets", "mark.svg"), "utf8");
      const inside = mark.replace(/^[^>]*>|<\/svg>\s*$/g, "");
      const masked = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="-13 -13 90 90"><path fill="#1d1a16" d="M-13-13h90v90h-90z"/>${inside}</svg>`;
      for (const [name, svg, width] of [
        ["icon-180", mark, 180],
        ["icon-192", mark, 192],
        ["icon-512", mark, 512],
        ["icon-masked-512", masked, 512],
      ] as const) {
        const image = new Resvg(svg, { fitTo: { mode: "width", value: width } }).render();
        await writeFile(join(folder, `${name}.png`), image.asPng());
      }
    },
  };
}

/** The view itself is fetched beside the few lines that ask for it, not after them. */
function besideStart(): Plugin {
  return {
    name: "beside-start",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler(html, { bundle = {} }) {
        const chunks = Object.values(bundle).filter((each) => each.type === "chunk");
        const withAll = (file: string): string[] => [
          file,
          ...(chunks.find(({ fileName }) => fileName === file)?.imports ?? []).flatMap(withAll),
        ];
        const view = chunks.find(({ facadeModuleId }) => facadeModuleId === join(root, "main.tsx"));
        if (!view) throw new Error("the page has no view");
        return [...new Set(withAll(view.fileName))]
          .filter((file) => !html.includes(file))
          .map((file) => ({
            tag: "link",
            attrs: { rel: "modulepreload", crossorigin: true, href: `/${file}` },
            injectTo: "head" as const,
          }));
      },
    },
  };
}

export default defineConfig({
  root,
  publicDir: join(root, "public"),
  plugins: [preact({ devToolsEnabled: false, prefreshEnabled: false }), besideStart(), icons(), compress()],
  build: {
    outDir,
    emptyOutDir: true,
    target: ["es2020", "safari14", "chrome87", "firefox90"],
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    rolldownOptions: {
      output: {
        // What views share is one file: each file more costs a slow network a round trip. What asks early waits for none of it.
        codeSplitting: {
          groups: [
            {
              name: "early",
              test: /\/(early|api|kept|theme|word-books|shapes\/language)\.ts$|preload-helper/,
            },
            { name: "shared", minShareCount: 2 },
          ],
        },
      },
    },
  },
});
