import type { RenewWords } from "./renew-words.en.ts";

const devices = (count: number): string => (count === 1 ? "1 Gerät" : `${count} Geräten`);

export const renewing: RenewWords = {
  codeHint: "Der alte Code gilt dann nicht mehr. Du bestimmst, wer drin bleibt.",
  codeKeep: "Neuer Code; alle bleiben drin",
  codeOut: (count) => `Neuer Code, und Schüler:innen auf ${devices(count)} abmelden`,
  passphrasesHint: "Sie stehen einmal hier. Die alten gelten dann nicht mehr. Du bestimmst, wer drin bleibt.",
  passphrasesKeep: "Neue Kennwörter; alle bleiben drin",
  passphrasesOut: (count) =>
    `Neue Kennwörter, und Lehr- und Hilfskräfte auf ${devices(count)} außer diesem abmelden`,
  leave: "So lassen",
};
