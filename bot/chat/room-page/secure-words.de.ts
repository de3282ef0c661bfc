import type { SecureWords } from "./secure-words.en.ts";

export const secure: SecureWords = {
  none: "Diese Seite kommt über einfaches http: Handys können sie nicht auf den Home-Bildschirm legen und bei geschlossener Seite kein Signal bekommen, und nur ein kleines Video hält ihren Bildschirm wach. Wie man das ändert, steht im README unter „https“.",
  byProxy: "Diese Seite kommt über https.",
  holds: (day, days) =>
    `Diese Seite kommt über https. Ihr Zertifikat gilt bis ${day}: noch ${days === 1 ? "1 Tag" : `${days} Tage`}.`,
  renew: "Lass es erneuern: Danach warnen alle Browser vor dieser Seite.",
  over: (day) =>
    `Das Zertifikat galt bis ${day}. Alle Browser warnen vor dieser Seite: Lass es jetzt erneuern.`,
};
