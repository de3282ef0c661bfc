import type { UnreachedWords } from "./unreached.en.ts";

export const de: UnreachedWords = {
  own: "**Deine Signale erreichen dich nicht: Stopp die Zeit selbst.** Erlaub mir Direktnachrichten, oder bitte die Lehrkraft um einen Kanal, in dem ich schreiben darf.",
  others: "**Die Signale kommen dort nicht an.**",
  teacher: (run, person) =>
    `**${run}: Die Signale erreichen ${person} nicht. Sag, dass die Zeit selbst gestoppt werden muss.** Direktnachrichten sind gesperrt, und im Kanal des Kurses kann ich nicht schreiben. \`/class setup\` sagt, was mir dort fehlt.`,
};
