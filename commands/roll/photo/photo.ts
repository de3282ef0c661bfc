import { makeNumber } from "../../speech/wording.ts";
import { fail, ok, type Result } from "../../result.ts";
import { cleanJpeg } from "./jpeg.ts";
import { cleanPng } from "./png.ts";
import type { Photo, PhotoOf } from "../../../store/shapes/photo.ts";

/*
 * A photo of a contact sheet, made fit to be kept: what it is is read from its bytes and not from its name, and of what a
 * phone writes beside the picture (place, time, device, preview) nothing is left but which way is up.
 */

export const MOST_PHOTO_BYTES = 8 * 1024 * 1024;
/** A side longer than any camera's; a picture that claims more is made to fill a memory. */
export const MOST_PHOTO_PIXELS = 12_000;

export type PhotoFault =
  | { readonly code: "ERR_PHOTO_LARGE"; readonly bytes: number }
  | { readonly code: "ERR_PHOTO_TYPE" }
  | { readonly code: "ERR_PHOTO_BROKEN" }
  | { readonly code: "ERR_PHOTO_PIXELS"; readonly width: number; readonly height: number };

export function cleanPhoto(bytes: Uint8Array): Result<Photo, PhotoFault> {
  if (bytes.length > MOST_PHOTO_BYTES) return fail({ code: "ERR_PHOTO_LARGE", bytes: bytes.length });
  const isJpeg = startsWith(bytes, [0xff, 0xd8, 0xff]);
  const isPng = startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  if (!isJpeg && !isPng) return fail({ code: "ERR_PHOTO_TYPE" });
  const cleaned = isJpeg ? cleanJpeg(bytes) : cleanPng(bytes);
  if (!cleaned) return fail({ code: "ERR_PHOTO_BROKEN" });
  const { width, height } = cleaned;
  if (width < 1 || height < 1 || width > MOST_PHOTO_PIXELS || height > MOST_PHOTO_PIXELS)
    return fail({ code: "ERR_PHOTO_PIXELS", width, height });
  return ok({ mediaType: isJpeg ? "image/jpeg" : "image/png", bytes: cleaned.bytes });
}

function startsWith(bytes: Uint8Array, sign: readonly number[]): boolean {
  return sign.every((byte, at) => bytes[at] === byte);
}

/** `L12.png`, `V9.jpg`: what the photo of this roll or print is called as a file. */
export function photoFileName({ kind, number }: PhotoOf, mediaType: Photo["mediaType"]): string {
  return `${makeNumber(kind, number)}.${mediaType === "image/png" ? "png" : "jpg"}`;
}
