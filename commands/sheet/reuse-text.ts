import { reuseSchema, type Reuse } from "../../store/shapes/sheet.ts";

/** A maker's rule for reuse from `1/10%/10` or `4/60s/12` or `4/5%+30s/12`: films in a litre / what they add / most films. */
export function parseReuse(text: string): Reuse | undefined {
  const match = /^(\d{1,3}) ?\/ ?(?:(\d{1,3}) ?%)? ?\+? ?(?:(\d{1,3}) ?s)? ?\/ ?(\d{1,3})$/i.exec(
    text.trim(),
  );
  if (!match || (match[2] === undefined && match[3] === undefined)) return undefined;
  const read = reuseSchema.safeParse({
    everyFilms: Number(match[1]),
    addPercent: Number(match[2] ?? 0),
    addSeconds: Number(match[3] ?? 0),
    maxFilms: Number(match[4]),
  });
  return read.success ? read.data : undefined;
}

/** The reverse of parseReuse. */
export function makeReuse({ everyFilms, addPercent, addSeconds, maxFilms }: Reuse): string {
  const added =
    addSeconds === 0
      ? `${addPercent}%`
      : addPercent === 0
        ? `${addSeconds}s`
        : `${addPercent}%+${addSeconds}s`;
  return `${everyFilms}/${added}/${maxFilms}`;
}
