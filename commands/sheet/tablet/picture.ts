import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import type { Picture } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { FONT, INK, svgText } from "../../speech/svg.ts";
import { formatSeconds } from "../../speech/wording.ts";
import type { Strip } from "./readings.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

/* The family of curves, each reading a dot, nothing smoothed. */

const words = inEach({ en, de });

const WIDTH = 720;
const HEIGHT = 560;
const [LEFT, RIGHT, TOP, BOTTOM] = [70, 96, 30, 60];

export function drawFamily(strips: readonly Strip[], stepLog: number): Picture {
  const steps = Math.max(...strips.map(({ densities }) => densities.length));
  const most = Math.max(0.5, ...strips.flatMap(({ densities }) => densities));
  const x = scaleLinear([0, (steps - 1) * stepLog], [LEFT, WIDTH - RIGHT]);
  const y = scaleLinear([0, most * 1.05], [HEIGHT - BOTTOM, TOP]);
  const curve = line<number>()
    .x((_, at) => x(at * stepLog))
    .y((density) => y(density));
  const round = (value: number): number => Math.round(value * 10) / 10;
  return {
    name: "tablet-curves",
    alt: words().pictureAlt(strips.map(({ seconds }) => formatSeconds(seconds)).join(", ")),
    svg: [
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" font-family="${FONT}" fill="${INK.text}">`,
      `<rect width="${WIDTH}" height="${HEIGHT}" fill="${INK.paper}"/>`,
      ...y
        .ticks(6)
        .flatMap((density) => [
          `<line x1="${LEFT}" x2="${WIDTH - RIGHT}" y1="${round(y(density))}" y2="${round(y(density))}" stroke="${INK.grid}"/>`,
          svgText(LEFT - 10, y(density) + 7, words().number(density), 20, { anchor: "end" }),
        ]),
      ...x
        .ticks(6)
        .map((log) => svgText(x(log), HEIGHT - BOTTOM + 26, words().number(log), 20, { anchor: "middle" })),
      svgText((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 8, words().axes.x, 20, { anchor: "middle" }),
      svgText(8, 22, words().axes.y, 20),
      ...strips.flatMap(({ seconds, densities }) => [
        `<path d="${curve([...densities]) ?? ""}" fill="none" stroke="${INK.curve}" stroke-width="3"/>`,
        ...densities.map(
          (density, at) =>
            `<circle cx="${round(x(at * stepLog))}" cy="${round(y(density))}" r="4" fill="${INK.curve}"/>`,
        ),
        svgText(
          x((densities.length - 1) * stepLog) + 10,
          y(densities.at(-1) ?? 0) + 7,
          formatSeconds(seconds),
          24,
          {
            bold: true,
          },
        ),
      ]),
      "</svg>",
    ].join(""),
  };
}
