import {
  ChannelType,
  InteractionContextType,
  Routes,
  type APIChannel,
  type APIInteraction,
} from "discord.js";
import { hasId, type DiscordRest } from "./rest.ts";
import { readUserId, type DiscordSettings } from "./settings.ts";

export interface DirectChannels {
  /** Seen at a call: the channel this person can be spoken to alone in is opened, if it is not known. */
  meet(interaction: APIInteraction, personId: string): void;
  /** null: nobody can be reached this way, or not for now. */
  channelOf(personId: string): Promise<string | null>;
  refuse(personId: string): void;
}

/** After the platform said “too fast” no channel is opened for this long. Its own limit is not published. */
const OPENING_REST_MS = 10 * 60_000;
const OPENING_TOO_FAST = 40003;

/**
 * Channels to one person alone. They are opened at that person's own first command and remembered, never when there is
 * something to say: the platform asks for that, and at the start of a class there is no time for it.
 */
export function createDirectChannels({
  rest,
  directory,
  clock,
  log,
}: Pick<DiscordSettings, "directory" | "clock" | "log"> & { readonly rest: DiscordRest }): DirectChannels {
  const opening = new Map<string, Promise<void>>();
  let restUntil = 0;

  async function open(personId: string): Promise<void> {
    const userId = readUserId(personId);
    if (userId === undefined || clock.now() < restUntil) return;
    const answer = await rest.request<APIChannel>({
      method: "POST",
      route: Routes.userChannels(),
      body: { recipient_id: userId },
      holds: hasId,
      repeats: 1,
    });
    if (answer.ok) return directory.saveDirectChannel(personId, answer.value.id);
    const { fault } = answer;
    const isTooFast = fault.kind === "busy" || (fault.kind === "denied" && fault.code === OPENING_TOO_FAST);
    if (isTooFast) restUntil = clock.now() + (fault.kind === "busy" ? fault.afterMs : OPENING_REST_MS);
    else if (fault.kind === "denied" && fault.status !== 401) directory.saveDirectRefused(personId);
    log.warn({ person: personId, ...fault }, "a direct channel could not be opened");
  }

  return {
    meet(interaction, personId) {
      if (directory.directChannel(personId) !== null || opening.has(personId)) return;
      const { channel, context } = interaction;
      if (context === InteractionContextType.BotDM || channel?.type === ChannelType.DM) {
        if (channel?.id !== undefined) directory.saveDirectChannel(personId, channel.id);
        return;
      }
      if (directory.isDirectRefused(personId)) return;
      const under = open(personId)
        .catch((error: unknown) =>
          log.error({ err: error, person: personId }, "opening a direct channel failed"),
        )
        .finally(() => opening.delete(personId));
      opening.set(personId, under);
    },
    async channelOf(personId) {
      await opening.get(personId);
      return directory.isDirectRefused(personId) ? null : directory.directChannel(personId);
    },
    refuse: (personId) => directory.saveDirectRefused(personId),
  };
}
