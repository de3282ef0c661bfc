import type { CalibrationFault } from "../plan/drift.ts";
import type { Action, FieldValue, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, formatMl, plain, saySeconds } from "../wording.ts";
import { formatNumbers, MOST_TANK_NUMBER, MOST_TANKS_AT_ONCE, type NumbersFault } from "./numbers.ts";
import type { Tank } from "./tank.ts";

/** A tank and who has it now. */
export interface TankNow {
  readonly tank: Tank;
  /** `R7, Mina: Developer`; null: free. */
  readonly use: string | null;
}

function formatOf({ format }: Tank): string {
  return format === "any" ? "any format" : format;
}

function describe({ tank, use }: TankNow): string {
  const parts = [
    `**Tank ${tank.number}**: ${countOf(tank.reels, "reel")}, ${formatMl(tank.volumeMl)}, ${formatOf(tank)}`,
  ];
  if (tank.timeConstantSeconds !== null)
    parts.push(`cools 63 % of the way in ${saySeconds(tank.timeConstantSeconds)}`);
  if (tank.condition !== null) parts.push(`fault: ${plain(tank.condition)}`);
  parts.push(use === null ? "free" : `in use by ${use}`);
  return `- ${parts.join("; ")}`;
}

export function listReply(tanks: readonly TankNow[]): Reply {
  if (tanks.length === 0)
    return {
      text: "The class has no tank yet. The teacher adds them: `/tank add numbers:1-12 reels:2 volume:500 ml`.",
      fields: { tanks: [] },
    };
  const free = tanks.filter(({ use, tank }) => use === null && tank.condition === null).length;
  return {
    text: [`**${free} of ${tanks.length}** tanks are free and sound.`, ...tanks.map(describe)].join("\n"),
    fields: { tanks: tanks.map(fieldsOf) },
  };
}

export function fieldsOf({ tank, use }: TankNow): { readonly [key: string]: FieldValue } {
  return { ...tank, use };
}

export function addedReply(tanks: readonly Tank[], replaced: readonly number[]): Reply {
  const [first] = tanks;
  const what = first
    ? `${countOf(first.reels, "reel")}, ${formatMl(first.volumeMl)}, ${formatOf(first)}`
    : "";
  const anew = replaced.length > 0 ? ` Of these I knew ${formatNumbers(replaced)} already: set anew.` : "";
  return {
    text: `**${countOf(tanks.length, "tank")}**: ${formatNumbers(tanks.map(({ number }) => number))} (${what} each).${anew}`,
    fields: { tanks: tanks.map((tank) => fieldsOf({ tank, use: null })) },
    actions: [LIST],
  };
}

export function removedReply(number: number): Reply {
  return {
    text: `Tank ${number} is gone from the list. The log keeps what went through it.`,
    actions: [LIST],
    fields: { tank: number, removed: true },
  };
}

export function reportedReply(tank: Tank): Reply {
  return {
    text: `Noted on **tank ${tank.number}**: ${plain(tank.condition ?? "")}. Every plan for it says so until an aide or the teacher clears it. Put the tank aside.`,
    fields: fieldsOf({ tank, use: null }),
    actions: [LIST],
  };
}

export function clearedReply(tank: Tank, was: string | null): Reply {
  return {
    text:
      was === null
        ? `Nothing was noted on tank ${tank.number}. It is sound.`
        : `Tank ${tank.number} is sound again. It was: ${plain(was)}.`,
    fields: fieldsOf({ tank, use: null }),
    actions: [LIST],
  };
}

const LIST: Action = { label: "All tanks", line: makeLine("tank list", {}) };

type Word = { [Fault in NumbersFault as Fault["code"]]: (fault: Fault) => string };
const NUMBERS_FAULT_TEXT: Word = {
  ERR_NO_NUMBERS: ({ typed }) =>
    `I can't read "${plain(typed.slice(0, 40))}" as tank numbers. Write them like 1-12 or 1, 2, 5.`,
  ERR_NUMBER_RANGE: ({ typed }) =>
    `"${plain(typed.slice(0, 40))}" is no range of tank numbers. They go from 1 to ${MOST_TANK_NUMBER}, the smaller one first.`,
  ERR_TOO_MANY_NUMBERS: ({ count }) =>
    `That would be ${count} tanks. Add at most ${MOST_TANKS_AT_ONCE} at a time.`,
};

export function numbersFaultWords(fault: NumbersFault): string {
  const word = NUMBERS_FAULT_TEXT[fault.code] as (fault: NumbersFault) => string;
  return word(fault);
}

export const UNKNOWN_TANK = (number: number, known: string): string =>
  known === ""
    ? `There is no tank ${number}: the class has none yet. The teacher adds them with \`/tank add\`.`
    : `There is no tank ${number}. The class has ${known}.`;
export const TANK_IN_USE = (number: number, use: string): string =>
  `Tank ${number} is in use by ${use}. Take it off the list when it is free.`;

export function measuredReply(tank: Tank, seconds: number): Reply {
  return {
    text: `**${saySeconds(seconds)}**: in this time tank ${tank.number} goes 63 % of the way to the room. Plans for it allow for that where \`room:\` is given.`,
    fields: { tank: tank.number, timeConstantSeconds: seconds },
    actions: [LIST],
  };
}

export const CALIBRATION_TEXT = {
  ERR_TOO_NEAR_ROOM:
    "The readings are too near to the room to tell anything. Begin at least 1.5 °C off it, and end on the same side.",
  ERR_WRONG_WAY: "The water moved away from the room. Check the two readings and the room's.",
  ERR_NO_CHANGE: "The two readings are alike. Wait longer between them, or start farther from the room.",
} as const satisfies Record<CalibrationFault, string>;
export const CALIBRATION_ODD = (seconds: number): string =>
  `That would be ${saySeconds(seconds)}, which no tank does. Check the readings and the time between them.`;
