import { listAction } from "./tank-words.ts";
import type { FieldValue, Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { plain, quoted } from "../speech/wording.ts";
import { formatNumbers, MOST_TANK_NUMBER, MOST_TANKS_AT_ONCE, type NumbersFault } from "./numbers.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";

/** A tank and who has it now. */
export interface TankNow {
  readonly tank: Tank;
  /** `R7, Mina: Developer`; null: free. */
  readonly use: string | null;
}

const words = inEach({ en, de });

function describe({ tank, use }: TankNow): string {
  const { tank: nameAndSize, cools, fault, free, inUse } = words();
  const parts = [nameAndSize(tank)];
  if (tank.timeConstantSeconds !== null) parts.push(cools(tank.timeConstantSeconds));
  if (tank.condition !== null) parts.push(fault(plain(tank.condition)));
  parts.push(use === null ? free : inUse(use));
  return `- ${parts.join("; ")}`;
}

export function listReply(tanks: readonly TankNow[]): Reply {
  if (tanks.length === 0) return { text: words().none, fields: { tanks: [] } };
  const free = tanks.filter(({ use, tank }) => use === null && tank.condition === null).length;
  return {
    text: [words().freeOf(free, tanks.length), ...tanks.map(describe)].join("\n"),
    fields: { tanks: tanks.map(fieldsOf) },
  };
}

export function fieldsOf({ tank, use }: TankNow): { readonly [key: string]: FieldValue } {
  return { ...tank, use };
}

export function addedReply(tanks: readonly Tank[], replaced: readonly number[]): Reply {
  const numbers = formatNumbers(tanks.map(({ number }) => number));
  const anew = replaced.length > 0 ? words().setAnew(formatNumbers(replaced)) : "";
  return {
    text: `${words().added(tanks.length, numbers, tanks[0])} ${anew}`.trim(),
    fields: { tanks: tanks.map((tank) => fieldsOf({ tank, use: null })) },
    actions: [listAction()],
  };
}

export function removedReply(number: number): Reply {
  return {
    text: words().removed(number),
    actions: [listAction()],
    fields: { tank: number, removed: true },
  };
}

export function reportedReply(tank: Tank): Reply {
  return {
    text: words().reported(tank.number, plain(tank.condition ?? "")),
    fields: fieldsOf({ tank, use: null }),
    actions: [listAction()],
  };
}

export function clearedReply(tank: Tank, was: string | null): Reply {
  const { nothingNoted, cleared } = words();
  return {
    text: was === null ? nothingNoted(tank.number) : cleared(tank.number, plain(was)),
    fields: fieldsOf({ tank, use: null }),
    actions: [listAction()],
  };
}

export function numbersFaultWords(fault: NumbersFault): string {
  switch (fault.code) {
    case "ERR_NO_NUMBERS":
      return words().noNumbers(typedIn(fault));
    case "ERR_NUMBER_RANGE":
      return words().numberRange(typedIn(fault), MOST_TANK_NUMBER);
    case "ERR_TOO_MANY_NUMBERS":
      return words().tooMany(fault.count, MOST_TANKS_AT_ONCE);
  }
}

const typedIn = ({ typed }: { readonly typed: string }): string => quoted(plain(typed.slice(0, 40)));

export const tankInUse = (number: number, use: string): string => words().busy(number, use);

/** `R7, Mina: Developer`. */
export const useWords = (run: string, owner: string | undefined, step: string): string =>
  `${run}, ${plain(owner ?? words().somebody)}: ${step}`;
