/*
 * What a message is, told by its key: each is said once, and chats recognise a repeat by it. Numbers are written with letters
 * too, so that the longest key keeps within 25 characters.
 */

export type MessageKey =
  /** A cue of a run; `cue` names it within the run: `0.1a5`. */
  | { readonly kind: "cue"; readonly run: number; readonly cue: string }
  /** A run is turned to another bottle; `to` is its label, null where there is none. */
  | {
      readonly kind: "redirect";
      readonly run: number;
      readonly step: number;
      readonly batch: number;
      readonly to: string | null;
    }
  /** A bottle's warning, to the class or to one of its teachers. */
  | {
      readonly kind: "warning";
      readonly batch: number;
      readonly mark: number;
      readonly arm: number;
      readonly teacher: number | null;
    }
  /** Films of a bottle share a fault; `fault` is short for its name. */
  | { readonly kind: "fault"; readonly batch: number; readonly fault: string; readonly teacher: number }
  /** Rows can't be read; `which` is short for them. */
  | { readonly kind: "unreadable"; readonly class: number; readonly which: string; readonly teacher: number }
  /** No more calls come for a run, since it can't be read. */
  | { readonly kind: "lost"; readonly run: number }
  /** `name` tells the day, the minute and which of the two it is: `261126.1080w`. */
  | { readonly kind: "digest"; readonly class: number; readonly name: string }
  /** A class is going to be erased, or is kept after all. */
  | { readonly kind: "erasure" | "reprieve"; readonly class: number; readonly erasure: number }
  /** Calls of a run reach nobody. */
  | { readonly kind: "unreached"; readonly run: number; readonly teacher: number }
  /** A chat can go on no longer; one for each minute in which a process found it so. */
  | { readonly kind: "chat-off"; readonly class: number; readonly teacher: number; readonly minute: number }
  /** A wet print came into the wash of a run's; `schedule` is the one that this begins. */
  | { readonly kind: "wash-anew"; readonly run: number; readonly schedule: number }
  /** A fixer was found to need longer than a run was to have; `line` of its ledger says so. */
  | { readonly kind: "fixing"; readonly run: number; readonly line: number }
  /** Somebody else has changed a run; `schedule` is the one that this begins. */
  | { readonly kind: "changed"; readonly run: number; readonly schedule: number }
  /** The same, by the next step's button: the run's own calls say what is to be done. */
  | { readonly kind: "pressed"; readonly run: number; readonly schedule: number }
  /** There is a place for whoever waits at the sink or at a line of trays; `turn` counts how often they have come to wait. */
  | { readonly kind: "turn"; readonly run: number; readonly turn: number }
  /** Somebody at the trays has paper open: to whoever announced white light. `part` counts the class's people. */
  | { readonly kind: "lights-wait"; readonly say: number; readonly part: number }
  /** A chat takes longer for a message than a call can leave ahead; told once an hour at most. */
  | { readonly kind: "chat-slow"; readonly class: number; readonly teacher: number; readonly hour: number }
  /** A teacher's word to many; `part` counts those it goes to. */
  | { readonly kind: "say"; readonly say: number; readonly part: number };

/** Chats take no longer one. */
const LONGEST = 25;

const make36 = (number: number): string => number.toString(36);
const parse36 = (text: string | undefined): number => Number.parseInt(text ?? "", 36);
const teacherPart = (teacher: number | null): string => (teacher === null ? "" : `.${make36(teacher)}`);

export function makeMessageKey(key: MessageKey): string {
  return unbound(key).slice(0, LONGEST);
}

function unbound(key: MessageKey): string {
  switch (key.kind) {
    case "cue":
      return `${make36(key.run)}.${key.cue}`;
    case "redirect":
      return `x${make36(key.run)}.${make36(key.step)}.${make36(key.batch)}.${key.to ?? "-"}`;
    case "warning":
      return `b${make36(key.batch)}.${key.mark}.${make36(key.arm)}${teacherPart(key.teacher)}`;
    case "fault":
      return `f${make36(key.batch)}.${key.fault}${teacherPart(key.teacher)}`;
    case "unreadable":
      return `u${make36(key.class)}.${key.which}${teacherPart(key.teacher)}`;
    case "lost":
      return `lost.${make36(key.run)}`;
    case "digest":
      return `d${make36(key.class)}.${key.name}`;
    case "erasure":
    case "reprieve":
      return `erase.${key.class}.${key.kind === "erasure" ? "p" : "k"}${key.erasure}`;
    case "unreached":
      return `u${make36(key.run)}.${make36(key.teacher)}`;
    case "chat-off":
      return `off.${make36(key.class)}.${make36(key.teacher)}.${make36(key.minute)}`;
    case "wash-anew":
      return `w${make36(key.run)}.${make36(key.schedule)}`;
    case "fixing":
      return `fx.${make36(key.run)}.${make36(key.line)}`;
    case "changed":
      return `c${make36(key.run)}.${make36(key.schedule)}`;
    case "pressed":
      return `n${make36(key.run)}.${make36(key.schedule)}`;
    case "turn":
      return `t${make36(key.run)}.${make36(key.turn)}`;
    case "lights-wait":
      return `lw.${make36(key.say)}.${make36(key.part)}`;
    case "chat-slow":
      return `slow.${make36(key.class)}.${make36(key.teacher)}.${make36(key.hour)}`;
    case "say":
      return `${sayKeys(key.say).from}${make36(key.part)}`;
  }
}

