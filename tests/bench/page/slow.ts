import { join } from "node:path";
import type { Browser, CDPSession, Page } from "playwright-core";

/* A cheap phone on a school's radio: Chromium held back by its own means, and what it tells of itself. */

export const SLOWER = 4;
const BYTES_A_SECOND = 400_000 / 8;
const ROUND_TRIP_MS = 150;
/** More than the bars of a window are high. */
const BARS_PX = 200;

export interface SlowPage {
  readonly page: Page;
  readonly cdp: CDPSession;
  /** What came over the wire so far. */
  readonly wire: { path: string; bytes: number; encoding: string }[];
  close(): Promise<void>;
}

export interface Asked {
  readonly url: string;
  readonly token?: string;
  readonly width: number;
  readonly height: number;
  readonly isNetworkSlow: boolean;
  readonly language?: string;
}

export interface Kept {
  readonly long: number[];
  readonly events: { delay: number; work: number; painted: number }[];
  readonly marks: Record<string, number>;
}

export const readKept = (page: Page): Promise<Kept> => page.evaluate<Kept>("window.bench");

export async function openSlow(browser: Browser, asked: Asked): Promise<SlowPage> {
  const context = await browser.newContext({
    viewport: { width: asked.width, height: asked.height },
    locale: asked.language ?? "en-GB",
    hasTouch: asked.width < 800,
  });
  if (asked.token !== undefined)
    await context.addCookies([{ name: "sinkside", value: asked.token, url: asked.url }]);
  const page = await context.newPage();
  page.setDefaultTimeout(120_000);
  await page.addInitScript({ path: join(import.meta.dirname, "watch.mjs") });
  const cdp = await context.newCDPSession(page);
  await showWhole(cdp, asked);
  await cdp.send("Network.enable");
  await cdp
    .send("Performance.enable", { timeDomain: "threadTicks" })
    .catch(() => cdp.send("Performance.enable"));
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  if (asked.isNetworkSlow)
    await cdp.send("Network.emulateNetworkConditions", {
      offline: false,
      latency: ROUND_TRIP_MS,
      downloadThroughput: BYTES_A_SECOND,
      uploadThroughput: BYTES_A_SECOND,
    });
  const wire: SlowPage["wire"] = [];
  const asking = new Map<string, { path: string; encoding: string }>();
  cdp.on("Network.requestWillBeSent", ({ requestId, request }) =>
    asking.set(requestId, { path: new URL(request.url).pathname, encoding: "" }),
  );
  cdp.on("Network.responseReceived", ({ requestId, response }) => {
    const known = asking.get(requestId);
    if (known) known.encoding = response.headers["content-encoding"] ?? "";
  });
  cdp.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
    const known = asking.get(requestId);
    // The track of tones is made on the page and comes over no wire.
    if (known && !known.path.startsWith("http")) wire.push({ ...known, bytes: encodedDataLength });
  });
  cdp.on("Network.webSocketFrameReceived", ({ response }) => {
    const { type } = JSON.parse(response.payloadData) as { type: string };
    wire.push({ path: `socket: ${type}`, bytes: response.payloadData.length, encoding: "" });
  });
  return { page, cdp, wire, close: () => context.close() };
}

/**
 * The bars of a window that nobody sees still take their share of its height, and what of a page lies under the window's
 * edge is never drawn: a letter typed there, at the foot of an empty page too, counted as painted only with the next thing
 * drawn further up (p50 400 ms, at most 1 s). So the window is higher than the page.
 */
async function showWhole(cdp: CDPSession, { width, height }: Asked): Promise<void> {
  const { windowId } = await cdp.send("Browser.getWindowForTarget");
  await cdp.send("Browser.setWindowBounds", {
    windowId,
    bounds: { width: width + BARS_PX, height: height + BARS_PX },
  });
}

/** Seconds of the page's main thread so far, by what it did. */
export async function readWork(cdp: CDPSession): Promise<Record<string, number>> {
  const { metrics } = await cdp.send("Performance.getMetrics");
  return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
}
