import type { Language } from "../../../store/shapes/language.ts";

/* Calls said aloud by the browser's own voice, in the person's language. */

export const canSpeak = (): boolean => "speechSynthesis" in window;

/** After the tone, which wakes the ear. A newer call cuts an older one short. */
export function speakAloud(text: string, language: Language, afterMs: number): void {
  if (!canSpeak() || text === "") return;
  setTimeout(() => {
    const said = new SpeechSynthesisUtterance(text);
    said.lang = language === "de" ? "de-DE" : "en-GB";
    speechSynthesis.cancel();
    speechSynthesis.speak(said);
  }, afterMs);
}
