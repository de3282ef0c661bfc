/* To what is asked by whoever runs the class. */

export const en = {
  bells:
    "**The teacher sets the bell: `/class periods days:mon from:14:00 to:15:20`.** Every plan is then held against it. Without options it shows what is set.",
  sayAll:
    "**A word to all: `/class say text:…` (teacher).** It comes up on every phone at once; `/class said` tells who has received it.",
  moreTime:
    "**No time is made longer for all: in its developer each film goes by its own plan, and longer makes it denser.** Before the next bath everybody may wait: the clock starts with the press. To say so to all: `/class say text:…` (teacher).",
  signOut:
    "**In the room: Menu, “Door: code and people”, the name, “Sign out everywhere” (teacher).** Their films stay in the log. `/class forget` erases all that is kept of them, for good.",
  standing: "**I know bottles by their numbers, not where they stand: ask an aide.** Which number it is:",
  labels:
    "**Nothing to print: write the bottle's number on it, like B3, with a pen that water leaves alone.**",
  byBell: "**Whether all get done by the bell, and who must wait: `/class turns` (teacher or aide).**",
  order: "The order",
  logFile: "**As a file to print: `/roll export` (teacher).**",
  otherBottle:
    "**Before that bath is in: `/batch take batch:B5 run:R7`.** The run's number stands on the board.",
  stopOther:
    "**Somebody else's film: `/run stop run:R7`, with its number from the board (teacher or aide).** The log keeps what was done.",
};

export type DeskWords = typeof en;
