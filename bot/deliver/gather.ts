import type { Place } from "../../store/classes.ts";
import { runCalledBy } from "../../store/shapes/message-key.ts";
import { chatOf } from "../../store/shapes/chat-key.ts";
import type { Ready } from "../../store/owed.ts";
import type { Stores } from "../../store/index.ts";
import type { ChatPort, Target } from "../chat/port.ts";
import { groupReady, type Unit } from "./units.ts";

/** A class's chat, and where in it the class is spoken to. */
export interface Address {
  readonly port: ChatPort;
  readonly classKey: string;
  readonly channelRef: string | null;
}

/** A message, and where it goes. */
export interface Outgoing {
  readonly unit: Unit;
  readonly address: Address;
}

export interface GatherDeps {
  readonly stores: Stores;
  /** By the word in front of a class's key. */
  readonly ports: ReadonlyMap<string, ChatPort>;
  /** Whether a chat that is not there yet is about to be: what it is to say waits. */
  readonly isAwaited?: (chat: string) => boolean;
}

const MOST_LOOKED_AT = 2000;
const NO_CHAT_MS = 60_000;

/** Where a class is spoken to, whose `place` may be known already; null where no chat for it is running. */
export type Addresses = (classId: number, place?: Place) => Address | null;

/** Looks each class up once. */
export function createAddresses({ stores, ports }: GatherDeps): Addresses {
  const known = new Map<number, Address | null>();
  return (classId, place) => {
    const before = known.get(classId);
    if (before !== undefined) return before;
    const found = place ?? stores.classes.addressOf(classId);
    const port = found && ports.get(chatOf(found.key));
    const address = port ? { port, classKey: found.key, channelRef: found.channelRef } : null;
    known.set(classId, address);
    return address;
  };
}

/**
 * What may be tried by `now` and is not under way, as messages, by chat and in order of its moment. What is too late to
 * help anybody, and what has no chat, is put aside.
 */
export function gatherReady(
  { stores, isAwaited }: GatherDeps,
  addressOf: Addresses,
  underWay: ReadonlyMap<number, unknown>,
  now: number,
): Map<ChatPort, Outgoing[]> {
  const byChat = new Map<ChatPort, Ready[]>();

  function putAside({ id, classId }: Ready): void {
    if (isAwaited?.(chatOf(stores.classes.addressOf(classId)?.key ?? ""))) return;
    stores.outbox.markLater([id], now + NO_CHAT_MS, "no chat for this class is running");
  }

  const ready = stores.outbox
    .ready(now, MOST_LOOKED_AT + underWay.size)
    .filter(({ id }) => !underWay.has(id));
  const stale = ready.filter((each) => isStale(each, now)).map(({ id }) => id);
  giveUpStale(stores.outbox, stale, now);
  for (const each of ready) {
    if (isStale(each, now)) continue;
    const address = addressOf(each.classId);
    const same = address && byChat.get(address.port);
    if (!address) putAside(each);
    else if (same) same.push(each);
    else byChat.set(address.port, [each]);
  }
  return new Map(
    [...byChat].map(([port, same]) => {
      const units = groupReady(same, (each) => targetOf(each, addressOf(each.classId)));
      return [
        port,
        units.flatMap((unit) => {
          const address = addressOf(unit.classId);
          return address ? [{ unit, address }] : [];
        }),
      ];
    }),
  );
}

export function isStale({ usefulUntil }: Pick<Ready, "usefulUntil">, now: number): boolean {
  return usefulUntil !== null && usefulUntil <= now;
}

export function giveUpStale(outbox: Stores["outbox"], ids: readonly number[], now: number): void {
  if (ids.length > 0) outbox.markEnded(ids, "stale", "too late to be of use", now);
}

function targetOf({ key, personId, runId }: Ready, address: Address | null): Target {
  const { port, channelRef = null } = address ?? {};
  const target = port?.targetOf?.(personId, channelRef, runId ?? runCalledBy(key));
  return target ?? { channel: key, isShared: false };
}
