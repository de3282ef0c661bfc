import type { TimeWords } from "./time.en.ts";

export const de: TimeWords = {
  at: (time, temperature) => `**${time}** bei ${temperature}`,
  between: (time, temperature, low, high) => `**${time}** bei ${temperature}, Schätzung: ${low} bis ${high}`,
  betweenOf: (time, temperature, low, high) => `**${time}** bei ${temperature}, geschätzt ${low} bis ${high}`,
  of: (timeAt, sheet) => `${timeAt}: ${sheet}`,
};
