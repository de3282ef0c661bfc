import type { WebSocket } from "ws";
import type { Command } from "../../../commands/define.ts";
import { mayActAs } from "../../../store/shapes/person.ts";
import type { Language } from "../../../store/shapes/language.ts";
import { isStorageFault } from "../../../store/open.ts";
import type { Stores } from "../../../store/index.ts";
import type { RoomStore } from "../../../store/room.ts";
import type { ChatHandlers } from "../port.ts";
import { callerOf, callLine, type CallParts } from "./calls.ts";
import { bodySchema } from "./feed.ts";
import { type Admitted, dismiss, type Hub, type Page, sendTo } from "./hub.ts";
import type { Live } from "./live.ts";
import { STEP_MS } from "../../process/clock.ts";
import type { Log } from "../../process/log.ts";
import { createTypingPace } from "./pace.ts";
import { type FromPage, fromPageSchema, type RefusalCode, type RoomFacts } from "./wire.ts";
import { mayCallAtSink, notePress } from "./sink-calls.ts";
import { readyPlanOf } from "../../../commands/plan/ready.ts";
import type { ViewOf } from "./view.ts";

/* One open page: what it asks and what it is told. */

/** A fast typist with completion sends some six messages a second; a loop sends hundreds. */
const MESSAGES_A_SECOND = 12;
const MESSAGES_AT_ONCE = 40;
const MOST_PAGES_OF_ONE_SESSION = 8;

export interface SocketParts {
  readonly hub: Hub;
  readonly live: Live;
  readonly stores: Stores;
  readonly rooms: RoomStore;
  readonly commands: readonly Command[];
  readonly log: Log;
  readonly viewOf: ViewOf;
  readonly write: CallParts["write"];
  readonly speed: number;
  handlers(): ChatHandlers;
  /** Since when nothing can be recorded; null: it can. */
  troubleSince(): number | null;
  now(): number;
}

/** Takes over a socket whose session has been checked already. */
export function openPage(parts: SocketParts, socket: WebSocket, session: Admitted): void {
  const { hub, live } = parts;
  const { classId, personId, tokenHash, sinkId } = session;
  const member = parts.stores.members.find(classId, personId);
  const name = member?.name ?? "";
  const page: Page = {
    socket,
    classId,
    personId,
    tokenHash,
    sinkId,
    name,
    role: member?.role ?? "student",
    isLive: false,
    watchesFrom: null,
    lastWall: new Map(),
    lastViews: "",
    lastPlan: "",
    lastFirstDay: "null",
    apartMs: parts.now() - performance.now(),
  };
  const others = hub.ofPerson(classId, personId).filter((each) => each.tokenHash === tokenHash);
  // Ended, not asked: one that does not answer would stay.
  for (const other of others.slice(0, Math.max(0, others.length + 1 - MOST_PAGES_OF_ONE_SESSION))) {
    other.socket.close(4002);
    other.socket.terminate();
    hub.remove(other);
  }
  hub.add(page);
  live.present(classId);
  const pace = createTypingPace(MESSAGES_A_SECOND, MESSAGES_AT_ONCE, performance.now());
  const refuse = (code: RefusalCode, id: string | null = null): void =>
    sendTo(page, { type: "refused", id, refusal: { code } });

  socket.on("close", () => {
    hub.remove(page);
    live.present(classId);
  });
  socket.on("error", (error) => parts.log.debug({ error: error.message }, "room socket failed"));
  socket.on("message", (data, isBinary) => {
    const took = pace.take(performance.now());
    if (took === "flood") return socket.close(1008);
    if (took === "fast") return refuse("ERR_TOO_FAST");
    const message = isBinary ? undefined : readMessage(String(data));
    if (!message) return refuse("ERR_NOT_UNDERSTOOD");
    answer(parts, page, message).catch((error: unknown) => {
      parts.log.error({ err: error, type: message.type }, "room message failed");
      const code = isStorageFault(error) ? "ERR_DISK" : "ERR_BROKE";
      refuse(code, message.type === "line" ? message.id : null);
    });
  });
}

