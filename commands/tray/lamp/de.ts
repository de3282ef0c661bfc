import { formatNumber } from "../../speech/wording.ts";
import type { LampWords } from "./en.ts";

export const de: LampWords = {
  tooMany: (most) => `Für den Kurs sind schon ${most} Dunkelkammerlichter notiert, mehr haben nicht Platz.`,
  beyondLongest: (longest) =>
    `Eine Münze sieht man bei einer der Stufen, die du versucht hast, bis ${formatNumber(longest)} min. Waren es andere, sag \`longest:\` und \`shortest:\`.`,
  unsafe: (lamp) =>
    `**Das Dunkelkammerlicht ${lamp} ist nicht sicher: Öffne darunter kein Papier.** Schon die kürzeste Stufe ist verändert.`,
  safe: (time, lamp) =>
    `**${time} im Ganzen unter dem Dunkelkammerlicht ${lamp}**: die Hälfte der Zeit, die zuerst etwas verändert.`,
  atLeast: (time, lamp) =>
    `**Mindestens ${time} im Ganzen unter dem Dunkelkammerlicht ${lamp}**: Keine Stufe ist verändert.`,
  mend: "Häng es weiter weg (0,9 bis 1,8 m), nimm eine schwächere Birne (7,5 bis 25 W, wie angegeben), such nach Rissen im Filter, und sieh nach seiner Art: Hellbernstein für Vergrößerungspapier, Rot für nur blauempfindliches. Dann prüf noch einmal.",
  adds: "Es zählt die ganze Zeit außerhalb der Packung, vor und nach der Belichtung: Sie summiert sich.",
  next: (date) =>
    `Nächste Probe: ${date}, und immer, wenn Birne, Filter oder Papier wechseln. Der Kurs erfährt es, wenn sie fällig ist.`,
  rests:
    "_Nach der Anleitung eines Filmherstellers: Sicher ist höchstens die halbe Zeit der ersten sichtbaren Veränderung auf Papier mit hellem Grau. US Navy NAVEDTRA 14209 verlangt keinen Schleier in der doppelten Verarbeitungszeit, auf unbelichtetem Papier: Das übersieht stumpfe Lichter. Eine Faustregel sagt 4 min bei 1,2 m._",
  again: "Noch einmal prüfen",
  none: "Noch ist kein Dunkelkammerlicht geprüft. Unter einem ungeprüften Licht kann Papier unbemerkt seine Lichter verlieren.",
  test: "Eines prüfen",
  testOne: (lamp) => `${lamp} prüfen`.slice(0, 80),
  line: (lamp, safe, tested, next, isDue) =>
    `- **${lamp}**: ${safe === null ? "**nicht sicher**" : `sicher für ${safe} im Ganzen`}, geprüft am ${tested}; ${isDue ? `**die nächste Probe war am ${next} fällig**` : `nächste Probe am ${next}`}.`,
};
