import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { inventDemo } from "../../../../bot/demo/demo.ts";
import { renderPicture } from "../../../../bot/chat/picture.ts";
import { MOST_PHOTO_BYTES } from "../../../../commands/roll/photo/photo.ts";
import { aPrint } from "../../../support/print.ts";
import { aNewRoll } from "../../../support/rolls.ts";
import { startRoom, type RoomServer, type Visitor } from "../../../support/room-server.ts";

/* A photo's way into the room and out of it, over real HTTP. */

let room: RoomServer;
let mina: Visitor;
let ben: Visitor;
let stranger: Visitor;
let png: Buffer;
let minaId: string;
let number: number;

beforeEach(async () => {
  room = await startRoom({}, (stores, now) => {
    inventDemo(stores, "UTC", now);
    stores.classes.add("room:1", "Tuesday class", "UTC", false, now);
  });
  [mina, ben, stranger] = [room.visitor(), room.visitor(), room.visitor()];
  await mina.joinDemo("Mina");
  await ben.joinDemo("Ben");
  const code = room.room.firstSecrets.find(({ classKey }) => classKey === "room:1")?.joinCode ?? "";
  await stranger.post("/api/join", { code, name: "Stranger" });
  minaId = room.stores.members.findByName(1, "Mina")?.personId ?? "";
  ({ number } = room.stores.rolls.add(aNewRoll({ classId: 1, personId: minaId, runId: null as never })));
  png = await renderPicture(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8"><circle r="4"/></svg>',
    8,
  );
});
afterEach(() => room.stop());

async function send(
  visitor: Visitor,
  bytes: Uint8Array,
  roll = `L${number}`,
  headers: Record<string, string> = {},
): Promise<{ status: number; body: { ok?: boolean; error?: { code: string; text?: string } } }> {
  const response = await fetch(`${room.url}/api/photos/${roll}`, {
    method: "POST",
    headers: { "content-type": "image/png", origin: room.url, cookie: visitor.cookie, ...headers },
    body: Uint8Array.from(bytes),
  });
  expect(response.headers.get("content-type")).toContain("application/json");
  return { status: response.status, body: (await response.json()) as never };
}

const rollId = (): number => room.stores.rolls.find(1, number)?.id ?? 0;

test("a print has one as well: its maker gives it, the class looks at it, nobody else takes it off", async () => {
  const print = room.stores.prints.add(aPrint({ personId: minaId, title: "Pier" }));
  const name = `V${print.number}`;
  const page = await mina.open();
  expect((await send(ben, png, name)).body.error?.code).toBe("ERR_NOT_YOUR_PRINT");
  expect(await send(mina, png, name)).toEqual({ status: 200, body: { ok: true } });
  const told = await page.hears("events", ({ events }) => events.some(({ photo }) => photo !== undefined));
  const entry = told.events.find(({ photo }) => photo !== undefined);
  expect(entry?.text).toContain(`The photo is with ${name}.`);
  expect(entry).toMatchObject({ photo: { kind: "print", name, mayAdd: true } });
  const shown = await ben.get(entry?.photo?.src ?? "");
  expect(Buffer.from(await shown.arrayBuffer()).equals(png)).toBe(true);
  expect((await stranger.get(`/photos/${name}`)).status).toBe(404);
  expect((await mina.get(`/photos/L${print.number + 50}`)).status).toBe(404);
});

describe("a photo that is sent", () => {
  test("is told in its sender's feed, with its place, and can be looked at by the class", async () => {
    const page = await mina.open();
    expect(await send(mina, png)).toEqual({ status: 200, body: { ok: true } });
    const told = await page.hears("events", ({ events }) => events.some(({ photo }) => photo !== undefined));
    const entry = told.events.find(({ photo }) => photo !== undefined);
    expect(entry?.text).toContain(`The photo is with L${number}.`);
    expect(entry).toMatchObject({
      isPrivate: true,
      photo: { kind: "roll", name: `L${number}`, mayAdd: true },
    });
    for (const visitor of [mina, ben]) {
      const shown = await visitor.get(entry?.photo?.src ?? "");
      expect(Buffer.from(await shown.arrayBuffer()).equals(png)).toBe(true);
      expect(shown.headers.get("content-type")).toBe("image/png");
      expect(shown.headers.get("x-content-type-options")).toBe("nosniff");
      expect(shown.headers.get("content-security-policy")).toBe("default-src 'none'; sandbox");
      expect(shown.headers.get("cache-control")).toBe("private, no-cache");
    }
    // The feed holds where it belongs, and no copy of it.
    expect(JSON.stringify(room.stores.messages.newest(1, minaId, 50))).not.toContain(
      png.toString("base64").slice(0, 40),
    );
  });

  test("takes the place of the one there was, and an unchanged one is not sent twice", async () => {
    await send(mina, png);
    const tag = (await mina.get(`/photos/${number}`)).headers.get("etag") ?? "";
    const again = await fetch(`${room.url}/photos/${number}`, {
      headers: { cookie: mina.cookie, "if-none-match": tag },
    });
    expect(again.status).toBe(304);
    room.clock.advance(1);
    const other = await renderPicture('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"/>', 9);
    await send(mina, other);
    const shown = await mina.get(`/photos/${number}`);
    expect(shown.headers.get("etag")).not.toBe(tag);
    expect(Buffer.from(await shown.arrayBuffer()).equals(other)).toBe(true);
  });

  test("loses what is hung on behind it, and no name of a file is kept or said back", async () => {
    const script = "<script>alert(1)</script>";
    const hostile = Buffer.concat([png, Buffer.from(script)]);
    const sent = await send(mina, hostile, `L${number}?name=${encodeURIComponent(script)}`, {
      "content-disposition": `attachment; filename="${script}.png"`,
      "content-type": "text/html",
    });
    expect(sent.status).toBe(200);
    const shown = await mina.get(`/photos/${number}`);
    expect(shown.headers.get("content-type")).toBe("image/png");
    expect(shown.headers.get("content-disposition")).toBe(`inline; filename="L${number}.png"`);
    expect(Buffer.from(await shown.arrayBuffer()).includes("script")).toBe(false);
    expect(JSON.stringify(room.stores.messages.newest(1, minaId, 50))).not.toContain("script");
  });
});

