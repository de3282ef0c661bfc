import type { FaultWords } from "./en.ts";

export const de: FaultWords = {
  askKind: (roll) => `**Was sieht an ${roll} falsch aus?** Halt den trockenen Film vor ein Licht.`,
  kinds: {
    light: "Zu hell",
    dark: "Zu dunkel",
    marks: "Flecken oder Streifen",
    colour: "Farbe oder Oberfläche",
  },
  otherKind: "Nichts davon",
  ask: (roll) => `**Was siehst du auf ${roll}?** Halt ihn vor ein Licht; wähl, was am besten passt.`,
  look: (word, help) => `${word}: ${help}`,
  asked: (look, question) => `${look}. ${question}`,
  questions: {
    edge: "**Sieh dir den Filmrand an:** Namen und Zahlen des Herstellers. Dunkel und scharf, schwach oder keine?",
    margin: "**Sieh dir den Rand und die Stege zwischen den Bildern an:** dort klar oder auch grau?",
    place: "**Wie weit reicht es:** überall oder nur stellenweise?",
  },
  choices: {
    dark: "Dunkel",
    faint: "Schwach",
    none: "Keine",
    clear: "Klar",
    grey: "Auch grau",
    everywhere: "Überall",
    patches: "Stellenweise",
  },
  cannotTell: "Weiß ich nicht",
  causes: (roll, look) => `**${roll}, ${look}:** abgewogen nach dem, was im Filmbuch über diesen Film steht.`,
  whichWasIt:
    "Was war es? Wenn du es sagst, lernt der Nächste daraus, und man sieht, wann eine Flasche schuld ist.",
  noted: (roll, look, cause) => `Bei ${roll} notiert: **${look}**. Ursache: ${cause}.`,
  notedUnknown: (roll, look) => `Bei ${roll} notiert: **${look}**, Ursache unbekannt.`,
  others: "Andere wie dieser",
  cleared: (roll) => `Bei ${roll} ist jetzt kein Fehler notiert.`,
  unknownCause: (code) =>
    `Eine Ursache ${code} gibt es nicht. Nimm eine der angebotenen oder \`cause:unknown\`.`,
};
