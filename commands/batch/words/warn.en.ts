import type { BatchKind } from "../../../store/shapes/batch.ts";
import { en as batch } from "./batch.en.ts";

/*
 * What a batch says unasked. `bath` is product and strength, `next` the sentence that says what to do, `left` what is
 * left of it in words.
 */

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const en = {
  open: (label: string) => `Next: ${label} is open.`,
  mixNew: (kind: BatchKind) => `Next: an aide or the teacher mixes new ${batch.kind[kind]} (\`/batch mix\`).`,
  useInstead: (label: string) => `Use **${label}** instead.`,
  intoSilver: "It goes into the silver collection, never the drain (`/batch discard`).",
  away: "It is thrown away as local rules say (`/batch discard`).",
  tired: (label: string, bath: string, left: string, clears: string, next: string) =>
    `**${capital(left)} in ${label}** (${bath}): it is getting tired${clears === "" ? "" : `, ${clears}; new plans fix as long as that needs`}. ${next}`,
  lastFilms: (label: string, bath: string, left: string, next: string) =>
    `**${left} in ${label}** (${bath}). ${next}`,
  notEnough: (label: string, bath: string, ml: string, next: string) =>
    `**Not enough for a roll in ${label}** (${bath}): ${ml}. ${next}`,
  exhausted: (label: string, bath: string, why: string) =>
    `**${label} is exhausted: don't use it.** ${capital(bath)}: ${why}.`,
  outOfDate: (label: string, bath: string, why: string) =>
    `**${label} is out of date: don't use it.** ${capital(bath)}: ${why}.`,
  /** Days count where there is more than one night left. */
  soon: (
    label: string,
    bath: string,
    left: string,
    time: { days: number } | { hours: number },
    date: string,
  ) => {
    const when = "hours" in time ? `${time.hours} h` : time.days === 1 ? "1 day" : `${time.days} days`;
    return `**${label} goes out of date in ${when}** (${bath}, ${left}), on ${date}. Use it first.`;
  },
  testOverdue: (label: string, bath: string, rollsSince: string | null) =>
    `**${label} needs a clearing test** (${bath}): ${rollsSince === null ? "never tested" : `${rollsSince} since its last test`}. Next: an aide or the teacher drops a scrap of undeveloped film into a little of it, in room light, and times until it is clear: \`/batch test batch:${label} clearing:0:45\`.`,
  rotate:
    "Next: an aide or the teacher mixes a fresh bottle, and the second bath moves up (`/batch rotate`).",
  replenishDue: (label: string, bath: string, ml: string) =>
    `**${ml} of replenisher for ${label}** (${bath}). Next: an aide or the teacher puts it in, taking used bath out where the bottle is full, and notes it: \`/batch topup\`.`,
  replenished: (ml: string) => `${ml} are in`,
  mixed: (date: string, ml: string, rolls: string) => `Mixed ${date}, ${ml}; ${rolls} through it so far`,
  fresh: (seconds: string) => `fresh clearing time ${seconds}`,
  toppedUp: (times: number) => `topped up ${times === 1 ? "once" : `${times} times`}`,
  figures: (figures: string, source: string) =>
    `_${figures}. Its limits: ${source}. The class has been told._`,
  see: (label: string) => `See ${label}`,
  collect: "Into the silver collection",
  movedUp: "it has moved up and is the first fixing bath now",
  overEnd: (label: string) =>
    `**${label} is past its end with your film in it: tell the teacher now.** Leave the film in it until they have tested it; it may need another fixer after this one.`,
  dontPour: (old: string, why: string, kind: BatchKind) =>
    `**Don't pour in ${old}.** ${capital(why)}, and no other ${batch.kind[kind]} is ready. If the film is in water already, leave it there: water does no harm. Tell the teacher.`,
  takeOther: (to: string, old: string, why: string, kind: BatchKind) =>
    `**Take ${to}, not ${old}**, when it is time for the ${batch.kind[kind]}. ${capital(old)}: ${why}. Your plan is changed.`,
};
export type WarnWords = typeof en;
