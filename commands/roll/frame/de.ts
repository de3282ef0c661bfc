import type { RollFrameWords } from "./en.ts";

const frames = (count: number): string => `${count} ${count === 1 ? "Bild" : "Bilder"}`;
const films = (count: number): string => `${count} ${count === 1 ? "Film" : "Filmen"}`;

export const de: RollFrameWords = {
  whichFrames: "Welche Bilder verlieren ihre Zeichen? Nenn sie: `frame:7`.",
  noFrames: (typed) => `${typed} nennt keine Bilder. Schreib sie wie 7 oder 3, 7-9.`,
  frameRange: (roll, count) => `${roll} hat die Bilder 1 bis ${count}.`,
  ask: (roll, list) => `**${roll}, Bild ${list}**: was ist es?`,
  marked: (roll, list, mark) => `**${roll}, Bild ${list}**: ${mark}.`,
  unmarked: (roll, list) => `**${roll}, Bild ${list}**: Zeichen entfernt.`,
  all: (roll, marks) => `${roll} hat jetzt: ${marks}.`,
  found: (count, rolls, mark) =>
    `**${frames(count)}${mark === null ? " mit Zeichen" : `: ${mark}`}**, auf ${films(rolls)}:`,
  none: (mark) =>
    `Noch hat kein Bild ${mark === null ? "ein Zeichen" : `das Zeichen „${mark}“`}. Setz eins mit \`/roll frame roll:L12 frame:7 mark:best\`.`,
  more: (rolls) => `…und ${rolls === 1 ? "1 weiterer Film" : `${rolls} weitere Filme`}.`,
  contact: "Kontaktbogen",
};
