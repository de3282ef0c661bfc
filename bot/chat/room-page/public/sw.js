/*
 * The page while it is closed: it keeps the page itself, so that it opens without a link, and shows the calls that are pushed
 * to it. It keeps nothing of anybody's data: no reply, no picture, no name; of calls only the keys of the last ones, so that
 * none is shown twice.
 */

const PAGE = "sinkside-page";
const SHOWN = "sinkside-shown";
const MOST_ASSETS = 80;
const MOST_KEYS = 100;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== self.location.origin) return;
  if (request.mode === "navigate" && (pathname === "/" || pathname === "/board"))
    event.respondWith(newestPage(request));
  else if (pathname.startsWith("/assets/")) event.respondWith(keptAsset(request));
});

/** From the room where it answers: a page that is older than its server might misunderstand it. */
async function newestPage(request) {
  const cache = await caches.open(PAGE);
  try {
    const response = await fetch(request);
    if (response.ok) await cache.put("/", response.clone());
    return response;
  } catch (error) {
    const kept = await cache.match("/");
    if (!kept) throw error;
    return kept;
  }
}

/** An asset's name changes with what is in it, so one that is kept is right for good. */
async function keptAsset(request) {
  const cache = await caches.open(PAGE);
  const kept = await cache.match(request);
  if (kept) return kept;
  const response = await fetch(request);
  if (response.ok) {
    await cache.put(request, response.clone());
    const assets = (await cache.keys()).filter(({ url }) => url.includes("/assets/"));
    for (const old of assets.slice(0, Math.max(0, assets.length - MOST_ASSETS))) await cache.delete(old);
  }
  return response;
}

/** One after the other: two of one key at once would each find it new. */
let showing = Promise.resolve();
self.addEventListener("push", (event) => {
  showing = showing.then(() => show(event.data)).catch(() => undefined);
  event.waitUntil(showing);
});

async function show(data) {
  let call;
  try {
    call = data.json();
  } catch {
    return;
  }
  const { key, tag, title, text, dueAt, language } = call;
  if (await isShown(key)) return;
  // An open page calls by itself, with its keys.
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  if (pages.some(({ visibilityState }) => visibilityState === "visible")) return;
  await self.registration.showNotification(title, {
    body: text,
    lang: language,
    // The newer call of a run takes the older one's place, and is heard.
    tag,
    renotify: true,
    requireInteraction: true,
    timestamp: dueAt,
    vibrate: [350, 120, 350, 120, 600],
    icon: "/assets/icon-192.png",
    badge: "/assets/icon-192.png",
    data: { key },
  });
}

/** Whether this call was shown before; from now on it was. A push that comes again is of the same key. */
async function isShown(key) {
  const cache = await caches.open(SHOWN);
  const kept = await cache.match("/shown");
  const keys = kept ? await kept.json() : [];
  if (keys.includes(key)) return true;
  await cache.put("/shown", new Response(JSON.stringify([...keys, key].slice(-MOST_KEYS))));
  return false;
}

/** A push service gives a phone a new address now and then: the room must know it. */
self.addEventListener("pushsubscriptionchange", (event) => event.waitUntil(moveTo(event)));

async function moveTo({ oldSubscription, newSubscription }) {
  const made =
    newSubscription ??
    (await self.registration.pushManager.subscribe({
      userVisibleOnly: true,
      applicationServerKey: oldSubscription?.options.applicationServerKey ?? (await roomKey()),
    }));
  await fetch("/api/push/on", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(made),
  });
}

async function roomKey() {
  const answer = await fetch("/api/push");
  return (await answer.json()).publicKey;
}

self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  event.waitUntil(openPage());
});

async function openPage() {
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const open = pages.find(({ url }) => new URL(url).pathname === "/");
  return open ? open.focus() : self.clients.openWindow("/");
}
