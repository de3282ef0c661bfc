import { inEach } from "../../speech/language.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";
import { MOST_PHOTO_BYTES, MOST_PHOTO_PIXELS, type PhotoFault } from "./photo.ts";

const words = inEach({ en, de });

type Words = { [Fault in PhotoFault as Fault["code"]]: (fault: Fault) => string };
const MB = 1024 * 1024;
const FAULT_TEXT: Words = {
  ERR_PHOTO_LARGE: ({ bytes }) => words().tooLarge(Math.ceil(bytes / MB), MOST_PHOTO_BYTES / MB),
  ERR_PHOTO_TYPE: () => words().noPhoto,
  ERR_PHOTO_BROKEN: () => words().broken,
  ERR_PHOTO_PIXELS: ({ width, height }) => words().tooManyPixels(width, height, MOST_PHOTO_PIXELS),
};

export function photoFaultWords(fault: PhotoFault): string {
  const say = FAULT_TEXT[fault.code] as (fault: PhotoFault) => string;
  return say(fault);
}
