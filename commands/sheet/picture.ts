import { scaleLinear, scaleLog, type ScaleContinuousNumeric } from "d3-scale";
import { area, line } from "d3-shape";
import type { Picture } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { SHORT_SECONDS, COOL_TENTHS_C, WARM_TENTHS_C } from "./suggest.ts";
import { temperatureRange, timeFor, type Range } from "./time.ts";
import { formatDilution, formatSeconds, formatTenthsC } from "../speech/wording.ts";
import type { Sheet } from "../../store/shapes/sheet.ts";
import { FONT, INK, svgText } from "../speech/svg.ts";
import { de } from "./words/picture.de.ts";
import { en } from "./words/picture.en.ts";

/* The curve of time over temperature, for a phone held at arm's length. */

const words = inEach({ en, de });

/** A tank's place on the curve. */
export interface CurvePoint {
  readonly tenthsC: number;
  readonly seconds: number;
  readonly label: string;
}

const WIDTH = 720;
const HEIGHT = 560;
const LEFT = 86;
const RIGHT = 24;
const TOP = 96;
const BOTTOM = 70;

export function drawSheet(sheet: Sheet): Picture {
  return {
    name: "sheet-curve",
    alt: altOf(sheet, sheet.boxSpeed, null),
    svg: drawCurve(sheet, sheet.boxSpeed, null),
  };
}

/** What the picture shows, for those who can't see it. */
export function altOf(sheet: Sheet, exposureIndex: number, mark: CurvePoint | null): string {
  const range = temperatureRange(sheet);
  const ends = [range.min, range.max]
    .map((tenthsC) => ({ tenthsC, time: timeFor(sheet, tenthsC, exposureIndex) }))
    .map(({ tenthsC, time }) =>
      words().timeAt(time.ok ? formatSeconds(time.value.seconds) : "?", formatTenthsC(tenthsC)),
    );
  const curve = words().curve(titleOf(sheet), exposureIndex, ends);
  if (!mark) return curve;
  const here = words().timeAt(formatSeconds(mark.seconds), formatTenthsC(mark.tenthsC));
  return `${curve} ${words().thisTank(here)}`;
}

function titleOf({ film, developer, dilution }: Sheet): string {
  return `${film} in ${developer} ${formatDilution(dilution)}`;
}

export function drawCurve(sheet: Sheet, exposureIndex: number, mark: CurvePoint | null): string {
  const range = temperatureRange(sheet);
  const samples = sampleCurve(sheet, exposureIndex, range);
  const rows = sheet.points.filter((point) => point.exposureIndex === exposureIndex);
  const all = [
    ...samples.flatMap(({ low, high }) => [low, high]),
    ...rows.map(({ seconds }) => seconds),
    ...(mark ? [mark.seconds] : []),
  ];
  const x = scaleLinear([range.min, range.max], [LEFT, WIDTH - RIGHT]);
  const y = scaleLog([Math.min(...all) * 0.9, Math.max(...all) * 1.1], [HEIGHT - BOTTOM, TOP]);
  const shape = line<Sample>()
    .x((each) => x(each.tenthsC))
    .y((each) => y(each.seconds));
  const spread = area<Sample>()
    .x((each) => x(each.tenthsC))
    .y0((each) => y(each.low))
    .y1((each) => y(each.high));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" font-family="${FONT}" fill="${INK.text}">`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="${INK.paper}"/>`,
    svgText(20, 38, clip(titleOf(sheet), 44), 27, {
      bold: true,
    }),
    svgText(20, 70, words().below(exposureIndex), 20),
    ...zones(x, y, range),
    ...axes(x, y, range),
    `<path d="${spread(samples) ?? ""}" fill="${INK.spread}" fill-opacity="0.35"/>`,
    `<path d="${shape(samples) ?? ""}" fill="none" stroke="${INK.curve}" stroke-width="4"/>`,
    ...rows.map(
      (point) =>
        `<circle cx="${round(x(point.tenthsC))}" cy="${round(y(point.seconds))}" r="8" fill="${INK.paper}" stroke="${INK.curve}" stroke-width="4"/>`,
    ),
    ...(mark ? drawMark(x, y, mark) : []),
    "</svg>",
  ].join("");
}

interface Sample {
  readonly tenthsC: number;
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
}

const SAMPLES = 48;