function readMessage(text: string): FromPage | undefined {
  try {
    return fromPageSchema.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}

/** A page is let in on a full disk as well: it needs its film's times then more than ever. */
function hearLanguage({ stores, log }: SocketParts, page: Page, language: Language): void {
  try {
    stores.members.hearLanguage(page.classId, page.personId, language);
  } catch (error) {
    if (!isStorageFault(error)) throw error;
    log.error({ err: error }, "a page's language could not be kept");
  }
}

/** undefined: nobody any more, who has just been erased. */
function languageOf({ stores: { members } }: SocketParts, { classId, personId }: Page): Language | undefined {
  return members.find(classId, personId) && members.languageOf(classId, personId);
}

/** All of this person's, whatever device they are open on. */
const pagesOf = ({ hub }: SocketParts, { classId, personId }: Page): readonly Page[] =>
  hub.ofPerson(classId, personId);

/** Once the clock was set, a page hears of its runs before it hears the time: they move as one there. */
function keepInStep({ live, now }: SocketParts, page: Page): void {
  const apartMs = now() - performance.now();
  const isSet = Math.abs(apartMs - page.apartMs) >= STEP_MS;
  page.apartMs = apartMs;
  if (!isSet) return;
  live.refreshPerson(page.classId, page.personId);
  if (page.watchesFrom !== null) live.sendWall(page);
}

async function answer(parts: SocketParts, page: Page, message: FromPage): Promise<void> {
  const { live, now } = parts;
  if (message.type === "ping") {
    keepInStep(parts, page);
    return sendTo(page, { type: "pong", sentAt: message.sentAt, now: now() });
  }
  const caller = callerOf(parts, page);
  // The role is the store's, read at each message: nothing a page says of itself counts.
  if (!caller) return dismiss(page);
  switch (message.type) {
    case "language": {
      // A language picked at a sink is the device's.
      if (page.sinkId !== null) return undefined;
      parts.stores.members.chooseLanguage(page.classId, page.personId, message.language);
      for (const other of pagesOf(parts, page)) if (other !== page) sendTo(other, message);
      return live.refreshPerson(page.classId, page.personId);
    }
    case "hello": {
      if (message.language) hearLanguage(parts, page, message.language);
      // Before the views are: by this the clock is found to have been set, and they have moved.
      const at = now();
      const views = parts.viewOf(page.personId, page.classId);
      const plan = readyPlanOf(parts.stores, page.classId, page.personId, at);
      page.lastViews = JSON.stringify(views);
      page.lastPlan = JSON.stringify(plan);
      const facts = factsOf(parts, page.classId, page.personId);
      if (!facts) return dismiss(page);
      sendTo(page, { type: "welcome", facts, now: at, views, plan });
      const since = parts.troubleSince();
      if (since !== null) sendTo(page, { type: "trouble", since });
      live.sendFirstDay(page);
      return live.catchUp(page, message.after);
    }
    case "earlier":
      return live.sendEarlier(page, message.before);
    case "shown": {
      const [entry] = parts.stores.messages.after(page.classId, page.personId, message.id - 1, 1);
      const say = entry?.id === message.id ? bodySchema.safeParse(entry.body).data?.say : undefined;
      return say === undefined ? undefined : parts.stores.says.markShown(say, page.personId, now());
    }
    case "line": {
      const before = languageOf(parts, page);
      const callable = callableFrom(parts, page);
      if (page.sinkId !== null) notePress(parts.stores, page, message, now());
      const refusal = await callLine({ ...callPartsOf(parts), commands: callable }, caller, message);
      if (refusal) return sendTo(page, { type: "refused", id: message.id, refusal });
      const language = languageOf(parts, page);
      if (language && language !== before)
        for (const each of pagesOf(parts, page)) sendTo(each, { type: "language", language });
      live.refreshPerson(page.classId, page.personId);
      live.refresh(page.classId);
      return sendTo(page, { type: "taken", id: message.id });
    }
    case "complete": {
      const { seq, name, option, typed, others } = message;
      const { person, role, place } = caller;
      if (!callableFrom(parts, page).some((each) => each.name === name))
        return sendTo(page, { type: "choices", seq, choices: [] });
      const choices = parts
        .handlers()
        .onComplete({ name, option, typed, others, person, role, place })
        .slice(0, 25);
      return sendTo(page, { type: "choices", seq, choices });
    }
    case "watch": {
      if (!mayActAs(caller.role, "aide"))
        return sendTo(page, { type: "refused", id: null, refusal: { code: "ERR_NOT_YOURS" } });
      page.watchesFrom = message.on ? message.from : null;
      return message.on ? live.sendWall(page) : undefined;
    }
  }
}

/** At a sink there is less to be called, and while it is locked less still. */
function callableFrom({ commands, stores }: SocketParts, page: Page): readonly Command[] {
  const sink = page.sinkId === null ? undefined : stores.sinks.find(page.tokenHash);
  return sink ? commands.filter(({ name }) => mayCallAtSink(sink, name)) : commands;
}

function callPartsOf({ commands, handlers, write, stores, hub, live }: SocketParts): CallParts {
  return {
    commands,
    handlers: handlers(),
    write,
    isMember: ({ classId, person }) => stores.members.find(classId, person.id) !== undefined,
    bidFarewell: ({ classId, person }, text) =>
      hub.ofPerson(classId, person.id).forEach((page) => dismiss(page, text)),
    renewFeeds: (classId) => hub.ofClass(classId).forEach((page) => live.catchUp(page, null)),
  };
}

export function factsOf(
  { stores, speed }: Pick<SocketParts, "stores" | "speed">,
  classId: number,
  personId: string,
): RoomFacts | undefined {
  const member = stores.members.find(classId, personId);
  const schoolClass = stores.classes.get(classId);
  if (!member || !schoolClass) return undefined;
  return {
    you: { id: member.personId, name: member.name, role: member.role },
    class: { name: schoolClass.name, zone: schoolClass.zone, isDemo: schoolClass.demo },
    speed,
  };
}
