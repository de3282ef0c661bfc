/* The words of calls, of their sound, and of the board on the wall, in English. */

export const cue = {
  word: "To everyone",
  gotIt: "Got it",
  notYet: "Not yet",
  left: "left in this step",
  late: (seconds: string) => `${seconds} late`,
  many: (count: number) => (count === 1 ? "1 more call" : `${count} more calls`),
  typing: "You are typing:",
};

export const hearing = {
  held: "Tap once for sound",
  paused: "Sound was paused; the film goes on. Tap for sound.",
  none: "This device gives no sound: watch the screen.",
};

export const board = {
  title: "Board",
  none: "No tank is running.",
  join: "Sign in",
  late: "late",
  stayOn: "Keep this screen on",
  toCome: (title: string) => `${title} to come`,
  staffOnly: "The board is for aides and teachers. Ask your teacher to open it.",
};

export type CueWords = typeof cue;
export type HearingWords = typeof hearing;
export type BoardWords = typeof board;
