export const en = {
  filter: (grade: string, stops: string) => `${grade} beside grade 2: ${stops}`,
  speed: (iso: string, beside: string, stops: string) => `speed ${iso}: ${stops} beside ${beside}`,
  dry: (percent: number) => `dries ${percent} % darker`,
  used: "From now on I work with that.",
  nothing:
    "Say what you measured: a filter (`grade:3 1/2 seconds:12.5 was:10`), a box (`beside:1 seconds:12.5 was:10`) or `dry:10`.",
  bothTimes: "Two times are needed: `seconds:` with this one, and `was:` with what it is compared with.",
  isGraded: "This is a graded paper: it has no filters to measure.",
  far: "The two times lie too far apart for one paper or filter beside another. Make the strips again.",
  noSpeed: (paper: string) =>
    `${paper} has no speed to compare with yet. Give it the one from its box, or 100 to begin with: \`/print paper\`.`,
};
export type MeasureWords = typeof en;
