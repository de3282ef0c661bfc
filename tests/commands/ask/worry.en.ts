/*
 * What worries somebody, as it is typed with wet hands; written before any rule for it. Of the first 20 here and the first 20 in
 * German, 9 answers were of use before the rules; of the others, 20 in all, 13 right after them, before they were mended by those.
 * Two of those are still not read, and stand in neither list: music beside the calls, and wet hands on a phone.
 */
export const WORRY_EN: readonly (readonly [wanted: string, sentence: string])[] = [
  ["phone", "my page went black"],
  ["phone", "phone has no battery what now"],
  ["silent", "i cant hear anything"],
  ["wear", "do i need gloves"],
  ["smell", "smells like eggs in here is that ok"],
  ["harm", "i spilled fixer on the floor"],
  ["exposed", "there was a light leak i think door opened"],
  ["leader", "film leader is gone inside the canister"],
  ["tint", "why is my fixer purple"],
  ["calls", "what if i miss a call"],
  ["who", "who has tank 3"],
  ["turn", "when is it my turn"],
  ["wait", "can i leave now"],
  ["who", "how many are still running"],
  ["expired", "my film expired in 2019"],
  ["several", "two films in one tank ok?"],
  ["calls", "do i have to tap it every time"],
  ["faster", "can i speed it up"],
  ["harm", "got some in my eye"],
  ["worry", "is it ruined"],
  ["phone", "screen keeps turning off"],
  ["phone", "water got in my phone"],
  ["harm", "drank from the wrong cup"],
  ["who", "which students have not started"],
  ["leak", "tank 2 is leaking"],
  ["printing", "is the red light safe for film"],
  ["reel", "the film is stuck on the reel"],
  ["waste", "where do i pour the old developer"],
];
