import type { SinkWords } from "./sink-words.en.ts";

export const sink: SinkWords = {
  title: "Becken",
  next: "Nächste Person",
  who: "Wer bist du?",
  whoLead: "Tipp auf deinen Namen oder trag ihn ein. Wer mit einem eigenen Handy angemeldet ist, nimmt das.",
  add: "Mein Name fehlt",
  addKey: "Eintragen",
  locked: "Von der Lehrkraft gesperrt: Laufende Filme gehen weiter, nichts Neues fängt an.",
  none: "Hier arbeitet gerade niemand. Drück „Nächste Person“.",
  ready: "Bereit",
  plan: "Plan machen",
  more: "Mehr",
  moreOf: (name) => `Mehr für ${name}`,
  done: "Ich bin hier fertig",
  close: "Zurück zu den Dosen",
  gotIt: "Verstanden",
  gotItBy: (name) => `${name}: verstanden`,
  panel: "Geräte am Becken",
  panelLead:
    "Ein gemeinsames Tablet oder Notebook für alle ohne Handy: Wer davorsteht, tippt auf seinen Namen. Es zeigt kein Filmbuch und darf nicht mehr als eine Schülerin oder ein Schüler.",
  open: "Dieses Gerät dazu machen",
  openHint: "Du wirst auf diesem Gerät abgemeldet. Beenden kannst du es unter „Tür“ auf einem anderen.",
  lock: "Sperren",
  unlock: "Entsperren",
  end: "Beenden",
  nobody: "niemand",
};
