import { firefox, type Browser, type ElementHandle, type Page } from "playwright-core";
import { pathOf } from "../../support/needs.ts";
import { launch as launchChromium, SIZES } from "../browser.ts";
import type { Engine, EngineName, Hand, LaunchedEngine, OpenOptions } from "./hand.ts";

/* Chromium over its own protocol, Firefox over WebDriver BiDi: one client speaks both. */

export const CHROMIUM: Engine = {
  name: "chromium",
  needs: ["chromium"],
  launch: async () => launched("chromium", await launchChromium()),
};

export const FIREFOX: Engine = {
  name: "firefox",
  needs: ["firefox-esr"],
  async launch() {
    const executablePath = pathOf("firefox-esr") ?? "";
    // A channel of this name means: as it comes from its maker, over BiDi.
    const firefoxUserPrefs = { "media.autoplay.default": 0 };
    return launched(
      "firefox",
      await firefox.launch({ channel: "moz-firefox", executablePath, firefoxUserPrefs }),
    );
  },
};

const KEY_MS = 30;

/** What Firefox says of the client's own hand on the page; of the page itself, Chromium would say the same. */
const OF_THE_CLIENT = /blocked (a JavaScript eval|an inline style \(style-src-elem\))/;

function launched(name: EngineName, browser: Browser): LaunchedEngine {
  return {
    async open(url, { size = "phone" }: OpenOptions = {}) {
      const context = await browser.newContext({
        viewport: SIZES[size],
        locale: "en-GB",
        ignoreHTTPSErrors: true,
        // What the machine's own settings say; to set them is more than BiDi can.
        ...(name === "firefox"
          ? { colorScheme: null, reducedMotion: null, forcedColors: null, contrast: null }
          : {}),
      });
      const page = await context.newPage();
      const complaints: string[] = [];
      const complain = (text: string): void => {
        if (!OF_THE_CLIENT.test(text)) complaints.push(text);
      };
      page.on("pageerror", (error) => complain(error.message));
      page.on("console", (message) => message.type() === "error" && complain(message.text()));
      await page.goto(url);
      return createHand(name, page, complaints);
    },
    close: () => browser.close(),
  };
}

function createHand(engine: EngineName, page: Page, complaints: readonly string[]): Hand {
  async function find(finder: string): Promise<ElementHandle> {
    const element = (await page.evaluateHandle(finder)).asElement();
    if (!element) throw new Error(`nothing is found by ${finder}`);
    return element as ElementHandle;
  }
  return {
    engine,
    ask: <T>(expression: string) => page.evaluate(expression) as Promise<T>,
    run: async (script) => void (await page.evaluate(script)),
    click: async (finder) => (await find(finder)).click(),
    async type(finder, text) {
      const element = await find(finder);
      await element.fill("");
      await element.focus();
      // No faster than the quickest of hands, since the room takes no more of one person.
      await page.keyboard.type(text, { delay: KEY_MS });
    },
    press: (key) => page.keyboard.press(key),
    goto: async (url) => void (await page.goto(url)),
    reload: async () => void (await page.reload()),
    shoot: () => page.screenshot(),
    complaints: async () => [...complaints],
    close: () => page.context().close(),
  };
}
