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
      toJSON: () => (${JSON.stringify(service.subscription("phone"))}),
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
});
