import type { LinesWords } from "./en.ts";

export const de: LinesWords = {
  line: (number, bath, there, waiting) =>
    `**Schalen ${number}** (${bath}): ${there === 0 ? "leer" : `${there} darin`}${waiting === 0 ? "" : `, ${waiting} ${waiting === 1 ? "wartet" : "warten"}`}.`,
  inTray: (run, person, step, until) =>
    `- ${run}, ${person}: ${step}${until === null ? ", zum Weiterlegen" : ` bis ${until}`}`,
  waits: (run, person, when, isAfterBell) =>
    `- ${run}, ${person}: wartet; ${when}${isAfterBell ? ", **erst nach dem Klingeln fertig gewässert**" : ""}`,
  roomNow: "jetzt ist Platz",
  roomAt: (time, relative) => `Platz um ${time}, ${relative}`,
  neverRoom: "für so viele Blätter sind die Schalen zu klein",
  bell: (time) => `Es klingelt um ${time}.`,
  planAt: (line) => `An Schalen ${line} planen`,
};
