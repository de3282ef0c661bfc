import { openLog } from "../../../commands/print/export/pieces.ts";
import { parseChatKey } from "../../../store/shapes/chat-key.ts";
import { findPhoto } from "../../../store/photos.ts";
import type { Stores } from "../../../store/index.ts";
import { createThreadBook } from "./thread-book.ts";
import { createLane } from "../lane.ts";
import type { Directory } from "./settings.ts";
import type { Clock } from "../../process/clock.ts";

/** A refusal is remembered this long; then a person who has opened their messages again is found. */
const REFUSED_FOR_MS = 60 * 60 * 1000;

/** What the chat adapter needs between calls, kept in the store. */
export function createDirectory(stores: Stores, clock: Clock): Directory {
  const { members, classes } = stores;
  const lane = createLane();
  return {
    lastPlace(personId) {
      const classId = members.lastClass(personId);
      const found = classId === undefined ? undefined : classes.get(classId);
      if (!found) return null;
      const role = members.find(found.id, personId)?.role ?? "student";
      const place = { classKey: found.key, className: found.name, channelRef: classes.channelRef(found.id) };
      return { place, role };
    },
    placesOf: (personId) =>
      members.classesOf(personId).flatMap(({ classId, seenAt }) => {
        const found = classes.get(classId);
        if (!found || parseChatKey(found.key).chat !== "discord") return [];
        const place = { classKey: found.key, className: found.name, channelRef: classes.channelRef(classId) };
        const role = members.find(classId, personId)?.role ?? "student";
        return [{ place, role, seenAt, language: members.languageOf(classId, personId) }];
      }),
    directChannel: (personId) => members.directChannel(personId),
    isDirectRefused: (personId) => members.directRefusedUntil(personId) > clock.now(),
    saveDirectChannel: (personId, channelId) => members.saveDirectChannel(personId, channelId),
    memberName(classKey, personId) {
      const classId = classes.idOf(classKey);
      return (classId === undefined ? undefined : members.find(classId, personId))?.name ?? null;
    },
    rollOfMessage(ref) {
      const runIds = stores.outbox.runsSaidIn(ref);
      const rolls = runIds.flatMap((runId) => stores.rolls.ofRun(runId));
      return rolls.length === 1 ? (rolls[0]?.number ?? null) : null;
    },
    classOfMessage(ref) {
      const [classId, ...others] = stores.outbox.classesSaidIn(ref);
      return classId === undefined || others.length > 0 ? null : (classes.get(classId)?.key ?? null);
    },
    threads: createThreadBook(stores, clock),
    readLog(log) {
      const { portions, ...ends } = openLog(stores, log);
      return { ...ends, portions: lane.through(portions) };
    },
    photoOf(classKey, of) {
      const found = classes.find(classKey);
      return found && findPhoto(stores, found.id, of);
    },
    saveDirectRefused: (personId) => members.saveDirectRefused(personId, clock.now() + REFUSED_FOR_MS),
  };
}
