import type { Group } from "../../../commands/groups.ts";

export const formList = {
  /** What one may want to do: each stands over its forms. */
  groups: {
    develop: "Develop a film",
    print: "Make prints",
    rolls: "Look at developed rolls",
    chemistry: "Mix and check chemistry",
    times: "Look up developing times",
    class: "See to the class and its tanks",
    help: "Get help, work safely",
    mine: "Your data, language, phone",
  } satisfies Readonly<Record<Group, string>>,
  nothing: "Nothing by that word. Try another one, or ask in the line below the messages.",
};
export type FormListWords = typeof formList;
