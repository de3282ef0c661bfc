/** Of a school: the range it takes for the middle of grade 2, and from what scene, at what slope. */
export interface Middle {
  readonly range: string;
  readonly scene: string;
  readonly slope: string;
}

const ofRange = (log: string, iso: number): string => `a range of ${log} (ISO R ${iso})`;

export const en = {
  either: (filter: string, grade: string, log: string, iso: number) =>
    `**Filter ${filter}**, or graded paper **${grade}**, for ${ofRange(log, iso)}.`,
  byFilter: (filter: string, log: string, iso: number, paper: string) =>
    `**Filter ${filter}** for ${ofRange(log, iso)}, on ${paper}.`,
  byGrade: (grade: string, log: string, iso: number) => `**Grade ${grade}** for ${ofRange(log, iso)}.`,
  fits: (paper: string, _grade: string) => `That is ${paper}.`,
  tooHard: (paper: string, grade: string) =>
    `${paper} is ${grade}: too hard for it. Take a softer box, or burn in the lights.`,
  tooSoft: (paper: string, grade: string) => `${paper} is ${grade}: too soft for it. Take a harder box.`,
  tooLong: "That is longer than the softest filter prints: the lights want burning in.",
  tooShort: "That is shorter than the hardest filter needs: the print stays flat.",
  filter: (filter: string) =>
    `Filter ${filter}: one maker's data sheet for one paper of variable contrast, as a page quotes it. Others differ, and so does a sample of the same.`,
  graded: (grade: string) =>
    `Graded paper ${grade}: edges at 0.65, 0.80, 0.95, 1.15 and 1.40; from memory, no source seen.`,
  old: (grade: string | null) =>
    grade === null
      ? "The older standard (ANSI PH2.2-1966, dropped in 1981) has no grade for it: it cut 0.50 to 1.70 into six."
      : `Grade ${grade} by the older standard (ANSI PH2.2-1966, dropped in 1981), which cut 0.50 to 1.70 into six, alike as we read it.`,
  draft:
    "The older standard (ANSI PH2.2-1966) ended at 0.50; a draft of 1978 put 0.35 to 0.50 as a grade 6. Both were dropped in 1981.",
  middles: (one: Middle, other: Middle) =>
    `The middle of grade 2 is ${one.range} by one print maker (a scene of ${one.scene}, so a slope of ${one.slope}), ${other.range} by another school (${other.scene}, ${other.slope}).`,
  agree: "They agree to half a grade. A strip decides.",
  differ: (softest: string, hardest: string) =>
    `They do not agree: ${softest} to ${hardest}. Begin with the first line; a strip decides.`,
  strip: "Strip with it",
};
export type GradeWords = typeof en;
