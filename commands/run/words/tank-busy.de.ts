import { formatMl } from "../../speech/wording.ts";
import type { TankBusyWords } from "./tank-busy.en.ts";

export const de: TankBusyWords = {
  stopFirst: "Nimm eine andere Dose, oder brich diesen Lauf erst ab.",
  waitsAlready: (run) => `**${run}** wartet schon darauf: Du bekommst ein Signal, wenn sie frei ist.`,
  takeAnother: (free, count) =>
    `**Nimm ${count === 1 ? "Dose" : "eine der Dosen"} ${free}**: gleich groß und frei.`,
  isItEmpty: "Ist sie wirklich leer und deine? Sonst warte: Du bekommst ein Signal, wenn sie frei ist.",
  waitsNoMore: (runs, count) =>
    `${runs} ${count === 1 ? "wartet" : "warten"} nicht mehr auf eine Dose, weil du hier anfängst.`,
  tankKey: (tank) => `Dose ${tank} nehmen`,
  waitKey: (tank) => `Auf Dose ${tank} warten`,
  isMine: "Sie ist leer: Mein Film ist drin",
  unknown: (typed) => `Es gibt keine Dose ${typed}. Sieh nach mit \`/tank list\`.`,
  unlike: (tank, reels, volumeMl) =>
    `Dose ${tank} ist anders groß (${reels === 1 ? "1 Spirale" : `${reels} Spiralen`}, ${formatMl(volumeMl)}): Mach dafür einen Plan mit \`/plan\`.`,
};
