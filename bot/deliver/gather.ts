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

/**
 * What may be tried by `now` and is not under way, as messages, by chat and in order of its moment. What is too late to
 * help anybody, and what has no chat, is put aside.
 */
export function gatherReady(
  { stores, ports, isAwaited }: GatherDeps,
  underWay: ReadonlyMap<number, unknown>,
  now: number,
): Map<ChatPort, Outgoing[]> {
  const addresses = new Map<number, Address | null>();
  const byChat = new Map<ChatPort, Ready[]>();

  function addressOf(classId: number): Address | null {
    const found = stores.classes.addressOf(classId);
    const port = found && ports.get(chatOf(found.key));
    return port ? { port, classKey: found.key, channelRef: found.channelRef } : null;
  }

  function putAside({ id, classId }: Ready): void {
    if (isAwaited?.(chatOf(stores.classes.addressOf(classId)?.key ?? ""))) return;
    stores.outbox.markLater([id], now + NO_CHAT_MS, "no chat for this class is running");
  }

  const ready = stores.outbox
    .ready(now, MOST_LOOKED_AT + underWay.size)
    .filter(({ id }) => !underWay.has(id));
  for (const each of dropStale(stores, ready, now)) {
    const known = addresses.get(each.classId);
    const address = known === undefined ? addressOf(each.classId) : known;
    addresses.set(each.classId, address);
    const same = address && byChat.get(address.port);
    if (!address) putAside(each);
    else if (same) same.push(each);
    else byChat.set(address.port, [each]);
  }
  return new Map(
    [...byChat].map(([port, same]) => {
      const units = groupReady(same, (each) => targetOf(each, addresses.get(each.classId)));
      return [
        port,
        units.flatMap((unit) => {
          const address = addresses.get(unit.classId);
          return address ? [{ unit, address }] : [];
        }),
      ];
    }),
  );
}

function dropStale({ outbox }: Stores, ready: readonly Ready[], now: number): readonly Ready[] {
  const isStale = ({ usefulUntil }: Ready): boolean => usefulUntil !== null && usefulUntil <= now;
  const stale = ready.filter(isStale).map(({ id }) => id);
  if (stale.length === 0) return ready;
  outbox.markEnded(stale, "stale", "too late to be of use", now);
  return ready.filter((each) => !isStale(each));
}

function targetOf({ key, personId, runId }: Ready, address: Address | null | undefined): Target {
  const { port, channelRef = null } = address ?? {};
  const target = port?.targetOf?.(personId, channelRef, runId ?? runCalledBy(key));
  return target ?? { channel: key, isShared: false };
}
