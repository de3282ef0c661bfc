export const en = {
  noClass:
    "I don't know yet which class you belong to. Use one command in your class's server, then come back here.",
  oldButton: "That button is from an older version. Type the command instead.",
  broken: "Something broke on my side. Look where your run stands before you try again.",
  fileTooLarge: (megabytes: number, most: number) =>
    `The file has ${Math.ceil(megabytes)} MB; at most ${most}. Take it smaller, or crop it.`,
  fileNotFetched: "The file could not be fetched, and nothing was changed. Send it once more.",
  photoOf: (roll: string) => `The contact sheet of ${roll}`,
  done: "Done.",
  lostPicture: (alt: string) => `The picture could not be drawn. It shows: ${alt}`,
  tooLarge: (name: string, megabytes: number) =>
    `${name} is too large for this chat (${megabytes} MB). Ask for less at once.`,
};
export type DiscordWords = typeof en;
