import { firstLanguage } from "./early.ts";
import { readKept } from "./kept.ts";
import { NOTHING_OF_ANYBODY, type State } from "./state.ts";

/** What a page knows as it opens: what is kept on this device, and nothing of anybody. */
export function firstState(): State {
  return {
    door: null,
    isUnreachable: false,
    ...NOTHING_OF_ANYBODY,
    isFeedCut: false,
    farewell: null,
    cards: [],
    present: { count: 0, names: [] },
    fault: null,
    fill: null,
    formSentAfter: null,
    theme: readKept("theme", "auto"),
    language: firstLanguage,
    isSoundOn: readKept("sound", true),
    isSpeechOn: readKept("speech", false),
  };
}
