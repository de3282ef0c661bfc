import type { PhotoOf } from "../../../store/shapes/photo.ts";
import { z } from "zod";
import type { Action, Again, Suggestion } from "../../../commands/define.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { type Language, LANGUAGES } from "../../../store/shapes/language.ts";
import type { LineFault } from "../../../commands/speech/line.ts";
import type { SaidFirstDay } from "../../../commands/class/first-day-words.ts";
import type { ReadyPlan } from "../../../commands/plan/ready.ts";
import type { RunName } from "../../../store/shapes/run.ts";
import type { PersonView } from "./view.ts";
import type { RunView } from "../../../commands/run/run-view.ts";

/*
 * What goes over the room's socket. What a page sends is checked by these schemas; what it gets is typed only, since
 * we write both ends.
 */

export const MOST_LINE_CHARACTERS = 20_000;
/** A page names its calls, so that one sent again after a lost link does its work once. */
const callId = z.string().regex(/^[A-Za-z0-9_-]{8,40}$/);

export const fromPageSchema = z.discriminatedUnion("type", [
  /** First word of a page: `after` is the last event it has seen, null on a fresh page. */
  z.object({
    type: z.literal("hello"),
    after: z.int().min(0).nullable(),
    language: z.enum(LANGUAGES).optional(),
  }),
  /** The part of the feed before this entry, once what came after it is drawn. */
  z.object({ type: z.literal("earlier"), before: z.int().min(1) }),
  /** Picked on the page: from now on this person is spoken to in it. */
  z.object({ type: z.literal("language"), language: z.enum(LANGUAGES) }),
  z.object({ type: z.literal("ping"), sentAt: z.number() }),
  /** This entry, a word to many, is before its reader's eyes. */
  z.object({ type: z.literal("shown"), id: z.int().min(1) }),
  z.object({
    type: z.literal("line"),
    id: callId,
    text: z.string().min(1).max(MOST_LINE_CHARACTERS),
    /** What stood on the button it came from: shown to its sender in place of the line. */
    label: z.string().max(80).nullish(),
  }),
  z.object({
    type: z.literal("complete"),
    seq: z.int().min(0),
    name: z.string().max(40),
    option: z.string().max(40),
    typed: z.string().max(200),
    others: z.record(z.string().max(40), z.string().max(2000)),
  }),
  /** Send every run of the class, now and at each change: to the wall, for all to read, or to somebody's desk. Staff only. */
  z.object({ type: z.literal("watch"), on: z.boolean(), from: z.enum(["wall", "desk"]).default("wall") }),
]);
export type FromPage = z.output<typeof fromPageSchema>;
export type WatchedFrom = Extract<FromPage, { type: "watch" }>["from"];

export type EventKind = "line" | "reply" | "cue" | "notice";

/** One entry of the feed as this person sees it. */
export interface FeedEvent {
  readonly id: number;
  readonly at: number;
  readonly kind: EventKind;
  readonly isPrivate: boolean;
  /** Who caused it, where that was a person. */
  readonly author: { readonly name: string; readonly isYou: boolean } | null;
  /** True where it calls this person by name. */
  readonly callsYou: boolean;
  readonly text: string;
  /** The runs it speaks of. */
  readonly runs: readonly RunName[];
  readonly actions: readonly Action[];
  readonly pictures: readonly { readonly alt: string; readonly name: string; readonly src: string }[];
  readonly files: readonly { readonly name: string; readonly href: string }[];
  readonly dueAt: number | null;
  /** Of a refused call: how it was made, for the form to open filled in. */
  readonly again?: Again;
  /** A word to many: it calls like a run does, and its showing is told back. */
  readonly isWord: boolean;
  /** Somebody else has changed this person's run: it calls by itself, since no call of the run's schedule says so. */
  readonly isChange?: true;
  /** The step of that run which is given another bottle, or none: the newest entry on it stands for those before. */
  readonly rebottled?: number;
  /** Where the photo of a roll's contact sheet, or of a print, belongs; `src` is null where there is none. */
  readonly photo?: {
    readonly kind: PhotoOf["kind"];
    /** As it is said aloud: `L12`, `V9`. */
    readonly name: string;
    readonly mayAdd: boolean;
    readonly src: string | null;
  };
}

export type You = Readonly<{ id: string; name: string; role: Role }>;

export interface RoomFacts {
  readonly you: You;
  readonly class: { readonly name: string; readonly zone: string; readonly isDemo: boolean };
  /** How many of the room's seconds pass in one real second: 1, but in the guided demo. */
  readonly speed: number;
}

/** A run with its owner, for the wall. */
export type WallRow = RunView;

export type RefusalCode =
  | LineFault["code"]
  | "ERR_TOO_FAST"
  | "ERR_NOT_UNDERSTOOD"
  | "ERR_NOT_YOURS"
  | "ERR_DISK"
  | "ERR_TOO_LONG"
  | "ERR_BROKE";

