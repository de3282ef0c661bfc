import { z } from "zod";
import type { ErrorCode } from "./errors.ts";
import type { Stores } from "../store/index.ts";
import type { SchoolClass } from "../store/shapes/school.ts";
import type { PhotoOf } from "../store/shapes/photo.ts";
import type { LogFile } from "../store/shapes/log-file.ts";
import type { Person, Role } from "../store/shapes/person.ts";

/*
 * Glossary. These words are used in code, SQL and on screen alike.
 *
 * class       one cohort in one place (a guild, or the room); all data belongs to exactly one class
 * habits      how one class works: what its plans and cues take for granted
 * sheet       what the maker or teacher says of one film in one developer at one dilution
 * plan        the steps, volumes, times and cautions worked out for one tank load
 * run         one tank load going through its plan
 * step        one part of a plan: develop, stop or rinse, fix, wash, wash aid, wetting agent, dry, cut and sleeve
 * bath        the liquid a step needs in the tank
 * cue         a moment at which the bot speaks to a person: agitate, pour out, next bath
 * lead        how long before its moment a cue is decided, where a chat is slow
 * settle      to decide what has fallen due of a run: what is said, and what another stands for
 * keep        to write a run that has changed, with the cues, pours and rolls that follow from it
 * owe         to write down a message that is to be said
 * unit        what leaves as one message: usually one that is owed
 * bundle      several that are owed, said as one in a class's channel
 * tank        a numbered tank: reels, volume, condition
 * roll        one film in a run, with its owner, its log number, its result
 * batch       one mixed quantity of chemistry in a labelled bottle, with its ledger
 * ledger      what went into and out of a batch
 * need        what a step of a plan asks of a batch: kind, product, dilution, volume, film
 * mark        what a batch warns of, once for each arm
 * arm         counts what makes a batch warn anew: top-ups, and tests that show it good again
 * log         the cohort's record of rolls
 * board       the one message or page that shows every tank now
 * place       where a call came from; where the bot speaks to a class is an address
 */

/** What a handler may know. `now` is the one instant of the call (ms since the epoch). */
export interface Context {
  readonly now: number;
  readonly person: Person;
  readonly role: Role;
  readonly class: SchoolClass;
  readonly stores: Stores;
  /** Where the call came from; absent for a call that came from no channel (a terminal). */
  readonly here?: Here;
  /** The file that came with the call. */
  readonly file?: Uint8Array;
}

/** The channel of a call, where the chat has channels, and what the bot may not do there, in the chat's own words. */
export interface Here {
  readonly channelRef: string | null;
  readonly missingPermissions: readonly string[];
  /** As people see it: `#darkroom`; absent where the chat gives it none. */
  readonly channelName?: string | undefined;
  /** The channel that was picked in this call, where its chat has a list of them. */
  readonly picked?: PickedChannel | undefined;
  readonly threads?: ThreadPowers | undefined;
  /** What the chat knows of another of its channels; undefined of one that it does not see. */
  readonly look?: ((channelRef: string) => PickedChannel | undefined) | undefined;
}

export interface PickedChannel {
  readonly channelRef: string;
  readonly name: string;
  readonly missingPermissions: readonly string[];
  readonly threads?: ThreadPowers | undefined;
}

/** Of a channel in which a run can have a thread. */
export interface ThreadPowers {
  /** What the bot may not do there and would have to, in the chat's own words. */
  readonly missing: readonly string[];
  /** Everybody in the channel would see into them. */
  readonly areOpen: boolean;
}

/**
 * What an option names, for chats with a list to pick it from: `z.string().meta(picks("channel"))`. `file`: it is the text of
 * a file, for chats to which people can send one.
 */
export const PICKS = ["channel", "role", "person", "file"] as const;
export type Pick = (typeof PICKS)[number];
export const picks = (what: Pick): { readonly picks: Pick } => ({ picks: what });

/** A button. `line` is a command line without the slash, at most 100 characters: `run next run:7 step:2`. */
export interface Action {
  readonly label: string;
  readonly line: string;
  readonly weight?: "main" | "plain" | "danger";
}

/** A drawing that goes with a reply. Adapters turn the SVG into a PNG where the chat needs one. */
export interface Picture {
  /** File name without ending: `plan-curve`. */
  readonly name: string;
  readonly alt: string;
  readonly svg: string;
}

/** A file that goes with a reply (an export). */
export interface Attachment {
  readonly name: string;
  readonly mediaType: "text/csv" | "application/json" | "text/html";
  readonly content: string;
}

