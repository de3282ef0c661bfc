import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/* Every sentence of the program that takes a number, by the types that its English dictionary declares. */

const ROOT = join(import.meta.dirname, "../..");
const FOLDERS = ["commands", "bot"];

export interface Sentence {
  readonly path: string;
  readonly en: (...given: readonly unknown[]) => unknown;
  readonly de: (...given: readonly unknown[]) => unknown;
  /** The types of what it takes, in their order. */
  readonly types: readonly string[];
}

/** What stands in the gaps that are no numbers. */
const OTHERS: Readonly<Record<string, unknown>> = {
  string: "§",
  "string | null": "§",
  boolean: true,
  "readonly string[]": ["§", "§"],
};

/** Those whose gaps are all plain, one of them a number; shapes of the project's own are read by their own tests. */
export async function numberSentences(): Promise<Sentence[]> {
  const files = FOLDERS.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
      .filter((name) => /[./]en\.ts$/.test(name))
      .map((name) => join(folder, name)),
  ).sort();
  const each = await Promise.all(
    files.map(async (file) => {
      const source = readFileSync(join(ROOT, file), "utf8");
      const { en } = (await import(/* @vite-ignore */ join(ROOT, file))) as { en: unknown };
      const german = join(ROOT, file.replace(/en\.ts$/, "de.ts"));
      const { de } = (await import(/* @vite-ignore */ german)) as { de: unknown };
      return sentencesIn(en, de, source, file);
    }),
  );
  return each.flat();
}

/** Filled with this number in each gap that takes one. */
export function fill(sentence: Sentence, language: "en" | "de", number: number): string {
  const given = sentence.types.map((type) => (isNumber(type) ? number : OTHERS[type]));
  return String(sentence[language](...given));
}

const isNumber = (type: string): boolean => /^number( \| null)?$/.test(type);

function sentencesIn(en: unknown, de: unknown, source: string, path: string): Sentence[] {
  if (typeof en === "function") {
    const types = typesOf(source, path.split(".").at(-1) ?? "");
    const isPlain = types.every((type) => isNumber(type) || Object.hasOwn(OTHERS, type));
    if (!isPlain || !types.some(isNumber)) return [];
    return [{ path, en: en as Sentence["en"], de: de as Sentence["de"], types }];
  }
  if (typeof en !== "object" || en === null) return [];
  return Object.entries(en).flatMap(([key, value]) =>
    sentencesIn(value, (de as Record<string, unknown>)[key], source, `${path}.${key}`),
  );
}

/** `key: (run: string, count: number) =>` as its types; none where it is written otherwise. */
function typesOf(source: string, key: string): string[] {
  const [, inner] = new RegExp(`\\b${key}: \\(([^()]*)\\)(?:: string)? =>`).exec(source) ?? [];
  return (inner ?? "")
    .split(",")
    .map((part) => part.trim())
    .filter(Boolean)
    .map((part) => /^\w+\??: (.+)$/.exec(part)?.[1] ?? "?");
}
