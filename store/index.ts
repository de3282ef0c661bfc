import { createBatchStore, type BatchStore } from "./batches.ts";
import { createBoardStore, type BoardStore } from "./boards.ts";
import { createCallStore, type CallStore } from "./calls.ts";
import { createClassStore, type ClassStore } from "./classes.ts";
import { createDigestStore, type DigestStore } from "./digests.ts";
import { createHandoverStore, type HandoverStore } from "./handovers.ts";
import { createFigureStore, type FigureStore } from "./figures.ts";
import { createEnlargerStore, createPaperStore, type EnlargerStore, type PaperStore } from "./enlargers.ts";
import { createErasureStore, type ErasureStore } from "./erasures.ts";
import { createImportStore, type ImportStore } from "./imports.ts";
import { createMemberStore, type MemberStore } from "./members.ts";
import { createMessageStore, type MessageStore } from "./messages.ts";
import { createMineStore, type MineStore } from "./mine.ts";
import { openDb, type Db } from "./open.ts";
import { createPhotoStore, type PhotoStore } from "./photos.ts";
import { createPlanStore, type PlanStore } from "./plans.ts";
import { createRunStore, type RunStore } from "./runs.ts";
import { createRunThreadStore, type RunThreadStore } from "./run-threads.ts";
import { createCueStore, type CueStore } from "./cues.ts";
import { createOutboxStore, type OutboxStore } from "./outbox.ts";
import { createRetentionStore, type RetentionStore } from "./retention.ts";
import { createRollStore, type RollStore } from "./rolls.ts";
import { createPrintStore, type PrintStore } from "./prints.ts";
import { createPrivacyStore, type PrivacyStore } from "./privacy.ts";
import { createPushStore, type PushStore } from "./pushes.ts";
import { createReturnCodeStore, type ReturnCodeStore } from "./return-codes.ts";
import { createRoomStore, type RoomStore } from "./room.ts";
import { createSayStore, type SayStore } from "./says.ts";
import { createShareStore, type ShareStore } from "./shares.ts";
import { createShelfStore, type ShelfStore } from "./shelf.ts";
import { createSheetStore, type SheetStore } from "./sheets.ts";
import { createShardStore, type ShardStore } from "./shards.ts";
import { createUpkeepStore, type UpkeepStore } from "./upkeep.ts";
import { createSinkStore, type SinkStore } from "./sinks.ts";
import { createTimeStore, type TimeStore } from "./time.ts";
import { createUnreadableStore, type UnreadableStore } from "./unreadable.ts";
import { createTankStore, type TankStore } from "./tanks.ts";

export interface Stores {
  readonly classes: ClassStore;
  readonly members: MemberStore;
  readonly sheets: SheetStore;
  readonly imports: ImportStore;
  readonly tanks: TankStore;
  readonly plans: PlanStore;
  readonly runs: RunStore;
  readonly runThreads: RunThreadStore;
  readonly cues: CueStore;
  readonly outbox: OutboxStore;
  readonly batches: BatchStore;
  readonly shelf: ShelfStore;
  readonly handovers: HandoverStore;
  readonly digests: DigestStore;
  readonly rolls: RollStore;
  readonly time: TimeStore;
  readonly messages: MessageStore;
  readonly rooms: RoomStore;
  readonly returnCodes: ReturnCodeStore;
  readonly sinks: SinkStore;
  readonly pushes: PushStore;
  readonly says: SayStore;
  readonly boards: BoardStore;
  readonly photos: PhotoStore;
  readonly enlargers: EnlargerStore;
  readonly papers: PaperStore;
  readonly prints: PrintStore;
  readonly mine: MineStore;
  readonly privacy: PrivacyStore;
  readonly erasures: ErasureStore;
  readonly retention: RetentionStore;
  readonly unreadable: UnreadableStore;
  readonly calls: CallStore;
  readonly shares: ShareStore;
  /** The only transaction there is. `work` must not await; one inside another is a savepoint. */
  atomically<T>(work: () => T): T;
  readonly figures: FigureStore;
  /** Makes one statement more at each step, until all are: what is first asked for in the middle of a class is then there. */
  makeReady(): Generator<void>;
  /** The store as a file. */
  readonly upkeep: UpkeepStore;
  readonly shards: ShardStore;
  close(): void;
}

/** What the opener holds besides: the connection itself, for tests that look behind the modules. */
export interface OpenedStores extends Stores {
  readonly db: Db;
}

export function openStores(path: string): OpenedStores {
  const db = openDb(path);
  // One for all work: making it anew for each takes as long as a small write.
  const transaction = db.transaction((work: () => unknown) => work());
  const runs = createRunStore(db);
  const rooms = eachWhenAsked({
    classes: () => createClassStore(db),
    members: () => createMemberStore(db),
    sheets: () => createSheetStore(db),
    imports: () => createImportStore(db),
    tanks: () => createTankStore(db),
    plans: () => createPlanStore(db),
    runs: () => runs,
    runThreads: () => createRunThreadStore(db),
    time: () => createTimeStore(db, runs),
    cues: () => createCueStore(db, runs),
    outbox: () => createOutboxStore(db),
    batches: () => createBatchStore(db),
    shelf: () => createShelfStore(db),
    handovers: () => createHandoverStore(db),
    digests: () => createDigestStore(db),
    rolls: () => createRollStore(db),
    messages: () => createMessageStore(db),
    rooms: () => createRoomStore(db),
    returnCodes: () => createReturnCodeStore(db),
    sinks: () => createSinkStore(db),
    pushes: () => createPushStore(db),
    says: () => createSayStore(db),
    boards: () => createBoardStore(db),
    photos: () => createPhotoStore(db),
    enlargers: () => createEnlargerStore(db),
    papers: () => createPaperStore(db),
    prints: () => createPrintStore(db),
    mine: () => createMineStore(db),
    privacy: () => createPrivacyStore(db),
    erasures: () => createErasureStore(db),
    retention: () => createRetentionStore(db),
    unreadable: () => createUnreadableStore(db),
    calls: () => createCallStore(db),
    shares: () => createShareStore(db),
    figures: () => createFigureStore(db),
    upkeep: () => createUpkeepStore(db),
    shards: () => createShardStore(db),
  });
  return Object.assign(rooms, {
    atomically: <T>(work: () => T) => transaction.immediate(work) as T,
    *makeReady() {
      for (const name of Object.keys(rooms) as (keyof typeof rooms)[]) yield void rooms[name];
      for (const statement of db.statements()) yield void statement.make();
    },
    db,
    close: () => void db.close(),
  });
}

/** Each is made when it is first asked for: a first call needs a few of them, and waits for none of the others. */
function eachWhenAsked<T extends object>(makers: { readonly [Name in keyof T]: () => T[Name] }): T {
  const rooms = {} as T;
  for (const name of Object.keys(makers) as (keyof T)[]) {
    const get = (): T[typeof name] => {
      const value = makers[name]();
      Object.defineProperty(rooms, name, { value });
      return value;
    };
    Object.defineProperty(rooms, name, { get, configurable: true, enumerable: true });
  }
  return rooms;
}
