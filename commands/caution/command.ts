import { z } from "zod";
import { defineCommand } from "../define.ts";
import { cautionReply } from "./reply.ts";
import { TASKS } from "./tasks.ts";

export const caution = defineCommand({
  name: "caution",
  summary: "Safety and waste: what to mind at this task",
  options: () => ({ about: z.enum(TASKS).optional().describe("Which task; all of them if left out") }),
  who: "student",
  visibility: "private",
  rest: "about",
  handle: ({ about }) => cautionReply(about),
});
