import type { Forms } from "../../define.ts";

const TANK = "Nummer der Dose";

export const forms: Forms = {
  "tank list": {
    summary: "Die Dosen des Kurses: Größe, Zustand, und wer sie gerade hat",
    options: {},
  },
  "tank add": {
    summary: "Dosen eintragen, oder ändern, was man von ihnen weiß",
    options: {
      numbers: "Welche Nummern, etwa 1-12 oder 1, 2, 5",
      reels: "Wie viele Spiralen in jede passen",
      volume: "Was alle ihre Spiralen bedeckt: 300 ml, 0,5 l (steht auf der Dose)",
      format: "Welchen Film sie nimmt",
      cooling: "Wie lange sie für 63 % des Wegs zum Raum braucht, wenn gemessen: 45 min",
    },
  },
  "tank remove": {
    summary: "Eine Dose von der Liste nehmen",
    options: { tank: TANK },
  },
  "tank report": {
    summary: "Melden, was an einer Dose nicht stimmt (sie leckt, eine Spirale klemmt)",
    options: { tank: TANK, fault: "Was nicht stimmt, in wenigen Worten" },
  },
  "tank clear": {
    summary: "Sagen, dass eine Dose wieder in Ordnung ist",
    options: { tank: TANK },
  },
  "tank measure": {
    summary: "Wie schnell eine Dose dem Raum folgt, aus zwei Messungen in ruhendem Wasser",
    options: {
      tank: TANK,
      first: "Erste Messung, mindestens 1,5 °C neben der des Raums: 24",
      second: "Zweite Messung: 22,5",
      room: "Der Raum: 18",
      apart: "Zeit zwischen den beiden Messungen: 20 min",
    },
  },
};
