import { formatMl, saySeconds } from "../../speech/wording.ts";
import type { Tank } from "../../../store/shapes/tank.ts";
import type { ReplyWords } from "./reply.en.ts";

const size = ({ reels, volumeMl, format }: Tank): string =>
  `${reels === 1 ? "1 Spirale" : `${reels} Spiralen`}, ${formatMl(volumeMl)}, ${format === "any" ? "jedes Format" : format}`;
const tanks = (count: number): string => (count === 1 ? "1 Dose" : `${count} Dosen`);

export const de: ReplyWords = {
  somebody: "jemand",
  tank: (tank) => `**Dose ${tank.number}**: ${size(tank)}`,
  cools: (seconds) => `63 % des Wegs zum Raum in ${saySeconds(seconds)}`,
  fault: (condition) => `Mangel: ${condition}`,
  free: "frei",
  inUse: (use) => `belegt von ${use}`,
  none: "Der Kurs hat noch keine Dose. Die Lehrkraft nimmt sie auf: `/tank add numbers:1-12 reels:2 volume:500 ml`.",
  freeOf: (free, count) =>
    `**${free} von ${count}** ${count === 1 ? "Dose" : "Dosen"} ${free === 1 ? "ist" : "sind"} frei und in Ordnung.`,
  added: (count, numbers, each) =>
    `**${tanks(count)}**: ${numbers} (${count === 1 ? "" : "je "}${each ? size(each) : ""}).`,
  setAnew: (numbers) => `Davon gab es ${numbers} schon: neu gesetzt.`,
  removed: (number) => `Dose ${number} ist von der Liste. Im Filmbuch bleibt, was durch sie ging.`,
  reported: (number, condition) =>
    `Notiert zu **Dose ${number}**: ${condition}. Jeder Plan für sie sagt es, bis eine Hilfskraft oder die Lehrkraft sie wieder freigibt. Stell die Dose beiseite.`,
  nothingNoted: (number) => `Zu Dose ${number} war nichts notiert. Sie ist in Ordnung.`,
  cleared: (number, was) => `Dose ${number} ist wieder in Ordnung. Notiert war: ${was}.`,
  all: "Alle Dosen",

  noNumbers: (typed) => `${typed} kann ich nicht als Nummern lesen. Schreib sie so: 1-12 oder 1, 2, 5.`,
  numberRange: (typed, most) =>
    `${typed} ist kein Bereich von Nummern. Sie gehen von 1 bis ${most}, die kleinere zuerst.`,
  tooMany: (count, most) => `Das wären ${count} Dosen. Nimm höchstens ${most} auf einmal auf.`,
  unknownAndNone: (number) =>
    `Dose ${number} gibt es nicht: Der Kurs hat noch keine. Die Lehrkraft nimmt sie auf mit \`/tank add\`.`,
  unknown: (number, known) => `Dose ${number} gibt es nicht. Der Kurs hat ${known}.`,
  busy: (number, use) => `Dose ${number} ist belegt von ${use}. Nimm sie von der Liste, wenn sie frei ist.`,
};
