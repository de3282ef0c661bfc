import { isSheetFilm, type FilmFormat, type FrameSize } from "../../../store/shapes/film.ts";
import type { PaperSize } from "../../../store/shapes/paper.ts";
import type { MarkedFrame } from "../../../store/shapes/roll.ts";
import { cutAround, numbered, type Strip } from "../../plan/cut.ts";
import { FILM_WIDTH_MM, frameMm, frameOn, negativeMm, stripFramesOf, stripMm } from "../../plan/frames.ts";
import { fail, ok, type Result } from "../../result.ts";

/* Strips of film laid out on paper for a contact sheet. All in mm. */

export type Sleeves = "in" | "out";

/** A film as it is to be laid out. */
export interface Film {
  readonly roll: number;
  readonly format: FilmFormat;
  readonly frame: FrameSize | null;
  readonly frames: number;
  /** As it was cut. */
  readonly strips: readonly number[];
  readonly marks: readonly MarkedFrame[];
}

export interface Piece extends Strip {
  readonly roll: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Of each of its frames: where it begins along the strip, and how long and high it is. */
  readonly startsMm: readonly number[];
  readonly frameMm: number;
  readonly acrossMm: number;
}

export interface Laid extends Piece {
  readonly xMm: number;
  readonly yMm: number;
}

export interface Layout {
  /** The paper as it lies. */
  readonly widthMm: number;
  readonly heightMm: number;
  readonly sheets: readonly (readonly Laid[])[];
}

export interface LayoutFault {
  readonly code: "ERR_PAPER_SMALL";
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What a sleeve adds to each strip, along and across. Our estimate, no source: no sleeve's measures are published; lay yours down. */
const SLEEVE_MM = { along: 12, across: 6 } as const;
/** Between strips that lie in one row. */
const GAP_MM = 3;

/** The strips of a film, as it was cut; where frames are lost, cut round them. */
export function piecesOf(
  film: Film,
  sleeves: { readonly of135: number; readonly of120: number | null },
): Piece[] {
  const { roll, format } = film;
  if (isSheetFilm(format)) {
    const { shortMm, longMm } = negativeMm(format);
    const sheet = { from: 1, frames: 1, startsMm: [0], frameMm: longMm, acrossMm: shortMm };
    return [{ ...sheet, roll, widthMm: longMm, heightMm: shortMm }];
  }
  const frame = frameOn(format, film.frame);
  const lost = film.marks.filter(({ mark }) => mark === "lost").map((each) => each.frame);
  // Its own sleeves, as far as it was cut; else the class's.
  const longest = Math.max(0, ...film.strips);
  const stripFrames = longest > 1 ? longest : stripFramesOf(format, frame, sleeves.of135, sleeves.of120);
  const strips = lost.length === 0 ? numbered(film.strips) : cutAround(film.frames, stripFrames, lost);
  const heightMm = format === "135" ? FILM_WIDTH_MM["135"] : FILM_WIDTH_MM.roll;
  const { mm, pitchMm, acrossMm } = frameMm(frame);
  return strips.map((strip) => ({
    ...strip,
    roll,
    widthMm: stripMm(frame, strip.frames),
    heightMm,
    startsMm: Array.from({ length: strip.frames }, (_, at) => at * pitchMm),
    frameMm: mm,
    acrossMm,
  }));
}

/** In rows, in order; the way round of the paper that takes fewer sheets, upright where both take as many. */
export function layOut(
  pieces: readonly Piece[],
  { shortMm, longMm }: PaperSize,
  sleeves: Sleeves,
): Result<Layout, LayoutFault> {
  const ways = [rowsOn(pieces, shortMm, longMm, sleeves), rowsOn(pieces, longMm, shortMm, sleeves)].filter(
    (way) => way !== undefined,
  );
  const [best] = ways.sort((a, b) => a.sheets.length - b.sheets.length);
  if (best) return ok(best);
  const sleeve = sleeveMm(sleeves);
  return fail({
    code: "ERR_PAPER_SMALL",
    widthMm: Math.ceil(Math.max(...pieces.map(({ widthMm }) => widthMm + sleeve.along))),
    heightMm: Math.ceil(Math.max(...pieces.map(({ heightMm }) => heightMm + sleeve.across))),
  });
}

const sleeveMm = (sleeves: Sleeves): { along: number; across: number } =>
  sleeves === "in" ? SLEEVE_MM : { along: 0, across: 0 };

function rowsOn(
  pieces: readonly Piece[],
  widthMm: number,
  heightMm: number,
  sleeves: Sleeves,
): Layout | undefined {
  const sleeve = sleeveMm(sleeves);
  const sheets: Laid[][] = [[]];
  let [xMm, yMm, rowMm] = [0, 0, 0];
  for (const piece of pieces) {
    const [along, across] = [piece.widthMm + sleeve.along, piece.heightMm + sleeve.across];
    if (along > widthMm || across > heightMm) return undefined;
    if (xMm > 0 && xMm + along > widthMm) [xMm, yMm, rowMm] = [0, yMm + rowMm, 0];
    if (yMm + across > heightMm) {
      sheets.push([]);
      [xMm, yMm, rowMm] = [0, 0, 0];
    }
    sheets.at(-1)?.push({ ...piece, xMm: xMm + sleeve.along / 2, yMm: yMm + sleeve.across / 2 });
    xMm += along + GAP_MM;
    rowMm = Math.max(rowMm, across);
  }
  return { widthMm, heightMm, sheets };
}
