import type { Forms } from "../../define.ts";

/** The forms of every bottle command, in German. */
const BOTTLE = "Welche Flasche, zum Beispiel B3";
const NOTE = "Eine Notiz";

export const forms: Forms = {
  "batch mix": {
    summary: "Eine frisch angesetzte Flasche notieren; was fehlt, gilt wie beim letzten Mal",
    options: {
      kind: "Wofür sie ist",
      product: "Name auf der Packung",
      volume: "Wie viel angesetzt ist, zum Beispiel 2 l",
      dilution: "Konzentrat + Wasser, zum Beispiel 1+4, oder stock (Stammlösung)",
      clearing: "Fixierbad: wie lang ein Filmschnipsel klärt, zum Beispiel 45 s",
      bottle: "Was in die Flasche passt, wenn es mehr ist, als darin ist",
      capacity: "Wie viel es schafft, etwa 20 Filme/l, 50 Blatt/l (20x25 cm) oder 1600 sq in/l",
      tabular: "Dasselbe für Flachkristallfilm oder Barytpapier, wenn es weniger ist: 10 Filme/l",
      silver: "Fixierbad: Silber, bei dem Schluss ist, mit Teststreifen, Gramm je Liter, wie 4",
      replenish: "Entwickler: Regenerat für jeden Film, zum Beispiel 70 ml; er wird dann zurückgegossen",
      full: "Haltbarkeit in voller Flasche, zum Beispiel 6 Monate",
      part: "Haltbarkeit in angebrochener Flasche, zum Beispiel 1 Monat",
      use: "Wie sie benutzt wird",
      source: "Woher diese Angaben sind",
      by: "Wer angesetzt hat; du, wenn es fehlt",
      mixed: "Wann, wenn nicht jetzt: gestern, 31.5.2026",
    },
  },
  "batch status": {
    summary: "Jede Flasche: was übrig ist, wie alt, wie schnell sie klärt, wie lange sie reicht",
    options: { batch: "Nur diese Flasche, zum Beispiel B3" },
  },
  "batch ledger": {
    summary: "Das Flaschenbuch einer Flasche, Zeile für Zeile: angesetzt, benutzt, geprüft, aufgefüllt",
    options: { batch: BOTTLE, page: "Seite; die neueste, wenn sie fehlt" },
  },
  "batch test": {
    summary: "Eine Probe notieren: Klärzeit eines Filmschnipsels, pH-Papier, Silber-Teststreifen",
    options: {
      batch: BOTTLE,
      clearing: "Bis ein Schnipsel unentwickelter Film klar ist, zum Beispiel 0:45",
      ph: "pH mit Papier, zum Beispiel 5.5",
      silver: "Silber mit Teststreifen, Gramm je Liter, zum Beispiel 3.5",
      note: "Was du sonst siehst: gelb, trüb, Geruch",
    },
  },
  "batch topup": {
    summary: "Notieren, was an frischem Bad oder Regenerat in eine Flasche kam, und was dafür herauskam",
    options: {
      batch: BOTTLE,
      add: "Was dazukam, zum Beispiel 300 ml",
      as: "fresh: so verdünnt wie in der Flasche; replenisher: Regenerat, wo es beim Ansetzen angegeben ist",
      remove: "Gebrauchtes Bad, das vorher herauskam, zum Beispiel 300 ml",
      to: "Wohin das kam",
      note: NOTE,
    },
  },
  "batch discard": {
    summary: "Notieren, dass eine Flasche oder ein Teil davon entsorgt ist, und wohin",
    options: {
      batch: BOTTLE,
      to: "Wohin es kam",
      ml: "Wie viel, wenn nicht alles",
      note: "Warum, oder eine Notiz",
    },
  },
  "batch correct": {
    summary: "Das Flaschenbuch mit einer neuen Zeile richtigstellen: eine zurücknehmen, ml oder Filme ändern",
    options: {
      batch: BOTTLE,
      reason: "Warum; das bleibt im Flaschenbuch",
      line: "Nummer der Zeile, die nicht stimmt",
      ml: "ml mehr in der Flasche, als im Flaschenbuch stehen; unter 0: weniger",
      rolls: "Filme mehr hindurch, als im Flaschenbuch stehen; unter 0: weniger",
    },
  },
  "batch allow": {
    summary:
      "Jemandem ein verbrauchtes Bad für eine Dose erlauben, in deinem Namen; steht dann im Flaschenbuch",
    options: {
      batch: BOTTLE,
      reason: "Warum; das bleibt im Flaschenbuch",
      person: "Wer es darf; du, wenn es fehlt",
    },
  },
  "batch take": {
    summary: "Eine andere Flasche nehmen für ein Bad deines Laufs, das noch nicht drin ist",
    options: {
      batch: "Welche Flasche, zum Beispiel B5",
      run: "Welcher Lauf, zum Beispiel R7; deiner, wenn du nur einen hast",
    },
  },
  "batch waste": {
    summary: "Gesammeltes Fixierbad, das Silber darin und was abgegeben wurde",
    options: {},
  },
  "batch handover": {
    summary: "Notieren, dass das gesammelte Fixierbad abgegeben ist, an wen und wann",
    options: {
      to: "Wer es genommen hat: die Sammelstelle, eine Scheideanstalt",
      ml: "Wie viel, wenn nicht alles, zum Beispiel 5 l",
      date: "Wann, wenn nicht heute: 31.5.2026",
      note: "Nummer der Quittung, oder eine Notiz",
    },
  },
  "batch pair": {
    summary: "In zwei Bädern fixieren: welche Flasche das erste und welche das zweite ist",
    options: {
      first: "Die Flasche, in der Film klärt, zum Beispiel B3",
      second: "Die Flasche, in der er fertig fixiert, zum Beispiel B4: die frischere",
    },
  },
  "batch rotate": {
    summary: "Zwei Fixierbäder: das erste kommt weg, das zweite rückt auf, ein frisches wird zweites",
    options: {
      fresh: "Die frisch angesetzte Flasche, zum Beispiel B5",
      first: "Das erste Bad, das wegkommt, wo es mehrere Paare gibt",
      to: "Wohin das alte kommt",
      note: NOTE,
    },
  },
  "batch shelf": {
    summary: "Welche Konzentrate und Pulver der Kurs hat",
    options: {},
  },
  "batch restock": {
    summary: "Notieren, was ins Regal kam, oder richtigstellen, wie viel noch da ist",
    options: {
      product: "Name auf der Packung",
      packs: "Wie viele kamen (unter 0: gingen)",
      left: "Was insgesamt noch da ist, um das Regal richtigzustellen, zum Beispiel 750 ml",
      kind: "Wofür es ist; beim ersten Mal nötig",
      size: "Eine Flasche Konzentrat, oder was eine Packung Pulver ergibt; beim ersten Mal nötig",
      form: "Was in der Packung ist",
      dilution: "Gebrauchslösung, zum Beispiel 1+4; bei Pulver: stock",
    },
  },
};
