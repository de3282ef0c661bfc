import type { BoardWords, CueWords, HearingWords } from "./call-words.en.ts";

/* The words of calls, of their sound, and of the board on the wall, in German. */

export const cue: CueWords = {
  word: "An alle",
  gotIt: "Verstanden",
  notYet: "Noch nicht",
  left: "übrig in diesem Schritt",
  late: (long) => `${long} zu spät`,
  lateDoIt: (long) => `${long} zu spät: jetzt tun`,
  onlyLeft: (long) => `nur noch ${long}`,
  ago: (long) => `vor ${long}`,
  spokenLate: (seconds) => (seconds === 1 ? "1 Sekunde zu spät." : `${seconds} Sekunden zu spät.`),
  spokenLeft: (seconds) => (seconds === 1 ? "Nur noch 1 Sekunde." : `Nur noch ${seconds} Sekunden.`),
  spokenLateMinutes: (minutes) => (minutes === 1 ? "1 Minute zu spät." : `${minutes} Minuten zu spät.`),
  many: (count) => (count === 1 ? "1 weiteres Signal" : `${count} weitere Signale`),
  typing: "Du schreibst gerade:",
};

export const hearing: HearingWords = {
  held: "Für den Ton einmal tippen",
  paused: "Der Ton wurde angehalten; der Film läuft weiter. Für den Ton tippen.",
  none: "Dieses Gerät gibt keinen Ton: Sieh auf den Bildschirm.",
};

export const board: BoardWords = {
  title: "Tafel",
  none: "Keine Dose läuft.",
  join: "Anmelden",
  late: "zu spät",
  stayOn: "Diesen Bildschirm anlassen",
  toCome: (title) => `${title} kommt noch`,
  staffOnly: "Die Tafel ist für Lehrkraft und Hilfskräfte. Bitte die Lehrkraft, sie zu öffnen.",
};
