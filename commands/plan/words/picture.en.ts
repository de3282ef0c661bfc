export const en = {
  thisTank: (time: string) => `this tank: ${time}`,
  tank: (tank: number, time: string) => `tank ${tank}: ${time}`,
  steps: (steps: string) => `Steps: ${steps}.`,
};
export type PictureWords = typeof en;
