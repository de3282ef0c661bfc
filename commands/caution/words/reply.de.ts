import type { ReplyWords } from "./reply.en.ts";

export const de: ReplyWords = {
  titles: {
    mixing: "Chemie ansetzen",
    developing: "Entwickeln",
    fixing: "Fixieren",
    printing: "Schalen, Trockner und Licht",
    waste: "Abfall",
    spill: "Verschüttet und Erste Hilfe",
  },
  lines: {
    mixing: [
      "Handschuhe und Schutzbrille an. Fenster auf oder Lüfter an: etwa 10 Luftwechsel in der Stunde.",
      "Säure ins Wasser, nie Wasser in die Säure.",
      "Nie Säure und Chlorreiniger zusammenbringen: Es entsteht schädliches Gas.",
      "Pulver: kein Durchzug, nicht über der Tüte atmen, und nicht in der Nähe von Schwangeren.",
      "Jede Flasche beschriften: was, wann, von wem. Nie eine Getränkeflasche.",
    ],
    developing: [
      "Film bei völliger Dunkelheit einspulen: Handy, Uhr und Rotlicht aus.",
      "Handschuhe an: Entwicklersubstanzen können die Haut ein Leben lang allergisch machen.",
      "Nichts essen oder trinken im Raum. Hände waschen, bevor du gehst.",
      "Im Auge: 15 Minuten mit fließendem Wasser spülen, sofort die Lehrkraft rufen.",
    ],
    fixing: [
      "Das Fixierbad kommt zurück in seine Flasche: Es wird wieder benutzt, und es enthält Silber.",
      "Saures Fixierbad und Stoppbad riechen nach Schwefeldioxid oder Essig: gut lüften. Mit Asthma sag es vorher der Lehrkraft.",
    ],
    printing: [
      "Zange statt Finger: eine für jede Schale, nie in eine andere. Am Entwickler Gummihandschuhe an.",
      "Deck Schalen ab, die niemand benutzt, Lüfter an. In einem kleinen Raum höchstens vier Personen.",
      "Trag keine volle Schale: schöpf oder heb sie mit dem Schlauch leer. Säure mit viel Wasser aufwischen, nicht mit Papiertüchern.",
      "Ein Trockner für Barytpapier ist heiß (Trommeln laufen mit 82 °C): Hände weg von der Trommel, kein PE-Papier hinein, danach Stecker ziehen.",
      "Vor weißem Licht: Packungen zu, nichts auf den Grundbrettern, und ruf es laut. `/tray lights` warnt alle an den Schalen.",
    ],
    waste: [
      "Gebrauchtes Fixierbad enthält Silber: sammeln, nie weggießen.",
      "Andere Bäder: in den Kanister oder Ausguss, den dein Kurs dafür nimmt. Es gelten die Regeln am Ort, und eine Klärgrube ist kein Kanal.",
      "Abfälle nicht mischen: Säure im Fixierbad setzt Gas frei.",
    ],
    spill: [
      "Sag es laut, damit niemand ausrutscht. Handschuhe an, aufwischen, mit viel Wasser nachspülen.",
      "Auf der Haut: mehrere Minuten spülen. Im Auge: 15 Minuten fließendes Wasser, und sofort die Lehrkraft rufen.",
      "Verschluckt: kein Erbrechen auslösen. Giftnotruf oder Notruf wählen, die Flasche in der Hand.",
    ],
  },
  defer:
    "Das Etikett der Flasche, ihr Sicherheitsdatenblatt und die Regeln der Schule gehen vor. Sagen sie etwas anderes, folge ihnen und frag die Lehrkraft.",
};
