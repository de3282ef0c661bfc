/* Films and what a camera puts on them. */

export const ROLL_FORMATS = ["135", "120", "220"] as const;
/** Sheet film by its nominal size: inches, but 9x12 and 13x18 cm. */
export const SHEET_FORMATS = ["4x5", "9x12", "5x7", "13x18", "8x10"] as const;
export const FILM_FORMATS = [...ROLL_FORMATS, ...SHEET_FORMATS] as const;
export type RollFormat = (typeof ROLL_FORMATS)[number];
export type SheetFormat = (typeof SHEET_FORMATS)[number];
export type FilmFormat = (typeof FILM_FORMATS)[number];

/** Frames on roll film: on 135 the usual one and the half one, on 120 and 220 the others. */
export const FRAMES_135 = ["24x36", "half"] as const;
export const FRAMES_120 = ["6x4.5", "6x6", "6x7", "6x8", "6x9", "6x12", "6x17", "6x24"] as const;
export const FRAME_SIZES = [...FRAMES_135, ...FRAMES_120] as const;
export type FrameSize = (typeof FRAME_SIZES)[number];

export function isSheetFilm(format: FilmFormat): format is SheetFormat {
  return (SHEET_FORMATS as readonly string[]).includes(format);
}
