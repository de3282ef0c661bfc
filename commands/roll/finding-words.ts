import type { Standing } from "../batch/state.ts";
import { countOf, formatSeconds, formatTenthsC, joinAnd, plain } from "../wording.ts";
import type { Finding } from "./evidence.ts";

const STANDINGS = {
  ready: "in order",
  exhausted: "worn out",
  "out-of-date": "out of date",
  discarded: "thrown away",
} as const satisfies Record<Standing, string>;

type FindingWords = {
  [Kind in Finding["kind"]]: (finding: Extract<Finding, { kind: Kind }>) => string;
};
const FINDING_WORDS: FindingWords = {
  "dose-short": ({ percent }) => `it was developed ${percent} % short of plan`,
  "dose-over": ({ percent }) => `it was developed ${percent} % beyond plan`,
  "dose-right": () => "it was developed as planned",
  "never-developed": () => "no developer is on record",
  "developer-bad": ({ label, standing }) => `developer ${plain(label)} was ${STANDINGS[standing]}`,
  "developer-good": ({ label }) => `developer ${plain(label)} was in order`,
  "fix-short": ({ seconds, neededSeconds, times }) =>
    `it was fixed ${formatSeconds(seconds)}, and ${times} times the clearing time was ${formatSeconds(neededSeconds)}`,
  "fix-cut": ({ seconds, plannedSeconds }) =>
    `it was fixed ${formatSeconds(seconds)} instead of ${formatSeconds(plannedSeconds)}`,
  "fix-enough": ({ seconds, clearingSeconds }) =>
    `it was fixed ${formatSeconds(seconds)}, with a clearing time of ${formatSeconds(clearingSeconds)}`,
  "fixer-bad": ({ label, standing }) => `fixer ${plain(label)} was ${STANDINGS[standing]}`,
  "fixer-good": ({ label }) => `fixer ${plain(label)} was in order`,
  "wash-cut": ({ seconds, plannedSeconds }) =>
    `it was washed ${formatSeconds(seconds)} instead of ${formatSeconds(plannedSeconds)}`,
  "calls-missed": ({ missed, late }) =>
    joinAnd([
      ...(missed > 0 ? [`${countOf(missed, "call")} missed`] : []),
      ...(late > 0 ? [`${countOf(late, "call")} late`] : []),
    ]),
  "calls-kept": () => "no call came late",
  "tank-reported": ({ condition }) => `its tank was reported: ${plain(condition)}`,
  "baths-apart": ({ stepTenths }) => `two baths were ${formatTenthsC(stepTenths)} apart`,
  "baths-even": ({ stepTenths }) => `the baths measured were within ${formatTenthsC(stepTenths)}`,
  warm: ({ tenthsC }) => `a bath was ${formatTenthsC(tenthsC)} warm`,
  "wetting-skipped": () => "no wetting agent is on record",
  tabular: () => "it is a tabular-grain film, which is slower to fix",
};

/** What the record has, as a part of a sentence. */
export function findingWords(finding: Finding): string {
  const words = FINDING_WORDS[finding.kind] as (finding: Finding) => string;
  return words(finding);
}
