import type { LightsWords } from "./en.ts";

export const de: LightsWords = {
  notYet: (prints) =>
    `**Noch nicht: ${prints === 1 ? "Ein Abzug ist" : `${prints} Abzüge sind`} nicht fixiert.** Es wurde niemand gewarnt.`,
  openLine: (run, person, until) =>
    `- ${run}, ${person}: ${until === null ? "wartet aufs Weiterlegen" : `fixiert um ${until}`}`,
  andBoxes: "Frag auch nach offenen Packungen und Papier unter den Vergrößerern: Davon weiß ich nichts.",
  allCovered: "Alles ist abgedeckt",
  body: (wait) => `Weißes Licht in ${wait}.`,
  warning: (wait, time) =>
    `**Weißes Licht in ${wait}, um ${time}. Papierpackung zu, nichts auf dem Grundbrett.** Papier offen? Drück auf Warten, und sag es laut.`,
  waitLabel: "Warten",
  wait: (person) => `**Licht auslassen: ${person} hat Papier offen.**`,
  warned: (people, time) =>
    `**${people === 1 ? "1 Person" : `${people} Personen`} an den Schalen gewarnt: weißes Licht um ${time}.** Wer Papier offen hat, kann auf Warten drücken; du hörst es sofort.`,
  nobodyThere: "**Sonst ist niemand an den Schalen, von dem ich weiß.**",
  look: "Ruf es, bevor du einschaltest, und sieh nach: Packungen zu, nichts auf den Grundbrettern.",
  whoHasIt: "Wer hat sie?",
  nobodyAsked: "In den letzten Minuten hat niemand weißes Licht angekündigt. Sag es trotzdem laut.",
  told: (person) => `${person} weiß Bescheid. Sag es auch laut: **warten**.`,
};
