import { createECDH } from "node:crypto";
import { Agent } from "node:https";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { makeCertificate } from "../support/certificate.ts";
import { needing } from "../support/needs.ts";
import { type PushService, readVapid, startPushService } from "../support/push-service.ts";
import { buildPage, joinDemo, launch, openPage, shoot } from "./browser.ts";
import { openRoomBehind, QUICK, room, startRun } from "./room-behind.ts";

/*
 * Calls to a closed page are turned on at the page. A browser's own push service is its maker's, on the internet: here one of
 * loopback stands in its place, and notes what the page asks of the browser. All the rest is the browser's own.
 */

const SOON = { timeout: 60_000 };

interface Asked {
  readonly key: string;
  readonly userVisibleOnly: boolean;
}

/** In place of the browser's way to its maker's service. `kept`: the key of a subscription that it has from before. */
function standIn(service: PushService, kept?: string): string {
  return `
    window.asked = [];
    window.droppedKeys = [];
    const bytesOf = (text) => Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), (sign) => sign.charCodeAt(0));
    const textOf = (bytes) => btoa(String.fromCharCode(...new Uint8Array(bytes))).replace(/\\+/g, "-").replace(/\\//g, "_").replace(/=+$/, "");
    const made = (key) => ({
      options: { userVisibleOnly: true, applicationServerKey: bytesOf(key).buffer },
      toJSON: () => {
        const first = ${JSON.stringify(service.subscription("phone"))};
        return { ...first, endpoint: localStorage.getItem("moved") ?? first.endpoint };
      },
      unsubscribe: async () => {
        droppedKeys.push(key);
        localStorage.removeItem("stand-in");
        return true;
      },
    });
    if (${kept !== undefined} && !sessionStorage.getItem("begun")) localStorage.setItem("stand-in", ${JSON.stringify(kept ?? "")});
    sessionStorage.setItem("begun", "yes");
    PushManager.prototype.getSubscription = async () => {
      const key = localStorage.getItem("stand-in");
      return key === null ? null : made(key);
    };
    PushManager.prototype.subscribe = async ({ applicationServerKey, userVisibleOnly }) => {
      const key = textOf(applicationServerKey);
      asked.push({ key, userVisibleOnly });
      // As a browser does: what is no point of the curve is refused.
      await crypto.subtle.importKey("raw", applicationServerKey, { name: "ECDSA", namedCurve: "P-256" }, false, ["verify"]);
      localStorage.setItem("stand-in", key);
      return made(key);
    };
  `;
}

