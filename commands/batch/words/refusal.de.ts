import { isForPaper } from "../../../store/shapes/batch.ts";
import { de as batch } from "./batch.de.ts";
import type { RefusalWords } from "./refusal.en.ts";

export const de: RefusalWords = {
  noneReady: (kind, product) =>
    `Brauchbar angesetzt ist nichts davon: ${product ?? batch.kind[kind]}. Bitte eine Hilfskraft oder die Lehrkraft, etwas anzusetzen (\`/batch mix\`); was da ist, zeigt \`/batch status\`.`,
  nonePaired: (place) =>
    `Kein Fixierbad ${place} ist bereit: Der Kurs fixiert in zwei Bädern. Eine Hilfskraft oder die Lehrkraft bestimmt die Flaschen (\`/batch pair\`) oder lässt die zweite aufrücken (\`/batch rotate\`).`,
  unknown: (typed) => `Eine Flasche ${typed} gibt es nicht. Die Flaschen zeigt \`/batch status\`.`,
  wrongKind: (name, kind) => `${name} ist hier das falsche Bad: Gebraucht wird ${batch.kind[kind]}. `,
  wrongMedium: (name, kind) =>
    isForPaper(kind)
      ? `**${name} ist ein Bad für Film**: Papier kommt nie hinein. Gebraucht wird ${batch.kind[kind]}. `
      : `**${name} ist ein Bad für Papier**: Film kommt nie hinein. Gebraucht wird ${batch.kind[kind]}. `,
  wrongProduct: (name, product, dilution) =>
    `${name} ist hier das falsche Bad: Gebraucht wird ${product}${dilution === null ? "" : ` ${dilution} oder Stammlösung`}. `,
  worn: (label, standing) => `**${label} ist ${standing}**: nicht mehr nehmen. `,
  noRoom: (label, has, needs) =>
    `**In ${label} ist noch Platz für ${has}**, wenn man abzieht, was laufenden Filmen versprochen ist; hier braucht es ${needs}. `,
  nothingElse:
    "Sonst ist nichts bereit: Bitte eine Hilfskraft oder die Lehrkraft, etwas anzusetzen (`/batch mix`).",
  useInstead: (label) => `Nimm stattdessen **${label}**.`,
  mayBeAllowed: " Die Lehrkraft oder eine Hilfskraft kann es dir mit Namen erlauben (`/batch allow`).",
  take: (label) => `${label} nehmen`,
  wornAtPour: (label, why) => `**Nimm ${label} nicht**: ${why}. `,
  keepInWater: "Lass den Film im Wasser, das schadet ihm nicht, und sag es der Lehrkraft.",
  takeInstead: (label) => `Nimm stattdessen **${label}**; bis dahin ist der Film im Wasser sicher.`,
  ifIn: " Ist es schon drin, muss es eine Hilfskraft oder die Lehrkraft erlauben (`/batch allow`).",
};
