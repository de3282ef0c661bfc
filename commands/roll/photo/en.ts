export const en = {
  tooLarge: (mb: number, most: number) =>
    `The photo has ${mb} MB; at most ${most}. Take it smaller, or crop it.`,
  noPhoto: "That is no JPEG and no PNG. Save the photo as one of them.",
  broken: "The photo is not whole: its end is missing, or something in it is damaged. Send it again.",
  tooManyPixels: (width: number, height: number, most: number) =>
    `The photo says it is ${width} by ${height} pixels; at most ${most} each way.`,
  kept: (roll: string) =>
    `The photo is with ${roll}. Where and when it was taken, and with what, is not kept.`,
  has: (roll: string) => `${roll} has a photo of its contact sheet.`,
  hasNone: (roll: string) => `${roll} has no photo yet.`,
  takeOff: "Take the photo off",
  gone: (roll: string) => `The photo of ${roll} is gone.`,
  hadNone: (roll: string) => `${roll} has no photo.`,
};
export type PhotoWords = typeof en;
