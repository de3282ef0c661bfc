import type { Member } from "../../../store/members.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Message } from "../../../store/messages.ts";
import type { Stores } from "../../../store/index.ts";
import { eventFor } from "./feed.ts";
import { dismiss, isShownTo, sendText, sendTo, type Hub, type Page } from "./hub.ts";
import { firstDayFacts, nextFirstStep } from "../../../commands/class/first-day.ts";
import { sayFirstDay } from "../../../commands/class/first-day-words.ts";
import { speaking } from "../../../commands/speech/language.ts";
import { readyPlanOf } from "../../../commands/plan/ready.ts";
import { rowOf, textOf } from "./known-views.ts";
import type { ViewOf } from "./view.ts";
import type { FeedEvent, FeedPart, RoomFacts, ToPage, WallRow } from "./wire.ts";

/* Keeps open pages up to date: what is said, where each run is, who is there. */

const MOST_AT_ONCE = 200;
/** Of a feed that is read from its end so many come first: the rest is asked for, and holds nothing up. */
const NEWEST = 10;
/** Several changes within this time go out as one. */
const GATHER_MS = 40;
const PRESENCE_GATHER_MS = 500;
const FRESH_MS = 900;

export interface Live {
  /** Says a kept message to every page that may see it. */
  push(message: Message): void;
  /** A page said where it stopped reading: it gets the rest, and from now on all that comes. */
  catchUp(page: Page, after: number | null): void;
  sendEarlier(page: Page, before: number): void;
  /** Something changed in this class: views and the wall go out where they differ. */
  refresh(classId: number): void;
  refreshPerson(classId: number, personId: string): void;
  /** Each second, where a bath runs: what has changed and nobody has said, like a role given elsewhere. */
  beat(): void;
  present(classId: number): void;
  sendFirstDay(page: Page): void;
  sendWall(page: Page): void;
  stop(): void;
}

export interface LiveParts {
  readonly hub: Hub;
  readonly stores: Stores;
  readonly viewOf: ViewOf;
  factsOf(classId: number, personId: string): RoomFacts | undefined;
  now(): number;
}

/** The rows of the tanks of all, by the language they are read in: made once for all that look. */
type Walls = Map<Language | undefined, readonly WallRow[]>;

