import type { NameWords } from "./name.en.ts";

export const de: NameWords = {
  somebody: "jemand",
  nameless: "Jemand",
  withdrawn:
    "**Entfernt:** Hier stand etwas über jemanden, dessen Daten gelöscht sind. Frag noch einmal, um zu sehen, was geblieben ist.",
};
