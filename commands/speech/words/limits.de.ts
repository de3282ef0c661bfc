import type { LimitWords } from "./limits.en.ts";

export const de: LimitWords = {
  outside: (value, least, most) =>
    `${value} kann hier nicht sein: Der Wert liegt zwischen ${least} und ${most}. Miss oder lies noch einmal.`,
  ounces: (written) => `Meinst du US-Unzen, dann schreib ${written}.`,
};
