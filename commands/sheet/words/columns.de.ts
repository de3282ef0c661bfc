import type { ColumnWords } from "./columns.en.ts";

export const de: ColumnWords = {
  temperature: "20C oder 68F, von 5C bis 45C",
  exposure_index: "400; leer für die Empfindlichkeit des Films",
  time: "9:00 oder 540 s, von 0:15 bis 3:00:00",
  source: "woher die Zeit kommt, höchstens 200 Zeichen",
  film: "seinen Namen, höchstens 60 Zeichen",
  developer: "seinen Namen, höchstens 60 Zeichen",
  dilution: "1+9 oder stock",
  film_speed: "400, mindestens in einer Zeile des Datenblatts",
  agitation: "30/5/60 (anfangs/jeweils/Abstand in Sekunden) oder continuous",
  factor_per_10c: "2.3, von 1 bis 6",
  coldest: "18C, von 5C bis 45C",
  hottest: "24C, von 5C bis 45C",
  min_concentrate_ml: "100",
  tabular_grain: "yes oder no",
  reuse: "1/10%/10 (Filme je Liter/Zugabe/höchstens Filme)",
  sheet_source: "woher das Datenblatt kommt, höchstens 200 Zeichen",
};
