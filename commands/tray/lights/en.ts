import { countOf } from "../../speech/wording.ts";

export const en = {
  notYet: (prints: number) =>
    `**Not yet: ${prints === 1 ? "a print is" : `${prints} prints are`} not fixed.** Nobody was warned.`,
  openLine: (run: string, person: string, until: string | null) =>
    `- ${run}, ${person}: ${until === null ? "waits to be moved on" : `fixed at ${until}`}`,
  andBoxes: "Ask for open boxes and paper on the easels, too: I know nothing of those.",
  allCovered: "All is covered",
  body: (wait: string) => `White light in ${wait}.`,
  warning: (wait: string, time: string) =>
    `**White light in ${wait}, at ${time}. Close your paper box; nothing on the easel.** Paper open? Press Wait, and say it aloud.`,
  waitLabel: "Wait",
  wait: (person: string) => `**Leave the light off: ${person} has paper open.**`,
  warned: (people: number, time: string) =>
    `**${countOf(people, "person", "people")} at the trays warned: white light at ${time}.** Whoever has paper open can press Wait; you hear it at once.`,
  nobodyThere: "**Nobody else is known to be at the trays.**",
  look: "Call it out before you switch it on, and look: boxes closed, nothing on the easels.",
  whoHasIt: "Who has it?",
  nobodyAsked: "Nobody has announced white light in the last minutes. Say it aloud all the same.",
  told: (person: string) => `${person} has been told. Say it aloud as well: **wait**.`,
};
export type LightsWords = typeof en;
