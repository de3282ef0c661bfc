import { makeChatKey, parseChatKey } from "../../../store/shapes/chat-key.ts";
import type { Command } from "../../../commands/define.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Role } from "../../../store/shapes/person.ts";
import type { Photo, PhotoOf } from "../../../store/shapes/photo.ts";
import type { LogFile } from "../../../store/shapes/log-file.ts";
import type { OpenedLog, Portion } from "../../../commands/print/export/pieces.ts";
import type { Log } from "../../process/log.ts";
import type { Place } from "../port.ts";
import type { ThreadBook } from "./thread-book.ts";

/** A class somebody is in. */
export interface KnownPlace {
  readonly place: Place;
  readonly role: Role;
  /** Of the person there, ms since the epoch. */
  readonly seenAt: number;
  readonly language: Language;
}

/** What is kept between calls. Person ids carry the chat in front: `discord:81384788765712384`. */
export interface Directory {
  /** The class a person was last seen in, and as what: a direct message carries neither. */
  lastPlace(personId: string): { readonly place: Place; readonly role: Role } | null;
  /** Every class of theirs on this chat, where they were seen last in front. */
  placesOf(personId: string): readonly KnownPlace[];
  directChannel(personId: string): string | null;
  /** True while this person is not to be tried alone. How long a refusal is remembered is the directory's matter. */
  isDirectRefused(personId: string): boolean;
  saveDirectChannel(personId: string, channelId: string): void;
  saveDirectRefused(personId: string): void;
  /** The name by which a person is known in a class; null for somebody it has not seen. */
  memberName(classKey: string, personId: string): string | null;
  /** The one roll in the log that a message said unasked is about (`channel/message`); null where it is about none, or several. */
  rollOfMessage(ref: string): number | null;
  /** The class that a message said unasked was for (`channel/message`); null where that is not known. */
  classOfMessage(ref: string): string | null;
  readonly threads: ThreadBook;
  /** What the log holds of it, slice by slice, beside the calls. */
  readLog(log: LogFile): Omit<OpenedLog, "portions"> & { readonly portions: AsyncIterable<Portion> };
  /** The photo that is kept with a roll or a print of this class. */
  photoOf(classKey: string, of: PhotoOf): Photo | undefined;
}

/** Who calls, as the server's own settings have it. */
export interface DiscordMember {
  readonly personId: string;
  readonly guildId: string;
  readonly roleIds: readonly string[];
  readonly roleNames: readonly string[];
  /** Has the permission “Manage Server” (or is an administrator). */
  readonly managesServer: boolean;
}

export interface DiscordSettings {
  readonly token: string;
  /** Where the platform's interface is; other than its own address in tests only. */
  readonly api?: string;
  readonly commands: readonly Command[];
  readonly log: Log;
  readonly clock: { now(): number };
  readonly directory: Directory;
  /** A PNG of one drawing. */
  renderPicture(svg: string): Promise<Uint8Array>;
  readonly roleOf?: (member: DiscordMember) => Role;
  readonly times?: Partial<DiscordTimes>;
  /** This process serves some of the bot's servers only; absent where it serves all. */
  readonly shard?: DiscordShard;
}

/** What something in a direct message tells of where it belongs. */
export interface AboutDirect {
  /** The class that it names itself. */
  readonly classKey?: string | undefined;
  /** The message that it came from (`channel/message`): whichever process has said that knows its class. */
  readonly ref?: string | undefined;
}

/** One of several processes of a bot. */
export interface DiscordShard {
  readonly id: number;
  readonly count: number;
  /** Resolves when this process may identify itself: the platform takes one at a time of a bot. */
  waitForTurn(): Promise<void>;
  /** Where direct messages come in: true where another process takes this one. */
  handOver?(interaction: object, personId: string, about?: AboutDirect): Promise<boolean>;
  /** Where they don't: what is to be done with those that are handed over. */
  onHanded?(handle: (interaction: object) => void): void;
}

/** Milliseconds. */
export interface DiscordTimes {
  /** The platform drops an interaction nobody answered for 3 s; the answer is deferred well before. */
  readonly deferAfterMs: number;
  readonly requestTimeoutMs: number;
  /** Commands that come while a server's data are awaited are held back as long as this. */
  readonly guildWaitMs: number;
  /** The first pause before a failed login or registration is tried again; doubled up to a minute. */
  readonly retryMs: number;
  /** How often threads are looked for whose run is over. */
  readonly tidyMs: number;
}

export const DISCORD_TIMES: DiscordTimes = {
  deferAfterMs: 1500,
  requestTimeoutMs: 4000,
  guildWaitMs: 2000,
  retryMs: 1000,
  tidyMs: 30_000,
};

export const DISCORD_API = "https://discord.com/api";

export const makePersonId = (userId: string): string => makeChatKey("discord", userId);

/** The platform's own id of a person of this chat; undefined for people of another. */
export function readUserId(personId: string): string | undefined {
  const { chat, id } = parseChatKey(personId);
  return chat === "discord" && /^\d{17,20}$/.test(id) ? id : undefined;
}

/** Managing the server makes a teacher; everybody else is a student until a class says otherwise. */
export function roleByPermission(member: DiscordMember): Role {
  return member.managesServer ? "teacher" : "student";
}
