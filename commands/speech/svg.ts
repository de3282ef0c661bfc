/* What the drawings share: letters, colours, harmless text. */

/** The room page and the PNG writer carry this face; anything else falls back to what the reader has. */
export const FONT = "Atkinson Hyperlegible, Verdana, sans-serif";

/** Dark on light, told apart by lightness and shape as well as by hue. */
export const INK = {
  paper: "#fffdf7",
  text: "#1c1a17",
  grid: "#d9d3c5",
  curve: "#1f4e5f",
  spread: "#8fb8c4",
  mark: "#a3281e",
  care: "#f0dcae",
  bath: ["#1f4e5f", "#5b7f39", "#7a4b8c", "#8a5a16", "#3b5ba5", "#6b6b6b"],
} as const;

/** Text that can't end the element it stands in; control characters have no place in XML. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, "")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}

export function svgText(
  x: number,
  y: number,
  text: string,
  size: number,
  look: { bold?: boolean; anchor?: "start" | "middle" | "end"; fill?: string } = {},
): string {
  const weight = look.bold ? ' font-weight="700"' : "";
  const anchor = look.anchor ? ` text-anchor="${look.anchor}"` : "";
  const fill = look.fill ? ` fill="${look.fill}"` : "";
  return `<text x="${Math.round(x * 10) / 10}" y="${Math.round(y * 10) / 10}" font-size="${size}"${weight}${anchor}${fill}>${escapeXml(text)}</text>`;
}
