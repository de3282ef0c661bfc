import type { ReturningWords } from "./returning-words.en.ts";

export const returning: ReturningWords = {
  been: "Ich war schon hier",
  new: "Ich bin neu hier",
  lead: "Dein altes Gerät zeigt dir unter Menü, Neues Handy einen Code. Ist es weg, gibt dir eine Hilfskraft oder die Lehrkraft einen.",
  code: "Dein Code",
  codeHint: "Sechs Buchstaben und Ziffern, wie ABC-1DE. Er gilt einmal, zehn Minuten lang.",
  goOn: "Weitermachen, wo ich war",
  menu: "Neues Handy",
  title: "Neues Handy",
  show: (name) => `Dein Code, ${name}`,
  showFor: (name) => `Code für ${name}`,
  until: (time) => `für ein einziges Mal, bis ${time}`,
  how: "Scann das mit dem anderen Gerät. Oder öffne dort dieselbe Seite, drück „Ich war schon hier“ und tipp den Code ein.",
  stays: "Dieses Gerät bleibt angemeldet: Melde es unter Menü ab, wenn du es nicht mehr brauchst.",
  onlyThem: (name) => `Gib ihn niemand anderem: Wer ihn eintippt, ist ${name}.`,
  another: "Anderer Code",
  forThem: "Neues Handy",
  leaveRun: "Ein Film läuft noch",
  leaveRunLead:
    "Meldest du dich ab, kommen auf diesem Gerät keine Signale mehr. Das Bad wirkt weiter: Halte erst dein anderes Gerät bereit.",
  leaveAnyway: "Trotzdem abmelden",
  stay: "Bleiben",
};
