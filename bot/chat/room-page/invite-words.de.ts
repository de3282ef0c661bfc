import type { InviteWords } from "./invite-words.en.ts";

export const invite: InviteWords = {
  title: "Ein Kurs auf Discord",
  hint: "Dieser Bot betreut auch Kurse auf Discord, jeden auf einem eigenen Server. Wer den Server verwaltet, fügt ihn dort hinzu.",
  add: "Zu einem Server hinzufügen",
};
