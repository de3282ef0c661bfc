import { foldWord } from "./tokens.ts";

/* Words of the trade that a beginner asks for. What each means is in words/terms.*.ts. */

const TERM_WORDS = {
  developer: "developer dev entwickler",
  stop: "stopbath stoppbad stopbad unterbrecher",
  fixer: "fixer fixierer fixierbad fixieren fixing fix",
  wash: "wash washing wässern wässerung",
  wetting: "spüli spülmittel soap wettingagent netzmittel wetting",
  washaid: "washaid wässerungshilfe hypo",
  agitation: "agitate agitation kippen inversion invert kipprhythmus",
  reel: "reel reels spirale spule",
  tank: "tank dose entwicklungsdose",
  cassette: "cassette cartridge patrone filmpatrone",
  stock: "stock stammlösung",
  dilution: "dilution dilute verdünnung verdünnen",
  exposure: "ei iso asa exposureindex belichtungsindex",
  push: "push pushing pull pulling pushen pullen",
  negative: "negative negatives negativ negativs",
  contact: "contactsheet kontaktabzug kontaktbogen",
  strip: "teststrip teststreifen probestreifen",
  leader: "leader filmzunge filmanfang zunge",
  clearing: "clearing clearingtime klärzeit klärprobe cliptest",
  batch: "batch",
  sheet: "datasheet datenblatt sheet",
  run: "run lauf",
  numbers: "letters buchstaben",
  reticulation: "reticulation runzelkorn",
  presoak: "presoak prewet vorwässern",
  squeegee: "squeegee abstreifer",
  grain: "grain korn körnung",
  thermometer: "thermometer",
  safelight: "safelight darkroom dunkelkammer dunkelkammerlicht rotlicht redlight",
} as const;

export type Term = keyof typeof TERM_WORDS;
export const TERMS = Object.keys(TERM_WORDS) as readonly Term[];

const byWord = new Map<string, Term>(
  (Object.entries(TERM_WORDS) as [Term, string][]).flatMap(([term, words]) =>
    words.split(" ").map((word): [string, Term] => [foldWord(word), term]),
  ),
);

/** The term a folded word names, if any. */
export function termOf(word: string): Term | undefined {
  return byWord.get(word);
}

/** All words that name a term, folded. */
export const termWords: readonly string[] = [...byWord.keys()];
