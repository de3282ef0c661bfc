import { z } from "zod";
import { UNREADABLE_KINDS } from "../../../store/shapes/unreadable.ts";
import { defineCommand, UserError } from "../../define.ts";
import { setAsideKey, setAsideText } from "../../speech/unreadable.ts";
import { whoMay } from "../../who.ts";
import * as words from "./reply.ts";

export const classMend = defineCommand({
  name: "class mend",
  summary: "What of the class can't be read and why; sets it aside, so that the rest is whole again",
  options: () => ({
    what: z
      .string()
      .trim()
      .min(1)
      .max(80)
      .optional()
      .describe("What is set aside, as it is listed: T3, R7, B2"),
  }),
  who: whoMay("class mend"),
  visibility: "private",
  rest: "what",
  complete: {
    what: (typed, { stores, class: { id } }) =>
      stores.unreadable
        .list(id, UNREADABLE_KINDS)
        .map((row) => ({ label: setAsideKey(row).slice(0, 100), value: words.handleOf(row) }))
        .filter(({ label }) => label.toLowerCase().includes(typed.toLowerCase())),
  },
  handle({ what }, { stores, class: { id }, now }) {
    const rows = stores.unreadable.list(id, UNREADABLE_KINDS);
    if (what === undefined) {
      const aside = stores.unreadable.untold(id);
      stores.unreadable.markTold(id);
      return words.mendReply(rows, aside);
    }
    const meant = rows.filter((row) => words.handleOf(row).toLowerCase() === what.toLowerCase());
    if (meant.length === 0) throw new UserError("ERR_ALL_READABLE", words.unknownMend(what));
    stores.unreadable.setAside(id, meant, now);
    return { text: meant.map(setAsideText).join("\n") };
  },
});
