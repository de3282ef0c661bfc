import { describe, expect, test } from "vitest";
import { makeCards } from "../../../../bot/chat/room/cards.ts";
import { readCaret } from "../../../../bot/chat/room-page/caret.ts";
import { checkLine, wordFault } from "../../../../bot/chat/room-page/check.ts";
import {
  completeFromRoom,
  completeLocally,
  quoteWhereNeeded,
} from "../../../../bot/chat/room-page/complete.ts";
import { en } from "../../../../bot/chat/room-page/words.en.ts";
import { commands } from "../../../../commands/index.ts";
import { speaking } from "../../../../commands/speech/language.ts";
import { parseLine } from "../../../../commands/speech/line.ts";

const cards = makeCards(commands, "student");
const at = (line: string) => readCaret(line, cards);
const choices = (line: string) => completeLocally(at(line), line, cards);

describe("where the caret stands", () => {
  test("in the command until its last word is followed by a space", () => {
    expect(at("/")).toMatchObject({ at: "command" });
    expect(at("/run")).toMatchObject({ at: "command", typed: "run" });
    expect(at("/run sta")).toMatchObject({ at: "command", typed: "run sta" });
    expect(at("/run start ")).toMatchObject({ at: "option", typed: "" });
  });

  test("in a value from the colon on, spaces and all, and out of it after a space", () => {
    expect(at("/plan film:Lan")).toMatchObject({ at: "value", option: "film", typed: "Lan" });
    expect(at("/plan film:Lantern 4")).toMatchObject({ at: "value", option: "film", typed: "Lantern 4" });
    expect(at("/plan film:Lantern 400 ")).toMatchObject({ at: "option", others: { film: "Lantern 400" } });
    expect(at('/plan film:"Lantern 400" te')).toMatchObject({ at: "option", typed: "te" });
    expect(at("/plan film:Lantern 400 temp:2")).toMatchObject({
      at: "value",
      option: "temp",
      others: { film: "Lantern 400" },
    });
  });
});

describe("what may come next", () => {
  test("commands by their beginning, then by a word of what they do", () => {
    expect(choices("/pl")[0]?.label).toBe("/plan");
    expect(choices("/correct").map(({ line }) => line)).toContain("/run correct ");
  });

  test("options not yet given, the needed ones first", () => {
    const labels = choices("/plan ").map(({ label }) => label);
    expect(labels.slice(0, 2).sort()).toEqual(["film:", "temp:"]);
    expect(choices("/plan film:Lantern 400 ").map(({ label }) => label)).not.toContain("film:");
  });

  test("choices by what is typed of them, or by what the reader's language calls them", () => {
    const german = speaking("de", () => makeCards(commands, "student"));
    const taken = (line: string) => completeLocally(readCaret(line, german), line, german);
    const running = { label: "fließendes Wasser", hint: "running", line: "/plan wash:running " };
    expect(taken("/plan wash:run")).toEqual([running]);
    expect(taken("/plan wash:fließ")).toEqual([running]);
    expect(choices("/plan wash:run")).toEqual([{ ...running, label: "running water" }]);
  });

  test("a choice may be typed as it is shown", () => {
    const german = speaking("de", () => makeCards(commands, "student"));
    const faultsOf = (line: string) => checkLine(line, german, null).faults.map(({ code }) => code);
    expect(faultsOf("/plan film:Lantern 400 temp:20 washaid:Ja")).toEqual([]);
    expect(faultsOf("/plan film:Lantern 400 temp:20 washaid:jein")).toEqual(["ERR_CHOICE"]);
  });

  test("a value taken from the room is a line the room reads as the same value", () => {
    for (const value of ["Lantern 400", 'a "b" c', "x y:z", "1+9", "back\\slash"]) {
      const line = "/plan film:";
      const caret = at(line);
      if (caret.at !== "value") throw new Error("no value");
      const [choice] = completeFromRoom(caret, line, [{ label: value, value }]);
      const parsed = parseLine(choice?.line ?? "", [{ name: "plan" }]);
      expect(parsed).toEqual({ ok: true, value: { name: "plan", options: { film: value } } });
    }
    expect(quoteWhereNeeded("Lantern 400")).toBe("Lantern 400");
  });
});

describe("what is wrong with a line", () => {
  const words = (line: string, skip: string | null = null) =>
    checkLine(line, cards, skip).faults.map((fault) => wordFault(fault, en));

  test("an option that is none, and a number out of its bounds", () => {
    expect(words("/plan film:x temp:20 colour:red")).toEqual(["/plan has no option colour:."]);
    expect(words("/plan film:x temp:20 rolls:0")[0]).toContain("rolls: is at least 1");
    expect(words("/plan film:x temp:20 rolls:two")[0]).toContain("rolls: takes a whole number");
  });

  test("the option being typed is not judged yet", () => {
    expect(words("/plan film:x temp:20 rolls:0", "rolls")).toEqual([]);
  });

  test("what is still needed is named", () => {
    expect(checkLine("/plan film:x", cards, null).missing).toEqual(["temp"]);
  });
});

test("every option of every command has a card with words in it", () => {
  for (const role of ["student", "aide", "teacher"] as const) {
    for (const card of makeCards(commands, role)) {
      expect(card.summary, card.name).not.toBe("");
      for (const option of card.options) expect(option.about, `${card.name} ${option.name}`).not.toBe("");
    }
  }
});
