import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readSentence } from "../../../commands/ask/read.ts";
import { CHANGES, type Intent } from "../../../commands/ask/rules.ts";
import { AROUND_DE } from "./around.de.ts";
import { AROUND_EN } from "./around.en.ts";
import { BASICS_DE } from "./basics.de.ts";
import { BASICS_EN } from "./basics.en.ts";
import { DESK_DE } from "./desk.de.ts";
import { DESK_EN } from "./desk.en.ts";
import { BLIND_DE } from "./blind.de.ts";
import { BLIND_EN } from "./blind.en.ts";
import { EVENING_DE } from "./evening.de.ts";
import { EVENING_EN } from "./evening.en.ts";
import { MORE_DE } from "./more.de.ts";
import { MORE_EN } from "./more.en.ts";
import { CLASS_NAMES, readAs } from "./read-as.ts";
import { TYPED_DE } from "./typed.de.ts";
import { TYPED_EN } from "./typed.en.ts";
import { WORRY_DE } from "./worry.de.ts";
import { WORRY_EN } from "./worry.en.ts";

const TABLES = [
  ["English, written before the rules", TYPED_EN],
  ["German, written before the rules", TYPED_DE],
  ["English, written beside the rules", MORE_EN],
  ["German, written beside the rules", MORE_DE],
] as const;

describe.each(TABLES)("%s", (_, rows) => {
  const reads = rows.map(([wanted, sentence]) => ({ wanted, sentence, read: readAs(sentence) }));

  test("98 of 100 are read as what is wanted, and none of the others as a way to be hurt", () => {
    const wrong = reads.filter(({ wanted, read }) => read !== wanted);
    expect(wrong.length, JSON.stringify(wrong, null, 1)).toBeLessThanOrEqual(rows.length * 0.02);
    expect(wrong.filter(({ read }) => read === "harm")).toEqual([]);
  });

  test("whoever may be hurt gets first aid, every time", () => {
    const hurt = reads.filter(({ wanted }) => wanted === "harm");
    expect(hurt.length).toBeGreaterThan(10);
    expect(hurt.filter(({ read }) => read !== "harm")).toEqual([]);
  });

  test("a shout is heard whatever stands around it", () => {
    for (const { wanted, sentence } of reads.filter((each) => each.wanted !== "harm")) {
      const hurt = `${sentence} ${wanted === "none" ? "" : "and "}fixer in my eye`;
      expect(readAs(hurt), hurt).toBe("harm");
    }
  });
});

test.each([
  ...EVENING_EN,
  ...EVENING_DE,
  ...WORRY_EN,
  ...WORRY_DE,
  ...AROUND_EN,
  ...AROUND_DE,
  ...BASICS_EN,
  ...BASICS_DE,
  ...DESK_EN,
  ...DESK_DE,
])("of an evening, %s: %s", (wanted, sentence) => {
  expect(readAs(sentence)).toBe(wanted);
});

/*
 * Written by somebody who had not seen the rules. What the reader made of them before it was mended by them: in English 154 of 183
 * right, 5 among the keys, 13 wrong, 11 a change that was none; in German 157 of 185, 1, 15 and 12. 42 and 49 of them stand in
 * the tables above as well, word for word.
 */
describe.each([
  ["English", BLIND_EN],
  ["German", BLIND_DE],
] as const)("%s, written blind", (_, rows) => {
  const reads = rows.map(([accepted, sentence]) => ({
    accepted: accepted.split(" "),
    sentence,
    read: readAs(sentence),
  }));

  test("98 of 100 are read as what would serve", () => {
    const wrong = reads.filter(({ accepted, read }) => !accepted.includes(read));
    expect(wrong.length, JSON.stringify(wrong, null, 1)).toBeLessThanOrEqual(rows.length * 0.02);
  });

  test("nothing is read as a change that is none", () => {
    const none = reads.filter(({ accepted }) => !accepted.some((each) => CHANGES.has(each as Intent)));
    expect(none.length).toBeGreaterThan(100);
    expect(none.filter(({ read }) => CHANGES.has(read as Intent))).toEqual([]);
  });

  test("whoever may be hurt gets first aid, and nobody else", () => {
    expect(reads.filter(({ accepted, read }) => accepted.includes("harm") !== (read === "harm"))).toEqual([]);
  });
});

