import { chatOf } from "../../store/shapes/chat-key.ts";
import { boardOf } from "../../commands/class/board.ts";
import { boardText } from "../../commands/class/board-words.ts";
import { speaking } from "../../commands/speech/language.ts";
import type { BoardMessage } from "../../store/boards.ts";
import type { Stores } from "../../store/index.ts";
import type { ChatPort, Outcome } from "../chat/port.ts";
import type { Clock } from "../process/clock.ts";
import type { Log } from "../process/log.ts";

/** A board is edited no oftener: the platform lets a channel have 5 messages in 5 s, and cues need them first. */
const GAP_MS = 5000;
/** A channel that refuses the board is asked again after this long. */
const REFUSED_MS = 10 * 60_000;

export interface Boards {
  /** Shows every board whose words have changed and may be edited again; returns at once. */
  beat(): void;
  start(): void;
  stop(): void;
  /** Waits until no edit is under way. */
  drain(): Promise<void>;
}

export interface BoardDeps {
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** By the word in front of a class's key. */
  readonly ports: ReadonlyMap<string, ChatPort>;
}

/** Keeps one message per class up to date in chats that have channels: edited on change only, each in its own time. */
export function createBoards({ stores, clock, log, ports }: BoardDeps): Boards {
  const notBefore = new Map<number, number>();
  const inFlight = new Map<number, Promise<void>>();
  let timer: NodeJS.Timeout | undefined;

  function show(board: BoardMessage, now: number): void {
    const found = stores.classes.get(board.classId);
    const port = found && ports.get(chatOf(found.key));
    if (!found || !port?.editBoard) return;
    const text = speaking(found.habits.language, () =>
      boardText(
        boardOf(
          stores.runs.open(found.id),
          stores.members.list(found.id),
          now,
          stores.figures.unreached(found.id),
        ),
      ),
    );
    notBefore.set(found.id, now + GAP_MS);
    if (board.ref !== null && text === board.shown) return;
    const editing = port
      .editBoard(found.key, board.channelRef, board.ref, { text })
      .catch((error: unknown): Outcome => ({ kind: "unknown", detail: String(error) }))
      .then((outcome) => record(board, text, outcome))
      .catch((error: unknown) => log.error({ classId: found.id, err: error }, "a board could not be kept"))
      .finally(() => inFlight.delete(found.id));
    inFlight.set(found.id, editing);
  }

  function record({ classId, ref, channelRef }: BoardMessage, text: string, outcome: Outcome): void {
    const now = clock.now();
    // Moved to another channel, or taken down, while this edit was under way.
    if (stores.boards.find(classId)?.channelRef !== channelRef) return;
    if (outcome.kind === "sent") return stores.boards.saveShown(classId, outcome.ref, text, now);
    if (outcome.kind === "later") {
      notBefore.set(classId, now + Math.max(GAP_MS, outcome.afterMs));
      return;
    }
    log.warn({ classId, outcome: outcome.kind, detail: outcome.detail }, "the board was not shown");
    if (outcome.kind !== "refused") return;
    // A message somebody deleted is said anew at once; a channel that can't be used is left alone for a while.
    if (ref !== null) stores.boards.forgetRef(classId);
    else notBefore.set(classId, now + REFUSED_MS);
  }

  function beat(): void {
    const now = clock.now();
    for (const board of stores.boards.list()) {
      if (inFlight.has(board.classId) || (notBefore.get(board.classId) ?? 0) > now) continue;
      try {
        show(board, now);
      } catch (error) {
        notBefore.set(board.classId, now + REFUSED_MS);
        log.error({ classId: board.classId, err: error }, "a board could not be made");
      }
    }
  }

  return {
    beat,
    start: () => void (timer = setInterval(beat, 1000).unref()),
    stop: () => clearInterval(timer),
    drain: async () => void (await Promise.allSettled(inFlight.values())),
  };
}
