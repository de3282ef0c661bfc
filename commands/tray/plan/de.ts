import type { PlanWords } from "./en.ts";

export const de: PlanWords = {
  byTime: (time, bath, temperature) => `**${time}** in ${bath} bei ${temperature}.`,
  byFactor: (factor, bath, temperature, least) =>
    `**${factor}-mal das erste Erscheinen** in ${bath} bei ${temperature}, nie unter ${least}.`,
  what: (prints, size, paper, box) =>
    `${prints === 1 ? "1 Abzug" : `${prints} Abzüge`} ${size}, ${paper}${box === null ? "" : ` (Schachtel ${box})`}.`,
  planOf: (plan, line) => `${plan}, Schalen ${line}.`,
  from: (bottle) => `Schale ${bottle}`,
  liftAt: (time) => `bei ${time} herausheben und abtropfen lassen`,
  neverShorter: (least) =>
    `Schaukle jede Schale ständig. Nie vor ${least} aus dem Entwickler: Ein zu früh herausgenommener Abzug hat kein volles Schwarz und ist fleckig. Schon zu dunkel? Lass ihn drin, und belichte den nächsten halb so lang.`,
  start: "Start",
  restsOn: "Worauf das beruht",
  timeRefused: (temperature, seconds, at) =>
    `Bei ${temperature} bräuchte dieser Entwickler ${seconds}: Seine Zeiten gelten für ${at}. Bring die Schale näher dorthin.`,
  tooMuchSilver: (label, measured, low, high, limit) =>
    `**${label} enthält ${measured ?? `${low} bis ${high}`} g Silber im Liter${measured === null ? ", nach den Abzügen, die hindurchgingen" : ""}**: Für Barytabzüge, die halten, endet dieses Bad bei ${limit} g/l. Nimm frisches Fixierbad oder zwei Bäder; was nur zum Ansehen ist, darf hinein.`,
  workPrint: "Ein Arbeitsabzug",
};
