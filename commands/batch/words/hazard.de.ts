import { formatBothScales } from "../../speech/wording.ts";
import type { HazardWords } from "./hazard.en.ts";

export const de: HazardWords = {
  mixing: {
    developer: "Handschuhe und Schutzbrille an: Entwickler kann die Haut ein Leben lang allergisch machen.",
    stop: "**Säure ins Wasser, nie Wasser in die Säure.** Handschuhe und Schutzbrille an, Lüfter an. Nie zu Fixierbad oder Chlorreiniger: Da entsteht schädliches Gas.",
    fixer:
      "Handschuhe und Schutzbrille an, Lüfter an: Saures Fixierbad gibt Schwefeldioxid ab. Hast du Asthma, lass es jemand anderen ansetzen.",
    "wash-aid": "Handschuhe und Schutzbrille an, Lüfter an.",
    "wetting-agent": null,
    "paper-developer":
      "Handschuhe und Schutzbrille an: Entwickler kann die Haut ein Leben lang allergisch machen. In die Schale nur mit der Zange.",
    "paper-stop":
      "**Säure ins Wasser, nie Wasser in die Säure.** Handschuhe und Schutzbrille an, Lüfter an. Nie zu Fixierbad oder Chlorreiniger: Da entsteht schädliches Gas.",
    "paper-fixer":
      "Handschuhe und Schutzbrille an, Lüfter an: Saures Fixierbad gibt Schwefeldioxid ab, eine offene Schale mehr als eine Flasche. Hast du Asthma, lass es jemand anderen ansetzen.",
    "paper-wash-aid": "Handschuhe und Schutzbrille an, Lüfter an.",
  },
  powder:
    "Pulver: kein Durchzug, Gesicht weg von der Tüte, langsam einrühren. Nicht in der Nähe von Schwangeren.",
  scald: (tenthsC) =>
    `**Wasser von ${formatBothScales(tenthsC)} verbrüht.** Erst das kalte, dann das heiße Wasser; gieß langsam, vom Körper weg.`,
};
