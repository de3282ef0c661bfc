import { expect, test } from "vitest";
import { cautionReply } from "../../../commands/caution/reply.ts";
import { TASKS } from "../../../commands/caution/tasks.ts";
import { speaking } from "../../../commands/speech/language.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { createRoom } from "../../support/room.ts";

const room = createRoom();
room.says("Mina", "/mine language language:de");

// The same sources as the English sentences; the words on acid and on silver are those a German label uses.
test("what must never be missing is there in German", () => {
  const { reply } = room.asks("Mina", "/caution");
  for (const sentence of [
    "Säure ins Wasser, nie Wasser in die Säure.",
    "Nie Säure und Chlorreiniger zusammenbringen: Es entsteht schädliches Gas.",
    "Gebrauchtes Fixierbad enthält Silber: sammeln, nie weggießen.",
    "Im Auge: 15 Minuten mit fließendem Wasser spülen, sofort die Lehrkraft rufen.",
    "Das Etikett der Flasche, ihr Sicherheitsdatenblatt und die Regeln der Schule gehen vor.",
  ])
    expect(reply.text).toContain(sentence);
});

test.each([undefined, ...TASKS])("nothing of %s is left in English, and it fits one message", (task) => {
  const german = speaking("de", () => cautionReply(task));
  expect([german.text, ...(german.actions ?? []).map(({ label }) => label)].join("\n")).not.toMatch(
    ENGLISH_WORDS,
  );
  expect(german.text.length).toBeLessThanOrEqual(2000);
});

test.each(TASKS)("%s has as many lines, and the same buttons, in both languages", (task) => {
  const [german, english] = [speaking("de", () => cautionReply(task)), cautionReply(task)];
  expect(german.text.split("\n")).toHaveLength(english.text.split("\n").length);
  expect(german.fields).toEqual(english.fields);
  expect(german.actions?.map(({ line }) => line)).toEqual(english.actions?.map(({ line }) => line));
});
