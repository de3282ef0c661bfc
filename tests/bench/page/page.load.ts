import { mkdtempSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { randomBytes } from "node:crypto";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launch } from "../../browser/browser.ts";
import { startProcess, type BotProcess } from "../../support/process.ts";
import { loadNow, percentile, spread, table } from "../whole-bot-figures.ts";
import { fillLog, RUNS, seedClass, type Measured } from "./class.ts";
import { openSlow, readKept, readWork, type SlowPage } from "./slow.ts";

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 800 };
const LINES = Number(process.env.LINES ?? 100);
const SECONDS = Number(process.env.SECONDS ?? 30);
const data = mkdtempSync(join(tmpdir(), "sinkside-page-"));
let browser: Browser;
let bot: BotProcess;
let url: string;
let who: Measured;

beforeAll(async () => {
  who = seedClass(data);
  bot = startProcess(data);
  [browser, url] = await Promise.all([launch(), bot.ready]);
  await Promise.all([fillLog(url, who.student, LINES), fillLog(url, who.teacher, LINES)]);
}, 120_000);
afterAll(async () => {
  await browser?.close();
  await bot?.kill("SIGTERM");
  rmSync(data, { recursive: true, force: true });
});

function tellWire({ wire }: SlowPage): number {
  const total = wire.reduce((sum, { bytes }) => sum + bytes, 0);
  console.log(table(wire.map((each) => ({ ...each }))));
  console.log(`${wire.length} in all, ${total} bytes`);
  return total;
}

/** At the foot, as the page's own is. */
const ONE_LINE = '<!doctype html><input id="line" style="position:fixed;bottom:1rem">';

/** What a page shows, and no program of its own. */
const STILL = `(() => {
  const copy = document.documentElement.cloneNode(true);
  for (const each of copy.querySelectorAll("script, link, style, video, audio")) each.remove();
  const style = document.createElement("style");
  style.textContent = [...document.styleSheets].flatMap(({ cssRules }) => [...cssRules].map(({ cssText }) => cssText)).join("");
  copy.querySelector("head").append(style);
  return "<!doctype html>" + copy.outerHTML;
})()`;

interface Floor {
  readonly server: Server;
  readonly url: string;
}

