/** Which message leaves first where a chat is slow; smaller is sooner. */
export const PRIORITIES = {
  /** Pour-out and the next bath. */
  bath: 0,
  /** Agitation, and what else is of use now or never. */
  call: 1,
  reminder: 2,
  /** Warnings and digests: nobody's film waits for them, and each is read on its own. */
  news: 3,
} as const;

/** Cues and what is said like them: all but news. */
export const isCall = ({ priority }: { readonly priority: number }): boolean => priority < PRIORITIES.news;
