import type { Reach } from "../../store/shapes/reach.ts";
import type { Pace } from "./pace.ts";
import type { RunName } from "../../store/shapes/run.ts";
import type { Language } from "../../store/shapes/language.ts";
import type { Action, Picture, Attachment, Reply, Suggestion, ThreadPowers } from "../../commands/define.ts";
import type { Role } from "../../store/shapes/person.ts";

/** One call of a command, whichever chat and whichever way (slash, typed line, button). */
export interface CommandCall {
  /** The chat's own id of this call, where it has one: a delivery that comes twice does its work once. */
  readonly callId: string | null;
  readonly name: string;
  /** Unknown on purpose: dispatch checks it. */
  readonly options: Readonly<Record<string, unknown>>;
  readonly person: { readonly id: string; readonly name: string };
  readonly role: Role;
  /** From a terminal or a message: the role holds for this call and is not kept of the person. */
  readonly isVisit?: boolean;
  readonly place: Place;
  /** As the chat tells it of this person; absent where it says nothing. */
  readonly language?: Language | undefined;
  /** The file that came with it. */
  readonly file?: Uint8Array;
  /** `code`: why the call was refused, or that it broke; none where it was done. */
  answer(reply: Reply, visibility: "private" | "class", code?: string | null): Promise<void>;
}

/** A channel that was picked from the chat's own list. */
export interface Picked {
  readonly channelRef: string;
  /** As people see it: `#darkroom`. */
  readonly name: string;
  readonly missingPermissions: readonly string[];
  readonly threads?: ThreadPowers | undefined;
}

/** Where a call came from; the class is found, or made, by its key. */
export interface Place {
  readonly classKey: string;
  readonly className: string;
  /** The channel to fall back to where a person cannot be reached alone. */
  readonly channelRef: string | null;
  /** What the bot may not do in that channel and should, as the chat's own settings name it: `Send Messages`. */
  readonly missingPermissions?: readonly string[];
  /** The channel's name as people see it: `#darkroom`. */
  readonly channelName?: string | undefined;
  readonly picked?: Picked | undefined;
  /** Absent where the call came from no channel with threads. */
  readonly threads?: ThreadPowers | undefined;
  /** What the chat knows of another of its channels; undefined of one that it does not see. */
  readonly look?: ((channelRef: string) => Picked | undefined) | undefined;
}

export interface CompletionRequest {
  readonly name: string;
  readonly option: string;
  readonly typed: string;
  readonly others: Readonly<Record<string, string>>;
  readonly person: { readonly id: string; readonly name: string };
  readonly role: Role;
  readonly place: Place;
  readonly language?: Language | undefined;
}

export interface ChatHandlers {
  onCommand(call: CommandCall): Promise<void>;
  onComplete(request: CompletionRequest): readonly Suggestion[];
  /** The chat can go on no longer (rejected token): the process ends with this sentence. */
  onFatal(sentence: string): void;
}

/** Something the bot says unasked. */
export interface Delivery {
  /** At most 25 characters, the same for every try: chats use it to recognise a repeat. */
  readonly key: string;
  readonly classKey: string;
  readonly channelRef: string | null;
  /** null: to the class. */
  readonly personId: string | null;
  /** People to call by name in the class channel. */
  readonly mentions: readonly string[];
  /** The runs it speaks of; of several said as one each of theirs. */
  readonly runs: readonly RunName[];
  /** The run that it calls, where it calls one: by the store's own id. */
  readonly runId?: number | null;
  /** A word to many: which one, and whose. A chat that can tell when it is shown does. */
  readonly say?: { readonly id: number; readonly by?: string | undefined };
  readonly text: string;
  readonly actions: readonly Action[];
  readonly pictures: readonly Picture[];
  readonly attachments: readonly Attachment[];
  /** The moment it speaks of, ms since the epoch. */
  readonly dueAt: number;
  /** From then on it helps nobody; null, or left out: it always does. */
  readonly usefulUntil?: number | null;
  /** The language it is worded in. */
  readonly language?: Language;
}

export type Outcome =
  /** Said. `ref` finds the message again. `agoMs`: so long before, by an earlier try whose answer was lost. */
  | { readonly kind: "sent"; readonly ref: string; readonly agoMs?: number }
  /** Not now; nothing was said. */
  | { readonly kind: "later"; readonly afterMs: number }
  /** Perhaps said: the answer was lost. */
  | { readonly kind: "unknown"; readonly detail: string }
  /** This person or channel cannot be reached this way. */
  | { readonly kind: "refused"; readonly detail: string };

/** What a chat has kept in the store the delivery came from. */
export interface Posted {
  readonly outcome: Outcome;
  /** Shows it; to be called after the commit. */
  announce(): void;
}

/** Where a delivery would be said. */
export interface Target {
  readonly channel: string;
  /** True in the class's own channel: what is due there together is said together. */
  readonly isShared: boolean;
}

export type Found =
  | { readonly kind: "found"; readonly ref: string; readonly agoMs?: number }
  | { readonly kind: "absent" }
  | { readonly kind: "unknown"; readonly detail: string };

export interface ChatPort {
  /** The word in front of its ids: `room`, `discord`. */
  readonly chat: string;
  start(handlers: ChatHandlers): Promise<void>;
  send(delivery: Delivery): Promise<Outcome>;
  /**
   * Instead of `send`, where what is said is itself kept in this store: in the caller's transaction, so that it is said as
   * surely as it is decided, and with the same flush of the disk. `reach`: what is known already of whom it is for.
   */
  post?(delivery: Delivery, reach?: Reach): Posted;
  /** Whether a delivery goes out as one message with all its buttons; a chat without this takes any. */
  fits?(delivery: Delivery): boolean;
  /** How fast it takes messages, and in which channel one would be said; absent where it takes them as they come. */
  readonly pace?: Pace;
  targetOf?(personId: string | null, channelRef: string | null, runId: number | null): Target;
  /** Whether a delivery of unknown outcome was said after all. */
  find?(delivery: Delivery): Promise<Found>;
  /**
   * Shows the board of a class in a channel: edits the message `ref` where there is one, else says it anew. A `ref` that
   * is gone is `refused`. Absent where the chat shows the board in its own way.
   */
  editBoard?(classKey: string, channelRef: string, ref: string | null, reply: Reply): Promise<Outcome>;
  /** The address at which a class of one's own is begun in this chat; null as long as it is not known. */
  inviteUrl?(): string | null;
  stop(): Promise<void>;
}
