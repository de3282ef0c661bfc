import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { renderAsync } from "@resvg/resvg-js";

const fonts = dirname(
  createRequire(import.meta.url).resolve("@expo-google-fonts/atkinson-hyperlegible/package.json"),
);

const FONT_FILES = [
  join(fonts, "400Regular", "AtkinsonHyperlegible_400Regular.ttf"),
  join(fonts, "700Bold", "AtkinsonHyperlegible_700Bold.ttf"),
];

/**
 * Draws an SVG as a PNG, `widthPx` wide. With the fonts it brings and no others, so that a picture looks alike on
 * every computer, and off the main thread.
 */
export async function renderPicture(svg: string, widthPx = 1200): Promise<Buffer> {
  const image = await renderAsync(svg, {
    fitTo: { mode: "width", value: widthPx },
    background: "#ffffff",
    font: {
      loadSystemFonts: false,
      fontFiles: FONT_FILES,
      defaultFontFamily: "Atkinson Hyperlegible",
      sansSerifFamily: "Atkinson Hyperlegible",
    },
  });
  return image.asPng();
}
