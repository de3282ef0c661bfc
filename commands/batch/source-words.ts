import { sayStored } from "../sheet/basis-words.ts";
import { inEach } from "../speech/language.ts";
import { plain } from "../speech/wording.ts";
import { HOUSE_SOURCES, OWN_FIRST, type HouseSource } from "./presets.ts";
import { de } from "./words/source.de.ts";
import { en } from "./words/source.en.ts";

const words = inEach({ en, de });
const HOUSE = Object.keys(HOUSE_SOURCES) as HouseSource[];

/** Where a batch's limits come from, as it is kept with it; what a person wrote stays as they wrote it. */
export function sourceWords(kept: string): string {
  if (kept.startsWith(OWN_FIRST)) return words().ownFirst(sourceWords(kept.slice(OWN_FIRST.length)));
  const house = HOUSE.find((each) => HOUSE_SOURCES[each] === kept);
  return house === undefined ? plain(sayStored(kept)) : words().house[house];
}
