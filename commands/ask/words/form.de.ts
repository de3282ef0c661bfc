import type { Forms } from "../../define.ts";

export const forms: Forms = {
  ask: {
    summary: "In eigenen Worten fragen: wie lange noch, ist das Fixierbad gut, was ist eine Spirale",
    options: {
      text: "Was du wissen willst",
      as: "Setzen die Tasten: was gemeint ist",
    },
  },
};
