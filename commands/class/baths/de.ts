import { joinAnd } from "../../speech/wording.ts";
import type { BathsWords } from "./en.ts";

export const de: BathsWords = {
  noCarry: (typed) =>
    `${typed}: Wie viel Bad verschleppt ein Film? Schreib \`20 ml\`, \`0,04 ml/cm2\` oder \`none\`.`,
  noMeasure: (typed) =>
    `${typed}: Was ist der feinste Schritt, den ihr ablesen könnt? Schreib \`0,1 ml\`, \`1 ml\` oder \`usual\`.`,
  noCarrySet: "Verschleppung: wird nicht gerechnet.",
  carry: (ml) =>
    `Verschleppung: **${ml}** je Film, von jedem Bad ins nächste. Sie verdünnt, was zurückgegossen wird, und das Flaschenbuch zählt sie mit.`,
  carrySource:
    "So findet ihr eure: Wiegt die Dose, geleert wie immer, gegen die trockene. Etwa 20 ml je Film nennt einer, der über das Regenerieren schreibt (R. Suzuki).",
  oneBath: "Fixieren: ein Bad.",
  twoBaths: (rotations, pairs) =>
    `Fixieren: **zwei Bäder**, je die halbe Zeit; das zweite rückt ${rotations === 1 ? "einmal" : `${rotations}-mal`} auf, dann sind beide neu. ${pairs.length === 0 ? "Noch sind keine Flaschen bestimmt: `/batch pair`." : `Jetzt ${joinAnd(pairs)}.`}`,
  usualMeasures: "Messgefäße: unter 10 ml auf 0,1 ml, unter 25 ml auf 0,5 ml, sonst ganze ml.",
  measure: (ml) => `Messgefäße: auf **${ml}**; Pläne runden darauf und sagen, wie weit die Stärke abweicht.`,
};
