import { joinBytes } from "./bytes.ts";
import type { Cleaned } from "../../../store/shapes/photo.ts";

/* A JPEG taken apart into its segments and put together again from those that make the picture (ITU-T T.81, annex B). */

const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
/** The number of lines, where the frame has left it open. */
const DNL = 0xdc;
const APP0 = 0xe0;
const APP1 = 0xe1;
/** Adobe's: without it some pictures come out in wrong colours. */
const APP14 = 0xee;
const APP15 = 0xef;
const COM = 0xfe;

/** Undefined where the bytes are not one whole picture. What follows its end is left out. */
export function cleanJpeg(bytes: Uint8Array): Cleaned | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [bytes.subarray(0, 2)];
  let size: { width: number; height: number } | undefined;
  let orientation: number | undefined;
  for (let at = 2; at + 4 <= bytes.length;) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1] ?? 0;
    // Filling between segments.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === EOI || marker === SOI) return undefined;
    const end = at + 2 + view.getUint16(at + 2);
    if (end > bytes.length) return undefined;
    // A second frame, or a number of lines told later, could be another size than the one that is looked at.
    if ((isFrame(marker) && size) || marker === DNL) return undefined;
    if (isFrame(marker) && at + 9 <= bytes.length)
      size = { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    if (marker === APP1) orientation ??= readOrientation(bytes.subarray(at + 4, end));
    if (isKept(marker)) parts.push(bytes.subarray(at, end));
    at = end;
    if (marker !== SOS) continue;
    const data = endOfData(bytes, at);
    parts.push(bytes.subarray(at, data));
    at = data;
    if (bytes[at + 1] !== EOI) continue;
    parts.push(bytes.subarray(at, at + 2));
    return size && { ...size, bytes: joinBytes(withOrientation(parts, orientation)) };
  }
  return undefined;
}

/** SOF0 to SOF15, less the three numbers that stand for other things. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

function isKept(marker: number): boolean {
  if (marker === APP0 || marker === APP14) return true;
  return !(marker >= APP0 && marker <= APP15) && marker !== COM;
}

/** The next marker after the picture's own data; in these, FF is followed by 00 or is a restart. */
function endOfData(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at += 1) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && (next < 0xd0 || next > 0xd7)) return at;
  }
  return bytes.length;
}

const EXIF = [0x45, 0x78, 0x69, 0x66, 0, 0];
/** Tag 0x0112 of the Exif standard. */
const ORIENTATION_TAG = 0x0112;

/** 1 to 8; undefined where it is not there or makes no sense. */
function readOrientation(segment: Uint8Array): number | undefined {
  if (!EXIF.every((byte, at) => segment[at] === byte) || segment.length < 14) return undefined;
  const tiff = new DataView(segment.buffer, segment.byteOffset + 6, segment.byteLength - 6);
  const isLittle = tiff.getUint16(0) === 0x4949;
  const first = tiff.getUint32(4, isLittle);
  if (first + 2 > tiff.byteLength) return undefined;
  const count = tiff.getUint16(first, isLittle);
  for (let entry = 0; entry < count; entry += 1) {
    const at = first + 2 + entry * 12;
    if (at + 12 > tiff.byteLength) return undefined;
    if (tiff.getUint16(at, isLittle) !== ORIENTATION_TAG) continue;
    const value = tiff.getUint16(at + 8, isLittle);
    return value >= 1 && value <= 8 ? value : undefined;
  }
  return undefined;
}

/** An Exif segment of ours that says which way is up and nothing else. */
function withOrientation(parts: readonly Uint8Array[], orientation: number | undefined): Uint8Array[] {
  const [start, ...rest] = parts;
  if (orientation === undefined || orientation === 1 || !start) return [...parts];
  const tiff = [
    0x4d,
    0x4d,
    0,
    0x2a,
    0,
    0,
    0,
    8,
    0,
    1,
    0x01,
    0x12,
    0,
    3,
    0,
    0,
    0,
    1,
    0,
    orientation,
    0,
    0,
    0,
    0,
    0,
    0,
  ];
  const segment = [0xff, APP1, 0, 2 + EXIF.length + tiff.length, ...EXIF, ...tiff];
  return [start, Uint8Array.from(segment), ...rest];
}
