import type { Page } from "playwright-core";

/** Above this much green or blue of 255, a pixel is no longer red or black; a browser's smoothing stays below. */
const MOST = 40;

/** Runs in the browser, which can read pictures. */
const COUNT = `async (base64, isCounted) => {
  const image = await createImageBitmap(await (await fetch("data:image/png;base64," + base64)).blob());
  const canvas = new OffscreenCanvas(image.width, image.height);
  const context = canvas.getContext("2d");
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  let counted = 0;
  for (let at = 0; at < data.length; at += 4) if (isCounted(data[at], data[at + 1], data[at + 2])) counted += 1;
  return counted;
}`;

/** How many pixels of the window are anything but red or black. */
export function countBright(page: Page): Promise<number> {
  return count(page, `(red, green, blue) => green > ${MOST} || blue > ${MOST}`);
}

/** The share of the window, 0 to 1, that shines in red: a page is to be read by, no lamp. */
export async function shareLit(page: Page): Promise<number> {
  const { width, height } = page.viewportSize() ?? { width: 1, height: 1 };
  return (await count(page, "(red) => red > 128")) / (width * height);
}

async function count(page: Page, isCounted: string): Promise<number> {
  const shot = (await page.screenshot()).toString("base64");
  const blank = await page.context().newPage();
  const counted = (await blank.evaluate(`(${COUNT})("${shot}", ${isCounted})`)) as number;
  await blank.close();
  return counted;
}
