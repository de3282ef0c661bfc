import { joinAnd } from "../../speech/wording.ts";
import type { FindingWords } from "./finding.en.ts";

const calls = (count: number): string => (count === 1 ? "1 Signal" : `${count} Signale`);

export const de: FindingWords = {
  standings: {
    ready: "in Ordnung",
    exhausted: "verbraucht",
    "out-of-date": "abgelaufen",
    discarded: "schon weggegossen",
  },
  doseShort: (percent) => `${percent} % weniger entwickelt als geplant`,
  doseOver: (percent) => `${percent} % mehr entwickelt als geplant`,
  doseRight: "wie geplant entwickelt",
  neverDeveloped: "kein Entwickler steht im Filmbuch",
  developer: (label, standing) => `Entwickler ${label} war ${standing}`,
  fixer: (label, standing) => `Fixierbad ${label} war ${standing}`,
  fixShort: (fixed, times, needed) => `${fixed} fixiert, und ${times}-mal die Klärzeit waren ${needed}`,
  fixCut: (fixed, planned) => `${fixed} fixiert statt ${planned}`,
  fixEnough: (fixed, clearing) => `${fixed} fixiert bei einer Klärzeit von ${clearing}`,
  washCut: (washed, planned) => `${washed} gewässert statt ${planned}`,
  callsMissed: (missed, late) =>
    joinAnd([
      ...(missed > 0 ? [`${calls(missed)} verpasst`] : []),
      ...(late > 0 ? [`${calls(late)} verspätet`] : []),
    ]),
  callsKept: "kein Signal kam zu spät",
  tankReported: (condition) => `die Dose wurde gemeldet: ${condition}`,
  bathsApart: (apart) => `zwischen zwei Bädern lagen ${apart}`,
  bathsEven: (apart) => `die gemessenen Bäder lagen höchstens ${apart} auseinander`,
  warm: (temperature) => `ein Bad war ${temperature} warm`,
  wettingSkipped: "kein Netzmittel steht im Filmbuch",
  tabular: "es ist ein Film mit Flachkristallen, der langsamer fixiert",
};
