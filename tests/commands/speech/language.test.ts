import { expect, test } from "vitest";
import { inEach, speaking, spokenLanguage } from "../../../commands/speech/language.ts";
import { languageOfTag } from "../../../store/shapes/language.ts";

const words = inEach({ en: "Pour out.", de: "Ausgießen." });

test("within a stretch the words are those of its language; after it, thrown or not, those of before", () => {
  expect(words()).toBe("Pour out.");
  speaking("de", () => {
    expect(words()).toBe("Ausgießen.");
    expect(speaking("en", words)).toBe("Pour out.");
    expect(words()).toBe("Ausgießen.");
  });
  expect(() =>
    speaking("de", () => {
      throw new Error("broke");
    }),
  ).toThrow("broke");
  expect(spokenLanguage()).toBe("en");
});

test.each([
  ["de", "de"],
  ["de-AT", "de"],
  ["DE_ch", "de"],
  ["en-GB", "en"],
  ["den", undefined],
  ["pt-BR", undefined],
  ["", undefined],
])("the tag %s is spoken as %s", (tag, language) => expect(languageOfTag(tag)).toBe(language));
