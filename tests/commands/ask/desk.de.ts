/* As desk.en.ts, in German. */
export const DESK_DE: readonly (readonly [wanted: string, sentence: string])[] = [
  ["bells", "klingel auf 15:20"],
  ["bells", "klingel um 15:20 statt 15:10"],
  ["bells", "klingel auf 15 uhr"],
  ["say-all", "sag allen sie sollen herkommen"],
  ["more-time", "gib allen eine minute mehr"],
  ["sign-out", "entferne mina aus der klasse"],
  ["sign-out", "mina aus dem kurs nehmen"],
  ["standing", "wo steht der entwickler"],
  ["standing", "wo ist der fixierer"],
  ["waste", "wohin mit dem fixierer"],
  ["labels", "etiketten drucken"],
  ["other-bottle", "tank 5 bekommt flasche 3"],
  ["stop-other", "den film von karla stoppen"],
  ["good", "der fixierer ist leer"],
  ["good", "reicht der entwickler für 30 filme"],
  // "Druck" is one letter from "drunk".
  ["rolls", "druck das log aus"],
  ["rolls", "druck das filmbuch aus"],
];
