import { saySeconds } from "../../speech/wording.ts";
import type { TrayWords } from "./tray.en.ts";

export const de: TrayWords = {
  noLines:
    "Der Kurs hat noch keine Schalenreihe. Eine Hilfskraft oder die Lehrkraft richtet sie ein: `/tray set developer:…`.",
  unknownLine: (number, known) => `Eine Schalenreihe ${number} gibt es nicht. Der Kurs hat ${known}.`,
  prints: (count) => (count === 1 ? "1 Abzug" : `${count} Abzüge`),
  papers: { "resin-coated": "PE-Papier", fibre: "Barytpapier" },
  noSuchPaper: (typed) =>
    `Ein Papier ${typed} gibt es nicht. Schreib resin-coated (PE) oder fibre (Baryt) oder die Nummer deiner Schachtel, etwa X2: \`/print gear\` zeigt sie.`,
  cautions: {
    WARN_TRAY_COLD: (temperature) =>
      `Der Entwickler hat ${temperature}: Unter 16 °C arbeitet Hydrochinon kaum noch. Wärm ihn erst an.`,
    WARN_TRAY_WARM: (temperature) =>
      `Der Entwickler hat ${temperature}: Warmer Entwickler macht Schleier und färbt gelb. Kühl ihn ab.`,
    WARN_TRAYS_APART: (degrees) =>
      `Die Schalen liegen ${degrees} °C auseinander: Mehr als 2,8 °C Unterschied sollen es nicht sein.`,
    WARN_LEAST_TIME: (seconds) =>
      `Die Zeit des Entwicklers ist kürzer, als der Versuch des Kurses erlaubt: Volles Schwarz braucht ${saySeconds(seconds)}.`,
    WARN_STAIN: (seconds) => `Ab ${saySeconds(seconds)} begann es im Versuch des Kurses zu verfärben.`,
    WARN_ONE_BATH:
      "Ein einziges Fixierbad für Abzüge, die halten sollen: Es endet bei 0,5 g Silber im Liter, lange bevor man es ihm ansieht. Zwei Bäder nacheinander reichen weiter.",
    WARN_SILVER_UNKNOWN: (batch, low, high) =>
      `Das Silber in ${batch} hat niemand geprüft: Nach den Abzügen sind es ${low} bis ${high} g/l, eine Faustregel. Für Abzüge, die halten, miss es mit einem Silber-Teststreifen: \`/batch test\`.`,
    WARN_FILM_CALLS: (run) =>
      `Dein Film ${run} ruft dich, bevor diese Abzüge fixiert sind: Sie können dann nicht warten, und der Film auch nicht. Bitte jemanden, die Abzüge weiterzulegen.`,
    NOTE_DRYER:
      "PE-Papier kommt nie in eine heiße Trockentrommel: Es schmilzt fest. Häng es auf oder leg es auf ein Sieb.",
    NOTE_TRAYS:
      "Handschuhe an, für jedes Bad eine eigene Zange, die in kein anderes kommt: Finger wärmen die Bäder und verschleppen sie.",
  },
};
