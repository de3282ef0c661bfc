import { FRAMES_135, type FrameSize } from "../../store/shapes/film.ts";
import { FILM_WIDTH_MM, stripMm } from "./frames.ts";

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

/** A strip by its first frame's number. */
export interface Strip {
  readonly from: number;
  readonly frames: number;
}

/**
 * The same round frames that are lost or cut through: the film comes in pieces there, and each piece is cut for itself. What
 * is left of a lost frame stays on its piece, as a tail to hold it by.
 */
export function cutAround(frames: number, stripFrames: number, lost: readonly number[]): Strip[] {
  const gone = [...new Set(lost)].filter((each) => each >= 1 && each <= frames).sort((a, b) => a - b);
  return [...gone, frames + 1].flatMap((end, at) => {
    const from = (gone[at - 1] ?? 0) + 1;
    return from >= end ? [] : numbered(cutStrips(end - from, stripFrames).strips, from);
  });
}

/** Strips in the order they are cut, with the number of each one's first frame. */
export function numbered(strips: readonly number[], first = 1): Strip[] {
  let from = first;
  return strips.map((frames) => {
    const strip = { from, frames };
    from += frames;
    return strip;
  });
}

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

/** One strip to a row, one film to a sheet; strips lie edge to edge, without their sleeve. */
export function layContactSheet(strips: readonly number[], frame: FrameSize): ContactSheet {
  const columns = Math.max(0, ...strips);
  const widthMm = Math.ceil(stripMm(frame, columns));
  const filmMm = (FRAMES_135 as readonly string[]).includes(frame)
    ? FILM_WIDTH_MM["135"]
    : FILM_WIDTH_MM.roll;
  const heightMm = strips.length * filmMm;
  const [short, long] = [Math.min(widthMm, heightMm), Math.max(widthMm, heightMm)];
  const paper = PAPERS.find((each) => short <= each.widthMm && long <= each.heightMm)?.name ?? null;
  return { rows: strips.length, columns, widthMm, heightMm, paper };
}
