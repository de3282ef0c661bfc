import { joinBytes } from "./bytes.ts";
import type { Cleaned } from "../../../store/shapes/photo.ts";

/* A PNG put together again from the chunks that make the picture (ISO/IEC 15948). Texts, times and the like are left out. */

const KEPT = new Set(["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "sRGB", "cHRM"]);
const SIGN_BYTES = 8;

/** Undefined where the bytes are not one whole picture. What follows its end is left out. */
export function cleanPng(bytes: Uint8Array): Cleaned | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [bytes.subarray(0, SIGN_BYTES)];
  let size: { width: number; height: number } | undefined;
  for (let at = SIGN_BYTES; at + 12 <= bytes.length;) {
    const end = at + 12 + view.getUint32(at);
    if (end > bytes.length || view.getUint32(end - 4) !== crcOf(bytes.subarray(at + 4, end - 4)))
      return undefined;
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (at === SIGN_BYTES && type !== "IHDR") return undefined;
    // A second head could be another size than the one that is looked at.
    if (type === "IHDR" && size) return undefined;
    if (type === "IHDR") size = { width: view.getUint32(at + 8), height: view.getUint32(at + 12) };
    if (KEPT.has(type)) parts.push(bytes.subarray(at, end));
    if (type === "IEND") return size && { ...size, bytes: joinBytes(parts) };
    at = end;
  }
  return undefined;
}

const TABLE = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

/** The chunk's checksum, as the standard has it in its annex D. */
function crcOf(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (TABLE[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}
