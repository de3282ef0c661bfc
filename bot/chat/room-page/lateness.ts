import { sayMinutes, saySeconds } from "../../../commands/speech/wording.ts";
import { lateSeconds, type Call } from "./calls.ts";
import type { CueWords } from "./call-words.en.ts";

/* What a page says of a call that is seen or heard after its moment: how late, and whether it is still to be done. */

/** Sooner, a voice that says so is in the way of what is to be done. */
const SPOKEN_FROM_SECONDS = 5;
const MINUTE = 60;

/** `40 s late: do it now`, `only 7 s left`; of a word `10 min ago`; empty where nobody could tell. */
export function sayLateness(call: Call, now: number, words: CueWords): string {
  const late = lateSeconds(call, now);
  if (late === undefined) return "";
  switch (call.kind) {
    case "word":
      return words.ago(sayMinutes(late));
    case "get-ready":
      return words.onlyLeft(saySeconds(secondsLeft(call, now)));
    case "nudge":
      return words.late(saySeconds(late));
    default:
      return words.lateDoIt(saySeconds(late));
  }
}

/** What a voice says of a call, with its lateness; empty: nothing. */
export function spokenOf(call: Call, now: number, words: CueWords): string {
  const { spoken, brief } = call.words;
  const late = lateSeconds(call, now);
  if (spoken === "" || late === undefined || late < SPOKEN_FROM_SECONDS) return spoken;
  // Its own words tell how long it is from the moment that has passed.
  if (call.kind === "get-ready") return `${brief}. ${words.spokenLeft(secondsLeft(call, now))}`;
  const long = late < MINUTE ? words.spokenLate(late) : words.spokenLateMinutes(Math.floor(late / MINUTE));
  return `${spoken} ${long}`;
}

/** What is to be done before the next bath, for whoever may not have seen the call to pour out. */
export function doFirst(call: Call, seenAt: number): string {
  const isMissed = call.kind === "nudge" || lateSeconds(call, seenAt) !== undefined;
  return isMissed ? (call.words.first ?? "") : "";
}

const secondsLeft = ({ until }: Call, now: number): number => Math.max(0, Math.ceil((until - now) / 1000));
