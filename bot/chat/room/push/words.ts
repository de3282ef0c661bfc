import { DEFAULT_LANGUAGE } from "../../../../store/shapes/language.ts";
import type { PushBody } from "../../../../store/shapes/push.ts";
import { sayRun } from "../../../../commands/run/run-words.ts";
import { speaking } from "../../../../commands/speech/language.ts";
import { sayInstants } from "../../../../commands/speech/wording.ts";
import type { Delivery } from "../../port.ts";

/** Four thousand bytes is what a push service must take (RFC 8030, 7.2); a call needs a tenth. */
const MOST_CHARACTERS = 600;

/** A call as a closed page's phone shows it: without marks, the run in its title. */
export function pushBodyOf(
  delivery: Delivery,
  { id, name, zone }: { readonly id: number; readonly name: string; readonly zone: string },
  now: number,
): PushBody {
  const { key, text, runs, dueAt, language = DEFAULT_LANGUAGE } = delivery;
  const [run] = runs;
  const lines = speaking(language, () => sayInstants(text, now, zone))
    .split("\n")
    // The last line names the run, and so does the title.
    .filter((line) => !/^_.*_$/.test(line))
    .map((line) => line.replace(/\\([\\*_~`|>#[\]])|[*_~`]/g, "$1").trim());
  return {
    key,
    tag: run ? `c${id}r${run.number}` : `c${id}`,
    title: run ? speaking(language, () => sayRun(run)) : name,
    text: lines.filter(Boolean).join("\n").slice(0, MOST_CHARACTERS),
    dueAt,
    language,
  };
}
