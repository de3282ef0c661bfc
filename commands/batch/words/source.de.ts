import type { SourceWords } from "./source.en.ts";

export const de: SourceWords = {
  ownFirst: (rest) => `wie beim Ansetzen angegeben; sonst ${rest}`,
  house: {
    developer: "Entwickler als Stammlösung: aus dem Gedächtnis, sieh im Blatt des Herstellers nach",
    stop: "12 Filme je Liter: Anchell, The Darkroom Cookbook, 3. Aufl., S. 268; Haltbarkeit aus dem Gedächtnis",
    fixer:
      "20 Filme je Liter, wo die Ergiebigkeit nicht bekannt ist, angesetztes Fixierbad hält 2 Monate: Anchell, The Darkroom Cookbook, 3. Aufl., S. 108; Flachkristallfilm die Hälfte davon, angebrochene Flasche 1 Monat: Berichte aus der Praxis",
    "wash-aid": "aus dem Gedächtnis, sieh im Blatt des Herstellers nach",
    "wetting-agent": "jede Woche frisch: übliche Praxis, ohne Quelle",
    "working-developer":
      "verdünnter Entwickler wird für den Tag angesetzt: aus dem Gedächtnis, sieh im Blatt des Herstellers nach",
  },
};
