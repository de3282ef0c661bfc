import type { DispatchWords } from "./dispatch.en.ts";

export const de: DispatchWords = {
  broken:
    "Es ist ein Fehler aufgetreten, und nichts wurde geändert. Versuch es noch einmal; geht es wieder nicht, sag es der Lehrkraft.",
  diskFull:
    "Die Platte des Kursrechners ist voll: Nichts kann aufgeschrieben werden, und nichts wurde geändert. Sag es jetzt der Lehrkraft.",
  onlyStaff: (command, least) =>
    least === "aide"
      ? `\`/${command}\` dürfen nur eine Hilfskraft oder die Lehrkraft. Frag sie.`
      : `\`/${command}\` darf nur die Lehrkraft. Frag sie.`,
  unknownCommand: (name, near) =>
    `Den Befehl \`/${name}\` gibt es nicht. ${near.length > 0 ? `Meintest du ${near.map((each) => `\`/${each}\``).join(" oder ")}?` : "Versuch `/help`."}`,
  shareSpent: (whose) =>
    `${whose === "person" ? "Du hast" : "Dein Kurs hat"} heute weit mehr geschrieben oder geschickt, als ein Tag braucht, und der Speicher gehört allen. Es wurde nichts geändert. Mach morgen weiter, oder frag deine Lehrkraft. Signale für einen Film in der Dose kommen weiter.`,
  renamed: (old, now) => `\`/${old}\` heißt jetzt \`/${now}\`.`,
};
