import type { LongerWords } from "./longer.en.ts";

export const de: LongerWords = {
  stay: (label, seconds, until) =>
    `**Lass deinen Film bis ${until} im Fixierbad: insgesamt ${seconds}.** ${label} wurde eben geprüft und wirkt langsamer. Schon ausgegossen? Wieder hinein damit, Deckel zu; ich rufe noch einmal.`,
  again: (label, seconds) =>
    `**Dein Film war zu kurz im Fixierbad: Sag es der Lehrkraft.** ${label} wurde eben geprüft und braucht ${seconds}. Fixier den Film noch einmal so lange, in einem Fixierbad, das in Ordnung ist, Deckel zu; dann wässere ihn neu.`,
};
