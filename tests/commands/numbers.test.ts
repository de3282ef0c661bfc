import { beforeAll, describe, expect, test } from "vitest";
import { speaking } from "../../commands/speech/language.ts";
import { fill, numberSentences, type Sentence } from "../support/dictionaries.ts";

/*
 * Sentences read with numbers: 0, 1, 2, 5 and 1.5. Whether one and several agree, and whether German has its decimal comma.
 * What is right is common grammar; the words are those of this program's own sentences.
 */

const LANGUAGES = ["en", "de"] as const;

const PLURALS = {
  en: "rolls|films|tanks|bottles|runs|days|hours|minutes|seconds|weeks|months|lines|reels|times|baths|people|periods|sheets|plans|prints|strips|places|calls|messages|photos|devices|packs|parts|cells|characters|pages",
  de: "Filme|Rollen|Dosen|Flaschen|Läufe|Tage|Stunden|Minuten|Sekunden|Wochen|Monate|Zeilen|Spiralen|Zeiten|Bäder|Personen|Kurstermine|Datenblätter|Pläne|Abzüge|Plätze|Signale|Nachrichten|Fotos|Geräte|Packungen|Einträge|Zellen|Seiten",
};
const SINGULARS = {
  en: "roll|film|tank|bottle|run|day|hour|minute|second|week|month|line|reel|time|bath|person|period|plan|print|strip|place|call|message|photo|device|pack|part|cell|character|page",
  de: "Film|Rolle|Dose|Flasche|Lauf|Tag|Stunde|Minute|Sekunde|Woche|Monat|Zeile|Spirale|Zeit|Bad|Person|Kurstermin|Datenblatt|Plan|Abzug|Platz|Nachricht|Foto|Gerät|Packung|Eintrag|Zelle|Seite",
};
const PLURAL_VERBS = { en: "are|have|were|stay", de: "sind|haben|wurden|können|passen|fehlen|bleiben" };
const SINGULAR_VERBS = { en: "is|has|was|stays", de: "ist|hat|wurde|passt|fehlt|bleibt" };

/** Not part of a longer number, a fraction, a range or a name: `1.5`, `2-5`, `1+1`. */
const alone = (number: string): string => `(?<![\\w.,:/+-])${number}`;

/** Their number is a limit or a sum that is never one, or never a fraction: where it is set stands behind each. */
const NEVER_ONE = [
  // The limits of a class's periods, of what is added and searched at once, and of the parts of the set-up.
  /periods\.en\.ts\.faults\.ERR_TOO_MANY_PERIODS$/,
  /tank\/words\/reply\.en\.ts\.tooMany$/,
  /roll\/find\/en\.ts\.headCapped$/,
  /class\/setup\/en\.ts\.allSet$/,
  /class\/erase\/en\.ts\.ask$/,
  /contact\/sheet\/en\.ts\.(tooManyRolls|drawn)$/,
  /tray\/set\/en\.ts\.tooMany$/,
  // How many times as fast a trial's clock goes, and how many clearing times a film fixes: two or three.
  /\.(trialMark|trial)$/,
  /roll\/fault\/finding\.en\.ts\.fixShort$/,
  // One of each are two.
  /mine\/words\/reply\.en\.ts\.forgotten$/,
  // Asked only where there are several.
  /run\/words\/reply\.en\.ts\.whichRun$/,
  // Counting never stops so early.
  /(roll|print)\/export\/en\.ts\.exportedMany$/,
  // All of one would be told by another sentence.
  /class\/turns\/en\.ts\.someHung$/,
];
const isNeverOne = ({ path }: Sentence): boolean => NEVER_ONE.some((each) => each.test(path));

let sentences: readonly Sentence[] = [];
beforeAll(async () => {
  sentences = await numberSentences();
});

const read = (language: "en" | "de", number: number) =>
  sentences.map((sentence) => ({
    sentence,
    path: sentence.path,
    text: speaking(language, () => fill(sentence, language, number)),
  }));

test("most of the sentences with numbers are reached", () => {
  expect(sentences.length).toBeGreaterThan(300);
});

describe.each(LANGUAGES)("%s", (language) => {
  test("every one is a whole sentence with each number", () => {
    for (const number of [0, 1, 2, 5, 1.5])
      for (const { path, text } of read(language, number))
        expect(text, path).not.toMatch(/undefined|NaN|\[object|null/);
  });

  test("one is one", () => {
    const plural = new RegExp(`${alone("1")} (?:${PLURALS[language]})\\b`);
    const verb = new RegExp(`${alone("1")} (?:${SINGULARS[language]}) (?:${PLURAL_VERBS[language]})\\b`);
    const wrong = read(language, 1).filter(
      ({ sentence, text }) => !isNeverOne(sentence) && (plural.test(text) || verb.test(text)),
    );
    expect(wrong.map(({ path, text }) => `${path}: ${text}`)).toEqual([]);
  });

  test.each([0, 2, 5])("%d are several", (number) => {
    // Of `tank loads` the second word is counted.
    const singular = new RegExp(`${alone(String(number))} (?:${SINGULARS[language]})\\b(?![-']| loads\\b)`);
    const verb = new RegExp(
      `${alone(String(number))} (?:${PLURALS[language]}) (?:${SINGULAR_VERBS[language]})\\b`,
    );
    const wrong = read(language, number).filter(({ text }) => singular.test(text) || verb.test(text));
    expect(wrong.map(({ path, text }) => `${path}: ${text}`)).toEqual([]);
  });
});

test("a quantity has its decimal comma in German, and its point in English", () => {
  // With a unit behind it: counts, numbers of things, megabytes and exposure indexes are whole.
  const measured = /(?<![\w.,])1[.,]5 (?:ml|l|°C|°F|g|min|h)(?![\w])/g;
  const marks = (language: "en" | "de") =>
    read(language, 1.5).flatMap(({ path, text }) => (text.match(measured) ?? []).map((each) => [path, each]));
  expect(marks("en").length).toBeGreaterThan(20);
  expect(marks("en").filter(([, text]) => text?.includes("1,5"))).toEqual([]);
  expect(marks("de").filter(([, text]) => text?.includes("1.5"))).toEqual([]);
});
