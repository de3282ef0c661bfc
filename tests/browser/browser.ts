import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium, type Browser, type Page } from "playwright-core";
import { build } from "vite";

/* A real browser for the page's tests: the one the system has. */

export const CHROMIUM = "/usr/bin/chromium";
const root = join(import.meta.dirname, "..", "..");
/** Screenshots to look at; not kept in the repository. */
export const SHOTS = join(root, "artefacts");
mkdirSync(SHOTS, { recursive: true });

export function launch(): Promise<Browser> {
  return chromium.launch({
    executablePath: CHROMIUM,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--autoplay-policy=no-user-gesture-required",
    ],
  });
}

/** Builds the page from its sources, so that no stale build is tested. */
export async function buildPage(): Promise<string> {
  const outDir = join(SHOTS, "page");
  await build({
    configFile: join(root, "bot", "chat", "room-page", "vite.config.ts"),
    logLevel: "error",
    build: { outDir, emptyOutDir: true },
  });
  return outDir;
}

export const SIZES = {
  narrow: { width: 320, height: 568 },
  phone: { width: 390, height: 844 },
  desk: { width: 1280, height: 800 },
} as const;
export type Size = keyof typeof SIZES;

export interface Opened {
  readonly page: Page;
  /** Everything the page complained about: must stay empty. */
  readonly complaints: string[];
}

export async function openPage(
  browser: Browser,
  url: string,
  size: Size,
  language = "en-GB",
): Promise<Opened> {
  const context = await browser.newContext({
    viewport: SIZES[size],
    locale: language,
    hasTouch: size !== "desk",
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    // A lost link is part of some tests; everything else is a fault.
    if (message.type() === "error" && !/ERR_(CONNECTION|INTERNET)|WebSocket/.test(message.text()))
      complaints.push(message.text());
  });
  await page.goto(url);
  return { page, complaints };
}

export async function joinDemo(page: Page, name: string): Promise<void> {
  await page.getByLabel("Your name").fill(name);
  await page.getByRole("button", { name: "Join as student" }).click();
  await page.locator(".link.is-open").waitFor();
}

export async function type(page: Page, line: string): Promise<void> {
  const input = page.getByRole("combobox", { name: "Command" });
  await input.fill(line);
  await input.press("Escape");
  await input.press("Enter");
}

export function shoot(page: Page, name: string): Promise<Buffer> {
  return page.screenshot({ path: join(SHOTS, `${name}.png`) });
}
