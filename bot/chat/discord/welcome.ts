import { Routes } from "discord.js";
import type { Language } from "../../../store/shapes/language.ts";
import { makeParts, type PartSettings } from "./message.ts";
import { hasId, type DiscordRest } from "./rest.ts";
import { makeNonce } from "./send.ts";
import { discordWords } from "./words/discord.ts";

export interface WelcomeSettings extends PartSettings {
  readonly rest: DiscordRest;
}

/** A server that somebody has just added the bot to. */
export interface Joined {
  readonly guildId: string;
  /** Where the server greets people, or the first channel the bot may write in; null: there is none. */
  readonly channelId: string | null;
  readonly language: Language | undefined;
}

/** Somebody looks on while the bot is added; after this long nobody does any more. */
const PATIENCE_MS = 60_000;

/** The first word on a server: what the bot is for, and three keys. Said as somebody adds it, never at a start. */
export function createWelcome({ rest, ...settings }: WelcomeSettings) {
  return async function welcome({ guildId, channelId, language }: Joined): Promise<void> {
    const { log } = settings;
    if (channelId === null)
      return log.info({ guild: guildId }, "added to a server, with no channel to write in");
    const { welcome: text, setUp, help, cautions } = discordWords(language);
    const actions = [
      { label: setUp, line: "class setup", weight: "main" as const },
      { label: help, line: "help" },
      { label: cautions, line: "caution" },
    ];
    const [part] = await makeParts(
      { text, actions, pictures: [], attachments: [], mentions: [], language },
      settings,
    );
    if (!part) return;
    const answer = await rest.request({
      method: "POST",
      route: Routes.channelMessages(channelId),
      body: { ...part.body, nonce: makeNonce(`welcome ${guildId}`, 0), enforce_nonce: true },
      holds: hasId,
      repeats: 2,
      patienceMs: PATIENCE_MS,
    });
    if (!answer.ok) log.warn({ guild: guildId, ...answer.fault }, "a server could not be greeted");
  };
}
