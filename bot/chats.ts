import { makeChatKey } from "../store/shapes/chat-key.ts";
import { roleOfMember } from "../commands/class/roles.ts";
import { commands } from "../commands/index.ts";
import type { Stores } from "../store/index.ts";
import { createBoards } from "./rounds/board.ts";
import type { DiscordShard } from "./chat/discord/settings.ts";
import type { ChatHandlers, ChatPort } from "./chat/port.ts";
import { openCertificate, type LiveCertificate } from "./chat/room/https.ts";
import type { Room } from "./chat/room/options.ts";
import { createKnownViews } from "./chat/room/known-views.ts";
import { createRoom } from "./chat/room/room.ts";
import { betweenCalls } from "./process/between.ts";
import type { Clock } from "./process/clock.ts";
import { certificateFilesOf, type Config, zoneOf } from "./process/config.ts";
import { createDigest } from "./rounds/digest.ts";
import { createDirectory } from "./chat/discord/directory.ts";
import { DEMO_KEY } from "./demo/demo.ts";
import { refillDemo } from "./demo/refill.ts";
import { createDispatch } from "./calls/dispatch.ts";
import { createEraser } from "./rounds/eraser.ts";
import { createRetention } from "./rounds/retention.ts";
import type { Log } from "./process/log.ts";
import { createLostChats } from "./watch/lost-chats.ts";
import { createSlowChats } from "./watch/slow-chats.ts";
import { renderPicture } from "./chat/picture.ts";

/* Everything but the cues: the chats and what people say in them. It takes a while to load, and cues don't wait for it. */

export interface ChatsDeps {
  readonly config: Config;
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** Filled here. */
  readonly ports: Map<string, ChatPort>;
  /** Looks again at what is due and owed. */
  readonly rearm: () => void;
  /** Moves what was written lately into the database proper. */
  readonly tidy: () => void;
  readonly onFatal: (sentence: string) => void;
  /** This process serves some of the bot's servers only; the room is with the first. */
  readonly shard: DiscordShard | undefined;
}

export interface Chats {
  /** null where another process has it. */
  readonly room: Room | null;
  /** https of the room's own; null: none. */
  readonly certificate: LiveCertificate | null;
  /** Chats that can go on no longer, and why. */
  lost(): Readonly<Record<string, string>>;
  /** Chats so slow that calls come late there, in seconds a message. */
  slow(): Readonly<Record<string, number>>;
  /** Runs of this class have changed. */
  refresh(classId: number): void;
  /** Takes nothing new. */
  quiet(): Promise<void>;
  stop(): Promise<void>;
}

export async function openChats(deps: ChatsDeps): Promise<Chats> {
  const { config, stores, clock, log, ports, rearm, onFatal } = deps;
  const hasRoom = (deps.shard?.id ?? 0) === 0;
  const certificate = hasRoom ? openCertificate(certificateFilesOf(config), clock.now(), log) : null;
  const room = hasRoom ? makeRoom(deps, certificate) : null;
  if (room) ports.set("room", room);
  if (config.DISCORD_TOKEN !== undefined)
    ports.set("discord", await connectDiscord(deps, config.DISCORD_TOKEN));
  const refresh = (classId: number): void => room?.refresh(stores.classes.addressOf(classId)?.key ?? "");
  const boards = createBoards({ stores, clock, log, ports });
  const eraser = createEraser({ stores, clock, log, onErased: refresh });
  const retention = createRetention({
    stores,
    clock,
    log,
    ages: { messagesDays: config.KEEP_MESSAGES_DAYS, runsDays: config.KEEP_RUNS_DAYS },
    tidy: deps.tidy,
  });
  const digest = createDigest({ stores, clock, log, onOwed: rearm });
  const dispatch = createDispatch({
    commands,
    stores,
    clock,
    log,
    zone: zoneOf(config),
    onChange(classId) {
      if (hasRoom && stores.classes.addressOf(classId)?.key === DEMO_KEY) refillDemo(stores, clock, log);
      refresh(classId);
      rearm();
    },
  });
  // As they are now: whoever stops takes them out of use first.
  const opened = [...ports.values()];
  const losses = createLostChats({ stores, clock, log, ports, onOwed: rearm });
  const slowness = createSlowChats({ stores, clock, log, ports, onOwed: rearm });
  const handlersOf = (port: ChatPort): ChatHandlers => ({
    onCommand: dispatch.onCommand,
    onComplete: dispatch.onComplete,
    // Where there is a room, there is somebody else to serve.
    onFatal: (sentence) => (room ? losses.lose(port, sentence) : onFatal(sentence)),
  });
  if (hasRoom) refillDemo(stores, clock, log);
  await room?.start(handlersOf(room));
  digest.start();
  boards.start();
  eraser.start();
  retention.start();
  slowness.start();
  for (const port of ports.values()) {
    if (port === room) continue;
    port
      .start(handlersOf(port))
      .catch((error: unknown) => log.error({ chat: port.chat, err: error }, "a chat could not start"));
  }
  rearm();

  return {
    room,
    certificate,
    lost: losses.all,
    slow: slowness.all,
    refresh,
    quiet() {
      digest.stop();
      boards.stop();
      eraser.stop();
      retention.stop();
      slowness.stop();
      return boards.drain();
    },
    stop: async () => void (await Promise.allSettled(opened.map((port) => port.stop()))),
  };
}

function makeRoom(
  { config, stores, clock, log, ports }: ChatsDeps,
  certificate: LiveCertificate | null,
): Room {
  const viewIn = createKnownViews();
  return createRoom({
    host: config.ROOM_HOST,
    port: config.ROOM_PORT,
    publicUrl: config.ROOM_URL ?? null,
    certificate,
    pushHosts: config.PUSH_HOSTS,
    inviteUrl: () => ports.get("discord")?.inviteUrl?.() ?? null,
    stores,
    commands,
    log,
    viewOf(personId, classId, language = stores.members.languageOf(classId, personId)) {
      const name = stores.members.find(classId, personId)?.name ?? "";
      return stores.runs.open(classId, personId).map((run) => viewIn(run, name, language));
    },
    renderPicture,
    now: () => clock.now(),
  });
}

/** Loaded only where it is wanted: a room without it starts in a third of the time. */
async function connectDiscord(
  { config, stores, clock, log, shard }: ChatsDeps,
  token: string,
): Promise<ChatPort> {
  const { createDiscord } = await betweenCalls(() => import("./chat/discord/discord.ts"));
  return createDiscord({
    token,
    api: config.DISCORD_API_URL,
    commands,
    log,
    clock,
    directory: createDirectory(stores, clock),
    ...(shard ? { shard } : {}),
    renderPicture,
    roleOf: (member) =>
      roleOfMember(stores.classes.find(makeChatKey("discord", member.guildId))?.habits, member),
  });
}
