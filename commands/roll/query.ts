import { z } from "zod";

/** What a person looks for in the log. Words must all occur, each may be begun only; the rest narrows further. */
export const rollFilterSchema = z.object({
  words: z.array(z.string()),
  personId: z.string().nullable(),
  film: z.string().nullable(),
  developer: z.string().nullable(),
  batch: z.string().nullable(),
  tank: z.int().nullable(),
  rating: z.int().nullable(),
  outcome: z.enum(["finished", "stopped"]).nullable(),
});
export type RollFilter = z.output<typeof rollFilterSchema>;

export const EVERY_ROLL: RollFilter = {
  words: [],
  personId: null,
  film: null,
  developer: null,
  batch: null,
  tank: null,
  rating: null,
  outcome: null,
};

/** The words of a search, as the index knows them: letters and digits only, at most twelve. */
export function splitWords(text: string): string[] {
  return (text.normalize("NFC").match(/[\p{L}\p{N}]+/gu) ?? []).slice(0, 12);
}