/** A page of nothing but these bytes, or `/still` of what is shown elsewhere, from a server that has nothing else to do. */
async function openFloor(bytes: number, still: () => string = () => ONE_LINE): Promise<Floor> {
  const body = Buffer.concat([
    Buffer.from("//"),
    Buffer.from(
      randomBytes(bytes)
        .toString("base64")
        .slice(0, bytes - 2),
    ),
  ]);
  const server = createServer((request, response) => {
    if (request.url === "/bytes.js") return response.setHeader("content-type", "text/javascript").end(body);
    return response
      .setHeader("content-type", "text/html; charset=utf-8")
      .end(request.url === "/still" ? still() : `${ONE_LINE}<script src="/bytes.js"></script>`);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return { server, url: `http://127.0.0.1:${(server.address() as AddressInfo).port}` };
}

test("the first call", async () => {
  const slow = await openSlow(browser, { url, token: who.student, ...PHONE, isNetworkSlow: true });
  await slow.page.addInitScript("window.isToPress = true");
  await slow.page.goto(url, { waitUntil: "commit" });
  await slow.page.locator("html:not([data-held]) dialog.cue").waitFor();
  const bytes = slow.wire.reduce((sum, each) => sum + each.bytes, 0);
  await slow.page.locator(".run.is-running").waitFor();
  await wait(8000);
  const { marks, long } = await readKept(slow.page);
  tellWire(slow);
  const floor = await openFloor(bytes);
  const empty = await openSlow(browser, { url: floor.url, ...PHONE, isNetworkSlow: true });
  await empty.page.goto(floor.url, { waitUntil: "load" });
  const floorMs = await empty.page.evaluate<number>("performance.now()");
  console.log(
    table([
      {
        "bytes before": bytes,
        "frame ms": Math.round(marks.frame ?? 0),
        "call shown": Math.round(marks.call ?? 0),
        "takes a press": Math.round(marks.free ?? 0),
        pressed: Math.round(marks.pressed ?? 0),
        "the room has answered": Math.round(marks.answered ?? 0),
        log: Math.round(marks.log ?? 0),
        "long tasks": long.map(Math.round).join(" "),
        "floor: equal bytes": Math.round(floorMs),
        "call to floor": ((marks.call ?? 0) / floorMs).toFixed(2),
        load: loadNow(),
      },
    ]),
  );
  await Promise.all([slow.close(), empty.close()]);
  floor.server.close();
});

const countOf = async ({ page }: SlowPage): Promise<string> =>
  (await Promise.all([".entry", ".run", "*"].map((each) => page.locator(each).count()))).join(", ");

const TYPED = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:5";

test(`typing beside ${RUNS} runs and a long log`, async () => {
  const rows = [];
  let still = "";
  const floor = await openFloor(100, () => still);
  for (const [name, asked, line] of [
    ["floor: one line and nothing else", { url: floor.url, ...DESK }, "#line"],
    ["a teacher's desk", { url, token: who.teacher, ...DESK }, ".composer-line"],
    [
      "floor: all that the desk shows, and no script",
      { url: `${floor.url}/still`, ...DESK },
      ".composer-line",
    ],
    ["a teacher's phone", { url, token: who.teacher, ...PHONE }, ".composer-line"],
  ] as const) {
    const slow = await openSlow(browser, { ...asked, isNetworkSlow: false });
    await slow.page.goto(asked.url);
    await slow.page.locator(line).waitFor();
    await wait(10_000);
    still ||= "token" in asked ? await slow.page.evaluate<string>(STILL) : "";
    const before = await readKept(slow.page);
    await slow.page.locator(line).focus();
    await wait(500);
    await slow.page.keyboard.type(TYPED, { delay: 120 });
    await wait(1000);
    const after = await readKept(slow.page);
    const events = after.events.slice(before.events.length);
    rows.push({
      name,
      "entries, tanks, elements": await countOf(slow),
      "events over 16 ms": events.length,
      "waits before work ms p50/p99/max": spread(events.map(({ delay }) => delay)),
      work: spread(events.map(({ work }) => work)),
      "to paint": spread(events.map(({ painted }) => painted)),
      "long tasks ms": after.long.slice(before.long.length).map(Math.round).join(" "),
      "opening's": before.long.map(Math.round).join(" "),
    });
    await slow.close();
  }
  floor.server.close();
  console.log(table(rows), `load ${loadNow()}`);
});

test(`${RUNS} runs on the board`, async () => {
  const rows = [];
  const floor = await openFloor(100);
  for (const [name, asked, seen] of [
    ["floor: a page of nothing", { url: floor.url, ...DESK }, "#line"],
    ["board", { url: `${url}/board`, token: who.teacher, ...DESK }, ".wall-tank"],
    ["a teacher's desk", { url, token: who.teacher, ...DESK }, ".run"],
  ] as const) {
    const slow = await openSlow(browser, { ...asked, isNetworkSlow: false });
    await slow.page.goto(asked.url);
    await slow.page.locator(seen).first().waitFor();
    await wait(5000);
    const from = await readWork(slow.cdp);
    const sent = slow.wire.length;
    await wait(SECONDS * 1000);
    const to = await readWork(slow.cdp);
    const share = (what: string): string =>
      `${((((to[what] ?? 0) - (from[what] ?? 0)) / SECONDS) * 100).toFixed(1)} %`;
    rows.push({
      name,
      tasks: share("TaskDuration"),
      script: share("ScriptDuration"),
      layout: share("LayoutDuration"),
      style: share("RecalcStyleDuration"),
      layouts: (to.LayoutCount ?? 0) - (from.LayoutCount ?? 0),
      "heard bytes/s": Math.round(slow.wire.slice(sent).reduce((sum, { bytes }) => sum + bytes, 0) / SECONDS),
    });
    await slow.close();
  }
  floor.server.close();
  console.log(table(rows), `load ${loadNow()}`);
  expect(percentile([rows.length], 1)).toBe(3);
});
