import { readTyped } from "../../../commands/ask/typed.ts";
import type { Command, Reply } from "../../../commands/define.ts";
import { lineFormsOf } from "../../../commands/forms.ts";
import type { Stores } from "../../../store/index.ts";
import type { Member } from "../../../store/members.ts";
import type { RoomSession, RoomStore } from "../../../store/room.ts";
import type { ChatHandlers, CommandCall, Place } from "../port.ts";
import type { FeedBody } from "./feed.ts";
import type { Entry } from "./feed-writer.ts";
import type { FromPage, Refusal } from "./wire.ts";

/* A typed line or a pressed button becomes a call; its answers become entries of the feed. */

const BLANK = { actions: [], pictures: [], attachments: [], dueAt: null, mentions: [], runs: [] };

/** A reply as an entry of the feed keeps it. */
export function replyBody(reply: Reply, author: string | null): FeedBody {
  return {
    ...BLANK,
    kind: "reply",
    text: reply.text,
    actions: (reply.actions ?? []).map((action) => ({ ...action })),
    pictures: (reply.pictures ?? []).map((picture) => ({ ...picture })),
    attachments: (reply.attachments ?? []).map((attachment) => ({ ...attachment })),
    ...(reply.log ? { log: reply.log } : {}),
    ...(reply.photo ? { photo: { ...reply.photo } } : {}),
    ...(reply.again ? { again: { ...reply.again } } : {}),
    author,
  };
}

export interface RoomCaller {
  readonly person: { readonly id: string; readonly name: string };
  readonly role: CommandCall["role"];
  readonly place: Place;
  readonly classId: number;
}

/** Who calls from this session, as the store has them now; undefined once it is signed out or its person erased. */
export function callerOf(
  { stores, rooms }: { readonly stores: Stores; readonly rooms: RoomStore },
  session: Pick<RoomSession, "classId" | "personId" | "tokenHash"> & { readonly sinkId?: number | null },
): RoomCaller | undefined {
  const { classId, personId, tokenHash } = session;
  const member = stores.members.find(classId, personId);
  const schoolClass = stores.classes.get(classId);
  const isIn = session.sinkId == null ? rooms.findSession(tokenHash) : isAtSink(stores, tokenHash, member);
  if (!member || !schoolClass || !isIn) return undefined;
  return {
    person: { id: member.personId, name: member.name },
    role: member.role,
    place: { classKey: schoolClass.key, className: schoolClass.name, channelRef: null },
    classId,
  };
}

/** Whether this member may be acted for at the device of this token: chosen there, and no more than a student. */
export function isAtSink(
  { sinks }: Pick<Stores, "sinks">,
  tokenHash: string,
  member: Member | undefined,
): boolean {
  const sink = sinks.find(tokenHash);
  return (
    member?.role === "student" &&
    sink?.classId === member.classId &&
    sinks.hasChosen(sink.id, member.personId)
  );
}

export interface CallParts {
  readonly commands: readonly Command[];
  readonly handlers: ChatHandlers;
  write(entry: Entry): Promise<unknown>;
  isMember(caller: RoomCaller): boolean;
  /** The last word to somebody whom this call erased: said, and kept nowhere. */
  bidFarewell(caller: RoomCaller, text: string): void;
  /** Open pages of the class forget their feed and get what is left of it. */
  renewFeeds(classId: number): void;
}

/** After these the feed may hold less than before, and open pages are to show no more than it holds. */
const ERASING: ReadonlySet<string> = new Set(["mine erase", "class forget"]);

/** A command with its slash, a sentence as it was said. */
function asTyped(text: string, name: string): string {
  const typed = text.trim().replace(/^\/?\s*/, "");
  return name === "ask" && !typed.toLowerCase().startsWith("ask ") ? typed : `/${typed}`;
}

/** Undefined once the call is done; otherwise why it was not made. */
export async function callLine(
  parts: CallParts,
  caller: RoomCaller,
  { id, text, label }: Extract<FromPage, { type: "line" }>,
): Promise<Refusal | undefined> {
  const line = readTyped(text, lineFormsOf(parts.commands));
  if (!line.ok) return line.fault;
  // A sentence is read as a question wherever it is typed, and there are places where none is answered.
  const { name } = line.value;
  if (!parts.commands.some((each) => each.name === name))
    return { code: "ERR_UNKNOWN_COMMAND", word: name, near: [] };
  const callId = `${caller.person.id}:${id}`;
  await parts.write({
    classId: caller.classId,
    personId: caller.person.id,
    authorId: caller.person.id,
    key: `l:${callId}`,
    body: {
      ...BLANK,
      kind: "line",
      text: label ?? asTyped(text, line.value.name),
      author: caller.person.name,
    },
  });
  let answers = 0;
  await parts.handlers.onCommand({
    callId,
    name: line.value.name,
    options: line.value.options,
    person: caller.person,
    role: caller.role,
    place: caller.place,
    async answer(reply, visibility) {
      if (!parts.isMember(caller)) return parts.bidFarewell(caller, reply.text);
      answers += 1;
      const isForClass = visibility === "class";
      await parts.write({
        classId: caller.classId,
        personId: isForClass ? null : caller.person.id,
        authorId: isForClass ? caller.person.id : null,
        key: `a${answers}:${callId}`,
        body: replyBody(reply, isForClass ? caller.person.name : null),
      });
    },
  });
  if (ERASING.has(line.value.name)) parts.renewFeeds(caller.classId);
  return undefined;
}
