/*
 * What a plan keeps as text: the rules its numbers rest on, and the sources of those, the invented sheets' among them. It is
 * kept in English, whoever made the plan, and said in German by this table; names of publications, and what people wrote
 * into a sheet, stay as they are.
 */
const MOVEMENT =
  "Faustregel, aus dem Gedächtnis: ständiges Bewegen kürzt die Zeit um bis zu 15 %, die Rotationstrommel eines Herstellers um 0 bis 28 %; 30 s statt 60 s zwischen den Bewegungen machen 7-30 % aus";
/** As plans had it that were made before the spread was measured. */
const EARLIER_MOVEMENT =
  "Faustregel, aus dem Gedächtnis: ständiges Bewegen kürzt die Zeit um bis zu 15 %; 30 s statt 60 s zwischen den Bewegungen machen 10-15 % aus";
const MORE = "mehr Bewegung als auf dem Datenblatt, also weniger Zeit";
const LESS = "längere Ruhe als auf dem Datenblatt, also mehr Zeit";

const GERMAN: Readonly<Record<string, string>> = {
  "an acid stop works for 30 to 60 s": "ein saures Stoppbad wirkt 30 bis 60 s",
  "two fills of water in place of a stop bath": "zwei Füllungen Wasser statt eines Stoppbads",
  "running water halts development in about 30 s": "fließendes Wasser hält die Entwicklung in etwa 30 s an",
  "rinse 30 s, wash aid 2 min": "30 s spülen, 2 min Wässerungshilfe",
  "wetting agent, the class's time": "Netzmittel, die Zeit des Kurses",
  "drying, the class's time": "Trocknen, die Zeit des Kurses",
  "strips that fit the class's sleeves: common practice, no source":
    "Streifen, die in die Hüllen des Kurses passen: übliche Praxis, ohne Quelle",
  "the middle time of the films in the tank, which lie within 10 % of each other":
    "die mittlere Zeit der Filme in der Dose, die höchstens 10 % auseinander liegen",
  "Kodak F-4016: 10 % is the smallest correction": "Kodak F-4016: 10 % ist die kleinste Korrektur",
  "more time in a used developer": "mehr Zeit in gebrauchtem Entwickler",
  "allowance for the room": "Ausgleich für den Raum",
  "Newton's law of cooling, this tank as measured":
    "Newtons Abkühlungsgesetz, diese Dose, wie sie gemessen wurde",
  "Newton's law of cooling, our estimate of a tank in still air":
    "Newtons Abkühlungsgesetz, unsere Schätzung für eine Dose in ruhender Luft",
  "twice the clearing time": "das Doppelte der Klärzeit",
  "three times the clearing time": "das Dreifache der Klärzeit",
  "practitioners' pages, for tabular-grain film": "Seiten aus der Praxis, für Film mit Flachkristallen",
  "the house minimum of fixing": "die Mindestzeit des Kurses zum Fixieren",
  "two fixing baths, half the time in each": "zwei Fixierbäder, je die halbe Zeit",
  "a practitioner's page: 3 to 5 min in each in place of 5 to 10":
    "Seite eines Praktikers: je 3 bis 5 min statt 5 bis 10",
  "longer in a cold fixer": "länger in kaltem Fixierbad",
  "fill and empty 10 times": "10-mal füllen und leeren",
  "fill and empty 5 times": "5-mal füllen und leeren",
  "derived from US Army SS0509-8, no source of its own":
    "abgeleitet aus US Army SS0509-8, ohne eigene Quelle",
  "5 min after a wash aid": "5 min nach einer Wässerungshilfe",
  "the house minimum of washing; handbooks ask for 20 to 30 min of running water":
    "die Mindestzeit des Kurses zum Wässern; Handbücher verlangen 20 bis 30 min fließendes Wasser",
  "20 min of running water, a full change every 3 min":
    "20 min fließendes Wasser, alle 3 min einmal ganz gewechselt",
  "US Navy NAVEDTRA 14209; US Army SS0509-8 has 30 min":
    "US Navy NAVEDTRA 14209; US Army SS0509-8 hat 30 min",
  "the house minimum of washing": "die Mindestzeit des Kurses zum Wässern",
  "longer in cold water": "länger in kaltem Wasser",
  // As plans made before the direction was named have it.
  "rule of thumb, from memory: continuous movement cuts the time by up to 15 %; 30 s against 60 s between bursts is worth 10-15 %":
    EARLIER_MOVEMENT,
  "the class's usual": "wie im Kurs üblich",
  "invented for the demo": "für die Demo erfunden",
  "invented for the demo, not a real time": "für die Demo erfunden, keine echte Zeit",
  "rule of thumb: published one-stop steps run from no change (Kodak F-4043) to +50 % (Horenstein, as quoted in a class handout)":
    "Faustregel: veröffentlichte Schritte um eine Blende reichen von keiner Änderung (Kodak F-4043) bis +50 % (Horenstein, nach einem Kursblatt)",
  "more movement than the sheet's, so less time: rule of thumb, from memory: continuous movement cuts the time by up to 15 %; 30 s against 60 s between bursts is worth 10-15 %": `${MORE}: ${EARLIER_MOVEMENT}`,
  "longer rests than the sheet's, so more time: rule of thumb, from memory: continuous movement cuts the time by up to 15 %; 30 s against 60 s between bursts is worth 10-15 %": `${LESS}: ${EARLIER_MOVEMENT}`,
  "more movement than the sheet's, so less time: rule of thumb, from memory: continuous movement cuts the time by up to 15 %, and a maker's rotary tube by none to 28 %; 30 s against 60 s between bursts is worth 7-30 %": `${MORE}: ${MOVEMENT}`,
  "longer rests than the sheet's, so more time: rule of thumb, from memory: continuous movement cuts the time by up to 15 %, and a maker's rotary tube by none to 28 %; 30 s against 60 s between bursts is worth 7-30 %": `${LESS}: ${MOVEMENT}`,
};

export const STORED: ReadonlyMap<string, string> = new Map(Object.entries(GERMAN));

/** The text in German where it is one of ours: also the source of a time nobody gave one for, `entered by Iris`. */
export function germanOf(text: string): string {
  return STORED.get(text) ?? text.replace(/^entered by /, "eingetragen von ");
}
