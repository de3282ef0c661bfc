import type { ShowWords } from "./en.ts";

export const de: ShowWords = { unjudged: "Noch niemand hat ihn bewertet oder etwas dazu geschrieben." };
