/* The words of photos that people send, and of pictures that they are shown. */

export const photo = {
  of: {
    roll: (name: string) => `Contact sheet of ${name}`,
    print: (name: string) => `Photo of print ${name}`,
  },
  add: "Add a photo",
  replace: "Another photo",
  camera: "Take one now",
  sending: "Sending the photo…",
};

export const picture = { close: "Close", zoomIn: "Larger", zoomOut: "Smaller", save: "Save as picture" };

export type PhotoWords = typeof photo;
export type PictureWords = typeof picture;