export interface Refusal {
  readonly code: RefusalCode;
  readonly word?: string;
  readonly option?: string;
  readonly words?: string;
  readonly command?: string;
  readonly near?: readonly string[];
}

export type FeedPart = Readonly<{ events: readonly FeedEvent[]; earlier: number | null }>;
export type ToPage =
  | {
      readonly type: "welcome";
      readonly facts: RoomFacts;
      readonly now: number;
      readonly views: readonly PersonView[];
      readonly plan: ReadyPlan | null;
    }
  /** `isReset`: forget what you have, this is the newest part. `earlier`: before this entry there is more to ask for. */
  | ({ readonly type: "events"; readonly isReset: boolean } & FeedPart)
  | ({ readonly type: "earlier" } & FeedPart)
  /** Something about the class or the person has changed, a role for example. */
  | { readonly type: "facts"; readonly facts: RoomFacts }
  /** What a new class still needs before its first film; null: nothing, or it is nobody's business here. */
  | { readonly type: "first-day"; readonly firstDay: SaidFirstDay | null }
  /** By a line, or on another page, this person has chosen another language. */
  | { readonly type: "language"; readonly language: Language }
  | {
      readonly type: "views";
      readonly views: readonly PersonView[];
      readonly plan: ReadyPlan | null;
      readonly now: number;
    }
  /** `order`: the numbers of all runs on the wall; `rows`: those that are new, or other than before. */
  | { readonly type: "wall"; readonly order: readonly number[]; readonly rows: readonly WallRow[] }
  | { readonly type: "choices"; readonly seq: number; readonly choices: readonly Suggestion[] }
  | { readonly type: "taken"; readonly id: string }
  | { readonly type: "refused"; readonly id: string | null; readonly refusal: Refusal }
  | { readonly type: "pong"; readonly sentAt: number; readonly now: number }
  /** Since when the room can call nobody, as nothing can be recorded; null: it can again. Pages call by themselves. */
  | { readonly type: "trouble"; readonly since: number | null }
  | { readonly type: "present"; readonly count: number; readonly names: readonly string[] }
  /** The session is over: the page goes back to the door. `farewell`: this person was erased, and this is the last word to them. */
  | { readonly type: "gone"; readonly farewell: string | null };

/** Why a door stays shut; the page has the words. */
export type DoorCode =
  | "ERR_CODE"
  | "ERR_NAME"
  | "ERR_NAME_ROLE"
  | "ERR_NAME_TAKEN"
  | "ERR_PASSPHRASE"
  | "ERR_RETURN_CODE"
  | "ERR_BY_PASSPHRASE"
  | "ERR_RUN_OPEN"
  | "ERR_LOCKED"
  | "ERR_TOO_OFTEN"
  | "ERR_DISK"
  | "ERR_NO_DEMO"
  | "ERR_ORIGIN"
  | "ERR_HOST"
  | "ERR_SIGNED_OUT"
  | "ERR_FORBIDDEN"
  | "ERR_NOT_UNDERSTOOD"
  | "ERR_NOT_FOUND"
  | "ERR_BROKE";

/** What comes back of a photo that was sent: where it was refused in words, they are `text`. */
export interface PhotoRefusal {
  readonly error: { readonly code: string; readonly text?: string };
}

/** What stands at the door before anybody has come in. */
export type DoorState =
  | { readonly state: "in"; readonly facts: RoomFacts }
  /** A device at a sink, for everybody who stands there. */
  | { readonly state: "sink"; readonly speed: number }
  | { readonly state: "out"; readonly demo: { readonly className: string } | null };

/** What staff see of the door: who has come in, on which devices. */
export interface DoorSheet {
  readonly joinCode: string;
  readonly joinUrls: readonly string[];
  /** https of this process's own: until when its certificate holds (ms since the epoch), and whole days left. */
  readonly certificate: { readonly until: number; readonly daysLeft: number } | null;
  /** Whether people reach the page over https, by this process or by a proxy in front of it. */
  readonly isSecure: boolean;
  /** Whether the teacher lets phones be called while their page is closed. */
  readonly isPushAllowed: boolean;
  /** Devices at a sink, opened by a teacher. */
  readonly sinks: readonly {
    readonly id: number;
    readonly device: string;
    readonly seenAt: number;
    readonly isLocked: boolean;
    readonly people: readonly string[];
  }[];
  /** Where a calendar looks the class's times up; null where the teacher has made no such address. */
  readonly calendarUrl: string | null;
  /** Where the teacher adds the bot to a server of another chat; null where there is none. */
  readonly inviteUrl: string | null;
  readonly people: readonly {
    readonly id: string;
    readonly name: string;
    readonly role: Role;
    readonly isHere: boolean;
    readonly devices: readonly {
      readonly handle: string;
      readonly device: string;
      readonly seenAt: number;
    }[];
  }[];
}
