import type { Roll } from "../../store/shapes/roll.ts";
import { createDraw } from "./many-rolls.ts";
import { START } from "./make.ts";
import { aRoll } from "./rolls.ts";

/** Rolls of a term, drawn with a fixed seed. Everything in it is invented. */
export function aTermOfRolls(count: number, weeks: number): Roll[] {
  const draw = createDraw(3);
  const faults = ["thin", "milky", "crescents", "round clear spots", "drying marks"];
  return Array.from({ length: count }, (_, at) => {
    const off = draw(120) - 60 - (draw(9) === 0 ? 90 : 0);
    return aRoll(
      {
        id: at + 1,
        number: at + 1,
        personName: `Learner ${1 + draw(24)}`,
        film: ["Lantern 400", "Quay 100", "Tide 3200"][draw(3)] ?? "",
        endedAt: START + Math.floor((at / count) * weeks * 7 * 86_400_000),
        fault: draw(9) === 0 ? (faults[draw(5)] ?? "") : "",
        rating: draw(3) === 0 ? 2 + draw(4) : null,
        lateCues: draw(12) === 0 ? 1 : 0,
        outcome: draw(25) === 0 ? "stopped" : "finished",
      },
      { dosePerMille: 1000 + off, developerMl: 300, concentrateMl: 150 },
    );
  });
}
