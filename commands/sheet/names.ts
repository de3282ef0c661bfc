import { distance } from "fastest-levenshtein";

/* Finding a film or developer by what people type. */

/** One spelling for comparing: any case, any spacing, composed accents. */
export function foldName(name: string): string {
  return name.normalize("NFKC").trim().replace(/\s+/g, " ").toLowerCase();
}

/** How wrong a name may be and still be meant: a third of its letters. */
const MOST_WRONG = 1 / 3;

/** Names that may be meant, the nearest first; at most three. */
export function nearestNames(typed: string, names: readonly string[]): string[] {
  const wanted = foldName(typed).slice(0, 60);
  if (wanted === "") return [];
  return [...new Set(names)]
    .map((name) => ({ name, far: farFrom(wanted, foldName(name)) }))
    .filter(({ far }) => far <= MOST_WRONG)
    .sort((a, b) => a.far - b.far)
    .slice(0, 3)
    .map(({ name }) => name);
}

function farFrom(wanted: string, name: string): number {
  if (name.includes(wanted) || wanted.includes(name)) return 0.01;
  return distance(wanted, name) / Math.max(wanted.length, name.length);
}

const MOST_SLIPS = 2;

/** A name that this one may be a slip of: all but a letter or two the same. Another number is another film. */
export function slippedFrom(typed: string, names: readonly string[]): string | null {
  const wanted = foldName(typed);
  const folded = names.map((name) => ({ name, fold: foldName(name) }));
  if (folded.some(({ fold }) => fold === wanted)) return null;
  const digitsOf = (text: string): string => text.replace(/\D+/g, " ").trim();
  const near = folded.find(
    ({ fold }) => digitsOf(fold) === digitsOf(wanted) && distance(fold, wanted) <= MOST_SLIPS,
  );
  return near?.name ?? null;
}
