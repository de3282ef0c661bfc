import { inEach } from "../../speech/language.ts";
import { formatSeconds, formatApart, formatBothScales, plain } from "../../speech/wording.ts";
import type { Finding } from "./evidence.ts";
import { de } from "./finding.de.ts";
import { en } from "./finding.en.ts";

const words = inEach({ en, de });

type FindingWords = {
  [Kind in Finding["kind"]]: (finding: Extract<Finding, { kind: Kind }>) => string;
};
const FINDING_WORDS: FindingWords = {
  "dose-short": ({ percent }) => words().doseShort(percent),
  "dose-over": ({ percent }) => words().doseOver(percent),
  "dose-right": () => words().doseRight,
  "never-developed": () => words().neverDeveloped,
  "developer-bad": ({ label, standing }) => words().developer(plain(label), words().standings[standing]),
  "developer-good": ({ label }) => words().developer(plain(label), words().standings.ready),
  "fix-short": ({ seconds, neededSeconds, times }) =>
    words().fixShort(formatSeconds(seconds), times, formatSeconds(neededSeconds)),
  "fix-cut": ({ seconds, plannedSeconds }) =>
    words().fixCut(formatSeconds(seconds), formatSeconds(plannedSeconds)),
  "fix-enough": ({ seconds, clearingSeconds }) =>
    words().fixEnough(formatSeconds(seconds), formatSeconds(clearingSeconds)),
  "fixer-bad": ({ label, standing }) => words().fixer(plain(label), words().standings[standing]),
  "fixer-good": ({ label }) => words().fixer(plain(label), words().standings.ready),
  "wash-cut": ({ seconds, plannedSeconds }) =>
    words().washCut(formatSeconds(seconds), formatSeconds(plannedSeconds)),
  "calls-missed": ({ missed, late }) => words().callsMissed(missed, late),
  "calls-kept": () => words().callsKept,
  "tank-reported": ({ condition }) => words().tankReported(plain(condition)),
  "baths-apart": ({ stepTenths }) => words().bathsApart(formatApart(stepTenths)),
  "baths-even": ({ stepTenths }) => words().bathsEven(formatApart(stepTenths)),
  warm: ({ tenthsC }) => words().warm(formatBothScales(tenthsC)),
  "wetting-skipped": () => words().wettingSkipped,
  tabular: () => words().tabular,
};

/** What the record has, as a part of a sentence. */
export function findingWords(finding: Finding): string {
  const say = FINDING_WORDS[finding.kind] as (finding: Finding) => string;
  return say(finding);
}
