import type { PhotoWords } from "./en.ts";

export const de: PhotoWords = {
  tooLarge: (mb, most) => `Das Foto hat ${mb} MB; höchstens ${most}. Mach es kleiner oder schneide es zu.`,
  noPhoto: "Das ist kein JPEG und kein PNG. Speichere das Foto als eines davon.",
  broken: "Das Foto ist nicht ganz: Sein Ende fehlt, oder etwas darin ist beschädigt. Schick es noch einmal.",
  tooManyPixels: (width, height, most) =>
    `Das Foto soll ${width} mal ${height} Pixel haben; höchstens ${most} je Seite.`,
  kept: (roll) => `Das Foto ist bei ${roll}. Wo, wann und womit es gemacht wurde, wird nicht aufbewahrt.`,
  has: (roll) => `${roll} hat ein Foto vom Kontaktbogen.`,
  hasNone: (roll) => `${roll} hat noch kein Foto.`,
  takeOff: "Foto entfernen",
  gone: (roll) => `Das Foto von ${roll} ist weg.`,
  hadNone: (roll) => `${roll} hat kein Foto.`,
};
