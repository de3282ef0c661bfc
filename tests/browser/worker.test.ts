import type { CDPSession, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { joinDemo, openPage } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* The page's worker in a real browser: what is pushed to it comes by the browser's own developer protocol. */

interface Shown {
  readonly title: string;
  readonly key: string;
}

async function registrationOf(page: Page, cdp: CDPSession): Promise<string> {
  const found = new Promise<string>((resolve) => {
    cdp.on("ServiceWorker.workerRegistrationUpdated", ({ registrations }) => {
      const [first] = registrations;
      if (first && !first.isDeleted) resolve(first.registrationId);
    });
  });
  await cdp.send("ServiceWorker.enable");
  await page.evaluate(`navigator.serviceWorker.register("/sw.js").then(() => navigator.serviceWorker.ready)`);
  return found;
}

/** By the worker's own account: a page of its origin that looked would be one that calls by itself. */
function askWorker<T>(page: Page, what: string): Promise<T> {
  const [worker] = page.context().serviceWorkers();
  if (!worker) throw new Error("no worker runs");
  return worker.evaluate<T>(what);
}

const shownOn = (page: Page): Promise<Shown[]> =>
  askWorker(
    page,
    "registration.getNotifications().then((all) => all.map(({ title, data }) => ({ title, key: data.key })))",
  );

/** Until a push that was delivered has been seen to, whether it is shown or not. */
async function seenTo(page: Page, key: string): Promise<void> {
  const keys = `caches.match("/shown").then((kept) => (kept ? kept.json() : []))`;
  await expect.poll(() => askWorker<string[]>(page, keys)).toContain(key);
  await askWorker(page, "showing");
}

const callOf = (key: string, tag: string): string =>
  JSON.stringify({ key, tag, title: `${tag}, tank 3`, text: "Agitate 5 s", dueAt: 0, language: "en" });

describe("the page's worker", () => {
  openRoomForEach();

  test("shows what is pushed to a closed page once, and a newer call in the place of an older of the same run", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await page.context().grantPermissions(["notifications"], { origin: room.url });
    await joinDemo(page, "Mina");
    const cdp = await page.context().newCDPSession(page);
    const registrationId = await registrationOf(page, cdp);
    const push = async (key: string, tag: string): Promise<void> => {
      await cdp.send("ServiceWorker.deliverPushMessage", {
        origin: room.url,
        registrationId,
        data: callOf(key, tag),
      });
      await seenTo(page, key);
    };
    const keysShown = async (): Promise<string[]> => (await shownOn(page)).map(({ key }) => key).sort();
    // While the page is open and seen it calls by itself.
    await push("k0", "R7");
    await push("k0", "R7");
    expect(await keysShown()).toEqual([]);
    await page.goto("about:blank");
    await push("k1", "R7");
    expect(await keysShown()).toEqual(["k1"]);
    // What comes again is seen to in its turn, before what came after it.
    await push("k1", "R7");
    await push("k2", "R7");
    expect(await keysShown()).toEqual(["k2"]);
    await push("k1", "R7");
    await push("k3", "R9");
    expect(await keysShown()).toEqual(["k2", "k3"]);
    expect((await shownOn(page)).map(({ title }) => title).sort()).toEqual(["R7, tank 3", "R9, tank 3"]);
  });

  test("keeps the page for when there is no link, and nothing of anybody's data", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    await joinDemo(page, "Mina");
    const cdp = await page.context().newCDPSession(page);
    await registrationOf(page, cdp);
    await page.reload();
    await page.locator(".link.is-open").waitFor();
    const kept = await page.evaluate<string[]>(
      `caches.keys().then((names) => Promise.all(names.map((name) => caches.open(name).then((each) => each.keys()))))
         .then((all) => all.flat().map(({ url }) => new URL(url).pathname))`,
    );
    expect(kept).toContain("/");
    for (const path of kept) expect(path).toMatch(/^\/$|^\/assets\/|^\/shown$/);
    await page.context().setOffline(true);
    await page.reload();
    await page.locator(".opening, .door, .bench").first().waitFor();
    await page.context().setOffline(false);
  });

  test("can be put on a home screen: a manifest with icons of our own mark", async () => {
    const { page } = await openPage(browser, room.url, "phone");
    const cdp = await page.context().newCDPSession(page);
    const { errors, data } = await cdp.send("Page.getAppManifest");
    expect(errors).toEqual([]);
    const manifest = JSON.parse(data ?? "") as { icons: { src: string; sizes: string }[] };
    for (const { src, sizes } of manifest.icons) {
      const response = await page.request.get(`${room.url}${src}`);
      expect(response.headers()["content-type"]).toBe("image/png");
      // Width and height stand at the head of a PNG (ISO/IEC 15948, 11.2.2).
      const bytes = await response.body();
      expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes);
    }
  });
});
