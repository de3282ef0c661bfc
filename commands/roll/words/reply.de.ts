import type { ReplyWords } from "./reply.en.ts";

export const de: ReplyWords = {
  head: (roll, person, on) => `**${roll}** ${person}, ${on}`,
  headStopped: (roll, person, on, reason) =>
    `**${roll}** ${person}, ${on}, abgebrochen${reason === "" ? "" : `: ${reason}`}`,
  baths: (film, exposureIndex, developer, temperature, tank, batches) =>
    `${film} bei EI ${exposureIndex}, ${developer}, ${temperature}${tank === null ? "" : `, Dose ${tank}`}${batches.length === 0 ? "" : `, ${batches.length === 1 ? "Flasche" : "Flaschen"} ${batches.join(" ")}`}`,
  notReached: (step) => `${step}: nicht erreicht`,
  begun: "begonnen",
  step: (step, took, planned) => `${step}: ${took}${planned === null ? "" : ` (geplant ${planned})`}`,
  asPlanned: "Wie geplant entwickelt.",
  short: (percent) =>
    `**${percent} % weniger entwickelt als geplant**, nach gemessenen Zeiten und Temperaturen.`,
  beyond: (percent) =>
    `**${percent} % mehr entwickelt als geplant**, nach gemessenen Zeiten und Temperaturen.`,
  otherwise: "**Anders als geplant**",
  someStep: "Schritt",
  earlier: (step, by) => `${step}: Eingießen ${by} früher gesetzt`,
  later: (step, by) => `${step}: Eingießen ${by} später gesetzt`,
  newTemperature: (step, temperature, from, to) =>
    `${step}: ${temperature} gemessen, aus ${from} wurden ${to}`,
  cutShort: (step, by) => `${step}: ${by} zu kurz`,
  overrun: (step, by) => `${step}: ${by} zu lang`,
  calls: (late, missed) => `Signale: ${late} verspätet, ${missed} verpasst.`,
  fault: (fault, cause) => `Fehler: ${fault}.${cause === undefined ? "" : ` Ursache: ${cause}.`}`,
  rating: (rating) => `Wertung: ${rating} von 5.`,
  note: (note) => `Notiz: ${note}`,
  contact: "Kontaktbogen",
  lookForCause: "Ursache eines Fehlers suchen",
  noted: (roll) => `Bei ${roll} notiert. Mit diesen Wörtern findest du den Film jetzt.`,
  rated: (roll, rating) => `${roll} hat die Wertung ${rating} von 5.`,
  unknownRoll: (typed) => `Einen Film ${typed} gibt es nicht. Such ihn mit \`/roll find\`.`,
  notYourRoll: "Zu diesem Film schreiben nur sein Besitzer, eine Hilfskraft oder die Lehrkraft.",
  noRollYet: "Im Filmbuch steht noch kein Film von dir. Wenn ein Lauf endet, kommt einer hinein.",
  picture: {
    caption: "gefüllt: wie es lief; Umriss: wie geplant; Minuten ab dem ersten Bad",
    notReached: "nicht erreicht",
    begun: "begonnen",
    altNotReached: (step) => `${step}: nicht erreicht`,
    altStep: (step, took, planned) => `${step}: ${took}${planned === null ? "" : ` von ${planned}`}`,
    alt: (roll, steps) => `${roll}, wie es lief: ${steps}.`,
  },
};
