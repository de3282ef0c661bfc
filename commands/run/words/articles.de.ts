import type { Titled } from "./titled.ts";

/* German sentences need to know the gender of a step's title. */

const GENDERS = {
  develop: "m",
  stop: "n",
  rinse: "f",
  fix: "n",
  wash: "f",
  "wash-aid": "f",
  "wetting-agent": "n",
  dry: "n",
  cut: "n",
  lamp: "n",
  grey: "f",
  read: "n",
  expose: "f",
  judge: "n",
} as const satisfies Record<Titled["kind"], "m" | "f" | "n">;

/** `der Entwickler`: for the beginning of a sentence, `capital`. */
export function nominative({ kind, title }: Titled, capital = false): string {
  const article = { m: "der", f: "die", n: "das" }[GENDERS[kind]];
  return `${capital ? article.charAt(0).toUpperCase() + article.slice(1) : article} ${title}`;
}

/** `auf den Entwickler`. */
export function accusative({ kind, title }: Titled): string {
  return `${{ m: "den", f: "die", n: "das" }[GENDERS[kind]]} ${title}`;
}

/** Where the film is: `im Entwickler`, `in der Wässerung`, `beim Trocknen`. */
export function inside({ kind, title }: Titled): string {
  if (kind === "dry" || kind === "cut" || kind === "read" || kind === "judge") return `beim ${title}`;
  return GENDERS[kind] === "f" ? `in der ${title}` : `im ${title}`;
}
