import type { AdjustWords } from "./adjust.en.ts";

export const de: AdjustWords = {
  parts: {
    aperture: "Blende",
    grade: "Gradation",
    paper: "Papier",
    height: "Kopf",
    lens: "Objektiv zum Papier",
    size: "Format",
    times: "vergrößert",
    meter: "Belichtungsmesser",
    density: "Dichte",
    dry: "Nachdunkeln",
  },
  change: (from, to) => `${from} auf ${to}`,
  percent: (percent) => `${percent} %`,
  lot: (lot) => `(Charge ${lot})`,
  times: (times) => `${times}-fach`,
  part: (name, change, stops, basis) => `${name} ${change}: ${stops} (${basis})`,
  bases: {
    series: "genau, nach der Blendenreihe",
    square: "Licht nimmt mit dem Quadrat des Abstands ab",
    law: "Maßstab plus 1, im Quadrat",
    area: "nach den Flächen der Abzüge",
    measured: "vom Kurs gemessen",
    rule: "veröffentlicht: 4 und 5 brauchen doppelt so viel Licht",
    speed: "nach den Empfindlichkeiten der Papiere",
    unknown: "nicht bekannt, nichts eingerechnet",
    meter: "wie gemessen",
    density: "10 hoch den Unterschied",
    dry: "wie angegeben",
  },
  lawDiffuse: "Dieses Gesetz gilt für diffuses Licht, wie es dein Vergrößerer hat.",
  lawCondenser:
    "**Kondensorlicht hält sich nicht an dieses Gesetz**: Nimm die Zeit als Anfang, und mach einen Teststreifen.",
  lawEither:
    "Dieses Gesetz gilt für diffuses Licht. Mit Kondensor gilt es nicht: Mach dort einen Teststreifen.",
  rival: (seconds) =>
    `Die einfache Flächenregel sagt ${seconds}: etwas zu viel, am meisten bei kleinen Abzügen.`,
  areaOnly:
    "Mit `negative:` wüsste ich den Maßstab. Die Flächen allein ergeben etwas zu viel Licht: Mach einen Teststreifen.",
  filtersDiffer:
    "Über Filter sind sich die Quellen nicht einig: Gleich schnell sind sie nur beim Licht des Herstellers. Bei anderem Licht brauchte jemand von 2 auf 1 1/2 das 1,22-fache. Miss es bei euch: `/print measure`.",
  unknownSpeed:
    "Von einem der beiden Papiere ist keine Empfindlichkeit bekannt: Mach auf beiden einen Teststreifen, und gib das Ergebnis an: `/print measure`.",
  dryPublished:
    "Veröffentlicht sind für das Nachdunkeln beim Trocknen 8 bis 12 %, einmal bis 15. Miss es an eurem Papier.",
  fromWhat: (option) =>
    `Sag auch, was \`${option}\` vorher war, etwa \`${option}:… auf …\`, oder nenn einen Abzug, von dem es ausgeht.`,
  oneEnlargement: (options) => `${options} sagen alle, wie groß das Bild wird. Eines davon genügt.`,
  headLow: (least, lensMm) =>
    `Ein Objektiv von ${lensMm} mm zeichnet erst ab ${least} scharf. \`height\` ist vom Negativ zum Papier: Miss noch einmal.`,
};
