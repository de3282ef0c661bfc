import {
  FRAMES_120,
  FRAMES_135,
  isSheetFilm,
  SHEET_FORMATS,
  type FilmFormat,
  type FrameSize,
  type SheetFormat,
} from "../../store/shapes/film.ts";

/* What lies on a film: how many frames, how far apart, and how much film that is. */

interface Frame {
  /** Along the film, mm: nominal sizes of ISO 732 (encyclopedia, grade C); 6x7 and 6x17 from their makers, from memory. */
  readonly mm: number;
  /** From one frame to the next, mm. 135: 8 perforations (ISO 1007), half frame 4; 120: a gap of 4 mm is assumed, no source. */
  readonly pitchMm: number;
  /** On 135 of 36, or on 120. */
  readonly usual: number;
  /** On 220. */
  readonly on220: number;
  /** In one strip of a sleeve for 120. Common practice, no source. */
  readonly strip: number;
}

const on120 = (mm: number, usual: number, on220: number, strip: number): Frame => ({
  mm,
  pitchMm: mm + 4,
  usual,
  on220,
  strip,
});

const FRAMES: Readonly<Record<FrameSize, Frame>> = {
  "24x36": { mm: 36, pitchMm: 38, usual: 36, on220: 36, strip: 6 },
  half: { mm: 18, pitchMm: 19, usual: 72, on220: 72, strip: 12 },
  // 15 or 16, 12 or 13 are published for 120; 24 to 27 for 6x6 on 220, 19 for 6x8, 18 for 6x9 (liquisearch, grade C).
  "6x4.5": on120(41.5, 16, 32, 4),
  "6x6": on120(56, 12, 24, 3),
  "6x7": on120(70, 10, 20, 3),
  "6x8": on120(77, 9, 19, 2),
  "6x9": on120(84, 8, 18, 2),
  "6x12": on120(118, 6, 12, 2),
  "6x17": on120(168, 4, 8, 1),
  "6x24": on120(224, 3, 6, 1),
};

/** Width of the film, mm: 135 (ISO 1007) 35; 120 and 220 61, elsewhere 62. */
export const FILM_WIDTH_MM = { "135": 35, roll: 61 } as const;

export function frameOn(format: FilmFormat, frame: FrameSize | null | undefined): FrameSize {
  return frame ?? (format === "135" ? "24x36" : "6x6");
}

/** Across the film, mm: nominal, as the lengths above. */
const acrossMm = (frame: FrameSize): number => (frame === "24x36" ? 24 : frame === "half" ? 24 : 56);
const INCH_MM = 25.4;

/** The picture on a negative, mm: of a sheet its nominal size. */
export function negativeMm(negative: FrameSize | SheetFormat): { shortMm: number; longMm: number } {
  const sheet = SHEET_FORMATS.find((each) => each === negative);
  const sides =
    sheet === undefined
      ? [FRAMES[negative as FrameSize].mm, acrossMm(negative as FrameSize)]
      : sheet.split("x").map((side) => Number(side) * (sheet === "9x12" || sheet === "13x18" ? 10 : INCH_MM));
  return { shortMm: Math.min(...sides), longMm: Math.max(...sides) };
}

/** Along the film, from one to the next, and across it, mm. */
export function frameMm(frame: FrameSize): { mm: number; pitchMm: number; acrossMm: number } {
  const { mm, pitchMm } = FRAMES[frame];
  return { mm, pitchMm, acrossMm: acrossMm(frame) };
}

/** The frames a film of this format can carry; none on sheet film. */
export function framesFor(format: FilmFormat): readonly FrameSize[] {
  if (isSheetFilm(format)) return [];
  return format === "135" ? FRAMES_135 : FRAMES_120;
}

/** Frames on one film where nobody says. */
export function usualFrames(format: FilmFormat, frame: FrameSize): number {
  if (isSheetFilm(format)) return 1;
  return format === "220" ? FRAMES[frame].on220 : FRAMES[frame].usual;
}

/** A strip slides into a sleeve with this to spare. Common practice, no source. */
const SLACK_MM = 4;

/**
 * Frames in a strip: sleeves for 135 as the class has them, half frames two to each; those for 120 by the frame, or where the
 * class says how many 6x6 frames its own hold, as many as fit into that length.
 */
export function stripFramesOf(
  format: FilmFormat,
  frame: FrameSize,
  of135: number,
  of120: number | null = null,
): number {
  if (format !== "135")
    return of120 === null ? FRAMES[frame].strip : framesInto(stripMm("6x6", of120), frame);
  return frame === "half" ? of135 * 2 : of135;
}

/** mm of a strip of so many frames. */
export function stripMm(frame: FrameSize, frames: number): number {
  const { mm, pitchMm } = FRAMES[frame];
  // 135 is cut between perforations, so that a strip is whole steps long.
  return frame === "24x36" || frame === "half" ? frames * pitchMm : (frames - 1) * pitchMm + mm;
}

function framesInto(lengthMm: number, frame: FrameSize): number {
  const { mm, pitchMm } = FRAMES[frame];
  return Math.max(1, Math.floor((lengthMm + SLACK_MM - mm) / pitchMm) + 1);
}

/** 135 with 36 frames is 1.6 m long: 1368 mm of frames, the rest leader and tail (from memory). */
const ENDS_135_MM = 232;
const LENGTH_135_MM = 1600;
const SQ_IN_PER_UNIT = 80;
const CM2_PER_SQ_IN = 6.4516;

const SHEET_UNITS = {
  "4x5": (4 * 5) / SQ_IN_PER_UNIT,
  "5x7": (5 * 7) / SQ_IN_PER_UNIT,
  "8x10": (8 * 10) / SQ_IN_PER_UNIT,
  "9x12": (9 * 12) / CM2_PER_SQ_IN / SQ_IN_PER_UNIT,
  "13x18": (13 * 18) / CM2_PER_SQ_IN / SQ_IN_PER_UNIT,
} as const;

/**
 * Film area in units of 80 sq in: one 135-36 or one 120 is 1 (practitioners' pages), 220 twice that (derived), 135 of fewer
 * frames by its length (derived), sheets by their size.
 */
export function unitsOf(format: FilmFormat, frames?: number, frame?: FrameSize | null): number {
  if (isSheetFilm(format)) return SHEET_UNITS[format];
  if (format !== "135") return format === "220" ? 2 : 1;
  if (frames === undefined) return 1;
  return (frames * FRAMES[frameOn(format, frame)].pitchMm + ENDS_135_MM) / LENGTH_135_MM;
}
