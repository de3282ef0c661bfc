import type { Stores } from "../../store/index.ts";
import type { SchoolClass } from "../../store/shapes/school.ts";

/** The teacher's word on calls to closed pages, which leave the school's network; taken back, every device is forgotten. */
export function allowClosedPages(
  { classes, pushes }: Pick<Stores, "classes" | "pushes">,
  { id, habits }: Pick<SchoolClass, "id" | "habits">,
  isAllowed: boolean,
): void {
  classes.setHabits(id, { ...habits, push: isAllowed });
  if (!isAllowed) pushes.forgetClass(id);
}
