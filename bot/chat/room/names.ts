/* Names at the door: what is one, and which two a reader would take for the same. Pure. */

const MOST_NAME_CHARACTERS = 40;

/** Alphabets whose letters look like each other's: a name keeps to one of them. */
const ALPHABETS = [
  /\p{Script=Latin}/u,
  /\p{Script=Cyrillic}/u,
  /\p{Script=Greek}/u,
  /\p{Script=Armenian}/u,
  /\p{Script=Cherokee}/u,
];

/**
 * A name as it is kept: letters of any script, digits, spaces, dot, dash and apostrophe. Undefined for one that
 * has no letter or digit, is too long, or holds anything else: signs that show nothing, letters of two alphabets, a pile of
 * accents.
 */
export function cleanName(typed: string): string | undefined {
  const name = typed.normalize("NFC").trim().replace(/\s+/g, " ").replace(/[’ʼ]/g, "'");
  if ([...name].length > MOST_NAME_CHARACTERS) return undefined;
  // Some of these count as letters, and show nothing.
  if (/\p{Default_Ignorable_Code_Point}/u.test(name)) return undefined;
  if (/\p{M}{3}/u.test(name.normalize("NFD"))) return undefined;
  if (ALPHABETS.filter((alphabet) => alphabet.test(name)).length > 1) return undefined;
  return /^[\p{L}\p{N}][\p{L}\p{M}\p{N} .'-]*$/u.test(name) ? name : undefined;
}

/** Letters of other alphabets, and signs, as they look in Latin. */
const LOOKS: Readonly<Record<string, string>> = Object.fromEntries(
  [
    ["аαɑ", "a"],
    ["вβ", "b"],
    ["сϲ", "c"],
    ["ԁ", "d"],
    ["еєε", "e"],
    ["ɡ", "g"],
    ["нһη", "h"],
    ["іıιӏ", "i"],
    ["јϳ", "j"],
    ["кκ", "k"],
    ["мμ", "m"],
    ["пν", "n"],
    ["оοσօ0", "o"],
    ["рρ", "p"],
    ["ԛ", "q"],
    ["ѕ", "s"],
    ["тτ", "t"],
    ["уγυ", "y"],
    ["ѡω", "w"],
    ["хχ", "x"],
    ["зζ", "z"],
    ["1|", "l"],
  ].flatMap(([signs = "", latin = ""]) => [...signs].map((sign) => [sign, latin])),
);

/** The same for two names that a reader takes for one: without case, accents, spaces and signs, and in any alphabet. */
export function lookOf(name: string): string {
  const bare = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, "");
  return [...bare].map((sign) => LOOKS[sign] ?? sign).join("");
}

/** What staff are called, in either language: nobody else's name has it as a word. */
const STAFF_WORDS = new Set(
  [
    "teacher",
    "aide",
    "staff",
    "admin",
    "administrator",
    "instructor",
    "assistant",
    "sinkside",
    "bot",
    "system",
    "moderator",
    "lehrer",
    "lehrerin",
    "lehrkraft",
    "hilfskraft",
    "kursleiter",
    "kursleiterin",
    "kursleitung",
    "assistent",
    "assistentin",
  ].map(lookOf),
);

export function isStaffWord(name: string): boolean {
  return [name, ...name.split(/[\s.'-]+/)].some((word) => STAFF_WORDS.has(lookOf(word)));
}