/** Where the photo of a roll's contact sheet, or of a print, belongs in a reply, for chats that can show it and take one. */
export interface PhotoSlot extends PhotoOf {
  readonly isKept: boolean;
  /** Whether this person may add one or put another in its place. */
  readonly mayAdd: boolean;
}

export type FieldValue =
  string | number | boolean | null | readonly FieldValue[] | { readonly [key: string]: FieldValue };

/**
 * What a command answers. `text` is a small markdown both chats show (bold, lists, code); instants in it are
 * marks made by `instant()` in wording.ts. `fields` are the same facts as data, with the unit in each name.
 */
export interface Reply {
  readonly text: string;
  readonly fields?: { readonly [key: string]: FieldValue };
  readonly actions?: readonly Action[];
  readonly pictures?: readonly Picture[];
  readonly attachments?: readonly Attachment[];
  /** The log as a file, which is made while it is taken. */
  readonly log?: LogFile;
  readonly photo?: PhotoSlot;
  /** Of a refused call: how it can be made again. */
  readonly again?: Again;
}

/** A refused call as it was made, for chats with forms: they open it filled in. */
export interface Again {
  readonly line: string;
  /** The first option that does not fit; null where none can be named. */
  readonly option: string | null;
}

/** A way in which a refused call would do: these options beside or in place of those given. */
export interface Instead {
  readonly label: string;
  readonly options: Readonly<Record<string, string | number>>;
}

/** How a refused call is mended. */
export interface Mending {
  /** Offered as buttons that make the call anew. */
  readonly instead?: readonly Instead[];
  /** The option to look at first. */
  readonly option?: string | null;
}

/** A person's mistake or a refusal: its text is shown to that person as it stands. */
export class UserError extends Error {
  readonly code: ErrorCode;
  readonly actions: readonly Action[];
  readonly mending: Mending;
  constructor(code: ErrorCode, text: string, actions: readonly Action[] = [], mending: Mending = {}) {
    super(text);
    this.name = "UserError";
    this.code = code;
    this.actions = actions;
    this.mending = mending;
  }
}

/** One value offered while typing. `value` is what is put in the line, `label` what is shown. */
export interface Suggestion {
  readonly label: string;
  readonly value: string;
}

export type Completer = (
  typed: string,
  context: Context,
  others: Readonly<Record<string, string>>,
) => readonly Suggestion[];

/** An option that is a file. */
export interface FileOption {
  readonly name: string;
  /** At most 100 characters. */
  readonly about: string;
  readonly mostBytes: number;
}

export interface Command {
  /** One or two words; the first is the group: `plan`, `run start`. */
  readonly name: string;
  /** What it was called before: typed so it goes on working, and the answer says the name of today. */
  readonly was?: readonly string[];
  /** At most 100 characters. */
  readonly summary: string;
  /** Every option has a description (`.describe`), at most 100 characters; at most 25 options. */
  readonly options: z.ZodObject;
  /** The least role that may call it. */
  readonly who: Role;
  /** Errors are always private, whatever is said here. */
  readonly visibility: "private" | "class";
  /** What its form asks for at first beside what it needs; the rest is folded away. All of it, if left out. */
  readonly first?: readonly string[];
  /** The option that takes words typed without a key: `/roll find milky`. */
  readonly rest?: string;
  readonly complete?: Readonly<Record<string, Completer>>;
  /** A file it takes, in chats where a call can carry one. */
  readonly file?: FileOption;
  handle(input: Record<string, unknown>, context: Context): Reply;
}

/** What a handler gets of these options. */
export type InputOf<Options extends () => z.ZodRawShape> = z.output<z.ZodObject<ReturnType<Options>>>;

/**
 * Keeps the handler's input type tied to the options while the registry holds plain commands. Options are made when they are
 * first asked for: to make those of all hundred commands takes longer than a call.
 */
export function defineCommand<S extends z.ZodRawShape>(
  command: Omit<Command, "options" | "handle" | "complete"> & {
    options(): S;
    readonly complete?: { readonly [K in keyof S]?: Completer };
    handle(input: z.output<z.ZodObject<S>>, context: Context): Reply;
  },
): Command {
  let made: z.ZodObject | undefined;
  return {
    ...(command as unknown as Command),
    get options() {
      return (made ??= z.object(command.options()));
    },
  };
}

/** What stands on a command's form beside the names that are typed: at most 100 characters each. */
export interface Form {
  readonly summary: string;
  /** By the option's name. */
  readonly options: Readonly<Record<string, string>>;
}

export type Forms = Readonly<Record<string, Form>>;