export function createLive({ hub, stores, viewOf, factsOf, now }: LiveParts): Live {
  const timers = new Map<string, NodeJS.Timeout>();
  const lookedAt = new Map<number, number>();

  function soon(key: string, afterMs: number, work: () => void): void {
    if (timers.has(key)) return;
    const timer = setTimeout(() => {
      timers.delete(key);
      work();
    }, afterMs);
    timers.set(key, timer.unref());
  }

  /** Looked at within the last beat, for a call or an answer. A clock that was set makes nothing fresh. */
  function isFresh(classId: number): boolean {
    return Math.abs(now() - (lookedAt.get(classId) ?? -Infinity)) < FRESH_MS;
  }

  function push(message: Message): void {
    const reached =
      message.personId === null
        ? hub.ofClass(message.classId)
        : hub.ofPerson(message.classId, message.personId);
    const pages = reached.filter((page) => page.isLive && isShownTo(page, message));
    // Most see the same; only who wrote it and who is called by name see it otherwise.
    const texts = new Map<string, string>();
    for (const page of pages) {
      const reader = message.personId ?? readerOf(message, page.personId);
      const known = texts.get(reader);
      const event = known === undefined ? eventFor(message, reader) : undefined;
      const text = known ?? (event && eventText(event));
      if (text === undefined) return;
      texts.set(reader, text);
      sendText(page, text);
    }
  }

  function eventText(event: FeedEvent): string {
    const message: ToPage = { type: "events", events: [event], isReset: false, earlier: null };
    return JSON.stringify(message);
  }

  function catchUp(page: Page, after: number | null): void {
    const { classId, personId } = page;
    const since = (id: number, most: number): Message[] => stores.messages.after(classId, personId, id, most);
    // Where its last entry is none of this store's, that was restored, or the entry erased: all is shown anew.
    const isKnown = after === 0 || (after !== null && since(after - 1, 1)[0]?.id === after);
    const missed = isKnown ? since(after, MOST_AT_ONCE + 1) : [];
    const isReset = !isKnown || missed.length > MOST_AT_ONCE;
    const part = isReset ? newest(page) : { events: shownOf(page, missed), earlier: null };
    sendTo(page, { type: "events", isReset, ...part });
    page.isLive = true;
  }

  function newest(page: Page, before?: number): FeedPart {
    const messages = stores.messages.newest(page.classId, page.personId, NEWEST + 1, before);
    const part = messages.slice(-NEWEST);
    return { events: shownOf(page, part), earlier: messages.length > NEWEST ? (part[0]?.id ?? null) : null };
  }

  function shownOf(page: Page, messages: readonly Message[]): FeedEvent[] {
    return messages
      .filter((message) => isShownTo(page, message))
      .flatMap((message) => eventFor(message, page.personId) ?? []);
  }

  /** A plan changes by its owner's own calls only, so the second's beat need not look for one. */
  function sendViews(page: Page, isAfterOwnCall: boolean): void {
    const views = viewOf(page.personId, page.classId);
    const text = textsOf(views);
    if (text === page.lastViews && !isAfterOwnCall) return;
    const plan = readyPlanOf(stores, page.classId, page.personId, now());
    const planText = JSON.stringify(plan);
    if (text === page.lastViews && planText === page.lastPlan) return;
    page.lastViews = text;
    page.lastPlan = planText;
    sendTo(page, { type: "views", views, plan, now: now() });
  }

  function sendFacts(page: Page, { name, role }: Pick<Member, "name" | "role">): void {
    if (name === page.name && role === page.role) return;
    page.name = name;
    page.role = role;
    if (role === "student") page.watchesFrom = null;
    const facts = factsOf(page.classId, page.personId);
    if (facts) sendTo(page, { type: "facts", facts });
  }

  /** For the teachers of a class that has developed nothing yet. */
  function sendFirstDay(page: Page): void {
    const { classId, personId } = page;
    const facts = page.role === "teacher" ? firstDayFacts(stores, classId) : undefined;
    const firstDay =
      facts && nextFirstStep(facts) !== undefined
        ? speaking(stores.members.languageOf(classId, personId), () => sayFirstDay(facts))
        : null;
    const text = JSON.stringify(firstDay);
    if (text === page.lastFirstDay) return;
    page.lastFirstDay = text;
    sendTo(page, { type: "first-day", firstDay });
  }

  /** The wall is read by all, and speaks the class's language; a desk is one person's, and speaks theirs. */
  function languageOn({ watchesFrom, classId, personId }: Page): Language | undefined {
    if (watchesFrom === "desk") return stores.members.languageOf(classId, personId);
    return stores.classes.get(classId)?.habits.language;
  }

  /** Whatever the owners of the runs read. A trial is nobody's tank. */
  function wallRows(classId: number, language: Language | undefined): WallRow[] {
    return stores.members.list(classId).flatMap(({ personId, name }) =>
      viewOf(personId, classId, language)
        .filter(({ speed }) => speed === undefined)
        .map((view) => rowOf(view, name, personId)),
    );
  }

  function refreshNow(classId: number): void {
    lookedAt.set(classId, now());
    const known: Walls = new Map();
    for (const page of hub.ofClass(classId)) {
      // Erased or sent away: the page has no business here any more.
      const member = stores.members.find(classId, page.personId);
      if (!member) {
        dismiss(page);
        continue;
      }
      sendFacts(page, member);
      sendFirstDay(page);
      sendViews(page, false);
      if (page.watchesFrom !== null) sendWall(page, known);
    }
  }

  /** What is on the wall changes with a run's phase, each at its own time: only that goes out. */
  function sendWall(page: Page, known: Walls = new Map()): void {
    const language = languageOn(page);
    const rows = known.get(language) ?? wallRows(page.classId, language);
    known.set(language, rows);
    const texts = new Map(rows.map((row) => [row.run, textOf(row)]));
    const changed = rows.filter(({ run }) => page.lastWall.get(run) !== texts.get(run));
    if (changed.length === 0 && page.lastWall.size === texts.size) return;
    page.lastWall = texts;
    sendTo(page, { type: "wall", order: rows.map(({ run }) => run), rows: changed });
  }

  function presentNow(classId: number): void {
    const pages = hub.ofClass(classId);
    const names = [...new Set(pages.map(({ name }) => name))].sort();
    const forStaff = JSON.stringify({ type: "present", count: names.length, names } satisfies ToPage);
    const forStudents = JSON.stringify({ type: "present", count: names.length, names: [] } satisfies ToPage);
    for (const page of pages) {
      sendText(page, page.role === "student" ? forStudents : forStaff);
      sendFirstDay(page);
    }
  }

  return {
    push,
    catchUp,
    refresh: (classId) => soon(`views ${classId}`, GATHER_MS, () => refreshNow(classId)),
    refreshPerson: (classId, personId) =>
      hub.ofPerson(classId, personId).forEach((page) => {
        sendViews(page, true);
        sendFirstDay(page);
        if (page.watchesFrom === "desk") sendWall(page);
      }),
    beat() {
      for (const classId of hub.classIds())
        if (!isFresh(classId) && hub.ofClass(classId).some(isCounting)) refreshNow(classId);
    },
    sendFirstDay,
    present: (classId) => soon(`present ${classId}`, PRESENCE_GATHER_MS, () => presentNow(classId)),
    sendEarlier: (page, before) => sendTo(page, { type: "earlier", ...newest(page, before) }),
    sendWall(page) {
      page.lastWall = new Map();
      sendWall(page);
    },
    stop() {
      for (const timer of timers.values()) clearTimeout(timer);
      timers.clear();
    },
  };
}

const textsOf = (views: readonly object[]): string => `[${views.map(textOf).join()}]`;

function isCounting({ lastViews, watchesFrom }: Page): boolean {
  return watchesFrom !== null || lastViews.includes('"running"');
}

/** Whose eyes an entry for all is seen with: one's own only where one wrote it or is called by name. */
function readerOf(message: Message, personId: string): string {
  const { mentions } = message.body as { mentions?: readonly string[] };
  return message.authorId === personId || mentions?.includes(personId) ? personId : "";
}
