import type { PhotoWords } from "./en.ts";

export const de: PhotoWords = {
  kept: (print) => `Das Foto ist bei ${print}. Wo, wann und womit es gemacht wurde, wird nicht aufbewahrt.`,
  has: (print) => `${print} hat ein Foto.`,
  hasNone: (print) => `${print} hat noch kein Foto.`,
  takeOff: "Foto entfernen",
  gone: (print) => `Das Foto von ${print} ist weg.`,
  hadNone: (print) => `${print} hat kein Foto.`,
};
