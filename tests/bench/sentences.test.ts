import { performance } from "node:perf_hooks";
import { expect, test } from "vitest";
import { readSentence } from "../../commands/ask/read.ts";
import { INTENTS } from "../../commands/ask/rules.ts";
import { BLIND_DE } from "../commands/ask/blind.de.ts";
import { BLIND_EN } from "../commands/ask/blind.en.ts";
import { MORE_DE } from "../commands/ask/more.de.ts";
import { MORE_EN } from "../commands/ask/more.en.ts";
import { CLASS_NAMES, readAs } from "../commands/ask/read-as.ts";
import { TYPED_DE } from "../commands/ask/typed.de.ts";
import { TYPED_EN } from "../commands/ask/typed.en.ts";

/** Where several readings would serve, the row stands under the first, or under the one that was read. */
const BLIND = [...BLIND_EN, ...BLIND_DE].map(([accepted, sentence]) => {
  const read = readAs(sentence);
  const all = accepted.split(" ");
  return [all.includes(read) ? read : (all[0] ?? "none"), sentence] as const;
});
const ROWS = [...TYPED_EN, ...MORE_EN, ...TYPED_DE, ...MORE_DE, ...BLIND];

test("which sentences are taken for which", () => {
  const counts = new Map<string, number>();
  for (const [wanted, sentence] of ROWS) {
    const pair = `${wanted} ${readAs(sentence)}`;
    counts.set(pair, (counts.get(pair) ?? 0) + 1);
  }
  const kinds = [...INTENTS, "torn", "none"];
  const cells = (row: string): string =>
    kinds.map((read) => String(counts.get(`${row} ${read}`) ?? ".").padStart(9)).join("");
  console.log(
    [
      `${"wanted \\ read".padEnd(14)}${kinds.map((kind) => kind.padStart(9)).join("")}`,
      ...kinds.filter((kind) => kind !== "torn").map((kind) => `${kind.padEnd(14)}${cells(kind)}`),
    ].join("\n"),
  );
  expect(ROWS.length).toBeGreaterThanOrEqual(600);
});

/** 2,000 characters of words of four to nine letters, drawn by a simple sum. */
function wordsNobodyKnows(seed: number): string {
  let drawn = seed + 1;
  const draw = (most: number): number => (drawn = (drawn * 48_271) % 2_147_483_647) % most;
  const word = (): string =>
    Array.from({ length: 4 + draw(6) }, () => "abcdefghijklmnoprstuvwz"[draw(23)]).join("");
  return Array.from({ length: 400 }, word).join(" ").slice(0, 2000);
}

test("a sentence is read in under 1 ms at the median, and one of 2,000 characters is no trap", () => {
  const medianOf = (texts: readonly string[]): number => {
    const times = texts.flatMap((text) => {
      const startedAt = performance.now();
      readSentence(text, CLASS_NAMES);
      return [performance.now() - startedAt];
    });
    return times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
  };
  const sentences = ROWS.map(([, sentence]) => sentence);
  medianOf(sentences);
  const median = medianOf(sentences);
  const long = Array.from({ length: 50 }, (_, at) =>
    Array.from({ length: 80 }, (__, word) => sentences[(at * 31 + word * 7) % sentences.length])
      .join(" ")
      .slice(0, 2000),
  );
  const longest = medianOf(long);
  const unknown = medianOf(Array.from({ length: 50 }, (_, at) => wordsNobodyKnows(at)));
  const inMicroseconds = [median, longest, unknown].map((ms) => (ms * 1000).toFixed(0));
  console.log(
    `median ${inMicroseconds[0]} µs a sentence, ${inMicroseconds[1]} µs for 2,000 characters, ${inMicroseconds[2]} µs for 2,000 of words nobody knows`,
  );
  expect(median).toBeLessThan(1);
});
