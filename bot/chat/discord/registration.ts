import { setTimeout as sleep } from "node:timers/promises";
import {
  ApplicationIntegrationType,
  InteractionContextType,
  Routes,
  type RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody,
  type RESTPostAPIContextMenuApplicationCommandsJSONBody as MenuBody,
} from "discord.js";
import type { DiscordRest } from "./rest.ts";
import type { Log } from "../../process/log.ts";

export interface RegistrationSettings {
  readonly rest: DiscordRest;
  readonly bodies: readonly (CommandBody | MenuBody)[];
  readonly log: Log;
  readonly retryMs: number;
  readonly signal: AbortSignal;
}

const TRIES = 6;
const MISSING_ACCESS = 50001;

/**
 * Puts the commands in place. A server gets them as its own, which works at once; for direct messages there are only
 * commands of the whole application, so the same list goes there a second time, for direct messages alone.
 */
export function createRegistration({ rest, bodies, log, retryMs, signal }: RegistrationSettings) {
  async function put(route: `/${string}`, body: readonly object[], where: object): Promise<void> {
    for (let tries = 1; tries <= TRIES && !signal.aborted;) {
      const answer = await rest.request({ method: "PUT", route, body, patienceMs: 60_000 });
      if (answer.ok) return log.info({ ...where, commands: body.length }, "the commands are in place");
      const { fault } = answer;
      if (fault.kind === "denied") {
        const isUninvited = fault.code === MISSING_ACCESS;
        return log.error(
          { ...where, ...fault },
          isUninvited
            ? "this server does not allow commands: invite the bot again with the scope applications.commands"
            : "the platform refused the commands",
        );
      }
      log.warn({ ...where, ...fault, tries }, "the commands could not be put in place yet");
      // A wait the platform asks for is kept, however long it is, and is no failure.
      const pauseMs = fault.kind === "busy" ? fault.afterMs : retryMs * 2 ** (tries - 1);
      if (fault.kind !== "busy") tries += 1;
      await sleep(pauseMs, undefined, { signal, ref: false }).catch(() => undefined);
    }
  }

  return {
    forGuild: (applicationId: string, guildId: string): Promise<void> =>
      put(Routes.applicationGuildCommands(applicationId, guildId), bodies, { guild: guildId }),
    forDirect: (applicationId: string): Promise<void> =>
      put(
        Routes.applicationCommands(applicationId),
        bodies.map((body) => ({
          ...body,
          contexts: [InteractionContextType.BotDM],
          integration_types: [ApplicationIntegrationType.GuildInstall],
        })),
        { guild: null },
      ),
  };
}
