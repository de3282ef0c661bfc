import { formatNumber } from "../../speech/wording.ts";
export const en = {
  tooMany: (most: number) => `The class has ${most} safelights noted, which is all there is room for.`,
  beyondLongest: (longest: number) =>
    `A coin is seen at one of the steps you tried, up to ${formatNumber(longest)} min. Say \`longest:\` and \`shortest:\` if yours were others.`,
  unsafe: (lamp: string) =>
    `**The safelight ${lamp} is not safe: don't open paper under it.** Even the shortest step changed.`,
  safe: (time: string, lamp: string) =>
    `**${time} in all under the safelight ${lamp}**: half the time of the first change.`,
  atLeast: (time: string, lamp: string) =>
    `**At least ${time} in all under the safelight ${lamp}**: no step showed a change.`,
  mend: "Hang it farther off (0.9 to 1.8 m), take a weaker bulb (7.5 to 25 W, as it is marked), look for cracks in the filter and at its kind: light amber for enlarging papers, red for what is sensitive to blue alone. Then test again.",
  adds: "All the time out of the box counts, before and after the exposure: it adds up.",
  next: (date: string) =>
    `Next test: ${date}, and whenever bulb, filter or paper changes. The class is told when it is due.`,
  rests:
    "_By a film maker's guide: safe is at most half the time of the first change you can see on paper with a light grey. US Navy NAVEDTRA 14209 has no fog in twice the processing time, on bare paper: that misses dull highlights. A rule of thumb says 4 min at 1.2 m._",
  again: "Test it again",
  none: "No safelight has been tested yet. Paper under an untested lamp may lose its highlights unseen.",
  test: "Test one",
  testOne: (lamp: string) => `Test ${lamp}`.slice(0, 80),
  line: (lamp: string, safe: string | null, tested: string, next: string, isDue: boolean) =>
    `- **${lamp}**: ${safe === null ? "**not safe**" : `safe for ${safe} in all`}, tested ${tested}; ${isDue ? `**its next test was due ${next}**` : `next test ${next}`}.`,
};
export type LampWords = typeof en;
