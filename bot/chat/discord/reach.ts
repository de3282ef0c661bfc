import { Routes } from "discord.js";
import type { Reply } from "../../../commands/define.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { OpenCall } from "./calls.ts";
import type { DirectChannels } from "./direct.ts";
import { isUnreachable } from "./outcome.ts";
import { hasId, type DiscordRest } from "./rest.ts";
import type { Directory } from "./settings.ts";
import type { Threads } from "./threads.ts";
import { discordWords } from "./words/discord.ts";

export interface ReachSettings {
  readonly rest: DiscordRest;
  readonly direct: DirectChannels;
  readonly directory: Pick<Directory, "lastPlace">;
  readonly threads: Pick<Threads, "beginFor">;
  missingPermissions(channelId: string): readonly string[];
}

/** Without these nobody can be called in a channel. */
const TO_CALL = ["View Channel", "Send Messages", "Send Messages in Threads"];

/**
 * Whether the calls of a run that somebody has started will reach them. A person who takes no direct messages is told so at
 * once, and where the calls come instead; the platform tells it only where it is tried, so the first start of each says a
 * word there.
 */
export function createReach({ rest, direct, directory, threads, missingPermissions }: ReachSettings) {
  const reached = new Set<string>();

  /** False where the platform refuses; a lost answer or a limit says nothing of the person. */
  async function takesDirect(personId: string, language: Language | undefined): Promise<boolean> {
    if (reached.has(personId)) return true;
    const channelId = await direct.channelOf(personId);
    if (channelId === null) return false;
    const answer = await rest.request({
      method: "POST",
      route: Routes.channelMessages(channelId),
      body: { content: discordWords(language).callsHere, allowed_mentions: { parse: [] } },
      holds: hasId,
    });
    if (answer.ok) reached.add(personId);
    else if (answer.fault.kind === "denied" && isUnreachable(answer.fault)) {
      direct.refuse(personId);
      return false;
    }
    return true;
  }

  /** Null where direct messages reach them. */
  async function tellWithoutThread(personId: string, language: Language | undefined): Promise<string | null> {
    if (await takesDirect(personId, language)) return null;
    const words = discordWords(language);
    const channelId = directory.lastPlace(personId)?.place.channelRef ?? null;
    if (channelId === null) return words.callsNowhere(null);
    const missing = missingPermissions(channelId).filter((each) => TO_CALL.includes(each));
    return missing.length > 0 ? words.callsNowhere({ channelId, missing }) : words.callsInChannel(channelId);
  }

  /** What is to be said to who has just started a run, with the answer to that; null: nothing that they would not expect. */
  return async function tellReach(
    { person, place, language }: Started,
    reply: Reply,
  ): Promise<string | null> {
    const run = reply.fields?.["run"];
    const begun = typeof run === "number" ? await threads.beginFor(place.classKey, run, reply) : null;
    const words = discordWords(language);
    if (begun?.kind === "open") return words.callsInThread(begun.threadId);
    const told = await tellWithoutThread(person.id, language);
    return begun === null ? told : `${words.noThread(begun.missing)} ${told ?? words.callsAlone}`;
  };
}

type Started = Pick<OpenCall, "person" | "place" | "language">;

export type TellReach = ReturnType<typeof createReach>;
