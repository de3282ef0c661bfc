import type { Destination } from "../../../store/shapes/ledger.ts";
import { countOf, joinAnd } from "../../speech/wording.ts";

const times = (count: number): string => (count === 1 ? "once" : `${count} times`);

export const en = {
  fault: {
    notAFixer: (name: string) => `${name} is no fixer that is poured back: only such bottles make a pair.`,
    notReady: (label: string, standing: string, why: string) =>
      `**${label} is ${standing}**: ${why}. Take a bottle that is fit for use.`,
    filmAndPaper: (film: string, paper: string) =>
      `**${film} is for film, ${paper} for paper**: they are never mixed up. Name two bottles of one kind.`,
    sameBath: (label: string) => `${label} can't be both baths. Name two bottles.`,
    inPair: (label: string) => `${label} stands in a pair already. Name a freshly mixed bottle.`,
    bothNew: (first: string, second: string, rotations: number, most: number) =>
      `**Mix both baths new.** ${first} + ${second} has rotated ${times(rotations)}, and the class allows ${most}: what the second bath has taken up by now stays in film. Mix two bottles, then \`/batch pair\`.`,
    noPair: (pairs: readonly string[]) =>
      pairs.length === 0
        ? "No two fixing baths are paired. Name them with `/batch pair first:B3 second:B4`."
        : `Which pair? There are ${joinAnd(pairs)}: name its first bath, \`first:B3\`.`,
  },
  paired: (first: string, second: string) =>
    `**${first}** is fixing bath 1, **${second}** is bath 2. Plans from now on fix in both, half the time in each.`,
  pairedForPaper: (first: string, second: string) =>
    `**${first}** is fixing bath 1, **${second}** is bath 2, for paper. Lines of trays with two fixing baths take them: \`/tray set baths:2\`.`,
  paperSources:
    "_For paper: bath 2 moves up after 50 prints of 8x10 in per litre, after three more changes, 250 in all, both are new (a practitioner's page); the third rotation renews both (Anchell, The Darkroom Cookbook, 3rd ed., p. 107); bath 1 ends at 2 g/l of silver where prints are to last (a print maker's page)._",
  rule: (rotations: number) =>
    `When bath 1 is used up: mix a fresh bottle and call \`/batch rotate\`. The second moves up at most ${times(rotations)}, then both are mixed new (\`/class baths rotations:\`).`,
  sources:
    "_Sources differ: the third rotation renews both (Anchell, The Darkroom Cookbook, 3rd ed., p. 107); after the first swap three more changes (a practitioner's page)._",
  rotated: (old: string, first: string, second: string, to: Destination) =>
    `**${first} is bath 1 now, ${second} is bath 2.** ${old} goes ${to === "silver" ? "into the silver collection" : to === "supplier" ? "to the supplier" : "into its waste container"}: never down the drain. Change the labels on the bottles.`,
  left: (count: number) => `${countOf(count, "rotation")} left before both are mixed new.`,
  bothNewNext: "That was the last one: next time both baths are mixed new.",
};
export type PairWords = typeof en;
