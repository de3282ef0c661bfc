import type { Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { instant, plain } from "../wording.ts";

export const GRACE_DAYS = 7;

export function askErase(className: string, isWrong: boolean): Reply {
  return {
    text: [
      isWrong ? "**That is not the class's name. Nothing is planned.**" : "",
      `**This erases the class:** people, plans, runs, the log, bottles, messages, photos. It happens ${GRACE_DAYS} days after you confirm; until then it can be taken back. Nothing brings it back afterwards but a backup.`,
      `To plan it, type \`/class erase name:${plain(className)}\`.`,
    ]
      .filter(Boolean)
      .join("\n"),
    fields: { planned: false },
    actions: [{ label: "Take the log along first", line: makeLine("roll export", { as: "json" }) }],
  };
}

export function plannedReply(dueAt: number): Reply {
  return {
    text: `**Planned.** The class is erased on ${instant(dueAt, "date")} at ${instant(dueAt, "time")}, ${instant(dueAt, "relative")}. The class has been told.`,
    fields: { planned: true, dueAtMs: dueAt },
    actions: [{ label: "Keep the class after all", line: makeLine("class erase", { keep: "yes" }) }],
  };
}

export function keptReply(wasPlanned: boolean): Reply {
  return {
    text: wasPlanned
      ? "**The class stays.** The class has been told."
      : "Nothing was planned: the class stays.",
    fields: { planned: false },
  };
}

export const ANNOUNCEMENT = (dueAt: number): string =>
  `**This class and everything in it will be erased on ${instant(dueAt, "date")}.** Take your own things along first: \`/mine export\`.`;
export const TAKEN_BACK = "**The class stays after all:** nothing will be erased.";
