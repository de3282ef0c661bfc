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
    "paper-developer":
      "50 Blatt 20x25 cm je Liter auf PE-Papier, halb so viele auf Barytpapier, einen Tag in der Schale: aus dem Gedächtnis, eine veröffentlichte Zahl ist nicht bekannt; sieh im Blatt des Herstellers nach; dunkelbraun ist verbraucht",
    "paper-stop":
      "einen Tag in der Schale: übliche Praxis, ohne Quelle; ein Stoppbad mit Indikator ist verbraucht, wenn es blau oder violett wird",
    "paper-fixer":
      "20 Blatt 20x25 cm je Liter, wo die Ergiebigkeit nicht bekannt ist: Anchell, The Darkroom Cookbook, 3. Aufl., S. 108; US Navy NAVEDTRA 14209 nennt 200 je US-Gallone, 53 je Liter; das erste von zwei Bädern bis 2 g/l Silber: die Seite eines Printers; eine Woche in Gebrauch: aus dem Gedächtnis",
    "paper-wash-aid": "aus dem Gedächtnis, sieh im Blatt des Herstellers nach",
  },
};
