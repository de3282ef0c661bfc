import { MOST_AHEAD_MS } from "../../chat/delays.ts";
import { nameOfChat, type LostWords } from "./lost.en.ts";

export const de: LostWords = {
  lost: (chat, why) =>
    `**${nameOfChat(chat)} ist abgeschaltet: Dort bekommt niemand mehr ein Signal.** Der Raum läuft weiter. Grund: „${why}“`,
  slow: (chat, tookMs) =>
    `**${nameOfChat(chat)} ist langsam: Eine Nachricht braucht ${Math.round(tookMs / 1000)} s.** Signale gehen bis zu ${MOST_AHEAD_MS / 1000} s früher ab und kommen dort trotzdem zu spät; jedes sagt, wie sehr. Lass neben den Dosen eine Uhr laufen, und lass das Netz prüfen.`,
};
