import type { TrayLine } from "../../store/shapes/tray-line.ts";
import { UserError, type Context } from "../define.ts";
import { noLines, unknownLine } from "./tray-words.ts";

/** The line of trays that is meant; the class's only one, or its first, where none is named. */
export function findLine(context: Context, number: number | undefined): TrayLine {
  const lines = context.class.habits.trayLines;
  const [first] = lines;
  if (!first) throw new UserError("ERR_NO_TRAYS", noLines());
  const found = number === undefined ? first : lines.find((each) => each.number === number);
  if (found) return found;
  throw new UserError(
    "ERR_UNKNOWN_TRAYS",
    unknownLine(
      number ?? 0,
      lines.map((each) => each.number),
    ),
  );
}

/** Keeps a line in place of the one of its number. */
export function saveLine({ stores, class: school }: Context, line: TrayLine): void {
  const others = school.habits.trayLines.filter(({ number }) => number !== line.number);
  const trayLines = [...others, line].sort((a, b) => a.number - b.number);
  stores.classes.setHabits(school.id, { ...school.habits, trayLines });
}
