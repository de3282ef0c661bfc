import type { Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { TASKS, type Task } from "./tasks.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/*
 * The usual cautions of the wet darkroom. They never take the place of the bottle's label, the safety data sheet or the
 * school's own rules, and say so.
 */

const words = inEach({ en, de });

export function cautionReply(task: Task | undefined): Reply {
  const { titles, lines, defer } = words();
  // What a film needs fits one message; prints are a tap away.
  const shown = task === undefined ? TASKS.filter((each) => each !== "printing") : [task];
  const parts = shown.map((each) =>
    [`**${titles[each]}**`, ...lines[each].map((line) => `- ${line}`)].join("\n"),
  );
  return {
    text: [...parts, defer].join("\n\n"),
    fields: { tasks: [...shown] },
    actions: TASKS.filter((each) => each !== task)

      .map((each) => ({ label: titles[each], line: `caution about:${each}` })),
  };
}
