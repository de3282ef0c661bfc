import type { PictureWords } from "./picture.en.ts";

const daysOf = (days: number): string => (days === 1 ? "1 Tag" : `${days} Tage`);

export const de: PictureWords = {
  bottle: "Flasche",
  leftAndAge: "Rest und Alter",
  clearing: "Klärzeit über die Filme",
  age: (days) => `${daysOf(days)} alt`,
  keeps: (days) => `hält noch ${days}`,
  outOfDate: (days) => `abgelaufen seit ${days}`,
  partFull: "angebrochen",
  notTested: "nicht geprüft",
  exhaustedAt: (seconds) => `verbraucht bei ${seconds}`,
  rolls: (rolls) => `${rolls} Filme; Punkt = Klärprobe`,
};
