import type { PaperRule } from "../../../store/shapes/paper.ts";

export const de: Readonly<Record<PaperRule, string>> = {
  "own-time": "die Zeit des Kurses für diesen Entwickler",
  "usual-times":
    "PE-Papier 60 s (aus dem Gedächtnis), Barytpapier 2 min: 1 1/2 bis 2 min bei 21 bis 23 °C (US Army SS0509); Kontaktpapier 20 bis 40 s bei 18 °C (Glover 1924)",
  "own-coefficient": "der Faktor dieses Entwicklers je 10 °C",
  "usual-coefficient": "2,07 in 10 °C, aus den Zeiten eines MQ-Entwicklers bei 13 und 18 °C (Glover 1924)",
  "least-tried":
    "nie unter der kürzesten Zeit, die im Versuch des Kurses volles Schwarz gab; mehr Belichtung ersetzt sie nicht (Clerc, 556)",
  "least-untried":
    "nie kürzer: Kein Versuch zeigt, dass weniger volles Schwarz gibt, und mehr Belichtung ersetzt die Zeit nicht (Clerc, 556)",
  factor:
    "Faktor mal erstes Erscheinen (alte Praxis bei Bromsilberpapier; nicht für schnelle Kontaktpapiere)",
  drain:
    "Abtropfen innerhalb der Zeit; veröffentlicht: einen Augenblick (US Navy NAVEDTRA 14209), 5 s oder 10 s (Seiten von Kursen), 15 s danach (US Army SS0509)",
  "acid-stop":
    "die Quellen widersprechen sich: 5 s (US Navy NAVEDTRA 14209), 15 s und 30 s (Seiten von Kursen), 1 min (US Army SS0509)",
  "water-stop": "übliche Praxis, ohne Quelle",
  "fix-rc":
    "PE-Papier höchstens 2 min (Seite aus der Praxis); 30 s in starkem Schnellfixierbad (aus dem Gedächtnis)",
  "fix-fibre":
    "5 bis 10 min in einem Bad (Seite aus der Praxis); in starkem Schnellfixierbad fixiert 1 min zu 90 bis 100 % (Anchell, S. 107)",
  "fix-strong":
    "1 min in starkem Schnellfixierbad (Anchell, S. 107; früher 30 s); in gewöhnlichem saurem Fixierbad 5 bis 10 min (Seite aus der Praxis)",
  "fix-two":
    "3 bis 5 min in jedem von zwei Bädern (Seite aus der Praxis), in jeder Minute 30 s bewegt (Anchell, S. 107)",
  "fix-strip":
    "doppelt so lang wie die erste klare Stelle im Teststreifen des Kurses, nie unter 1 min (Lambrecht)",
  "wash-rc":
    "Seiten von Kursen sagen 2 bis 3 min, 5 min und von vorn mit jedem neuen Abzug, 10 bis 20 min; Wässerungshilfe ist nicht nötig (US Army SS0509)",
  "wash-fibre":
    "nach etwa 60 min nimmt der Rest im Papier kaum noch ab (gemessen, Seite eines Printers); 30 min oder 12 Wechsel zu 5 min (ein Handbuch), dünn 30 und sehr dick 90 min (Clerc, 607)",
  "wash-aid":
    "5 min wässern, 10 min Wässerungshilfe, 5 min wässern, nach kurzem Fixieren (ein Hersteller, zitiert)",
  "wash-cold": "länger in kaltem Wasser (US Army TM 11-2323)",
  "lay-to-dry": "bis er trocken ist",
  "called-strip": "was jedes Feld mehr bekommt als das davor, in ganzen Sekunden",
  "lamp-steps": "1, 3 und 7 min, vor dem Grau und danach (Anleitung eines Filmherstellers)",
};
