import type { ContactWords } from "./en.ts";

const strips = (count: number): string => `${count} Streifen`;

export const de: ContactWords = {
  nothingToLay:
    "Diese Filme haben kein Bild, das sich legen lässt: Alle sind verloren, oder sie wurden nie geschnitten.",
  tooManyRolls: (most) => `Höchstens ${most} Filme auf einmal. Mach erst von einigen einen Kontaktbogen.`,
  paperSmall: (paper, widthMm, heightMm) =>
    `**${paper} ist zu klein**: Ein Streifen braucht ${widthMm} x ${heightMm} mm. Nenn größeres Papier (\`size:30x40\`), oder schneide kürzere Streifen.`,
  noEnlarger:
    "Die Anordnung, ohne Belichtung: Noch ist kein Vergrößerer eingetragen. Das macht eine Hilfskraft oder die Lehrkraft mit `/print enlarger`.",
  whichEnlarger: "Welcher Vergrößerer? Nenn ihn für die Belichtung: `enlarger:1`.",
  noStanding: (name) =>
    `**${name} hat noch keine feste Belichtung**: Mach einen Teststreifen mit klarem Filmrand, dann \`/contact exposure\`.`,
  expose: (setting, name) => `${setting}: die feste Belichtung von ${name}.`,
  corrected: (setting, before, stops, name) => `${setting}: ${stops} gegen die festen ${before} von ${name}.`,
  untried: "Diese feste Belichtung ist gerechnet, nicht probiert.",
  short: "Unter 2 s glüht eine Lampe noch auf: besser eine kleinere Blende.",
  laid: (rolls, count, paper, sheets, isWide) =>
    `${rolls}: ${strips(count)} auf ${sheets === 1 ? "einem Blatt" : `${sheets} Blättern`} ${paper}, ${isWide ? "im Querformat" : "im Hochformat"}. Schicht nach unten, auf die Schicht des Papiers, unter sauberes Glas.`,
  sleevesIn:
    "Durch die Hülle wird es etwas weicher; was eine Hülle dazugibt, ist geschätzt (12 mm längs, 6 mm quer): Leg deine erst einmal hin.",
  sleevesOut: "Die Streifen liegen Rand an Rand. Fass sie nur am Rand an.",
  drawn: (most) => `Gezeichnet sind die ersten ${most} Blätter.`,
  marks: (roll, marks) => `${roll}: ${marks}.`,
  photo: "Foto vom Kontaktbogen",
  picture: {
    title: (paper, number, of) => `Kontaktbogen, ${paper}${of === 1 ? "" : `, ${number} von ${of}`}`,
    strips: (roll, list, marks) =>
      `${roll} Bilder ${list}${marks === 0 ? "" : `, ${marks === 1 ? "1 Zeichen" : `${marks} Zeichen`}`}`,
    legend: { best: "bestes", print: "abziehen", unsharp: "unscharf" },
  },
};
