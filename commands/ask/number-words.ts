import { foldWord } from "./tokens.ts";

/* Words about numbers and their units, in English and German, and pairs of words that are one thing. Read, never said. */

export const NUMBER_WORDS: Readonly<Record<string, number>> = Object.fromEntries(
  (
    [
      ["one eins ein eine einer einen a an ne ner", 1],
      ["two zwei zwo", 2],
      ["three drei", 3],
      ["four vier", 4],
      ["five fünf", 5],
      ["six sechs", 6],
      ["seven sieben", 7],
      ["eight acht", 8],
      ["nine neun", 9],
      ["ten zehn", 10],
      ["twenty zwanzig", 20],
      ["thirty dreißig", 30],
      ["half halbe halben halbes halb", 0.5],
    ] as const
  ).flatMap(([words, value]) => words.split(" ").map((word) => [foldWord(word), value])),
);
const wordsOf = (text: string): ReadonlySet<string> => new Set(text.split(" ").map(foldWord));
export const SECONDS = wordsOf("s sec secs second seconds sek sekunde sekunden");
export const MINUTES = wordsOf("m min mins minute minutes minuten");
export const CELSIUS = wordsOf("c celsius");
export const FAHRENHEIT = wordsOf("f fahrenheit");
export const DEGREES = wordsOf("° degrees degree deg grad");
export const TANKS = wordsOf("tank tanks dose dosen");
export const BOTTLES = wordsOf("bottle flasche batch");
export const FRAMES = wordsOf("frame frames bild aufnahme");
export const SINCE = wordsOf("since seit for");
export const NUMBER_SIGNS = wordsOf("number nummer no nr");
const AT = "at auf to als";
/** Right before a speed: it was set on the camera. */
export const EXPOSED_AT = wordsOf(AT);
export const EXPOSED = wordsOf(
  `${AT} iso asa ei shot pushed push pulled gepusht belichtet fotografiert exposed`,
);
/** The full stops of the usual scale of film speeds, and thirds people set: as published in ISO 5800 and ISO 6. */
export const SPEEDS = new Set([
  25, 32, 40, 50, 64, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500,
  3200, 6400, 12800,
]);
/** A bare number between these may be a bath's temperature. */
export const [COOLEST_C, WARMEST_C] = [12, 32];
export const [COOLEST_F, WARMEST_F] = [55, 90];

/** Two words that are one thing: `stop bath`. */
export const PHRASES: readonly (readonly [first: string, second: string, as: string])[] = [
  ["where", "is", "whereis"],
  ["where", "are", "whereis"],
  ["wo", "ist", "woist"],
  ["wo", "sind", "woist"],
  ["stop", "bath", "stopbath"],
  ["stopp", "bad", "stoppbad"],
  ["the", "tap", "faucet"],
  ["tap", "water", "tapwater"],
  ["wetting", "agent", "wettingagent"],
  ["wash", "aid", "washaid"],
  ["contact", "sheet", "contactsheet"],
  ["contact", "sheets", "contactsheets"],
  ["resin", "coated", "resincoated"],
  ["rc", "paper", "rcpaper"],
  ["pe", "papier", "pepapier"],
  ["fibre", "paper", "fibrepaper"],
  ["fiber", "paper", "fiberpaper"],
  ["noch", "mal", "nochmal"],
  ["test", "strip", "teststrip"],
  ["test", "strips", "teststrips"],
  ["white", "light", "whitelight"],
  ["weisse", "licht", "whitelight"],
  ["weisses", "licht", "whitelight"],
  ["data", "sheet", "datasheet"],
  ["exposure", "index", "exposureindex"],
  ["clearing", "time", "clearingtime"],
  ["red", "light", "redlight"],
  ["pour", "out", "pourout"],
  ["to", "go", "togo"],
  ["give", "up", "giveup"],
  ["gebe", "auf", "giveup"],
  ["developing", "time", "developmenttime"],
  ["development", "time", "developmenttime"],
  ["hang", "on", "hangon"],
  ["geb", "auf", "giveup"],
  ["go", "back", "goback"],
  ["go", "off", "expired"],
  ["end", "this", "endit"],
  ["end", "my", "endit"],
  ["end", "the", "endit"],
  ["drying", "marks", "watermarks"],
  ["drying", "spots", "watermarks"],
  ["am", "i", "ami"],
  ["bin", "ich", "ami"],
  ["bin", "neu", "binneu"],
  ["pop", "out", "popout"],
  ["im", "new", "imnew"],
  ["kick", "off", "startstart"],
  ["ab", "die", "abdie"],
  ["abdie", "post", "losgehts"],
  ["see", "through", "seethrough"],
  ["end", "it", "endit"],
  ["hor", "auf", "horauf"],
  ["hore", "auf", "horeauf"],
  ["water", "marks", "watermarks"],
  ["mir", "ist", "mirist"],
  ["mir", "wird", "mirwird"],
  ["mich", "geschnitten", "verletzt"],
  ["fertig", "zum", "bereit"],
].map(([first = "", second = "", as = ""]) => [foldWord(first), foldWord(second), foldWord(as)]);
