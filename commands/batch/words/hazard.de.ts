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
  },
  powder:
    "Pulver: kein Durchzug, Gesicht weg von der Tüte, langsam einrühren. Nicht in der Nähe von Schwangeren.",
  scald: (tenthsC) =>
    `**Wasser von ${formatBothScales(tenthsC)} verbrüht.** Erst das kalte, dann das heiße Wasser; gieß langsam, vom Körper weg.`,
};
