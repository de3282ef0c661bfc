import type { TakenWords } from "./taken.en.ts";

export const de: TakenWords = {
  by: (tank, run, owner, until) => `Dose ${tank} ist belegt von ${owner} (${run})${untilAbout(until)}.`,
  byOwn: (tank, run, until) => `Dose ${tank} ist belegt von deinem eigenen Lauf ${run}${untilAbout(until)}.`,
};

function untilAbout(until: string | null): string {
  return until === null ? "" : `, bis etwa ${until}`;
}
