import { expect, test } from "vitest";
import { renderPicture } from "../../../bot/chat/picture.ts";

const svg = (inner: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100"><rect width="200" height="100" fill="#fff"/>${inner}</svg>`;

/** A PNG begins with this signature (ISO/IEC 15948, 5.2); width and height stand in its first chunk. */
const SIGNATURE = "89504e470d0a1a0a";

test("a drawing becomes a PNG of the asked width", async () => {
  const png = await renderPicture(svg(""), 400);
  expect(png.subarray(0, 8).toString("hex")).toBe(SIGNATURE);
  expect(png.readUInt32BE(16)).toBe(400);
  expect(png.readUInt32BE(20)).toBe(200);
});

test("words are drawn with the font it brings, also where the drawing asks for another", async () => {
  const without = await renderPicture(svg(""));
  for (const family of ["Atkinson Hyperlegible", "sans-serif", "No Such Font"]) {
    const words = `<text x="10" y="60" font-family="${family}" font-size="40">9:00</text>`;
    expect((await renderPicture(svg(words))).equals(without), family).toBe(false);
  }
});

test("what is no drawing is refused", async () => {
  await expect(renderPicture("no svg")).rejects.toThrow();
});
