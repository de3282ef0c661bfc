export const en = {
  whichEnlarger: "Which enlarger? Name it: `enlarger:1`. `/print gear` lists what there is.",
  needParts:
    "Say the whole set-up the first time: `seconds:12 height:50 cm aperture:8 grade:2`. Later only what changed.",
  lighterShort: "The time whose edge was still lighter must be shorter than the one that printed black.",
  tooLong: "That would be over an hour. Open the lens or bring the head down.",
  head: (name: string, setting: string, isSet: boolean) =>
    `${setting}: ${isSet ? "noted as" : "this is"} ${name}'s standing exposure for contact sheets.`,
  none: (name: string) => `**${name} has no standing exposure yet.** One strip finds it:`,
  start:
    "Head about 50 cm, an inch or more of light to spare all round, f/8 to f/11, grade 1 to 2 (starting points of several teachers). Lay clear film edge on the paper and make a strip; then `/contact exposure seconds:…`.",
  reckoned: "Worked out, not tried: make a strip before the class relies on it.",
  between: (lighter: string, black: string, stops: string) =>
    `The least black lies between ${lighter} and ${black}: ${stops} apart.`,
  finer:
    "A finer strip in between tells more: 9 s beside 10 s (0.15 stop) can still be told apart, one trial found.",
  since: (date: string) => `Set on ${date}.`,
  strip: "Make a test strip",
};
export type StandingWords = typeof en;
