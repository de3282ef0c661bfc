import type { TrayLine } from "../../../store/shapes/tray-line.ts";
import type { Reply } from "../../define.ts";
import { nameWords } from "../../speech/name-words.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { formatDilution, instant, plain } from "../../speech/wording.ts";
import { noLines } from "../tray-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export interface LineNow {
  readonly line: TrayLine;
  readonly inTrays: readonly {
    readonly run: string;
    readonly person: string;
    readonly step: string;
    readonly untilMs: number | null;
  }[];
  readonly waiting: readonly {
    readonly run: string;
    readonly person: string;
    /** When there is room for it; null: never, a tray is too small. */
    readonly fromMs: number | null;
    readonly isAfterBell: boolean;
  }[];
}

export function linesReply(lines: readonly LineNow[], now: number, bellAtMs: number | null): Reply {
  if (lines.length === 0) return { text: noLines(), fields: { lines: [] } };
  return {
    text: [
      ...lines.map((each) => sayLine(each, now)),
      bellAtMs === null ? "" : words().bell(instant(bellAtMs, "time")),
    ]
      .filter(Boolean)
      .join("\n"),
    fields: {
      lines: lines.map(({ line, inTrays, waiting }) => ({
        line: line.number,
        inTrays: inTrays.map((each) => ({ ...each })),
        waiting: waiting.map((each) => ({ ...each })),
      })),
    },
    actions: lines.slice(0, 4).map(({ line }) => ({
      label: words().planAt(line.number),
      line: makeLine("tray plan", { line: line.number, temp: "20C" }),
    })),
  };
}

function sayLine({ line, inTrays, waiting }: LineNow, now: number): string {
  const bath = `${plain(line.developer)} ${formatDilution(line.dilution)}`;
  const head = words().line(line.number, bath, inTrays.length, waiting.length);
  const there = inTrays.map(({ run, person, step, untilMs }) =>
    words().inTray(run, nameWords(person), step, untilMs === null ? null : instant(untilMs, "time")),
  );
  const waits = waiting.map(({ run, person, fromMs, isAfterBell }) => {
    const when =
      fromMs === null
        ? words().neverRoom
        : fromMs <= now
          ? words().roomNow
          : words().roomAt(instant(fromMs, "time"), instant(fromMs, "relative"));
    return words().waits(run, nameWords(person), when, isAfterBell);
  });
  return [head, ...there, ...waits].join("\n");
}
