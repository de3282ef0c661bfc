import { type Habits, habitsSchema } from "./school.ts";

/** Those of a class that has set none. By itself, for what only reads habits need not wait for these to be made. */
export const DEFAULT_HABITS: Habits = habitsSchema.parse({});
