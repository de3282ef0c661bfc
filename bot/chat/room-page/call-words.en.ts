/* The words of calls, of their sound, and of the board on the wall, in English. */

export const cue = {
  word: "To everyone",
  gotIt: "Got it",
  notYet: "Not yet",
  left: "left in this step",
  late: (long: string) => `${long} late`,
  lateDoIt: (long: string) => `${long} late: do it now`,
  onlyLeft: (long: string) => `only ${long} left`,
  /** Of a word to many. */
  ago: (long: string) => `${long} ago`,
  /** As a voice says it. */
  spokenLate: (seconds: number) => (seconds === 1 ? "1 second late." : `${seconds} seconds late.`),
  spokenLeft: (seconds: number) => (seconds === 1 ? "Only 1 second left." : `Only ${seconds} seconds left.`),
  spokenLateMinutes: (minutes: number) => (minutes === 1 ? "1 minute late." : `${minutes} minutes late.`),
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
