import type { PhotoWords, PictureWords } from "./photo-words.en.ts";

/* The words of photos and pictures, in German. */

export const photo: PhotoWords = {
  of: {
    roll: (name) => `Kontaktbogen von ${name}`,
    print: (name) => `Foto von Abzug ${name}`,
  },
  add: "Foto dazulegen",
  replace: "Anderes Foto",
  camera: "Jetzt aufnehmen",
  sending: "Foto wird gesendet…",
};

export const picture: PictureWords = {
  close: "Schließen",
  zoomIn: "Größer",
  zoomOut: "Kleiner",
  save: "Als Bild speichern",
};
