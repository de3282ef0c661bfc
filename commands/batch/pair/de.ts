import { joinAnd } from "../../speech/wording.ts";
import type { PairWords } from "./en.ts";

const times = (count: number): string => (count === 1 ? "einmal" : `${count}-mal`);

export const de: PairWords = {
  fault: {
    notAFixer: (name) =>
      `${name} ist kein Fixierbad, das zurückgegossen wird: nur solche Flaschen bilden ein Paar.`,
    notReady: (label, standing, why) =>
      `**${label} ist ${standing}**: ${why}. Nimm eine Flasche, die bereit ist.`,
    filmAndPaper: (film, paper) =>
      `**${film} ist für Film, ${paper} für Papier**: Sie kommen nie durcheinander. Nenn zwei Flaschen einer Art.`,
    sameBath: (label) => `${label} kann nicht beide Bäder sein. Nenn zwei Flaschen.`,
    inPair: (label) => `${label} steht schon in einem Paar. Nenn eine frisch angesetzte Flasche.`,
    bothNew: (first, second, rotations, most) =>
      `**Setz beide Bäder neu an.** ${first} + ${second} ist ${times(rotations)} aufgerückt, der Kurs erlaubt ${most}: Was das zweite Bad inzwischen aufgenommen hat, bliebe im Film. Setz zwei Flaschen an, dann \`/batch pair\`.`,
    noPair: (pairs) =>
      pairs.length === 0
        ? "Zwei Fixierbäder sind nicht festgelegt. Nenn sie mit `/batch pair first:B3 second:B4`."
        : `Welches Paar? Es gibt ${joinAnd(pairs)}: nenn das erste Bad, \`first:B3\`.`,
  },
  paired: (first, second) =>
    `**${first}** ist Fixierbad 1, **${second}** ist Bad 2. Neue Pläne fixieren in beiden, je die halbe Zeit.`,
  pairedForPaper: (first, second) =>
    `**${first}** ist Fixierbad 1, **${second}** ist Bad 2, für Papier. Schalenreihen mit zwei Fixierbädern nehmen sie: \`/tray set baths:2\`.`,
  paperSources:
    "_Für Papier: Bad 2 rückt nach 50 Blatt 20x25 cm je Liter auf, nach drei weiteren Wechseln, im Ganzen 250, sind beide neu (Seite aus der Praxis); mit der dritten Runde beide neu (Anchell, The Darkroom Cookbook, 3. Aufl., S. 107); Bad 1 endet bei 2 g/l Silber, wenn Abzüge halten sollen (Seite eines Printers)._",
  rule: (rotations) =>
    `Ist Bad 1 verbraucht: frische Flasche ansetzen, dann \`/batch rotate\`. Das zweite rückt höchstens ${times(rotations)} auf, danach sind beide neu (\`/class baths rotations:\`).`,
  sources:
    "_Die Quellen widersprechen sich: mit der dritten Runde beide neu (Anchell, The Darkroom Cookbook, 3. Aufl., S. 107); nach dem ersten Tausch noch drei (Seite eines Praktikers)._",
  rotated: (old, first, second, to) =>
    `**${first} ist jetzt Bad 1, ${second} Bad 2.** ${old} kommt ${to === "silver" ? "in die Silbersammlung" : to === "supplier" ? "zum Lieferanten" : "in den eigenen Kanister"}, nie in den Ausguss. Ändere die Aufschriften der Flaschen.`,
  left: (count) => `Noch ${times(count)}, dann beide neu.`,
  bothNewNext: "Das war das letzte Mal: nächstes Mal beide Bäder neu ansetzen.",
};
