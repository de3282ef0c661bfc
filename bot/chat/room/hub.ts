import type { WebSocket } from "ws";
import type { Role } from "../../../store/shapes/person.ts";
import type { Message } from "../../../store/messages.ts";
import { bodySchema } from "./feed.ts";
import type { ToPage, WatchedFrom } from "./wire.ts";

/* The open pages: who is there, and how they are spoken to. */

/** Whom a page is open for, and by which token. */
export interface Admitted {
  readonly tokenHash: string;
  readonly classId: number;
  readonly personId: string;
  /** Of a device that is everybody's: the page is told what concerns its person, and nothing else of the class. null: their own. */
  readonly sinkId: number | null;
}

export interface Page extends Admitted {
  readonly socket: WebSocket;
  /** False until the page has said where it stopped reading: what comes before that is in its catch-up. */
  isLive: boolean;
  /** From where it looks at the tanks of all; null: it does not. */
  watchesFrom: WatchedFrom | null;
  /** By a run's number: its row of the wall as it was last sent, as text. */
  lastWall: ReadonlyMap<number, string>;
  /** The last views sent, as text, so that nothing is sent twice. */
  lastViews: string;
  lastPlan: string;
  lastFirstDay: string;
  /** By how much the room's clock and one that is never set were apart when the page last asked for the time, ms. */
  apartMs: number;
  name: string;
  role: Role;
}

/** Whether a page is shown this entry of its person's feed: at a sink what is theirs, and words to all. */
export const isShownTo = (
  { sinkId, personId }: Pick<Page, "sinkId" | "personId">,
  { personId: of, authorId, body }: Pick<Message, "personId" | "authorId" | "body">,
): boolean => sinkId === null || of === personId || authorId === personId || (of === null && isWord(body));

const isWord = (body: unknown): boolean => bodySchema.safeParse(body).data?.say !== undefined;

/** A page that reads nothing any more is dropped at this much unsent: it will come back and catch up. */
const MOST_UNSENT_BYTES = 2 * 2 ** 20;

export interface Hub {
  add(page: Page): void;
  remove(page: Page): void;
  ofClass(classId: number): readonly Page[];
  ofPerson(classId: number, personId: string): readonly Page[];
  classIds(): readonly number[];
  count(): number;
  closeAll(): void;
}

export function createHub(): Hub {
  /** Class, person, pages: a thousand calls of one instant must not each look through a thousand pages. */
  const classes = new Map<number, Map<string, Set<Page>>>();
  const ofClass = (classId: number): Page[] =>
    [...(classes.get(classId)?.values() ?? [])].flatMap((pages) => [...pages]);
  return {
    ofClass,
    ofPerson: (classId, personId) => [...(classes.get(classId)?.get(personId) ?? [])],
    classIds: () => [...classes.keys()],
    count: () => [...classes.keys()].reduce((sum, classId) => sum + ofClass(classId).length, 0),
    add(page) {
      const people = classes.get(page.classId) ?? new Map<string, Set<Page>>();
      const pages = people.get(page.personId) ?? new Set<Page>();
      pages.add(page);
      people.set(page.personId, pages);
      classes.set(page.classId, people);
    },
    remove(page) {
      const people = classes.get(page.classId);
      const pages = people?.get(page.personId);
      pages?.delete(page);
      if (pages?.size === 0) people?.delete(page.personId);
      if (people?.size === 0) classes.delete(page.classId);
    },
    closeAll() {
      for (const classId of classes.keys()) for (const page of ofClass(classId)) end(page);
    },
  };
}

/** Told, and not asked: a phone out of reach would be waited for. */
function end({ socket }: Page): void {
  socket.close(1001);
  socket.terminate();
}

export function sendTo(page: Page, message: ToPage): void {
  sendText(page, JSON.stringify(message));
}

/** For the many: the text is made once. */
export function sendText(page: Page, text: string): void {
  if (page.socket.readyState !== page.socket.OPEN) return;
  if (page.socket.bufferedAmount > MOST_UNSENT_BYTES) page.socket.terminate();
  else page.socket.send(text);
}

/** Signs a page out: it goes back to the door, where the farewell is read if there is one. */
export function dismiss(page: Page, farewell: string | null = null): void {
  sendTo(page, { type: "gone", farewell });
  page.socket.close(4001);
}
