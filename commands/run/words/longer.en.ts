/** Of a fixer that was found to clear film more slowly than its plan has it. */
export const en = {
  stay: (label: string, seconds: string, until: string) =>
    `**Leave your film in the fixer until ${until}: ${seconds} in all.** ${label} has just been tested and works more slowly. Poured out already? Back in with it, lid on; I call again.`,
  again: (label: string, seconds: string) =>
    `**Your film was fixed too short: tell the teacher.** ${label} has just been tested, and needs ${seconds}. Fix the film again so long, in a fixer that is in order, lid on; then wash it anew.`,
};
export type LongerWords = typeof en;
