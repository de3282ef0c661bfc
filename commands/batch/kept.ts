import type { Habits } from "../../store/shapes/school.ts";
import { FILM_BATHS, type FilmBath } from "../../store/shapes/batch.ts";

/** The baths for film that a class needs by its habits. */
export function kindsKept(habits: Pick<Habits, "stop" | "washAid">): FilmBath[] {
  return FILM_BATHS.filter(
    (kind) => (kind !== "stop" || habits.stop === "acid") && (kind !== "wash-aid" || habits.washAid),
  );
}
