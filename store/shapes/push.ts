import { z } from "zod";

/** What a pushed call shows, whatever the phone's page knows. */
export const pushBodySchema = z.object({
  /** The same for every try: a phone that has shown it does not show it again. */
  key: z.string(),
  /** A newer call of the same run takes the place of an older. */
  tag: z.string(),
  title: z.string(),
  text: z.string(),
  /** The moment it speaks of, ms since the epoch. */
  dueAt: z.int(),
  language: z.string(),
});
export type PushBody = z.output<typeof pushBodySchema>;
