import { ENGLISH_WORDS } from "../../support/english.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* Words of this folder's English beside the common ones; none of them is German. */
const MORE_ENGLISH = /\b(by|at|tanks|film's|until|next|none|yet|period|periods|week|places|weeks)\b/;

/** Without what is typed, names and marks: of what is left every word should be German. */
export function englishIn(text: string): string | undefined {
  const worded = text
    .replace(/`[^`]*`/g, "")
    .replace(/„[^“]*“/g, "")
    .replace(/Harbour workshop, evening class \(invented demo\)/g, "");
  return (ENGLISH_WORDS.exec(worded) ?? MORE_ENGLISH.exec(worded))?.[0];
}

/** A class in memory whose teacher, Iris, reads German. */
export function germanRoom(): Room & { teacher(line: string): string } {
  const room = createRoom();
  room.says("Iris", "/mine language de", "teacher");
  return { ...room, teacher: (line) => room.says("Iris", line, "teacher") };
}
