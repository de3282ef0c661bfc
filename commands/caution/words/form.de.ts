import type { Forms } from "../../define.ts";

export const forms: Forms = {
  caution: {
    summary: "Sicherheit und Abfall: worauf du bei dieser Arbeit achtest",
    options: { about: "Welche Arbeit; ohne Angabe alle" },
  },
};
