import type { OutlastVerdict } from "../outlast.ts";

/* Instants come marked. */

interface Times {
  readonly done: string;
  readonly hung: string;
  readonly fixed: string;
  readonly latest: string;
}

export const en = {
  bell: (time: string, advice: string) => `**The bell rings at ${time}.** ${advice}`,
  advice: {
    "cut-later": ({ done }: Times) =>
      `This run ends at ${done}. The film is dry before that: leave it hanging, cut and sleeve it next time.`,
    "dry-later": ({ hung }: Times) =>
      `The film hangs at ${hung} and will not be dry by then: let it dry overnight, cut and sleeve it next time.`,
    "wash-later": ({ fixed }: Times) =>
      `The film is out of the fixer at ${fixed} but not washed by then. Ask the teacher before you pour: it may lie in clean water for a while, never in the developer or the fixer.`,
    "not-fixed": ({ latest }: Times) =>
      `**Don't pour in.** The film would still be in the developer or the fixer at the bell. The latest pour-in was ${latest}. Leave the film in its tank or its cassette, in the dark, for next time.`,
  } satisfies Record<Exclude<OutlastVerdict, "fits">, (times: Times) => string>,
};
export type OutlastWords = typeof en;