describe("a photo that is refused", () => {
  test.each([
    ["a page", Buffer.from("<html><script>alert(1)</script>"), "ERR_PHOTO_TYPE", "no JPEG and no PNG"],
    ["a drawing", Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'), "ERR_PHOTO_TYPE", "no JPEG"],
    ["nothing at all", Buffer.alloc(0), "ERR_PHOTO_TYPE", "no JPEG"],
  ])("%s, whatever it says it is", async (_, bytes, code, words) => {
    const { status, body } = await send(mina, bytes);
    expect({ status, code: body.error?.code }).toEqual({ status: 422, code });
    expect(body.error?.text).toContain(words);
    expect(room.stores.photos.has(rollId())).toBe(false);
  });

  test("half a picture", async () => {
    expect((await send(mina, png.subarray(0, 40))).body.error?.code).toBe("ERR_PHOTO_BROKEN");
  });

  test("one that is too large, with the bound in words", async () => {
    const { status, body } = await send(mina, Buffer.concat([png, Buffer.alloc(MOST_PHOTO_BYTES)]));
    expect({ status, code: body.error?.code }).toEqual({ status: 413, code: "ERR_PHOTO_LARGE" });
    expect(body.error?.text).toContain("9 MB; at most 8");
    expect(room.stores.photos.has(rollId())).toBe(false);
  });

  test("one for another student's roll, unless an aide or the teacher sends it", async () => {
    expect(await send(ben, png)).toMatchObject({
      status: 422,
      body: { error: { code: "ERR_NOT_YOUR_ROLL" } },
    });
    const teacher = room.visitor();
    await teacher.joinDemo("Demo teacher", "teacher");
    expect((await send(teacher, png)).status).toBe(200);
  });

  test("one from another class, from another site, or from nobody", async () => {
    expect((await send(stranger, png)).body.error?.code).toBe("ERR_UNKNOWN_ROLL");
    const evil = { origin: "http://evil.example" };
    expect((await send(mina, png, undefined, evil)).body.error?.code).toBe("ERR_ORIGIN");
    expect((await send(room.visitor(), png)).status).toBe(401);
    expect(room.stores.photos.has(rollId())).toBe(false);
  });

  test("one after very many others in five minutes", async () => {
    for (let sent = 0; sent < 30; sent += 1) await send(mina, Buffer.from("x"));
    expect((await send(mina, png)).status).toBe(429);
    // Counted by session: the class sits behind the same address.
    expect((await send(ben, png)).status).toBe(422);
  });

  test("other routes go on taking small JSON only", async () => {
    const large = await mina.post("/api/leave", JSON.stringify({ filler: "x".repeat(20_000) }));
    expect(large.status).toBe(413);
    const image = await mina.post("/api/join", "x", { "content-type": "image/png" });
    expect(image.status).toBe(415);
  });
});

describe("a photo that is there", () => {
  beforeEach(() => send(mina, png));

  test("is shown to no other class, and to nobody without a session", async () => {
    expect((await stranger.get(`/photos/${number}`)).status).toBe(404);
    expect((await room.visitor().get(`/photos/${number}`)).status).toBe(404);
    for (const wrong of ["0", "-1", "1e3", "X1", "..%2f1", "99999999999999999999"])
      expect((await mina.get(`/photos/${wrong}`)).status).toBe(404);
  });

  test("goes with its owner, who can then send no more", async () => {
    const before = rollId();
    const page = await mina.open();
    page.send({ type: "line", id: "erase-0001", text: "/mine erase name:Mina" });
    await page.hears("gone");
    expect(room.stores.photos.has(before)).toBe(false);
    expect((await ben.get(`/photos/${number}`)).status).toBe(404);
    expect((await send(mina, png)).status).toBe(401);
    expect(room.stores.photos.has(before)).toBe(false);
  });

  test("goes when it is taken off, and an earlier entry then shows none", async () => {
    const page = await mina.open();
    await page.says(`/roll photo roll:L${number} remove:yes`);
    expect((await mina.get(`/photos/${number}`)).status).toBe(404);
    const shown = await mina.open();
    const places = shown.got.flatMap((each) => (each.type === "events" ? each.events : []));
    expect(places.at(-1)?.photo).toEqual({ kind: "roll", name: `L${number}`, mayAdd: true, src: null });
  });

  test("goes with its roll", () => {
    const before = rollId();
    room.stores.db.prepare("delete from rolls where id = ?").run(before);
    expect(room.stores.photos.has(before)).toBe(false);
  });

  test("has its place in /roll show, where others than owner and staff get no way to add one", async () => {
    const page = await ben.open();
    await page.says(`/roll show L${number}`);
    const { events } = await page.hears("events", (each) => each.events.some(({ photo }) => photo));
    const photo = events.find((each) => each.photo)?.photo;
    expect(photo).toMatchObject({ kind: "roll", name: `L${number}`, mayAdd: false });
    expect((await ben.get(photo?.src ?? "")).status).toBe(200);
  });
});
