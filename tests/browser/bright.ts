import type { Page } from "playwright-core";

/** Above this much green or blue of 255, a pixel is no longer red or black; a browser's smoothing stays below. */
const MOST = 40;

/** Runs in the browser, which can read pictures. */
const COUNT = `async (base64) => {
  const image = await createImageBitmap(await (await fetch("data:image/png;base64," + base64)).blob());
  const canvas = new OffscreenCanvas(image.width, image.height);
  const context = canvas.getContext("2d");
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  let bright = 0;
  for (let at = 0; at < data.length; at += 4) if (data[at + 1] > ${MOST} || data[at + 2] > ${MOST}) bright += 1;
  return bright;
}`;

/** How many pixels of the window are anything but red or black. */
export async function countBright(page: Page): Promise<number> {
  const shot = (await page.screenshot()).toString("base64");
  const blank = await page.context().newPage();
  const count = (await blank.evaluate(`(${COUNT})("${shot}")`)) as number;
  await blank.close();
  return count;
}
