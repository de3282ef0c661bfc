export const en = {
  line: (number: number, bath: string, there: number, waiting: number) =>
    `**Trays ${number}** (${bath}): ${there === 0 ? "empty" : `${there} in them`}${waiting === 0 ? "" : `, ${waiting} waiting`}.`,
  inTray: (run: string, person: string, step: string, until: string | null) =>
    `- ${run}, ${person}: ${step}${until === null ? ", to be moved on" : ` until ${until}`}`,
  waits: (run: string, person: string, when: string, isAfterBell: boolean) =>
    `- ${run}, ${person}: waits; ${when}${isAfterBell ? ", **washed only after the bell**" : ""}`,
  roomNow: "there is room now",
  roomAt: (time: string, relative: string) => `room at ${time}, ${relative}`,
  neverRoom: "the trays are too small for so many sheets",
  bell: (time: string) => `The bell is at ${time}.`,
  planAt: (line: number) => `Plan at trays ${line}`,
};
export type LinesWords = typeof en;
