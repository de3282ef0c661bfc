import type { UnreadableKind } from "../../../store/shapes/unreadable.ts";

const KINDS: Readonly<Record<UnreadableKind, string>> = {
  tank: "tank",
  sheet: "data sheet",
  plan: "plan",
  run: "run",
  batch: "bottle",
  roll: "roll in the log",
  shelf: "product on the shelf",
  handover: "handover",
  enlarger: "enlarger",
  paper: "box of paper",
  print: "print in the log",
  habit: "setting",
};

const FIELDS: Readonly<Record<string, string>> = {
  volumeMl: "volume",
  bottleMl: "bottle",
  timeConstantSeconds: "cooling time",
  roomTenthsC: "room temperature",
  tenthsC: "temperature",
  seconds: "time",
  reels: "number of reels",
  rolls: "number of films",
  capacitySqInPerLitre: "capacity",
};

export const en = {
  kind: (kind: UnreadableKind) => KINDS[kind],
  field: (field: string) => FIELDS[field] ?? (field === "" ? "what it holds" : `\`${field}\``),
  handoverOf: (id: number) => `handover ${id}`,
  below: (field: string, value: string, least: string) => `${field}: ${value}, must be at least ${least}`,
  above: (field: string, value: string, most: string) => `${field}: ${value}, can be at most ${most}`,
  wrong: (field: string) => `${field}: not as this version keeps it`,
  more: (count: number) => `and ${count} more`,
  setAside: (name: string) => `**${name} is set aside.** It no longer counts; what stood there is kept.`,
  freed: (name: string) =>
    `**${name} is set aside.** It is over: no more calls come, and its tank is free. What stood there is kept.`,
  refused: (name: string) =>
    `${name} is there, but it can't be read, so nothing is done with it. The teacher sees why with \`/class mend\`.`,
  /** Under a list from which these are left out. */
  leftOut: (names: string, isOne: boolean) =>
    `${names} can't be read and ${isOne ? "is" : "are"} left out. \`/class mend\` says why (teacher).`,
  setAsideKey: (name: string) => `Set ${name} aside`,
};
export type UnreadableWords = typeof en;
