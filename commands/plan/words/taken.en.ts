export const en = {
  by: (tank: number, run: string, owner: string, until: string | null) =>
    `Tank ${tank} is in use by ${owner} (${run})${untilAbout(until)}.`,
  byOwn: (tank: number, run: string, until: string | null) =>
    `Tank ${tank} is in use by your own ${run}${untilAbout(until)}.`,
};
export type TakenWords = typeof en;

function untilAbout(until: string | null): string {
  return until === null ? "" : `, until about ${until}`;
}
