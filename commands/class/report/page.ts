import { escapeXml } from "../../speech/svg.ts";
import type { ReportFigures, Tally } from "./report.ts";
import {
  chemistryLines,
  dayOf,
  faultTallies,
  headLine,
  printLines,
  summaryLines,
  words,
} from "./report-words.ts";

/* The report as one page that needs nothing else: the drawing, and every figure of it in tables for readers and printers. */

const STYLE = `
  :root { color-scheme: light; }
  body { font-family: "Atkinson Hyperlegible", Verdana, sans-serif; max-width: 60rem; margin: 2rem auto; padding: 0 1rem; color: #1c1a17; background: #fffdf7; line-height: 1.5; }
  svg { width: 100%; height: auto; border: 1px solid #d9d3c5; }
  table { border-collapse: collapse; margin: 1rem 0; }
  caption { text-align: left; font-weight: 700; }
  th, td { text-align: left; padding: 0.2rem 1rem 0.2rem 0; border-bottom: 1px solid #d9d3c5; }
  td:last-child { text-align: right; }
  @media print { body { margin: 0; } table { break-inside: avoid; } }
`;

export function reportPage(figures: ReportFigures, svg: string, zone: string): string {
  const title = escapeXml(figures.className);
  const weeks = figures.weeks.map(({ startsAtMs, rolls }) => ({
    name: dayOf(startsAtMs, zone),
    count: rolls,
  }));
  return [
    "<!doctype html>",
    `<html lang="${words().language}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title><style>${STYLE}</style></head><body>`,
    `<h1>${title}</h1><p>${escapeXml(headLine(figures, zone))}</p>`,
    `<ul>${summaryLines(figures)
      .map((line) => `<li>${escapeXml(line)}</li>`)
      .join("")}</ul>`,
    `<figure role="img" aria-label="${escapeXml(headLine(figures, zone))}">${svg}</figure>`,
    table(words().weeks, words().weekFrom, weeks),
    table(words().films, words().film, figures.films),
    table(words().faults, words().fault, faultTallies(figures)),
    listOf(words().printed, printLines(figures)),
    `<h2>${words().chemistry}</h2><ul>${chemistryLines(figures)
      .map((line) => `<li>${escapeXml(line)}</li>`)
      .join("")}</ul>`,
    `<p>${words().silver}</p>`,
    "</body></html>",
  ].join("\n");
}

/** Nothing where there are no lines. */
function listOf(title: string, lines: readonly string[]): string {
  if (lines.length === 0) return "";
  return `<h2>${title}</h2><ul>${lines.map((line) => `<li>${escapeXml(line)}</li>`).join("")}</ul>`;
}

function table(caption: string, head: string, rows: readonly Tally[]): string {
  if (rows.length === 0) return "";
  const body = rows.map(
    ({ name, count }) => `<tr><th scope="row">${escapeXml(name)}</th><td>${count}</td></tr>`,
  );
  return `<table><caption>${caption}</caption><thead><tr><th scope="col">${head}</th><td>${words().rolls}</td></tr></thead><tbody>${body.join("")}</tbody></table>`;
}
