export const en = {
  timeAt: (time: string, temperature: string) => `${time} at ${temperature}`,
  curve: (sheet: string, exposureIndex: number, ends: readonly string[]) =>
    `Developing time over temperature for ${sheet} at EI ${exposureIndex}: from ${ends.join(" down to ")}.`,
  thisTank: (timeAt: string) => `This tank: ${timeAt}.`,
  below: (exposureIndex: number) => `Developing time at EI ${exposureIndex}. Hatched: take care.`,
  axis: "Temperature of the developer, °C",
};
export type PictureWords = typeof en;
