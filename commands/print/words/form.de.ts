import type { Forms } from "../../define.ts";

const print = "Welcher Abzug, etwa V7; ohne Angabe dein neuester";
const enlarger = "Welcher Vergrößerer; ohne Angabe der einzige des Kurses";
const timer = "Feinster Schritt deiner Zeitschaltuhr in Sekunden, wenn nicht der des Vergrößerers: 0,1";

/** Was sich ändern kann. */
const changes = {
  aperture: "Die Blende, etwa 8 auf 11",
  grade: "Filter oder Gradation, etwa 2 auf 3 1/2",
  paper: "Schachtel Papier, etwa 1 auf 2",
  height: "Vom Negativ zum Papier, etwa 40 cm auf 55 cm",
  lens: "Vom Objektiv zum Papier, etwa 30 cm auf 42 cm",
  size: "Format des Abzugs, etwa 18x24 auf 24x30",
  times: "Vergrößerung, etwa 4-fach auf 8-fach: 4 auf 8",
  negative: "Was das Negativ ist; so wird aus Formaten ein Maßstab",
  meter: "Belichtungsmesser auf dem Papier, in Sekunden: 15 auf 12",
  density: "Dichte der Stelle, auf die es ankommt, etwa 1,5 auf 1,9",
  dry: "Nass beurteilt: wie viel dunkler es trocknet, in Prozent: 10",
};