describe("a change that is doubtful is offered, not read", () => {
  test.each([
    ["stop laughing", "stop"],
    ["don't stop", "stop"],
    ["noch nicht starten", "start"],
    ["we started the tank yesterday", "start"],
    ["nobody poured anything", "next"],
  ] as const)("%s", (sentence, change) => {
    const { wanted, doubted } = readSentence(sentence, CLASS_NAMES);
    expect(wanted.filter((intent) => CHANGES.has(intent))).toEqual([]);
    expect(doubted).toContain(change);
  });

  test("wherever a short sentence holds a word that nobody knows", () => {
    for (const change of ["start", "stop", "next", "los", "abbrechen", "weiter", "oops", "begin"])
      for (const strange of ["zebra", "giraffen", "qwxz", "lunchbox", "turnbeutel"])
        for (const sentence of [`${change} ${strange}`, `${strange} ${change}`])
          expect(CHANGES.has(readAs(sentence) as Intent), sentence).toBe(false);
  });
});

test("each language has at least 500 different sentences", () => {
  for (const tables of [
    [TYPED_EN, MORE_EN, BLIND_EN],
    [TYPED_DE, MORE_DE, BLIND_DE],
  ]) {
    const sentences = tables.flat().map(([, sentence]) => sentence);
    expect(new Set(sentences).size).toBeGreaterThanOrEqual(500);
  }
});

describe("what is hardly understood is offered, not answered", () => {
  test.each(["my reel is wobbling inside", "die spule wackelt in der dose"])("%s", (sentence) => {
    expect(readSentence(sentence, CLASS_NAMES).isUnsure).toBe(true);
  });

  test("what was understood so far mostly still is", () => {
    const rows = [...TYPED_EN, ...TYPED_DE, ...MORE_EN, ...MORE_DE, ...WORRY_EN, ...WORRY_DE];
    const unsure = rows.filter(([, sentence]) => readSentence(sentence, CLASS_NAMES).isUnsure);
    expect(unsure.length, JSON.stringify(unsure)).toBeLessThanOrEqual(rows.length * 0.02);
  });
});

describe("what a sentence speaks of", () => {
  const thingsIn = (sentence: string) => readSentence(sentence, CLASS_NAMES).things;

  test.each([
    ["is 19 and a half degrees fine", { tenthsC: 195 }],
    ["gehen auch 19 einhalb grad", { tenthsC: 195 }],
    ["lantern 400 house mq 1+1 at 20", { films: ["Lantern 400"], developer: "House MQ", tenthsC: 200 }],
    ["Lanten 400, 68 F", { films: ["Lantern 400"], tenthsC: 200 }],
    ["quay bei 21,5°", { films: ["Quay 100"], tenthsC: 215 }],
    ["lantern at 1600, 24 degrees", { films: ["Lantern 400"], exposureIndex: 1600, tenthsC: 240 }],
    ["i have iso 400 film but shot at 800", { exposureIndex: 800 }],
    ["ich hab 400er film auf 800 belichtet", { exposureIndex: 800 }],
    ["shot at 1600 on 400 film", { exposureIndex: 1600 }],
    ["poured half a minute ago", { seconds: 30, tenthsC: null }],
    ["vor ner halben minute", { seconds: 30 }],
    ["seit 1:30 drin", { seconds: 90, dilution: null }],
    ["who has tank three", { tank: 3 }],
    ["wer ist an dose zwei", { tank: 2 }],
    ["is b2 ok", { bottle: 2 }],
    ["stop R7", { run: 7 }],
    ["lantern in stock", { films: ["Lantern 400"], dilution: { concentrateParts: 1, waterParts: 0 } }],
    ["quay 1:9", { dilution: { concentrateParts: 1, waterParts: 9 } }],
  ])("%s", (sentence, things) => {
    expect(thingsIn(sentence)).toMatchObject(things);
  });

  test("a name that is a common word is only meant whole", () => {
    const names = { films: ["Time 400", "Stop 100"], developers: ["Water"] };
    expect(readSentence("how much time is left", names).things.films).toEqual([]);
    expect(readSentence("how long for time 400", names).things.films).toEqual(["Time 400"]);
  });

  test("names that begin alike are told apart by their number, or all meant", () => {
    const names = { films: ["Lantern 400", "Lantern 100"], developers: [] };
    expect(readSentence("lantern 100 please", names).things.films).toEqual(["Lantern 100"]);
    expect(readSentence("lantern please", names).things.films).toEqual(["Lantern 400", "Lantern 100"]);
  });
});

test("any characters are read, and read the same each time", () => {
  const text = fc.oneof(
    fc.string({ unit: "binary", maxLength: 2000 }),
    fc
      .array(fc.constantFrom("20", "°", "tank", "1:30", "vor", "eye", "\u0000", "🙂", "ﬁ", "ß", "lantern"), {
        maxLength: 300,
      })
      .map((words) => words.join(" ")),
  );
  fc.assert(
    fc.property(text, (typed) => {
      expect(readSentence(typed, CLASS_NAMES)).toEqual(readSentence(typed, CLASS_NAMES));
    }),
  );
});
