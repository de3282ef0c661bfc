import type { CDPSession, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { joinDemo, openPage } from "./browser.ts";
import { browser, openRoomForEach, room } from "./room-behind.ts";

/* The page's worker in a real browser: what is pushed to it comes by the browser's own developer protocol. */

interface Shown {
  readonly title: string;
  readonly key: string;
}

/** A document of the same origin that is not the page, and so can look without being a page that calls by itself. */
const ASIDE = "/manifest.webmanifest";

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

const shownOn = (page: Page): Promise<Shown[]> =>
  page.evaluate<Shown[]>(
    `navigator.serviceWorker.getRegistration("/").then((each) => each.getNotifications())
       .then((all) => all.map(({ title, data }) => ({ title, key: data.key })))`,
  );

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
    const push = async (key: string, tag: string): Promise<void> =>
      void (await cdp.send("ServiceWorker.deliverPushMessage", {
        origin: room.url,
        registrationId,
        data: callOf(key, tag),
      }));
    const until = async (keys: readonly string[]): Promise<void> => {
      await expect
        .poll(async () => (await shownOn(page)).map(({ key }) => key).sort(), { timeout: 5000 })
        .toEqual(keys);
    };
    // While the page is open and seen it calls by itself.
    await push("k0", "R7");
    await push("k0", "R7");
    await page.goto(`${room.url}${ASIDE}`);
    const aside = await page.context().newPage();
    await aside.goto("about:blank");
    await aside.bringToFront();
    await page.goto("about:blank");
    await push("k1", "R7");
    await push("k1", "R7");
    await page.goto(`${room.url}${ASIDE}`);
    await until(["k1"]);
    await page.goto("about:blank");
    await push("k2", "R7");
    await push("k3", "R9");
    await push("k1", "R7");
    await page.goto(`${room.url}${ASIDE}`);
    await until(["k2", "k3"]);
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
