import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

/* What the built page makes a phone fetch before it can call. Plain http is the case at a school: there browsers take gzip only. */

const root = join(import.meta.dirname, "..", "..", "..", "..", "dist", "bot", "chat", "room-page");
const read = (path: string): string => readFileSync(join(root, path), "utf8");
const document = read("index.html");
const linked = [...document.matchAll(/(?:src|href)="(\/assets\/[^"]+\.(?:js|css))"/g)].map(
  ([, path]) => path ?? "",
);
const start = linked.find((path) => /\/index-[^/]+\.js$/.test(path)) ?? "";

/** Chunks that this one can't run without. */
const needs = (path: string): string[] =>
  [...read(path).matchAll(/(?:import|from)\s*"\.\/([^"]+)"/g)].map(([, file]) => `/assets/${file}`);
const fetches = (path: string): string[] =>
  [...read(path).matchAll(/import\(\s*[`"]\.\/([^`"]+)[`"]\)/g)].map(([, file]) => `/assets/${file}`);
/** Chunks that the start asks for by itself. */
const asked = (): string[] => withNeeds(start).flatMap(fetches);
const withNeeds = (path: string): string[] => [path, ...needs(path).flatMap(withNeeds)];

test("everything the first view runs on is named in the document, so that nothing waits for another file", () => {
  const view = asked().find((path) => /\/main-/.test(path)) ?? "";
  expect(withNeeds(view).filter((path) => !linked.includes(path))).toEqual([]);
  expect(linked.length).toBeLessThanOrEqual(6);
});

test("what asks who is here is a few lines that wait for no view", () => {
  const size = withNeeds(start).reduce((sum, path) => sum + gzipSync(read(path)).length, 0);
  expect(size).toBeLessThan(3000);
});

test("how bright a page may be is settled by what comes first, and before that it is black", () => {
  expect(withNeeds(start).map(read).join("")).toContain("prefers-color-scheme");
  const style = linked.find((path) => path.endsWith(".css")) ?? "";
  expect(read(style)).toMatch(/html:not\(\[data-theme\]\)[^{]*\{[^}]*background:#000/);
});

test("one language is fetched, not both, and neither tour, board, sink nor panels", () => {
  const words = asked().filter((path) => /\/words\.(en|de)-/.test(path));
  expect(words).toHaveLength(2);
  expect(linked.filter((path) => /words|guide|board|sink|panel|new-class/.test(path))).toEqual([]);
  const both = words.map((path) => read(path));
  expect(both.filter((text) => text.includes("Nachrichten"))).toHaveLength(1);
  expect(linked.map(read).join("")).not.toContain("Nachrichten");
});

test("comes to 60 KB as browsers take it over plain http", () => {
  const words = asked().filter((path) => /\/words\.de-/.test(path));
  const bytes = ["index.html", ...linked, ...words].map((path) => gzipSync(read(path), { level: 9 }).length);
  expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThan(60_000);
});
