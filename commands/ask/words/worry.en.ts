/* To what worries somebody. Common practice, no source, where no other is named. */

export const en = {
  // As the cautions have it, with their sources; the apron is common practice.
  wear: "**Gloves and splash goggles wherever something is poured, an apron over good clothes.** Wash your hands before you leave.",
  // Stop bath and fixer: as the cautions have it, NIOSH pocket guide (sulfur dioxide). Rotten eggs: hydrogen sulfide, from memory.
  smell:
    "**A faint smell of vinegar or sulphur is usual: stop bath and fixer.** Window open or fan on. Does it sting, make you cough or dizzy? Out to fresh air, and tell the teacher. Rotten eggs, or a new smell after something was mixed: everybody out, and get the teacher.",
  exposed:
    "**Lid on, paper covered, light off.** A film in the closed tank is safe: go on by the clock. One that lay open is fogged, but often not all of it: develop it all the same, and tell the teacher.",
  leader:
    "**Open the cassette in total darkness:** lever its flat end off with a bottle opener, take the film out by its edges, cut off its beginning, and wind it on the reel. With the light on only a leader retriever brings it out: ask the teacher.",
  // Yellow or white sediment, smell of sulphur: Anchell, The Darkroom Cookbook, 3rd ed., p. 108.
  tint: "**Purple or pink is dye from the films, and usual.** Cloudy, yellow or white flakes, a smell of sulphur, or developer gone brown: don't use it, tell an aide. How many films a bottle has had:",
  calls:
    "**You need not tap an agitation away: it goes by itself.** Only a change of bath wants its button, when the next bath is in. Missed a call? The next one comes all the same, and a change is called again several times.",
  phone:
    "**The room keeps the time, not your phone: your film goes on.** Load the page again, or open it on another phone; the teacher lets you back in under your name. Until then the wall board shows your tank, and a neighbour's watch will do.",
  turn: "**It is your turn when a tank is free.** Make your plan meanwhile, so that you can start at once.",
  expired:
    "**Develop it for the usual time of its data sheet.** Old film comes out greyer and with less contrast; a longer time brings back little. Show it to the teacher first: nobody can say how it was kept.",
  several:
    "**One film to each reel, as many as the tank has reels:** the same film or at least the same time, and more developer. Say in the plan how many rolls there are. In two tanks each has its own plan and its own calls.",
  faster:
    "**No: a bath takes its time, and cut short the film comes out thin or spoils later.** Only a warmer developer is quicker, by a plan made before you pour: it says whether the data sheet has that.",
  worry:
    "**Go on by the clock: most films can be saved.** Tell me what happened, like “poured out too early” or “the lid came off”, and tell the teacher. Only the wet film in the light tells for certain, after the fixer.",
};
export type WorryWords = typeof en;
