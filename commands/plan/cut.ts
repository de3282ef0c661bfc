import type { Plan } from "../../store/shapes/plan.ts";

/* Cutting a film into sleeve strips, and the contact sheet that results. */

export interface CutPlan {
  /** Frames in each strip, in the order they are cut. */
  readonly strips: readonly number[];
  /** The last strip is one frame: it stays on its blank tail, so that it can be held and slides into the sleeve. */
  readonly keepsTail: boolean;
}

/**
 * Strips of `stripFrames`, as few as there can be, never a loose single frame: a single one left over is made a pair by
 * shortening the strip before it. Only where that can't be (pairs, or a film of one frame) it keeps its blank tail.
 */
export function cutStrips(frames: number, stripFrames: number): CutPlan {
  const full = Math.floor(frames / stripFrames);
  const rest = frames % stripFrames;
  const strips = Array.from({ length: full }, () => stripFrames);
  if (rest === 1 && full > 0 && stripFrames > 2) {
    strips.pop();
    return { strips: [...strips, stripFrames - 1, 2], keepsTail: false };
  }
  return { strips: rest > 0 ? [...strips, rest] : strips, keepsTail: rest === 1 };
}

/** Frames on a film where nobody says: 36 always sold for 135; 6x6 on 120. */
export const FRAMES_PER_FILM = { "135": 36, "120": 12, "4x5": 1 } as const satisfies Record<
  Plan["format"],
  number
>;
/** 120 sleeves hold three 6x6 frames. Common practice, no source. */
export const STRIP_FRAMES_120 = 3;

/** Advance of one frame: 135, 8 perforations (ISO 1007): 38 mm; 120, 6x6: 56 mm (ISO 732) and a gap, from memory 6 mm. */
const FRAME_MM = { "135": 38, "120": 62 } as const;
/** Width of the film: 35 mm (ISO 1007), 61 mm. */
const FILM_MM = { "135": 35, "120": 61 } as const;

/** Printing papers by their nominal size in mm, from memory. Smallest first. */
const PAPERS = [
  { name: "8x10 in (20.3 x 25.4 cm)", widthMm: 203, heightMm: 254 },
  { name: "9.5x12 in (24 x 30.5 cm)", widthMm: 240, heightMm: 305 },
  { name: "11x14 in (27.9 x 35.6 cm)", widthMm: 279, heightMm: 356 },
  { name: "16x20 in (40.6 x 50.8 cm)", widthMm: 406, heightMm: 508 },
] as const;
export type PaperName = (typeof PAPERS)[number]["name"];

export interface ContactSheet {
  readonly rows: number;
  readonly columns: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** The smallest paper it fits, either way round; null: more than one sheet. */
  readonly paper: PaperName | null;
}

/** One strip to a row, one film to a sheet. */
export function layContactSheet(strips: readonly number[], format: "135" | "120"): ContactSheet {
  const columns = Math.max(0, ...strips);
  const widthMm = columns * FRAME_MM[format];
  const heightMm = strips.length * FILM_MM[format];
  const [short, long] = [Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)];
  const paper = PAPERS.find((each) => short <= each.widthMm && long <= each.heightMm)?.name ?? null;
  return { rows: strips.length, columns, widthMm, heightMm, paper };
}
