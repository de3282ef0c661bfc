import type { Stores } from "../../../store/index.ts";
import { changeToldBy } from "../../../store/shapes/message-key.ts";
import type { Message } from "../../../store/messages.ts";
import type { Reach } from "../../../store/shapes/reach.ts";
import type { ChatPort, Delivery, Posted, Outcome } from "../port.ts";
import { pushBodyOf } from "./push/words.ts";
import type { KeptBody } from "./feed.ts";

/* What the bot says unasked in the room. Needs nothing of the page's server, so it can be said before that is open. */

export interface SaidInRoom {
  readonly outcome: Outcome;
  readonly classId: number | null;
  /** What pages are to be shown; undefined where nothing new was said. */
  readonly fresh: Message | undefined;
}

/** Keeps a delivery as a message of the room, once for each key; a part of the caller's transaction. */
export function sayInRoom(
  stores: Pick<Stores, "classes" | "messages" | "pushes">,
  delivery: Delivery,
  now: number,
  known?: Reach,
): SaidInRoom {
  const { classKey, key, personId, text, dueAt, say } = delivery;
  const reach = known ?? stores.messages.reach(classKey, personId);
  if (!reach) return refused(`no class ${classKey} in the room`);
  if (personId !== null && !reach.isMember) return refused("no such member");
  const { classId } = reach;
  const change = changeToldBy(key);
  const body: KeptBody = {
    kind: personId === null ? "notice" : "cue",
    text,
    dueAt,
    actions: listed(delivery.actions),
    pictures: listed(delivery.pictures),
    attachments: listed(delivery.attachments),
    mentions: listed(delivery.mentions),
    say: say?.id,
    runs: listed(delivery.runs),
    isChange: change && true,
    rebottled: change?.step,
  };
  // Its moment goes before, so that the index of keys grows at its end, and not on a page of its own for each run.
  const message = { classId, personId, authorId: say?.by ?? null, key: `d:${dueAt}.${key}`, at: now, body };
  const { id, fresh } = stores.messages.add(message);
  if (fresh && personId !== null && reach.hasPhone) owePush(stores, { ...delivery, personId }, classId, now);
  return {
    outcome: { kind: "sent", ref: String(id) },
    classId,
    fresh: fresh ? { ...message, id } : undefined,
  };
}

/** Undefined, and so not written, where there is nothing in it. */
const listed = <T>(list: readonly T[]): T[] | undefined => (list.length > 0 ? [...list] : undefined);

/** A call that is always of use is kept by push services for so long. */
const KEPT_MS = 60 * 60_000;

/** Said to the closed pages of a person who asked for it as well, where the class allows it: as surely as in the room. */
function owePush(
  { classes, pushes }: Pick<Stores, "classes" | "pushes">,
  delivery: Delivery & { readonly personId: string },
  classId: number,
  now: number,
): void {
  const school = classes.get(classId);
  if (!school?.habits.push) return;
  const usefulUntil = delivery.usefulUntil ?? now + KEPT_MS;
  pushes.owe(classId, delivery.personId, pushBodyOf(delivery, school, now), usefulUntil, now);
}

function refused(detail: string): SaidInRoom {
  return { outcome: { kind: "refused", detail }, classId: null, fresh: undefined };
}

/** The room while its page's server is being loaded: what is said is kept, and shown to whoever comes. */
export function createEarlyRoom(stores: Stores, now: () => number): ChatPort {
  const post = (delivery: Delivery, reach?: Reach): Posted => ({
    outcome: sayInRoom(stores, delivery, now(), reach).outcome,
    announce: () => {},
  });
  return {
    chat: "room",
    start: async () => {},
    send: async (delivery) => stores.atomically(() => post(delivery)).outcome,
    post,
    stop: async () => {},
  };
}
