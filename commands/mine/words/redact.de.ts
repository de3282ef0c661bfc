import type { RedactWords } from "./redact.en.ts";

export const de: RedactWords = {
  withdrawn:
    "**Entfernt:** Hier stand etwas über jemanden, dessen Daten gelöscht sind. Frag noch einmal, um zu sehen, was geblieben ist.",
};
