import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { closeSync, existsSync, mkdtempSync, openSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  Builder,
  Capabilities,
  error as errors,
  Key,
  type WebDriver,
  type WebElement,
} from "selenium-webdriver";
import { Command, Name } from "selenium-webdriver/lib/command.js";
import { pathOf } from "../../support/needs.ts";
import { SIZES } from "../browser.ts";
import type { Engine, Hand, OpenOptions } from "./hand.ts";

/* WebKit as GTK's browser has it, the nearest to an iPhone that runs here: over WebDriver, on a screen of its own. */

const LIBRARIES = "/usr/lib";
/** The driver's package has the browser beside its libraries, in a folder named after machine and version. */
function findBrowser(): string {
  for (const machine of readdirSync(LIBRARIES).filter((name) => name.endsWith("-linux-gnu")))
    for (const version of ["webkit2gtk-4.1", "webkitgtk-6.0", "webkit2gtk-4.0"]) {
      const path = join(LIBRARIES, machine, version, "MiniBrowser");
      if (existsSync(path)) return path;
    }
  throw new Error("webkit2gtk-driver is there without its MiniBrowser");
}

/**
 * Of a browser, or its page's process, that crashed or was killed in the middle of a test: nothing that a page says or does. The
 * test may be tried once more then, which its report tells; what the browser said last is told if it happens again.
 */
export const BROWSER_ENDED = /^WebKit ended by itself/;

const PIECE = 5;
const PIECE_MS = 150;

export const WEBKIT: Engine = {
  name: "webkit",
  needs: ["webkit2gtk-driver", "xvfb"],
  async launch() {
    const screen = await openScreen();
    const binary = findBrowser();
    const opened = new Set<() => Promise<void>>();
    return {
      async open(url, options = {}) {
        const session = await openSession(screen.display, binary, options);
        opened.add(session.close);
        await session.driver.get(url);
        return createHand(session.driver, () => {
          opened.delete(session.close);
          return session.close();
        });
      },
      async close() {
        await Promise.all([...opened].map((close) => close()));
        screen.close();
      },
    };
  },
};

async function openScreen(): Promise<{ display: string; close(): void }> {
  const given = ["-displayfd", "3", "-screen", "0", "1600x1200x24", "-nolisten", "tcp"];
  const child = spawn(pathOf("xvfb") ?? "", given, { stdio: ["ignore", "ignore", "ignore", "pipe"] });
  const [number] = (await once(child.stdio[3] as NodeJS.ReadableStream, "data")) as [Buffer];
  return { display: `:${number.toString().trim()}`, close: () => void child.kill() };
}

/** A driver for each page: it holds one session, and what one keeps no other sees. */
async function openSession(display: string, binary: string, { size = "phone" }: OpenOptions) {
  const home = mkdtempSync(join(tmpdir(), "sinkside-webkit-"));
  const port = await findPort();
  const env = { ...process.env, DISPLAY: display, HOME: home };
  const saidAt = join(home, "said.txt");
  const said = openSync(saidAt, "w");
  const child = spawn(pathOf("webkit2gtk-driver") ?? "", [`--port=${port}`, "--host=127.0.0.1"], {
    env,
    stdio: ["ignore", said, said],
  });
  closeSync(said);
  await listening(port, child);
  const capabilities = new Capabilities({
    browserName: "MiniBrowser",
    acceptInsecureCerts: true,
    "webkitgtk:browserOptions": { binary, args: ["--automation"] },
  });
  const driver = await new Builder()
    .usingServer(`http://127.0.0.1:${port}`)
    .withCapabilities(capabilities)
    .build();
  const execute = driver.execute.bind(driver);
  // What was asked as the browser ended fails in one way or another; what is asked after that, in this one.
  const isGone = (): Promise<boolean> =>
    execute(new Command(Name.GET_CURRENT_URL)).then(
      () => false,
      (error: unknown) => error instanceof errors.NoSuchSessionError,
    );
  driver.execute = (command) =>
    execute(command).catch(async (cause: unknown) => {
      if (!(await isGone())) throw cause;
      throw new Error(`WebKit ended by itself:\n${readFileSync(saidAt, "utf8")}`, { cause });
    });
  await driver.manage().setTimeouts({ script: 30_000, pageLoad: 30_000 });
  await driver.manage().window().setRect(SIZES[size]);
  return {
    driver,
    async close() {
      await driver.quit();
      child.kill();
      rmSync(home, { recursive: true, force: true });
    },
  };
}

function createHand(driver: WebDriver, close: () => Promise<void>): Hand {
  async function find(finder: string): Promise<WebElement> {
    const element = await driver.executeScript<WebElement | null>(`return (${finder})`);
    if (!element) throw new Error(`nothing is found by ${finder}`);
    return element;
  }
  return {
    engine: "webkit",
    ask: (expression) =>
      driver.executeAsyncScript(
        `const done = arguments[0];
         Promise.resolve(${expression}).then((value) => done(value ?? null), (error) => done(String(error)));`,
      ),
    run: async (script) => void (await driver.executeScript(script)),
    click: async (finder) => (await find(finder)).click(),
    async type(finder, text) {
      const element = await find(finder);
      await element.clear();
      // No faster than the quickest of hands, since the room takes no more of one person.
      for (let at = 0; at < text.length; at += PIECE) {
        await element.sendKeys(text.slice(at, at + PIECE));
        await new Promise((resolve) => setTimeout(resolve, PIECE_MS));
      }
    },
    press: (key) =>
      driver
        .actions()
        .sendKeys(key === "Enter" ? Key.ENTER : Key.ESCAPE)
        .perform(),
    goto: (url) => driver.get(url),
    reload: () => driver.navigate().refresh(),
    shoot: async () => Buffer.from(await driver.takeScreenshot(), "base64"),
    // This driver tells of none; what the page does is looked at instead.
    complaints: async () => [],
    close,
  };
}

async function findPort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address() as { port: number };
  server.close();
  await once(server, "close");
  return port;
}

async function listening(port: number, child: ChildProcess): Promise<void> {
  for (;;) {
    if (child.exitCode !== null) throw new Error(`WebKit's driver ended with ${child.exitCode}`);
    const isUp = await fetch(`http://127.0.0.1:${port}/status`).then(
      (answer) => answer.ok,
      () => false,
    );
    if (isUp) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
