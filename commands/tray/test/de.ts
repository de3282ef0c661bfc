import { formatNumber } from "../../speech/wording.ts";
import type { TestWords } from "./en.ts";

export const de: TestWords = {
  noSteps: (most, longest) =>
    `Schreib die Stufen in ganzen Minuten mit Komma, wie 1, 3, 7: höchstens ${most}, jede höchstens ${longest}.`,
  head: (lamp, minutes, plan) =>
    `**Etwa ${formatNumber(minutes)} min unter dem Dunkelkammerlicht ${lamp}** (${plan}): Ich sage jede Münze an.`,
  before:
    "Du brauchst ein Blatt deines Papiers, einen Karton, Münzen und die Belichtung für ein helles Grau (Dichte 0,25 bis 0,50: gerade deutlich dunkler als Papier).",
  steps: (minutes) =>
    `Reihe 1 bekommt das Licht vor dem Grau, Reihe 2 danach: je ${minutes} min. Papier, das nur unter dem Licht liegt, zeigt den Schaden nicht: Die Lichter werden stumpf, bevor der Rand schleiert.`,
  wait: "Aus Leuchtstofflicht kommend warte 5 min, und 10, bis die Augen sehen. Geprüft wird das Licht, nicht diese Seite: Leg das Handy mit dem Bildschirm nach unten und geh nach dem Ton.",
  start: "Start",
};
