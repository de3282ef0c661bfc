import {
  type APIApplicationCommandInteractionDataBasicOption as GivenOption,
  type APIInteractionDataResolved,
  ApplicationCommandOptionType as OptionType,
} from "discord-api-types/v10";
import type { ThreadPowers } from "../../../commands/define.ts";
import { makePersonId } from "./settings.ts";
import type { Picked } from "../port.ts";

/* Options that people pick from the platform's own lists, as the commands take them: a channel, a role, a person. */

/** What the bot may do in a channel. */
interface Powers {
  missingPermissions(this: void, channelId: string): readonly string[];
  readonly threadPowers?: ((channelId: string) => ThreadPowers) | undefined;
}

export interface PickSettings extends Powers {
  /** The name by which a person is known in the class. */
  memberName(classKey: string, personId: string): string | null;
}

/** What is known of any channel of the bot's; undefined of one that it does not see. */
export function createLook(
  powers: Powers & { channelName(this: void, channelId: string): string | undefined },
) {
  return (channelId: string): Picked | undefined => {
    const name = powers.channelName(channelId);
    return name === undefined ? undefined : channelAs(channelId, name, powers);
  };
}

const channelAs = (id: string, name: string, { missingPermissions, threadPowers }: Powers): Picked => ({
  channelRef: id,
  name: `#${name}`,
  missingPermissions: missingPermissions(id),
  threads: threadPowers?.(id),
});

export interface ReadPicks {
  /** Values by option, in place of the platform's ids. */
  readonly values: Readonly<Record<string, string>>;
  readonly channel: Picked | undefined;
}

export function readPicks(
  options: readonly GivenOption[],
  resolved: Partial<APIInteractionDataResolved> | undefined,
  guildId: string | undefined,
  { memberName, ...powers }: PickSettings,
): ReadPicks {
  const values: Record<string, string> = {};
  let channel: Picked | undefined;
  for (const { name, type, value } of options) {
    const id = String(value);
    if (type === OptionType.Channel) {
      channel = channelAs(id, resolved?.channels?.[id]?.name ?? id, powers);
      values[name] = id;
    }
    // The role that everybody has makes nobody anything.
    if (type === OptionType.Role)
      values[name] = id === guildId ? "none" : (resolved?.roles?.[id]?.name ?? id);
    if (type === OptionType.User) {
      const known = memberName(`discord:${guildId}`, makePersonId(id));
      const user = resolved?.users?.[id];
      values[name] = known ?? resolved?.members?.[id]?.nick ?? user?.global_name ?? user?.username ?? id;
    }
  }
  return { values, channel };
}
