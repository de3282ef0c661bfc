import { GatewayIntentBits as Intents } from "discord-api-types/v10";
import type { Where } from "./interactions.ts";
import type { SocketSide } from "./socket.ts";
import { writeMember, writeUser, type Channel, type User, type World } from "./world.ts";

/*
 * What people write in channels, as the platform tells it to a bot: only with the intent for that kind of channel, and with
 * the words only where the bot is named, or alone with them. Source: Discord's documentation, "Message Content Intent".
 */
export function createTyping(world: World, socket: SocketSide, nextId: () => string, now: () => number) {
  const isHeard = ({ guildId }: Channel): boolean =>
    (socket.state.intents & (guildId === null ? Intents.DirectMessages : Intents.GuildMessages)) !== 0;

  function tell(channel: Channel, message: object): void {
    if (!isHeard(channel) || !socket.isConnected()) return;
    socket.dispatch("MESSAGE_CREATE", {
      ...message,
      ...(channel.guildId === null ? {} : { guild_id: channel.guildId }),
    });
  }

  function channelOf(user: User, { isDirect, channel }: Where): Channel {
    if (channel) return channel;
    const first = [...world.channels.values()].find(({ guildId }) => guildId !== null);
    if (isDirect || !first) return world.openDirect(user.id);
    return first;
  }

  return {
    write(user: User, text: string, where: Where): string {
      const id = nextId();
      const channel = channelOf(user, where);
      const named = [...text.matchAll(/<@!?(\d{17,20})>/g)].flatMap(
        ([, each]) => world.users.get(each ?? "") ?? [],
      );
      const isForBot = channel.guildId === null || named.includes(world.bot);
      const { user: _self, ...member } = writeMember(user);
      tell(channel, {
        id,
        channel_id: channel.id,
        type: 0,
        author: writeUser(user),
        ...(channel.guildId === null ? {} : { member }),
        content: isForBot ? text : "",
        mentions: named.map((each) => writeUser(each, each === world.bot)),
        mention_roles: [],
        mention_everyone: false,
        attachments: [],
        embeds: [],
        components: [],
        timestamp: new Date(now()).toISOString(),
        edited_timestamp: null,
        tts: false,
        pinned: false,
      });
      return id;
    },
    /** The bot hears its own messages as well. */
    echo(message: { readonly channel_id: string }): void {
      const channel = world.channels.get(message.channel_id);
      if (channel) tell(channel, message);
    },
  };
}