describe("calls to a closed page, at the page", needing("chromium", "openssl"), () => {
  let browser: Browser;
  let service: PushService;
  let pageDir: string;
  let agent: Agent;
  beforeAll(async () => {
    const certificate = makeCertificate();
    [browser, pageDir, service] = await Promise.all([launch(), buildPage(), startPushService(certificate)]);
    agent = new Agent({ ca: certificate.pem, keepAlive: false });
  });
  afterAll(async () => {
    await browser?.close();
    await service?.stop();
  });
  afterEach(async () => {
    service.got.splice(0);
    for (const context of browser.contexts()) await context.close();
  });
  openRoomBehind(
    () => pageDir,
    () => ({ pushHosts: [service.host], pushAgentOf: () => agent }),
  );

  async function openPanel(kept?: string, language = "en-GB"): Promise<Page> {
    const { page } = await openPage(browser, room.url, "phone", language, async (fresh) => {
      await fresh.context().grantPermissions(["notifications"], { origin: room.url });
      await fresh.addInitScript(standIn(service, kept));
    });
    const teacher = room.visitor();
    await teacher.joinDemo("Iris", "teacher");
    await teacher.post("/api/push/allow", { isAllowed: true });
    await joinDemo(page, "Mina");
    await showPanel(page);
    return page;
  }

  async function showPanel(page: Page): Promise<void> {
    await page.getByRole("button", { name: "Menu", exact: true }).click();
    await page.getByRole("button", { name: "Calls while the page is closed" }).click();
    await page
      .getByRole("status")
      .filter({ hasText: /for this device/ })
      .waitFor();
  }

  const askedOf = (page: Page): Promise<Asked[]> => page.evaluate("asked");
  const roomKey = async (page: Page): Promise<string> =>
    page.evaluate(`fetch("/api/push").then((answer) => answer.json()).then(({ publicKey }) => publicKey)`);

  test("asks the browser with the room's own key, for pushes that are always seen, and is called there from then on", async () => {
    const page = await openPanel();
    await shoot(page, "push-panel-off");
    await page.getByRole("button", { name: "Turn on" }).click();
    await page.getByText("On for this device").waitFor();
    await shoot(page, "push-panel-on");
    const key = await roomKey(page);
    expect(await askedOf(page)).toEqual([{ key, userVisibleOnly: true }]);
    const kept = room.stores.db.prepare("select endpoint, p256dh, auth from push_subscriptions").all();
    const { endpoint, keys } = service.subscription("phone");
    expect(kept).toEqual([{ endpoint, ...keys }]);

    await page.reload();
    await page.locator(".link.is-open").waitFor();
    await startRun(page, "Mina", QUICK);
    await page.close();
    await expect.poll(() => service.got.length, SOON).toBeGreaterThan(0);
    const [first] = service.got;
    // Signed by the very key that the browser was given (RFC 8292, 3.2): another service refuses it.
    expect(readVapid(String(first?.headers["authorization"])).key).toBe(key);
    expect(first?.path).toContain("phone");
  });

  test("a subscription for another key is let go, and one made for the room's", async () => {
    const other = createECDH("prime256v1").generateKeys("base64url");
    const page = await openPanel(other);
    await page.getByText("Off for this device").waitFor();
    await page.getByRole("button", { name: "Turn on" }).click();
    await page.getByText("On for this device").waitFor();
    expect(await page.evaluate("droppedKeys")).toEqual([other]);
    expect(await askedOf(page)).toEqual([{ key: await roomKey(page), userVisibleOnly: true }]);
  });

  test("where the browser has lost its part, the page doesn't say that it is on", async () => {
    const page = await openPanel();
    await page.getByRole("button", { name: "Turn on" }).click();
    await page.getByText("On for this device").waitFor();
    await page.reload();
    await showPanel(page);
    await page.getByText("On for this device").waitFor();
    // As by a reset of the page's rights, which tells no page.
    await page.evaluate(`localStorage.removeItem("stand-in")`);
    await page.reload();
    await showPanel(page);
    await page.getByText("Off for this device").waitFor();
    await page.getByRole("button", { name: "Turn on" }).click();
    await page.getByText("On for this device").waitFor();
    await page.getByRole("button", { name: "Turn off" }).click();
    await page.getByText("Off for this device").waitFor();
    expect(room.stores.db.prepare("select count(*) as n from push_subscriptions").get()).toEqual({ n: 0 });
  });

  const endpoints = (): unknown[] =>
    room.stores.db
      .prepare<[], { endpoint: string }>("select endpoint from push_subscriptions")
      .all()
      .map(({ endpoint }) => endpoint);

  test("a new address from the phone's maker reaches the room with the page closed, whatever the browser tells of it", async () => {
    const page = await openPanel();
    await page.getByRole("button", { name: "Turn on" }).click();
    await page.getByText("On for this device").waitFor();
    const key = await roomKey(page);
    await page.goto("about:blank");
    const moves = async (to: string, told: "new" | "old" | "nothing"): Promise<void> => {
      await askWorker(page, movedTo(service.subscription(to), key, told));
      expect(endpoints()).toEqual([service.subscription(to).endpoint]);
    };
    await moves("told-by-the-browser", "new");
    expect(await askWorker(page, "self.asked")).toEqual([]);
    await moves("asked-with-the-old-key", "old");
    await moves("asked-with-the-room-key", "nothing");
    expect(await askWorker(page, "self.asked")).toEqual([
      { key, userVisibleOnly: true },
      { key, userVisibleOnly: true },
    ]);
  });

  test("an address that could not be told is told when the page opens again, and turns nothing on", async () => {
    const page = await openPanel();
    await page.getByRole("button", { name: "Turn on" }).click();
    await page.getByText("On for this device").waitFor();
    const { endpoint } = service.subscription("moved");
    await page.evaluate(`localStorage.setItem("moved", ${JSON.stringify(endpoint)})`);
    await page.reload();
    await expect.poll(endpoints, SOON).toEqual([endpoint]);
    room.stores.db.exec("delete from push_subscriptions");
    const asked = page.waitForResponse(/\/api\/push$/);
    await page.reload();
    await asked;
    await showPanel(page);
    await page.getByText("Off for this device").waitFor();
    expect(endpoints()).toEqual([]);
  });
});

/** By the worker's own account: no page is open. */
function askWorker<T>(page: Page, what: string): Promise<T> {
  const [worker] = page.context().serviceWorkers();
  if (!worker) throw new Error("no worker runs");
  return worker.evaluate<T>(what);
}

/**
 * The event as a browser raises it (W3C Push API, 10.4), which no test can make it do: dispatched in the worker, with what it
 * says of the old and the new subscription, until all is done that the worker asks the browser to wait for.
 */
function movedTo(made: object, key: string, told: "new" | "old" | "nothing"): string {
  return `(async () => {
    const bytesOf = (text) => Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), (sign) => sign.charCodeAt(0));
    const textOf = (bytes) => btoa(String.fromCharCode(...new Uint8Array(bytes))).replace(/\\+/g, "-").replace(/\\//g, "_").replace(/=+$/, "");
    const made = ${JSON.stringify(made)};
    self.asked ??= [];
    PushManager.prototype.subscribe = async ({ applicationServerKey, userVisibleOnly }) => {
      const key = typeof applicationServerKey === "string" ? applicationServerKey : textOf(applicationServerKey);
      self.asked.push({ key, userVisibleOnly });
      return made;
    };
    const old = { options: { applicationServerKey: bytesOf(${JSON.stringify(key)}).buffer } };
    const waits = [];
    const event = new ExtendableEvent("pushsubscriptionchange");
    Object.assign(event, {
      oldSubscription: ${told === "nothing" ? "null" : "old"},
      newSubscription: ${told === "new" ? "made" : "null"},
    });
    // An event that no browser raised may not ask to be waited for.
    Object.defineProperty(event, "waitUntil", { value: (work) => waits.push(work) });
    self.dispatchEvent(event);
    await Promise.all(waits);
  })()`;
}
