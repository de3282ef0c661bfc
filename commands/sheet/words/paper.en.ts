import type { PaperRule } from "../../../store/shapes/paper.ts";

/* What a print's times rest on. Where sources contradict each other, all of them are told. */

export const en: Readonly<Record<PaperRule, string>> = {
  "own-time": "the class's own time for this developer",
  "usual-times":
    "resin-coated 60 s (from memory), fibre 2 min: 1 1/2 to 2 min at 21 to 23 °C (US Army SS0509); for contact paper 20 to 40 s at 18 °C (Glover 1924)",
  "own-coefficient": "the developer's own factor per 10 °C",
  "usual-coefficient": "2.07 in 10 °C, from an MQ developer's times at 55 and 65 °F (Glover 1924)",
  "least-tried":
    "never under the least time that gave full black in the class's own trial; more exposure can't replace it (Clerc, 556)",
  "least-untried":
    "never shorter: no trial has shown that less gives full black, and more exposure can't replace time (Clerc, 556)",
  factor: "factor times first appearance (old practice with bromide prints; not for fast contact papers)",
  drain:
    "drained within its time; published: momentarily (US Navy NAVEDTRA 14209), 5 s or 10 s (class pages), 15 s after it (US Army SS0509)",
  "acid-stop":
    "sources differ: 5 s (US Navy NAVEDTRA 14209), 15 s and 30 s (class pages), 1 min (US Army SS0509)",
  "water-stop": "common practice, no source",
  "fix-rc":
    "resin-coated paper at most 2 min (a practitioner's page); 30 s in strong rapid fixer (from memory)",
  "fix-fibre":
    "5 to 10 min in one bath (a practitioner's page); in strong rapid fixer 1 min fixes 90 to 100 % (Anchell, p. 107)",
  "fix-strong":
    "1 min in strong rapid fixer (Anchell, p. 107; earlier 30 s); in an ordinary acid fixer 5 to 10 min (a practitioner's page)",
  "fix-two":
    "3 to 5 min in each of two baths (a practitioner's page), moved 30 s in each minute (Anchell, p. 107)",
  "fix-strip": "twice the first clear patch of the class's own strip, never under 1 min (Lambrecht)",
  "wash-rc":
    "class pages say 2 to 3 min, 5 min begun again with each print that comes in, 10 to 20 min; no wash aid is needed (US Army SS0509)",
  "wash-fibre":
    "what stays in the paper flattens out at about 60 min (measured, a printer's page); 30 min or 12 changes of 5 min (a handbook), thin 30 and very thick 90 min (Clerc, 607)",
  "wash-aid": "wash 5 min, wash aid 10 min, wash 5 min, after a short fix (a maker, as quoted)",
  "wash-cold": "longer in cold water (US Army TM 11-2323)",
  "lay-to-dry": "until it is dry",
  "called-strip": "what each bar gets beyond the one before, in whole seconds",
  "lamp-steps": "1, 3 and 7 min, before the grey and after it (a film maker's guide)",
};
