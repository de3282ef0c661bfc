import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium, type Browser, type Locator, type Page } from "playwright-core";
import { build } from "vite";

/* A real browser for the page's tests: the one the system has. */

export const CHROMIUM = "/usr/bin/chromium";
const root = join(import.meta.dirname, "..", "..");
/** Screenshots to look at; not kept in the repository. */
export const SHOTS = join(root, "artefacts");
mkdirSync(SHOTS, { recursive: true });

/** `autoplay`: sound needs no touch, so that tests of other things meet no bar. */
export function launch(autoplay = true): Promise<Browser> {
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
      ...(autoplay ? ["--autoplay-policy=no-user-gesture-required"] : []),
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
  before: (page: Page) => Promise<void> = async () => undefined,
): Promise<Opened> {
  const context = await browser.newContext({
    viewport: SIZES[size],
    locale: language,
    hasTouch: size !== "desk",
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await before(page);
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    // A lost link is part of some tests; everything else is a fault.
    if (message.type() === "error" && !/ERR_(CONNECTION|INTERNET)|WebSocket/.test(message.text()))
      complaints.push(message.text());
  });
  await page.goto(url);
  // The document is there before its view is: that comes beside it.
  await page.locator("#app > *").first().waitFor({ state: "attached" });
  return { page, complaints };
}

/** What stands at the door, word for word. */
const DOOR = {
  "en-GB": { yourName: "Your name", join: "Join as student" },
  "de-DE": { yourName: "Dein Name", join: "Als Schüler:in beitreten" },
} as const;

/** `language`: the page's own. */
export async function joinDemo(
  page: Page,
  name: string,
  language: keyof typeof DOOR = "en-GB",
): Promise<void> {
  const { yourName, join: key } = DOOR[language];
  await page.getByLabel(yourName).fill(name);
  await page.getByRole("button", { name: key }).click();
  await page.locator(".link.is-open").waitFor();
}

/** The field of an option in a form. */
export const optionField = (form: Page | Locator, name: string): Locator =>
  form.locator(`.field [name="${name}"]`);

/** `label`: of the line, in the page's language. */
export async function type(page: Page, line: string, label = "Command"): Promise<void> {
  const input = page.getByRole("combobox", { name: label });
  await input.fill(line);
  await input.press("Escape");
  await input.press("Enter");
}

/** A call takes no press in its first second, nor does the page just after it: a thumb may have been on its way. */
export const settled = (page: Page): Promise<void> =>
  page.locator("html:not([data-held])").waitFor({ state: "attached" });

const PRESSES = 20;

/** Presses a key of the call that is on the screen, as soon as it takes one, until the call has gone. */
export async function pressInCall(page: Page, name: string): Promise<void> {
  const call = page.locator("dialog.cue");
  await call.getByRole("button", { name }).waitFor();
  await page.evaluate("document.querySelector('dialog.cue')?.setAttribute('data-asked', '')");
  const asked = page.locator("dialog.cue[data-asked]");
  const key = page.locator("html:not([data-held]) dialog.cue[data-asked]").getByRole("button", { name });
  // It may have come into view a moment before its keys are held, and then takes nothing.
  for (let presses = 0; (await asked.count()) > 0; presses += 1) {
    if (presses === PRESSES) throw new Error(`"${name}" does not take the call away`);
    await key.click({ timeout: 3000 }).catch(() => undefined);
    await asked.waitFor({ state: "detached", timeout: 1000 }).catch(() => undefined);
  }
  // The page is held from the moment on in which the call goes.
  await settled(page);
}

export function shoot(page: Page, name: string): Promise<Buffer> {
  return page.screenshot({ path: join(SHOTS, `${name}.png`) });
}
