import type { CallWords, RunView, ViewCall } from "../../../commands/run/run-view.ts";
import type { Language } from "../../../store/shapes/language.ts";

export type { CallWords, ViewCall };

/** One run as its owner's page shows it. Instants are ms since the epoch. */
export type PersonView = Omit<RunView, "owner" | "ownerId">;

/** The open runs of a person, in the language they read or, where one is given, in that. */
export type ViewOf = (personId: string, classId: number, language?: Language) => readonly PersonView[];