function sampleCurve(sheet: Sheet, exposureIndex: number, range: Range): Sample[] {
  const tenths = Array.from({ length: SAMPLES + 1 }, (_, at) =>
    Math.round(range.min + ((range.max - range.min) * at) / SAMPLES),
  );
  return tenths.flatMap((tenthsC) => {
    const time = timeFor(sheet, tenthsC, exposureIndex);
    if (!time.ok) return [];
    const { seconds, lowSeconds, highSeconds } = time.value;
    return [{ tenthsC, seconds, low: lowSeconds, high: highSeconds }];
  });
}

type Scale = ScaleContinuousNumeric<number, number>;

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function clip(text: string, most: number): string {
  const letters = [...text];
  return letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : text;
}

/** Where the plan warns: too cool, too warm, too short. */
function zones(x: Scale, y: Scale, range: Range): string[] {
  const [left, right, top, bottom] = [LEFT, WIDTH - RIGHT, TOP, HEIGHT - BOTTOM];
  const cool = Math.min(right, Math.max(left, x(COOL_TENTHS_C)));
  const warm = Math.min(right, Math.max(left, x(WARM_TENTHS_C)));
  const short = Math.min(bottom, Math.max(top, y(SHORT_SECONDS)));
  const box = (x0: number, y0: number, x1: number, y1: number): string =>
    x1 - x0 < 1 || y1 - y0 < 1
      ? ""
      : `<rect x="${round(x0)}" y="${round(y0)}" width="${round(x1 - x0)}" height="${round(y1 - y0)}" fill="url(#care)"/>`;
  const hatch = `<defs><pattern id="care" width="10" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="10" height="10" fill="${INK.paper}"/><line x1="0" y1="0" x2="0" y2="10" stroke="${INK.care}" stroke-width="5"/></pattern></defs>`;
  return [
    hatch,
    range.min < COOL_TENTHS_C ? box(left, top, cool, bottom) : "",
    range.max > WARM_TENTHS_C ? box(warm, top, right, bottom) : "",
    box(cool, short, warm, bottom),
  ];
}

const MINUTE_TICKS = [0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 45, 60, 90, 120, 180] as const;

function axes(x: Scale, y: Scale, range: Range): string[] {
  const bottom = HEIGHT - BOTTOM;
  const [fastest, slowest] = y.domain() as [number, number];
  const times = thin(
    MINUTE_TICKS.filter((minutes) => minutes * 60 >= fastest && minutes * 60 <= slowest),
    9,
  );
  const degrees = x
    .ticks(8)
    .filter((tenths) => Number.isInteger(tenths / 10) && tenths >= range.min && tenths <= range.max);
  return [
    ...times.flatMap((minutes) => {
      const at = round(y(minutes * 60));
      return [
        `<line x1="${LEFT}" x2="${WIDTH - RIGHT}" y1="${at}" y2="${at}" stroke="${INK.grid}"/>`,
        svgText(LEFT - 10, at + 7, formatSeconds(minutes * 60), 20, { anchor: "end" }),
      ];
    }),
    ...degrees.flatMap((tenths) => {
      const at = round(x(tenths));
      return [
        `<line x1="${at}" x2="${at}" y1="${TOP}" y2="${bottom}" stroke="${INK.grid}"/>`,
        svgText(at, bottom + 28, String(tenths / 10), 20, { anchor: "middle" }),
      ];
    }),
    svgText((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 12, words().axis, 20, {
      anchor: "middle",
    }),
  ];
}

function thin<T>(items: readonly T[], most: number): T[] {
  const every = Math.ceil(items.length / most);
  return items.filter((_, at) => at % every === 0);
}

function drawMark(x: Scale, y: Scale, mark: CurvePoint): string[] {
  const [cx, cy] = [round(x(mark.tenthsC)), round(y(mark.seconds))];
  const isRight = cx > WIDTH / 2;
  const textX = isRight ? cx - 20 : cx + 20;
  return [
    `<line x1="${cx}" x2="${cx}" y1="${cy}" y2="${HEIGHT - BOTTOM}" stroke="${INK.mark}" stroke-width="3" stroke-dasharray="4 6"/>`,
    `<path d="M${cx - 13} ${cy}L${cx} ${cy - 13}L${cx + 13} ${cy}L${cx} ${cy + 13}Z" fill="${INK.mark}"/>`,
    svgText(textX, Math.max(TOP + 26, cy - 18), mark.label, 28, {
      bold: true,
      anchor: isRight ? "end" : "start",
    }),
  ];
}
