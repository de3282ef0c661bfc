import type { PhoneWords } from "./en.ts";

export const de: PhoneWords = {
  own: (code, until) =>
    `**${code}** ist dein Code, bis ${until} und für ein einziges Mal. Öffne auf dem anderen Gerät die Seite, drück **Ich war schon hier** und tipp ihn ein. Dein Film und deine Signale sind sofort da; dieses Gerät bleibt angemeldet.`,
  given: (name, code, until) =>
    `**${code}** ist der Code für ${name}, bis ${until} und für ein einziges Mal. Auf dem anderen Gerät: **Ich war schon hier**, dann der Code. Gib ihn niemand anderem: Wer ihn eintippt, ist ${name}. Ist ein Handy verloren? Melde es unter **Menü**, **Tür** ab.`,
  byAccount:
    "Hier ist dein Konto dein Platz: Melde dich damit auf dem anderen Gerät an, dann kommen die Signale dort an.",
  byPassphrase:
    "Eine Lehrkraft kommt mit dem Kennwort herein: Drück auf dem anderen Gerät **Ich unterrichte oder helfe hier** und nimm denselben Namen.",
  unknownPerson: (name) => `In diesem Kurs gibt es niemanden namens ${name}.`,
  aboveYou: (name) => `Für ${name} darf das nur eine Lehrkraft.`,
};
