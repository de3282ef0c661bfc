import { isTrayRun } from "../../../store/shapes/run.ts";
import { sittingNow } from "../../plan/bell.ts";
import { defineCommand } from "../../define.ts";
import { titleOf } from "../../sheet/step-words.ts";
import { makeNumber } from "../../speech/wording.ts";
import { whoMay } from "../../who.ts";
import { stepNow } from "../places.ts";
import { queueAt } from "../queue.ts";
import * as words from "./reply.ts";

export const trayLines = defineCommand({
  name: "tray lines",
  summary: "The lines of trays: who is in which tray, who waits, when there is room, and the bell",
  options: () => ({}),
  who: whoMay("tray lines"),
  visibility: "private",
  handle(_, { stores, class: school, now }) {
    const runs = stores.runs.open(school.id).filter(isTrayRun);
    const bellAtMs = sittingNow(school.habits.periods, school.zone, now)?.endsAtMs ?? null;
    const nameOf = (personId: string): string => stores.members.find(school.id, personId)?.name ?? "";
    const lines = school.habits.trayLines.map((line): words.LineNow => {
      const { inTrays, waiting } = queueAt(line, runs, [], now, bellAtMs);
      return {
        line,
        inTrays: inTrays.map((run) => ({
          run: makeNumber("run", run.number),
          person: nameOf(run.personId),
          step: titleOf(stepNow(run) ?? { kind: "dry", ordinal: 0 }),
          untilMs: run.phase.kind === "running" ? run.phase.endsAtMs : null,
        })),
        waiting: waiting.map(({ label, personId, fromMs, isAfterBell }) => ({
          run: label,
          person: nameOf(personId),
          fromMs,
          isAfterBell,
        })),
      };
    });
    return words.linesReply(lines, now, bellAtMs);
  },
});
