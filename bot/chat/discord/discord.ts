import type { APIInteraction, GatewayMessageCreateDispatchData } from "discord.js";
import { createBoard } from "./board.ts";
import { createCallReader } from "./calls.ts";
import { createDirectChannels } from "./direct.ts";
import { createFileFetcher } from "./files.ts";
import { createFinder } from "./find.ts";
import { createDiscordGateway, TOKEN_REJECTED } from "./gateway.ts";
import { inviteUrl } from "./invite.ts";
import { createInteractionHandler } from "./interactions.ts";
import { MESSAGE_MENU } from "./menu.ts";
import { isOneMessage } from "./message.ts";
import { mapCommands } from "./options.ts";
import { createReach } from "./reach.ts";
import { createRegistration } from "./registration.ts";
import { createDiscordPace, PER_SECOND } from "./pace.ts";
import { createDiscordRest } from "./rest.ts";
import { createSender } from "./send.ts";
import { createSentenceHandler } from "./sentences.ts";
import {
  DISCORD_API,
  DISCORD_TIMES,
  makePersonId,
  roleByPermission,
  type DiscordSettings,
} from "./settings.ts";
import { createLook } from "./picked.ts";
import { createThreads } from "./threads.ts";
import { createWelcome } from "./welcome.ts";
import type { ChatHandlers, ChatPort } from "../port.ts";

export type { Directory, DiscordMember, DiscordSettings } from "./settings.ts";

/** Everything a port may do, but that its messages are kept elsewhere. */
export type DiscordPort = Required<Omit<ChatPort, "post">>;

/**
 * The class's server on Discord as a chat. Commands come as slash commands and buttons, cues go to the person alone or,
 * where that is refused, to the class channel by mention. Throws at once where the platform would refuse a command.
 */
export function createDiscord(settings: DiscordSettings): DiscordPort {
  const { token, commands, log } = settings;
  const api = settings.api ?? DISCORD_API;
  const times = { ...DISCORD_TIMES, ...settings.times };
  const map = mapCommands(commands);
  const ending = new AbortController();
  let handlers: ChatHandlers | undefined;
  let isFatal = false;
  let invite: string | null = null;

  function fail(sentence: string): void {
    if (isFatal || ending.signal.aborted) return;
    isFatal = true;
    ending.abort();
    handlers?.onFatal(sentence);
  }

  const { requestTimeoutMs, retryMs, guildWaitMs, deferAfterMs } = times;
  const onUnauthorized = (): void => fail(TOKEN_REJECTED);
  const { shard } = settings;
  // One limit for the whole bot: each of several processes keeps to its share.
  const perSecond = Math.floor(PER_SECOND / (shard?.count ?? 1));
  const { pace, targetOf, admit } = createDiscordPace(settings.directory, settings.clock, perSecond);
  const rest = createDiscordRest({ token, api, requestTimeoutMs, log, onUnauthorized, admit });
  const direct = createDirectChannels({ ...settings, rest });
  const registration = createRegistration({
    rest,
    bodies: [...map.bodies, ...MESSAGE_MENU],
    log,
    retryMs,
    signal: ending.signal,
  });
  let sentences: ReturnType<typeof createSentenceHandler> | undefined;
  let interactions: ReturnType<typeof createInteractionHandler> | undefined;
  const gateway = createDiscordGateway({
    token,
    api,
    log,
    requestTimeoutMs,
    guildWaitMs,
    retryMs,
    signal: ending.signal,
    admit,
    ...(shard ? { shard } : {}),
    onInteraction: (interaction) => void receive(interaction),
    onMessage: (message) => void hear(message),
    onReady(applicationId, guildIds, name) {
      invite = inviteUrl(applicationId);
      const about = { as: name, servers: guildIds.length, invite };
      log.info(about, "connected to Discord");
      void threads
        .recover()
        .catch((error: unknown) => log.error({ err: error }, "threads were not looked after"));
      if ((shard?.id ?? 0) === 0) void registration.forDirect(applicationId);
      for (const guildId of guildIds) void registration.forGuild(applicationId, guildId);
    },
    onGuild: (applicationId, guildId) => void registration.forGuild(applicationId, guildId),
    onJoined: (joined) => void welcome(joined),
    onFatal: fail,
  });
  /** A direct message comes to the first process, whichever has its person's class. */
  async function receive(interaction: APIInteraction): Promise<void> {
    const userId = interaction.guild_id === undefined ? interaction.user?.id : undefined;
    const about = reader.aboutOf(interaction);
    const isHanded =
      userId !== undefined && (await shard?.handOver?.(interaction, makePersonId(userId), about));
    if (!isHanded) await interactions?.handle(interaction);
  }
  async function hear(message: GatewayMessageCreateDispatchData): Promise<void> {
    if (!sentences?.isForBot(message)) return;
    const isDirect = message.guild_id === undefined;
    const isHanded = isDirect && (await shard?.handOver?.(message, makePersonId(message.author.id)));
    if (!isHanded) await sentences.handle(message);
  }
  shard?.onHanded?.((handed) => {
    if ("token" in handed) void interactions?.handle(handed as APIInteraction);
    else void sentences?.handle(handed as GatewayMessageCreateDispatchData);
  });

  const { missingPermissions, threadPowers, parentOf, ownId } = gateway;
  const look = createLook(gateway);
  const { renderPicture, clock, directory } = settings;
  const says = { log, renderPicture, sayPaths: map.sayPaths, rest, direct, directory };
  const threads = createThreads({ ...says, clock, threadPowers, ownId });
  const welcome = createWelcome(says);
  const sender = createSender({ ...says, missingPermissions });
  const editBoard = createBoard({ ...says, clock, missingPermissions });
  const find = createFinder({ ...says, sender, ownId });
  const reader = createCallReader({
    commands,
    directory,
    map,
    roleOf: settings.roleOf ?? roleByPermission,
    guildName: gateway.guildName,
    roleNames: gateway.roleNames,
    missingPermissions,
    threadPowers,
    look,
    parentOf,
  });

  let tidying: NodeJS.Timeout | undefined;
  const tidyThreads = (): void =>
    void threads.tidy().catch((error: unknown) => log.error({ err: error }, "threads were not closed"));

  return {
    chat: "discord",
    async start(given) {
      handlers = given;
      const fetchFile = createFileFetcher({ api, signal: ending.signal });
      const { photoOf, readLog } = directory;
      interactions = createInteractionHandler({
        ...says,
        deferAfterMs,
        reader,
        handlers,
        fetchFile,
        photoOf,
        readLog,
        tellReach: createReach({ ...says, threads, missingPermissions }),
      });
      sentences = createSentenceHandler({
        ...says,
        ...gateway,
        look,
        clock,
        commands,
        reader,
        handlers,
      });
      tidying = setInterval(tidyThreads, times.tidyMs).unref();
      await gateway.start();
    },
    send: sender.send,
    fits: (delivery) => isOneMessage(delivery, map),
    pace,
    targetOf,
    find,
    editBoard,
    inviteUrl: () => invite,
    async stop() {
      ending.abort();
      clearInterval(tidying);
      interactions?.stop();
      rest.stop();
      await gateway.stop();
    },
  };
}
