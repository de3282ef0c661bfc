import { inEach } from "./language.ts";
import { plain } from "./wording.ts";
import { NAMELESS } from "../../store/shapes/person.ts";
import { de } from "./words/name.de.ts";
import { en } from "./words/name.en.ts";

const words = inEach({ en, de });

/** A name as it is kept, for readers; whose name was taken out is somebody in the reader's language. */
export function nameWords(kept: string): string {
  return kept === NAMELESS ? words().nameless : plain(kept);
}

/** Where no name was ever kept. */
export function somebody(): string {
  return words().somebody;
}
