import { scaleBand, scaleLinear, scaleTime } from "d3-scale";
import type { Picture } from "../../define.ts";
import { FONT, INK, svgText } from "../../speech/svg.ts";
import type { ReportFigures, Tally } from "./report.ts";
import { chemistryLines, dayOf, faultTallies, headLine, summaryLines, words } from "./report-words.ts";

/* The term on one page. Read on paper as well: bars and dots are dark, and every figure stands beside its bar. */

const WIDTH = 1200;
const HEIGHT = 1560;
const LEFT = 60;
const RIGHT = WIDTH - 60;
const GREY = "#5c574d";

export function drawReport(figures: ReportFigures, zone: string): Picture {
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" font-family="${FONT}" fill="${INK.text}">`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="${INK.paper}"/>`,
    svgText(LEFT, 76, clip(figures.className, 50), 42, { bold: true }),
    svgText(LEFT, 116, headLine(figures, zone), 24, { fill: GREY }),
    ...summaryLines(figures).map((line, at) => svgText(LEFT, 176 + at * 36, line, 28)),
    drawWeeks(figures, zone),
    drawDoses(figures, zone),
    drawFaults(faultTallies(figures)),
    drawChemistry(figures),
    "</svg>",
  ].join("");
  return { name: "class-report", alt: altOf(figures, zone), svg };
}

function heading(x: number, y: number, text: string): string {
  return `<line x1="${x}" x2="${x === LEFT && y < 1100 ? RIGHT : x + 500}" y1="${y - 36}" y2="${y - 36}" stroke="${INK.grid}" stroke-width="2"/>${svgText(x, y, text, 26, { bold: true })}`;
}

function drawWeeks({ weeks }: ReportFigures, zone: string): string {
  const top = 380;
  const bottom = 640;
  const x = scaleBand<number>()
    .domain(weeks.map(({ startsAtMs }) => startsAtMs))
    .range([LEFT, RIGHT])
    .padding(0.2);
  const y = scaleLinear()
    .domain([0, Math.max(1, ...weeks.map(({ rolls }) => rolls))])
    .range([bottom, top + 36]);
  // Labels for about a dozen weeks; more would run into each other.
  const every = Math.ceil(weeks.length / 12);
  const bars = weeks.map(({ startsAtMs, rolls }, at) => {
    const left = round(x(startsAtMs) ?? LEFT);
    const width = round(x.bandwidth());
    const middle = left + width / 2;
    return [
      `<rect x="${left}" y="${round(y(rolls))}" width="${width}" height="${round(bottom - y(rolls))}" fill="${INK.curve}"/>`,
      rolls > 0 && weeks.length <= 26
        ? svgText(middle, round(y(rolls)) - 8, `${rolls}`, 20, { anchor: "middle", bold: true })
        : "",
      at % every === 0
        ? svgText(middle, bottom + 26, dayOf(startsAtMs, zone), 17, { anchor: "middle", fill: GREY })
        : "",
    ].join("");
  });
  return heading(LEFT, 370, words().weeks) + baseline(bottom) + bars.join("");
}

function drawDoses({ doses, dose, fromMs, untilMs }: ReportFigures, zone: string): string {
  const top = 740;
  const bottom = 1040;
  const title = heading(LEFT, 730, words().doses);
  if (!dose) return title + svgText(LEFT, top + 60, words().noDose, 24, { fill: GREY });
  const values = doses.map(({ perMille }) => perMille / 10);
  const x = scaleTime()
    .domain([fromMs, untilMs])
    .range([LEFT + 70, RIGHT]);
  const y = scaleLinear()
    .domain([Math.min(80, ...values), Math.max(120, ...values)])
    .nice()
    .range([bottom, top + 20]);
  const band = `<rect x="${LEFT + 70}" y="${round(y(105))}" width="${RIGHT - LEFT - 70}" height="${round(y(95) - y(105))}" fill="${INK.care}"/>`;
  const lines = y
    .ticks(5)
    .map(
      (tick) =>
        `<line x1="${LEFT + 70}" x2="${RIGHT}" y1="${round(y(tick))}" y2="${round(y(tick))}" stroke="${INK.grid}"/>${svgText(LEFT + 60, round(y(tick)) + 7, `${tick}`, 18, { anchor: "end", fill: GREY })}`,
    );
  const days = x
    .ticks(6)
    .map((tick) =>
      svgText(round(x(tick)), bottom + 28, dayOf(tick.getTime(), zone), 17, { anchor: "middle", fill: GREY }),
    );
  const dots = doses.map(
    ({ atMs, perMille }) =>
      `<circle cx="${round(x(atMs))}" cy="${round(y(perMille / 10))}" r="6" fill="${INK.curve}" fill-opacity="0.65"/>`,
  );
  return [title, band, ...lines, ...dots, ...days].join("");
}

function drawFaults(faults: readonly Tally[]): string {
  const top = 1170;
  const shown = faults.slice(0, 7);
  const title = heading(LEFT, 1150, words().faults);
  if (shown.length === 0) return title + svgText(LEFT, top + 30, words().noFaults, 24, { fill: GREY });
  const length = scaleLinear()
    .domain([0, Math.max(...shown.map(({ count }) => count))])
    .range([0, 180]);
  const rows = shown.map(({ name, count }, at) => {
    const y = top + at * 48;
    return [
      svgText(LEFT, y + 26, clip(name, 26), 22),
      `<rect x="${LEFT + 290}" y="${y + 6}" width="${round(length(count))}" height="28" fill="${INK.mark}"/>`,
      svgText(LEFT + 300 + round(length(count)), y + 28, `${count}`, 22, { bold: true }),
    ].join("");
  });
  return title + rows.join("");
}

function drawChemistry(figures: ReportFigures): string {
  const x = 640;
  const lines = chemistryLines(figures).slice(0, 9);
  return [
    heading(x, 1150, words().chemistry),
    ...lines.map((line, at) => svgText(x, 1196 + at * 44, clip(line, 52), 21)),
  ].join("");
}

function baseline(y: number): string {
  return `<line x1="${LEFT}" x2="${RIGHT}" y1="${y}" y2="${y}" stroke="${GREY}"/>`;
}

function altOf(figures: ReportFigures, zone: string): string {
  return [headLine(figures, zone), ...summaryLines(figures)].join(" ").slice(0, 1000);
}

function clip(text: string, most: number): string {
  const letters = [...text];
  return letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : text;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
