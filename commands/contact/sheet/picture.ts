import type { PaperSize } from "../../../store/shapes/paper.ts";
import type { MarkedFrame } from "../../../store/shapes/roll.ts";
import type { Picture } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { FONT, INK, svgText } from "../../speech/svg.ts";
import { makeNumber } from "../../speech/wording.ts";
import { formatSize } from "../../print/sizes.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";
import type { Laid, Layout } from "./layout.ts";

/* A contact sheet as it is to lie: the paper, the strips on it, each frame with its number and what was found on it. */

const words = inEach({ en: en.picture, de: de.picture });

const WIDTH = 760;
const EDGE = 20;
const TOP = 56;
const LEGEND = 44;
/** No more of them are drawn: more is a stack of paper, not a sheet. */
export const MOST_PICTURES = 4;

export type Marks = ReadonlyMap<number, readonly MarkedFrame[]>;

/** One picture for each sheet of paper. `marks`: by roll. */
export function drawContact(layout: Layout, paper: PaperSize, marks: Marks): Picture[] {
  return layout.sheets
    .slice(0, MOST_PICTURES)
    .map((pieces, at) =>
      drawSheet(layout, paper, pieces, marks, { number: at + 1, of: layout.sheets.length }),
    );
}

interface Page {
  readonly number: number;
  readonly of: number;
}

function drawSheet(
  layout: Layout,
  paper: PaperSize,
  pieces: readonly Laid[],
  marks: Marks,
  page: Page,
): Picture {
  const scale = (WIDTH - 2 * EDGE) / layout.widthMm;
  const paperHeight = layout.heightMm * scale;
  const height = Math.ceil(TOP + paperHeight + LEGEND);
  const title = words().title(formatSize(paper), page.number, page.of);
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" font-family="${FONT}" fill="${INK.text}">`,
    `<rect width="${WIDTH}" height="${height}" fill="${INK.paper}"/>`,
    svgText(EDGE, 36, title, 24, { bold: true }),
    `<rect x="${EDGE}" y="${TOP}" width="${WIDTH - 2 * EDGE}" height="${tenth(paperHeight)}" fill="#ffffff" stroke="${INK.grid}" stroke-width="2"/>`,
    ...pieces.map((piece) => drawPiece(piece, scale, marks.get(piece.roll) ?? [], marks.size > 1)),
    ...drawLegend(TOP + paperHeight + 30, pieces, marks),
    "</svg>",
  ].join("");
  return { name: `contact-${page.number}`, alt: altOf(title, pieces, marks), svg };
}

const tenth = (value: number): number => Math.round(value * 10) / 10;

function box(x: number, y: number, width: number, height: number, look: string): string {
  return `<rect x="${tenth(x)}" y="${tenth(y)}" width="${tenth(width)}" height="${tenth(height)}" ${look}/>`;
}

/** `isNamed`: films of several rolls lie on the sheet, and each strip says whose it is. */
function drawPiece(piece: Laid, scale: number, marks: readonly MarkedFrame[], isNamed: boolean): string {
  const [x, y] = [EDGE + piece.xMm * scale, TOP + piece.yMm * scale];
  const [width, height] = [piece.frameMm * scale, piece.acrossMm * scale];
  const top = y + ((piece.heightMm - piece.acrossMm) * scale) / 2;
  const size = Math.max(11, Math.min(30, width / 2.6));
  const frames = piece.startsMm.map((startMm, at) => {
    const number = piece.from + at;
    const left = x + startMm * scale;
    const own = marks.filter(({ frame }) => frame === number).map(({ mark }) => mark);
    return [
      box(left, top, width, height, `fill="${INK.care}"`),
      svgText(left + width / 2, top + height / 2 + size / 3, `${number}`, size, {
        bold: true,
        anchor: "middle",
      }),
      ...(own.includes("best") ? [box(left + 3, top + 3, width - 6, height - 6, MARK_LOOK)] : []),
      ...(own.includes("print") ? [corner(left + width, top, Math.min(width, height) / 3)] : []),
      ...(own.includes("unsharp") ? [stroke(left, top + height, left + width, top)] : []),
    ].join("");
  });
  // Clear film prints black.
  const strip = box(x, y, piece.widthMm * scale, piece.heightMm * scale - 1, `fill="${INK.text}"`);
  const name = isNamed
    ? svgText(x + 4, y + 12, makeNumber("roll", piece.roll), 12, { bold: true, fill: INK.paper })
    : "";
  return strip + frames.join("") + name;
}

const MARK_LOOK = `fill="none" stroke="${INK.mark}" stroke-width="4"`;
const corner = (x: number, y: number, side: number): string =>
  `<path d="M${tenth(x)} ${tenth(y)} h${tenth(-side)} l${tenth(side)} ${tenth(side)} z" fill="${INK.curve}"/>`;
const stroke = (x1: number, y1: number, x2: number, y2: number): string =>
  `<line x1="${tenth(x1)}" y1="${tenth(y1)}" x2="${tenth(x2)}" y2="${tenth(y2)}" stroke="${INK.mark}" stroke-width="2.5"/>`;

/** Only the marks that are there. */
function drawLegend(y: number, pieces: readonly Laid[], marks: Marks): string[] {
  const shown = new Set(pieces.flatMap(({ roll }) => (marks.get(roll) ?? []).map(({ mark }) => mark)));
  const { best, print, unsharp } = words().legend;
  let x = EDGE;
  const entry = (sign: string, label: string): string => {
    const drawn = `<g transform="translate(${tenth(x)} ${tenth(y - 16)})">${sign}</g>${svgText(x + 32, y, label, 17)}`;
    x += 60 + label.length * 9.5;
    return drawn;
  };
  return [
    ...(shown.has("best") ? [entry(box(2, 2, 20, 16, MARK_LOOK), best)] : []),
    ...(shown.has("print") ? [entry(corner(22, 0, 18), print)] : []),
    ...(shown.has("unsharp") ? [entry(stroke(2, 18, 22, 2), unsharp)] : []),
  ];
}

/** `Contact sheet on 8x10 in: L12 1-6, 7-12, …`. */
function altOf(title: string, pieces: readonly Laid[], marks: Marks): string {
  const rolls = [...new Set(pieces.map(({ roll }) => roll))];
  const said = rolls.map((roll) => {
    const strips = pieces
      .filter((piece) => piece.roll === roll)
      .map(({ from, frames }) => (frames === 1 ? `${from}` : `${from}-${from + frames - 1}`));
    const found = marks.get(roll) ?? [];
    return words().strips(makeNumber("roll", roll), strips.join(", "), found.length);
  });
  return `${title}: ${said.join("; ")}.`;
}
