import { z } from "zod";
import { defineCommand, type Context } from "../../define.ts";
import { owe } from "../../owe.ts";
import * as words from "./reply.ts";
import { whoMay } from "../../who.ts";

const DAY_MS = 86_400_000;

export const classErase = defineCommand({
  name: "class erase",
  summary: "Erase the class with everything in it, after some days of grace",
  options: () => ({
    name: z.string().trim().min(1).max(100).optional().describe("The class's name, to confirm it"),
    keep: z.enum(["yes"]).optional().describe("Keep the class after all"),
  }),
  who: whoMay("class erase"),
  visibility: "private",
  rest: "name",
  handle({ name, keep }, context) {
    const { stores, class: school, now } = context;
    const planned = stores.erasures.plannedOf(school.id);
    if (keep === "yes") {
      const wasPlanned = stores.erasures.spareClass(school.id);
      if (wasPlanned) tellClass(context, "reprieve", planned?.id ?? 0, words.takenBack);
      return words.keptReply(wasPlanned);
    }
    if (planned) return words.plannedReply(planned.dueAt);
    if (name?.toLowerCase() !== school.name.toLowerCase())
      return words.askErase(school.name, name !== undefined);
    const dueAt = now + words.GRACE_DAYS * DAY_MS;
    stores.erasures.planClass(school.id, now, dueAt);
    const erasure = stores.erasures.plannedOf(school.id)?.id ?? 0;
    tellClass(context, "erasure", erasure, () => words.announcement(dueAt));
    return words.plannedReply(dueAt);
  },
});

function tellClass(
  { stores, class: { id }, now }: Context,
  kind: "erasure" | "reprieve",
  erasure: number,
  text: () => string,
): void {
  const say = () => ({ text: text() });
  owe(stores, { of: { kind, class: id, erasure }, classId: id, personId: null, say }, now);
}
