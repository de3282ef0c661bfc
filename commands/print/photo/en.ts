export const en = {
  kept: (print: string) =>
    `The photo is with ${print}. Where and when it was taken, and with what, is not kept.`,
  has: (print: string) => `${print} has a photo.`,
  hasNone: (print: string) => `${print} has no photo yet.`,
  takeOff: "Take the photo off",
  gone: (print: string) => `The photo of ${print} is gone.`,
  hadNone: (print: string) => `${print} has no photo.`,
};
export type PhotoWords = typeof en;
