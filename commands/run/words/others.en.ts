import { formatBothScales, saySeconds } from "../../speech/wording.ts";

/** What somebody else did to a run, to its owner; `by` comes harmless. */
export const en = {
  /** `label` is that of the button. */
  pressed: (by: string, label: string) => `**${by} pressed "${label}" for you.**`,
  moved: (by: string, seconds: number, isEarlier: boolean) =>
    `**${by} moved your calls by ${saySeconds(seconds)}:** this step began ${isEarlier ? "earlier" : "later"} than noted.`,
  measured: (by: string, tenthsC: number, seconds: number, before: number) =>
    `**${by} measured ${formatBothScales(tenthsC)}:** ${
      seconds === before
        ? "the time stays as it is."
        : `this step takes ${saySeconds(seconds)} in all, not ${saySeconds(before)}.`
    }`,
  seen: (by: string, seconds: number) =>
    `**${by} saw the image appear:** developing takes ${saySeconds(seconds)} in all.`,
  stopped: (by: string) => `**${by} stopped this run:** no more calls come.`,
};
export type OthersWords = typeof en;
