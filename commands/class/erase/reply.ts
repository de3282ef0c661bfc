import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { instant, plain } from "../../speech/wording.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const GRACE_DAYS = 7;

export function askErase(className: string, isWrong: boolean): Reply {
  return {
    text: [isWrong ? words().wrongName : "", words().ask(GRACE_DAYS), words().how(plain(className))]
      .filter(Boolean)
      .join("\n"),
    fields: { planned: false },
    actions: [{ label: words().takeLog, line: makeLine("roll export", { as: "json" }) }],
  };
}

export function plannedReply(dueAt: number): Reply {
  return {
    text: words().planned(instant(dueAt, "date"), instant(dueAt, "time"), instant(dueAt, "relative")),
    fields: { planned: true, dueAtMs: dueAt },
    actions: [{ label: words().keep, line: makeLine("class erase", { keep: "yes" }) }],
  };
}

export function keptReply(wasPlanned: boolean): Reply {
  return { text: wasPlanned ? words().kept : words().wasNotPlanned, fields: { planned: false } };
}

export const announcement = (dueAt: number): string => words().announcement(instant(dueAt, "date"));
export const takenBack = (): string => words().takenBack;
