import type { Language } from "../../../store/shapes/language.ts";

/* Calls said aloud by the browser's own voice, in the person's language. */

export const canSpeak = (): boolean => "speechSynthesis" in window;

interface Saying {
  readonly said: SpeechSynthesisUtterance;
  /** By `performance.now`. */
  readonly until: number;
}

const LOOK_MS = 200;
/** Longer than any call takes to say; some engines go on saying that they speak. */
const LONGEST_MS = 8000;
let waiting: readonly Saying[] = [];
let begunAt = -Infinity;
let looking: ReturnType<typeof setTimeout> | undefined;

/**
 * After the tone, which wakes the ear. One after the other, so that each of two tanks has its words; what would come when
 * it is of no use any more is left out. `goodForMs`: from now.
 */
export function speakAloud(text: string, language: Language, afterMs: number, goodForMs: number): void {
  if (!canSpeak() || text === "") return;
  const until = performance.now() + goodForMs;
  setTimeout(() => {
    const said = new SpeechSynthesisUtterance(text);
    said.lang = language === "de" ? "de-DE" : "en-GB";
    waiting = [...waiting, { said, until }];
    if (looking === undefined) sayNext();
  }, afterMs);
}

function sayNext(): void {
  looking = undefined;
  waiting = waiting.filter(({ until }) => performance.now() < until);
  const [next, ...others] = waiting;
  if (!next) return;
  if (!speechSynthesis.speaking || performance.now() - begunAt > LONGEST_MS) {
    speechSynthesis.cancel();
    speechSynthesis.speak(next.said);
    begunAt = performance.now();
    waiting = others;
  }
  if (waiting.length > 0) looking = setTimeout(sayNext, LOOK_MS);
}