export const forms: Forms = {
  "print gear": {
    summary: "Die Vergrößerer und Papierschachteln des Kurses, mit allem, was man von ihnen weiß",
    options: {},
  },
  "print enlarger": {
    summary: "Einen Vergrößerer angeben: Licht, Objektiv, Zeitschaltuhr; oder ändern, was man von ihm weiß",
    options: {
      enlarger: "Seine Nummer, wie sie daran steht: 1 oder E1",
      name: "Wie der Kurs ihn nennt",
      light: "Wie er das Negativ beleuchtet",
      lens: "Brennweite des Objektivs in mm, etwa 50",
      timer: "Feinster Schritt der Zeitschaltuhr in Sekunden: 0,1, 0,5 oder 1",
      remove: "Von der Liste nehmen",
    },
  },
  "print paper": {
    summary: "Eine Schachtel Papier angeben: Art, Format, Gradation, Charge, Empfindlichkeit",
    options: {
      paper: "Die Nummer der Schachtel, wie sie daran steht: 2 oder X2",
      name: "Was auf der Schachtel steht",
      kind: "Woraus das Papier ist",
      size: "Etwa 18x24 cm oder 8x10 in",
      grade: "Bei fester Gradation, etwa 2; bei variablem Kontrast weglassen",
      lot: "Die Chargennummer des Herstellers",
      speed: "ISO-Empfindlichkeit von Schachtel oder Datenblatt, etwa 200",
      dry: "Um wie viel Prozent es dunkler trocknet, wenn gemessen: 10",
      remove: "Von der Liste nehmen",
    },
  },
  "print measure": {
    summary: "Was Teststreifen gezeigt haben: Licht eines Filters, Empfindlichkeit, Nachdunkeln",
    options: {
      paper: "Die gemessene Schachtel, etwa 2 oder X2",
      grade: "Der Filter, der neben Gradation 2 gemessen wurde: 3 1/2",
      beside: "Die Schachtel, mit der verglichen wurde, etwa 1 oder X1",
      seconds: "Die Zeit, die mit diesem Filter oder Papier dasselbe Grau gab: 12,5",
      was: "Die Zeit mit Gradation 2 oder mit der anderen Schachtel: 10",
      dry: "Um wie viel Prozent weniger Licht trocken so aussah wie der nasse Abzug: 10",
      enlarger: "Mit welchem Vergrößerer der Filter gemessen wurde; sonst jeder",
    },
  },
  "print strip": {
    summary: "Ein Teststreifen: Feld für Feld, was du einstellst und wie viel Licht das Feld dann hat",
    options: {
      base: "Die kürzeste Zeit auf dem Streifen, in Sekunden: 8 oder 5,6",
      step: "Von Feld zu Feld, in Blenden",
      seconds: "Statt Blenden je Feld so viele Sekunden mehr: 5",
      bars: "Wie viele Felder",
      way: "Was die Karte jedes Mal tut",
      enlarger: "Welcher Vergrößerer, wegen seiner Zeitschaltuhr; ohne Angabe der einzige",
      timer,
      paper: "Welche Schachtel Papier, etwa 2 oder X2",
      grade: "Filter oder Gradation: 00, 2, 2 1/2",
      aperture: "Die Blende des Objektivs, etwa 8",
    },
  },
  "print call": {
    summary: "Den Teststreifen ansagen lassen: Licht aus, Karte verschieben, Licht an, Feld für Feld",
    options: {},
  },
  "print read": {
    summary: "Den Teststreifen auswerten: die Zeit des richtigen Felds, oder zwischen zweien",
    options: {
      bar: "Welches Feld stimmt, etwa 4; oder 4-5 für dazwischen",
      harder: "Um so viele Gradationen härter, etwa 0,5; weicher: -0,5",
    },
  },
  "print grade": {
    summary: "Welcher Filter oder welche Gradation ein Negativ von diesem Umfang fasst, nach jeder Quelle",
    options: {
      range: "Dichte der hellsten Stelle im Bild minus der dunkelsten: 1,05; oder 3 1/2 Blenden",
      paper: "Welche Schachtel Papier, etwa 2 oder X2",
    },
  },
  "print log": {
    summary: "Einen Abzug eintragen: Belichtung, Gradation, Papier, Nachbelichtung, Bild und Film",
    options: {
      seconds: "Die Belichtung in Sekunden, etwa 12,5",
      as: "Gemacht wie dieser Abzug, etwa V7: Was du weglässt, gilt wie dort",
      title: "Was darauf ist",
      roll: "Auf welchem Film das Negativ ist, etwa L12",
      frame: "Welches Bild darauf, etwa 12A",
      grade: "Filter oder Gradation: 00, 2, 2 1/2",
      paper: "Welche Schachtel Papier, etwa 2 oder X2",
      burn: "Nachbelichtete Stellen und wie viel: Himmel 1/2, Ecke 3 s",
      dodge: "Abgewedelte Stellen und wie viel: Gesicht 1/3, Hand 20 %",
      enlarger,
      aperture: "Die Blende des Objektivs, etwa 8",
      height: "Vom Negativ zum Papier, etwa 42 cm",
      size: "Format des Abzugs, etwa 18x24; ohne Angabe das des Papiers",
      developer: "Welcher Papierentwickler, etwa House MQ 1+9, oder sein Etikett B3",
      develop: "Wie lange er im Entwickler war, etwa 1:30",
      temp: "Wie warm der Entwickler war, etwa 20C",
      note: "Was du dir merken willst; man findet es mit seinen Wörtern",
    },
  },
  "print again": {
    summary: "Einen Abzug noch einmal: das ganze Rezept, für Papier, Format und Höhe von heute",
    options: {
      print,
      ...changes,
      enlarger: "Der Vergrößerer von heute; ohne Angabe der des Abzugs",
      timer,
    },
  },
  "print find": {
    summary: "Im Buch der Abzüge suchen: Wörter, Person, Film und Bild, Wertung, Fehler, Tage",
    options: {
      words: "Wörter aus Titel, Notiz, Papier und Namen; ihr Anfang genügt",
      person: "Wessen Abzug",
      roll: "Von welchem Film, etwa L12",
      frame: "Von welchem Bild, etwa 12A",
      rating: "Wertung von 1 bis 5",
      fault: "Nur Abzüge mit einem Fehler",
      when: "1.3.2026, 3.2026, heute, letzte Woche, 3 Wochen",
      page: "Seite, ab 1",
    },
  },
  "print show": { summary: "Ein Abzug: das ganze Rezept, und was man von ihm hielt", options: { print } },
  "print compare": {
    summary: "Zwei Abzüge nebeneinander: was an ihnen verschieden ist",
    options: { print: "Der eine, etwa V7; ohne Angabe dein neuester", with: "Der andere, etwa V3" },
  },
  "print rate": {
    summary: "Einen trockenen Abzug bewerten, von 1 (unbrauchbar) bis 5 (so wie gewollt)",
    options: { print, rating: "1 bis 5" },
  },
  "print note": {
    summary: "Eine Notiz zu einem Abzug schreiben; mit ihren Wörtern findet man ihn wieder",
    options: { print, note: "Was du gesehen hast; höchstens 2000 Zeichen" },
  },
  "print fault": {
    summary: "Vom Bild auf dem Abzug zur Ursache, abgewogen nach dem, was eingetragen ist",
    options: {
      print,
      look: "Was du siehst",
      cause: "Welche Ursache es war; oder unknown",
    },
  },
  "print photo": {
    summary: "Das Foto eines Abzugs zeigen, dazulegen oder entfernen",
    options: { print, remove: "Das Foto entfernen", photo: "Das Foto dazu: JPEG oder PNG" },
  },
  "print export": {
    summary: "Das Buch der Abzüge als Datei, CSV oder JSON: alles zu jedem Abzug außer dem Foto",
    options: {
      as: "Was für eine Datei",
      words: "Nur Abzüge mit diesen Wörtern",
      person: "Nur die Abzüge dieser Person",
      when: "1.3.2026, 3.2026, letzte Woche, 3 Wochen",
      before: "Nur ältere Abzüge als dieser: V1200",
    },
  },
  "print time": {
    summary: "Eine Belichtung neu, wenn sich etwas ändert: Format, Höhe, Blende, Gradation, Papier",
    options: {
      seconds: "Die Belichtung bisher, in Sekunden: 12,5",
      ...changes,
      burn: "Stellen zum Nachbelichten und wie viel: Himmel 1/2, Ecke 3 s",
      dodge: "Stellen zum Abwedeln und wie viel: Gesicht 1/3, Hand 20 %",
      enlarger,
      timer,
    },
  },
};