/** All keys of one word to many lie from `from` to before `until`: "/" follows "." in the alphabet. */
export function sayKeys(say: number): { readonly from: string; readonly until: string } {
  const stem = `say.${make36(say)}`;
  return { from: `${stem}.`, until: `${stem}/` };
}

/** Cues are told from the others by their last part: step, letter of the kind, number. A run's number may begin with any letter. */
const CUE = /^([0-9a-z]+)\.([0-9a-z]+\.[0-9a-z]+[fagpnw][0-9a-z]+)$/;

/** The run whose own person a message tells what to do at the sink; null where it tells of something else, or tells others. */
export function runCalledBy(text: string): number | null {
  const key = parseMessageKey(text);
  switch (key?.kind) {
    case "cue":
    case "redirect":
    case "wash-anew":
    case "fixing":
    case "changed":
    case "pressed":
    case "turn":
      return key.run;
    default:
      return null;
  }
}

/**
 * What a message tells a run's own person somebody else has changed in it: no call of its schedule says that. `step`: the one
 * that is given another bottle; undefined for a message that tells of no change.
 */
export function changeToldBy(text: string): { readonly step?: number } | undefined {
  // Most are cues, and not taken apart.
  if (CUE.test(text)) return undefined;
  const key = parseMessageKey(text);
  if (key?.kind === "redirect") return { step: key.step };
  return ["wash-anew", "fixing", "changed", "lost"].includes(key?.kind ?? "") ? {} : undefined;
}

/** By the letter of what begins a new schedule. */
const BEGINS_SCHEDULE = new Map<string, "wash-anew" | "changed" | "pressed">([
  ["w", "wash-anew"],
  ["c", "changed"],
  ["n", "pressed"],
]);

/** Undefined for a key of another kind. */
export function parseMessageKey(text: string): MessageKey | undefined {
  const [, ofRun, cue] = CUE.exec(text) ?? [];
  if (ofRun !== undefined && cue !== undefined) return { kind: "cue", run: parse36(ofRun), cue };
  const [head = "", second, third, fourth, fifth] = text.split(".");
  const id = parse36(head.slice(1));
  if (fifth !== undefined) return undefined;
  if (head === "lw" && third !== undefined)
    return { kind: "lights-wait", say: parse36(second), part: parse36(third) };
  if (head === "say" && third !== undefined)
    return { kind: "say", say: parse36(second), part: parse36(third) };
  if (head === "fx" && third !== undefined)
    return { kind: "fixing", run: parse36(second), line: parse36(third) };
  if (head === "lost" && second !== undefined) return { kind: "lost", run: parse36(second) };
  if (head.startsWith("u") && second !== undefined && third !== undefined)
    return { kind: "unreadable", class: id, which: second, teacher: parse36(third) };
  if (head.startsWith("x") && fourth !== undefined)
    return {
      kind: "redirect",
      run: id,
      step: parse36(second),
      batch: parse36(third),
      to: fourth === "-" ? null : fourth,
    };
  if (head.startsWith("b") && third !== undefined)
    return {
      kind: "warning",
      batch: id,
      mark: Number(second),
      arm: parse36(third),
      teacher: fourth === undefined ? null : parse36(fourth),
    };
  if (/^u[0-9a-z]+$/.test(head) && second !== undefined && third === undefined)
    return { kind: "unreached", run: id, teacher: parse36(second) };
  if (/^t[0-9a-z]+$/.test(head) && second !== undefined && third === undefined)
    return { kind: "turn", run: id, turn: parse36(second) };
  const begins = /^[wcn][0-9a-z]+$/.test(head) && BEGINS_SCHEDULE.get(head.charAt(0));
  if (begins && second !== undefined && third === undefined)
    return { kind: begins, run: id, schedule: parse36(second) };
  if (head === "off" && fourth !== undefined)
    return { kind: "chat-off", class: parse36(second), teacher: parse36(third), minute: parse36(fourth) };
  if (head === "slow" && fourth !== undefined)
    return { kind: "chat-slow", class: parse36(second), teacher: parse36(third), hour: parse36(fourth) };
  if (head.startsWith("f") && second !== undefined && third !== undefined)
    return { kind: "fault", batch: id, fault: second, teacher: parse36(third) };
  if (head.startsWith("d") && second !== undefined && third !== undefined)
    return { kind: "digest", class: id, name: `${second}.${third}` };
  const [, ofClass, letter, number] = /^erase\.(\d+)\.([pk])(\d+)$/.exec(text) ?? [];
  if (number === undefined) return undefined;
  return { kind: letter === "p" ? "erasure" : "reprieve", class: Number(ofClass), erasure: Number(number) };
}
