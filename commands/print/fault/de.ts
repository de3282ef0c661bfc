import type { FaultWords } from "./en.ts";

export const de: FaultWords = {
  ask: (print) =>
    `**Was siehst du auf ${print}?** Sieh ihn dir bei weißem Licht an; wähl, was am besten passt.`,
  look: (word, help) => `${word}: ${help}`,
  causes: (print, look) => `**${print}, ${look}:** abgewogen nach dem, was zu diesem Abzug eingetragen ist.`,
  whichWasIt:
    "Was war es? Wenn du es sagst, lernt der Nächste daraus, und man sieht, wann ein Bad, eine Lampe oder eine Schachtel schuld ist.",
  standings: {
    ready: "in Ordnung",
    exhausted: "verbraucht",
    "out-of-date": "zu alt",
    discarded: "entsorgt",
  },
  findings: {
    "developed-short": (time) => `er war nur ${time} im Entwickler`,
    "developed-long": (time) => `er war ${time} im Entwickler`,
    "developed-full": (time) => `er war ${time} im Entwickler`,
    warm: (temperature) => `der Entwickler hatte ${temperature}`,
    cold: (temperature) => `der Entwickler hatte nur ${temperature}`,
    "temperature-right": (temperature) => `der Entwickler hatte ${temperature}`,
    "developer-bad": (label, standing) => `Entwickler ${label} war ${standing}`,
    "developer-good": (label) => `Entwickler ${label} war in Ordnung`,
    "more-light": (print, stops) => `er bekam ${stops} mehr Licht als ${print}, der gelungen ist`,
    "less-light": (print, stops) => `er bekam ${stops} weniger Licht als ${print}, der gelungen ist`,
    harder: (print) => `die Gradation ist härter als bei ${print}, der gelungen ist`,
    softer: (print) => `die Gradation ist weicher als bei ${print}, der gelungen ist`,
    "others-alike": (count) =>
      count === 1
        ? "ein Abzug von jemand anderem sieht in diesen Tagen genauso aus"
        : `${count} Abzüge von anderen sehen in diesen Tagen genauso aus`,
    fibre: "es ist Barytpapier, das Fixierbad länger hält",
    condenser: "ein Kondensor zeigt Staub stärker und wärmt das Negativ",
  },
  noted: (print, look, cause) => `Bei ${print} notiert: **${look}**. Ursache: ${cause}.`,
  notedUnknown: (print, look) => `Bei ${print} notiert: **${look}**, Ursache unbekannt.`,
  others: "Alle mit Fehler",
  cleared: (print) => `Bei ${print} ist jetzt kein Fehler notiert.`,
  unknownCause: (code) =>
    `Eine Ursache ${code} gibt es nicht. Nimm eine der angebotenen oder \`cause:unknown\`.`,
};
