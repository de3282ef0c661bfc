import { PermissionFlagsBits } from "discord-api-types/v10";

/** What the bot needs in a class's channel, in the order in which a server's settings show it. */
export const NEEDED_PERMISSIONS = [
  "ViewChannel",
  "SendMessages",
  "SendMessagesInThreads",
  "EmbedLinks",
  "AttachFiles",
  "ReadMessageHistory",
] as const;

/** Threads can be made with either; everybody in the channel sees into public ones. */
export const THREAD_PERMISSIONS = ["CreatePrivateThreads", "CreatePublicThreads"] as const;

/** The address at which a server's manager takes the bot in, with all it needs there. */
export function inviteUrl(applicationId: string): string {
  const permissions = [...NEEDED_PERMISSIONS, ...THREAD_PERMISSIONS].reduce(
    (sum, name) => sum | PermissionFlagsBits[name],
    0n,
  );
  const query = new URLSearchParams({
    client_id: applicationId,
    scope: "bot applications.commands",
    permissions: String(permissions),
  });
  return `https://discord.com/oauth2/authorize?${query.toString()}`;
}
