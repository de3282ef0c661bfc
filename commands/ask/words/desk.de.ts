import type { DeskWords } from "./desk.en.ts";

export const de: DeskWords = {
  bells:
    "**Die Klingel stellt die Lehrkraft: `/class periods days:mo from:14:00 to:15:20`.** Danach richtet sich jeder Plan. Ohne Angaben siehst du, was eingestellt ist.",
  sayAll:
    "**Ein Wort an alle: `/class say text:…` (Lehrkraft).** Es erscheint sofort auf jedem Handy; `/class said` sagt, bei wem es angekommen ist.",
  moreTime:
    "**Länger für alle geht nicht: Im Entwickler hat jeder Film seine eigene Zeit, und länger macht ihn dichter.** Vor dem nächsten Bad darf jeder warten: Die Uhr läuft ab dem Druck auf die Taste. Allen sagst du es mit `/class say text:…` (Lehrkraft).",
  signOut:
    "**Im Raum: Menü, „Tür: Code und Leute“, der Name, „Überall abmelden“ (Lehrkraft).** Die Filme bleiben im Filmbuch. `/class forget` löscht alles, was von jemandem gespeichert ist, für immer.",
  standing:
    "**Ich kenne die Flaschen an ihrer Nummer, nicht an ihrem Platz: Frag eine Hilfskraft.** Welche Nummer es ist:",
  labels:
    "**Zu drucken gibt es nichts: Schreib die Nummer auf die Flasche, etwa B3, mit einem wasserfesten Stift.**",
  byBell:
    "**Ob alle bis zur Klingel fertig werden und wer warten muss: `/class turns` (Lehrkraft oder Hilfskraft).**",
  order: "Die Reihenfolge",
  logFile: "**Als Datei zum Drucken: `/roll export` (Lehrkraft).**",
  otherBottle:
    "**Bevor das Bad drin ist: `/batch take batch:B5 run:R7`.** Die Nummer des Laufs steht auf der Tafel.",
  stopOther:
    "**Der Film von jemand anderem: `/run stop run:R7`, mit der Nummer von der Tafel (Lehrkraft oder Hilfskraft).** Das Filmbuch behält, was getan wurde.",
};
