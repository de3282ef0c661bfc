import { groups } from "./groups.en.ts";

export const en = {
  groups,
  noClass:
    "I don't know yet which class you belong to. Use one command in your class's server, then come back here.",
  oldButton: "That button is from an older version. Type the command instead.",
  /** On a message's menu; at most 32 characters. */
  rateRoll: "Rate this roll",
  noRoll:
    "That message is about no single roll in the log. Use `/roll rate`, or this on the message of a roll of yours.",
  /** In front of a list. */
  choose: "Choose one",
  changeAndSend: "Change it and send again",
  /** Said once, where somebody adds the bot to a server. */
  welcome:
    "**Hello. I call each film of your darkroom class: agitate, pour out, next bath.**\nWhoever manages this server sets the class up; students then ask for a time with `/plan`, or in their own words with `/ask`. Read the cautions before anybody mixes chemistry.",
  setUp: "Set up the class",
  help: "Help",
  cautions: "Cautions",
  broken: "Something broke on my side. Look where your run stands before you try again.",
  fileTooLarge: (megabytes: number, most: number) =>
    `The file has ${Math.ceil(megabytes)} MB; at most ${most}. Take it smaller, or crop it.`,
  fileNotFetched: "The file could not be fetched, and nothing was changed. Send it once more.",
  fileNoText: "That file is no text I can read. Send a table as CSV, periods as an .ics file.",
  photoOf: {
    roll: (name: string) => `The contact sheet of ${name}`,
    print: (name: string) => `The print ${name}`,
  },
  done: "Done.",
  lostPicture: (alt: string) => `The picture could not be drawn. It shows: ${alt}`,
  logGoesOn: (roll: string, line: string) =>
    `The file goes back to ${roll}: Discord takes no larger one. The older rolls come with \`/${line}\`.`,
  logRest: "Older rolls",
  tooLarge: (name: string, megabytes: number) =>
    `${name} is too large for this chat (${megabytes} MB). Ask for less at once.`,
  callsHere: "Your calls come here. Keep notifications on for this conversation.",
  callsInThread: (threadId: string) => `**Your calls come in <#${threadId}>: go on there.**`,
  /** `missing`: in the class's channel; none where it failed otherwise. What follows says where calls come. */
  noThread: (missing: readonly string[]) =>
    missing.length === 0
      ? "A thread for your film could not be opened."
      : `A thread for your film could not be opened: in the class channel I lack ${missing.join(" and ")} (a server manager can give it).`,
  callsAlone: "**Your calls come by direct message.**",
  callsInChannel: (channelId: string) =>
    `**Your direct messages are closed to me: your calls come in <#${channelId}>, by your name.** To be called alone: open the server's menu, then Privacy Settings, and turn on Direct Messages.`,
  /** `lacking`: the class's channel, and what the bot may not do there; null: there is no such channel. */
  callsNowhere: (lacking: { readonly channelId: string; readonly missing: readonly string[] } | null) =>
    `**No call can reach you: keep the time yourself.** Your direct messages are closed to me (open the server's menu, then Privacy Settings, and turn on Direct Messages), and ${
      lacking === null
        ? "the class has no channel yet (the teacher chooses it with `/class setup`)."
        : `in <#${lacking.channelId}> I lack ${lacking.missing.join(" and ")} (a server manager can give it).`
    }`,
  /** The answer of a call that came too late to be shown. */
  answeredLate: (text: string) =>
    `_Your last call was done, but my answer came too late to be shown:_\n${text}\n`,
};
export type DiscordWords = typeof en;
