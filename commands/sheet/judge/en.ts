import { countOf, formatSeconds } from "../../speech/wording.ts";

export const en = {
  propose: (percent: number, sheet: string) =>
    `**${percent > 0 ? "+" : "-"}${Math.abs(percent)} %** proposed for ${sheet}: ${percent > 0 ? "its negatives come out too weak" : "its negatives come out too strong"}.`,
  nothing: (sheet: string) => `**No change** proposed for ${sheet}.`,
  evidence: (rolls: number, weak: number, strong: number, chance: string) => {
    if (rolls === 0) return "No roll of it to look at yet.";
    if (weak + strong === 0)
      return `${countOf(rolls, "roll")} looked at, none of them too thin, flat, dense or hard.`;
    const looks = [
      ...(weak > 0 ? [`${weak} too thin or flat`] : []),
      ...(strong > 0 ? [`${strong} too dense or hard`] : []),
    ];
    return `${countOf(rolls, "roll")} looked at: ${looks.join(", ")}. By chance alone: ${chance} %.`;
  },
  explained: (rolls: number) =>
    `${countOf(rolls, "roll")} left out: not developed as planned, which explains the look.`,
  worn: (rolls: number) =>
    `${countOf(rolls, "roll")} left out: by its ledger the developer was exhausted or out of date.`,
  whichSheet: "Which data sheet? Name its film (and its developer), as `/sheet list` shows them.",
  else: (camera: number) =>
    `What else it could be: a thermometer that is off, a developer whose bottle is in no ledger, another agitation${camera > 0 ? `; ${camera} may be the camera's exposure` : ""}. Look at these first.`,
  few: "Fewer than four alike say nothing yet. Note looks with `/roll fault`.",
  source: "The steps of 10 to 15 % are published (Kodak F-4016).",
  adopt: (percent: number) => `Make it ${percent > 0 ? "+" : "-"}${Math.abs(percent)} %`,
  moved: (percent: number, sheet: string, times: string) =>
    `**${percent > 0 ? "+" : "-"}${Math.abs(percent)} %** for ${sheet}: ${times}. Each time's source says what it was before.`,
  time: (before: number, after: number) => `${formatSeconds(before)} is now ${formatSeconds(after)}`,
  kept: (percent: number, date: string, person: string, before: number, source: string) =>
    `the class's own: ${percent > 0 ? "+" : ""}${percent} % on ${formatSeconds(before)}, ${date}, by ${person}; before: ${source}`,
};
export type JudgeWords = typeof en;
