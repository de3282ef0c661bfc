import { defineCommand } from "../../define.ts";
import { withLeftOut } from "../../unreadable.ts";
import { whoMay } from "../../who.ts";
import { gearReply } from "./reply.ts";

export const printGear = defineCommand({
  name: "print gear",
  summary: "The class's enlargers and boxes of paper, with what is known of them",
  options: () => ({}),
  who: whoMay("print gear"),
  visibility: "private",
  handle(_, context) {
    const { stores, class: school } = context;
    const reply = gearReply(stores.enlargers.list(school.id), stores.papers.list(school.id));
    return withLeftOut(context, ["enlarger", "paper"], reply);
  },
});
