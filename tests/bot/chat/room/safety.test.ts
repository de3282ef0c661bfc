import { connect } from "node:net";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { WebSocket } from "ws";
import { inventDemo } from "../../../../bot/demo/demo.ts";
import {
  openSocket,
  startRoom,
  type OpenPage,
  type RoomServer,
  type Visitor,
} from "../../../support/room-server.ts";

/* What a bored, a clever and a hostile visitor of a school's network may try. */

let room: RoomServer;
let mina: Visitor;
let stranger: Visitor;

beforeEach(async () => {
  room = await startRoom({}, (stores, now) => {
    inventDemo(stores, "UTC", now);
    stores.classes.add("room:1", "Tuesday class", "UTC", false, now);
  });
  mina = room.visitor();
  await mina.joinDemo("Mina");
  stranger = room.visitor();
  const code = room.room.firstSecrets.find(({ classKey }) => classKey === "room:1")?.joinCode ?? "";
  await stranger.post("/api/join", { code, name: "Stranger" });
});
afterEach(() => room.stop());

const SVG = "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>";

async function sayWithPicture(personId: string | null): Promise<string> {
  const outcome = await room.room.send({
    key: `p${personId}`,
    classKey: "room:demo",
    channelRef: null,
    personId,
    mentions: [],
    runs: [],
    text: "look",
    actions: [],
    pictures: [{ name: "plan", alt: "a curve", svg: SVG }],
    attachments: [{ name: 'a";\r\nx.csv', mediaType: "text/csv", content: "secret" }],
    dueAt: 0,
  });
  return outcome.kind === "sent" ? outcome.ref : "";
}

describe("what one may see", () => {
  test("another class sees neither the feed, nor a picture, nor a file", async () => {
    const id = await sayWithPicture(null);
    expect((await mina.get(`/pictures/${id}/0.svg`)).status).toBe(200);
    expect((await stranger.get(`/pictures/${id}/0.svg`)).status).toBe(404);
    expect((await stranger.get(`/files/${id}/0`)).status).toBe(404);
    expect((await stranger.open()).feed()).toEqual([]);
    // Not by asking for what came after an older number, either.
    expect((await stranger.open(0)).feed()).toEqual([]);
  });

  test("what is for one person no other of the class sees", async () => {
    const me = room.stores.members.findByName(1, "Mina")?.personId ?? "";
    const id = await sayWithPicture(me);
    const bo = room.visitor();
    await bo.joinDemo("Bo");
    expect((await bo.get(`/files/${id}/0`)).status).toBe(404);
    expect((await bo.open(0)).feed()).toEqual([]);
    expect((await mina.open(0)).feed()).toEqual(["look"]);
  });

  test("nobody sees anything without a session", async () => {
    const id = await sayWithPicture(null);
    const nobody = room.visitor();
    expect((await nobody.get(`/pictures/${id}/0.svg`)).status).toBe(404);
    expect((await nobody.get("/api/commands")).status).toBe(401);
    expect((await nobody.get("/api/door")).status).toBe(403);
    await expect(openSocket(room.url, "sinkside=forged")).rejects.toThrow("401");
  });

  test("students get no names of who is here, and no wall", async () => {
    const page = await mina.open();
    const present = await page.hears("present");
    expect(present).toMatchObject({ count: 1, names: [] });
    page.send({ type: "watch", on: true });
    await page.hears("refused", ({ refusal }) => refusal.code === "ERR_NOT_YOURS");
    expect(page.got.some(({ type }) => type === "wall")).toBe(false);
  });
});

describe("what one may do", () => {
  test("a role that a page claims counts for nothing", async () => {
    const page = await mina.open();
    page.send({ type: "hello", after: null, role: "teacher", you: { role: "teacher" } });
    page.send({ type: "line", id: "forged-000", text: "/help", role: "teacher" });
    await page.hears("taken");
    expect(room.stores.members.findByName(1, "Mina")?.role).toBe("student");
    for (const path of ["rotate", "passphrases", "free", "device"])
      expect((await mina.post(`/api/door/${path}`, {})).status).toBe(403);
    expect((await mina.post("/api/classes", { name: "x", zone: "UTC", teacher: "x" })).status).toBe(403);
  });

  test("an aide puts no teacher out, and nobody signs out people of another class", async () => {
    const teacher = room.visitor();
    await teacher.joinDemo("Demo teacher", "teacher");
    const other = room.stores.members.list(2)[0]?.personId;
    expect((await teacher.post("/api/door/free", { personId: other })).status).toBe(403);
    expect((await stranger.get("/api/me")).status).toBe(200);
  });

  test("a button pressed again, or sent again after a lost link, does its work once", async () => {
    const page = await mina.open();
    const line = { type: "line", id: "again-0001", text: "/help" };
    page.send(line);
    page.send(line);
    await expect.poll(() => page.got.filter(({ type }) => type === "taken").length).toBe(2);
    const answers = room.stores.messages.newest(
      1,
      room.stores.members.findByName(1, "Mina")?.personId ?? "",
      50,
    );
    expect(answers.filter(({ body }) => (body as { kind: string }).kind === "reply")).toHaveLength(1);
    expect(answers.filter(({ body }) => (body as { kind: string }).kind === "line")).toHaveLength(1);
  });

  test("an erased person is put out at once", async () => {
    const page = await mina.open();
    room.stores.members.remove(1, room.stores.members.findByName(1, "Mina")?.personId ?? "");
    room.room.refresh("room:demo");
    await page.hears("gone");
    expect(await (await mina.get("/api/me")).json()).toMatchObject({ state: "out" });
  });
});

describe("what comes from elsewhere", () => {
  test("a page of another site can neither post nor open the socket", async () => {
    const evil = { origin: "http://evil.example" };
    expect((await mina.post("/api/leave", {}, evil)).status).toBe(403);
    expect((await mina.post("/api/leave", {}, { origin: "null" })).status).toBe(403);
    await expect(openSocket(room.url, mina.cookie, "http://evil.example")).rejects.toThrow("403");
    expect(await (await mina.get("/api/me")).json()).toMatchObject({ state: "in" });
  });

  test("a foreign host name on loopback is refused: the name service can be lied to", async () => {
    const port = new URL(room.url).port;
    const answer = await raw(
      `GET /api/me HTTP/1.1\r\nHost: evil.example:${port}\r\nConnection: close\r\n\r\n`,
    );
    expect(answer).toContain("421");
  });

  test("every page comes with a policy that runs no foreign script", async () => {
    const headers = (await mina.get("/api/me")).headers;
    const policy = headers.get("content-security-policy") ?? "";
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toContain("unsafe-inline");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("referrer-policy")).toBe("no-referrer");
  });

  test("a drawing opened by itself can run nothing, and a file is only saved", async () => {
    const id = await sayWithPicture(null);
    const picture = await mina.get(`/pictures/${id}/0.svg`);
    expect(picture.headers.get("content-security-policy")).toContain("sandbox");
    expect(picture.headers.get("content-security-policy")).not.toContain("script-src");
    const file = await mina.get(`/files/${id}/0`);
    expect(file.headers.get("content-disposition")).toMatch(/^attachment; filename="[\w.-]+"$/);
  });
});

describe("too much", () => {
  test("an oversize body, an oversize message and an oversize header are refused", async () => {
    expect((await mina.post("/api/join", { code: "x".repeat(20_000), name: "x" })).status).toBe(413);
    const page = await mina.open();
    const closed = new Promise<number>((resolve) => page.socket.on("close", resolve));
    page.send({ type: "line", id: "big-000001", text: "x".repeat(100_000) });
    expect(await closed).toBe(1009);
    const port = new URL(room.url).port;
    const header = `GET / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nX: ${"a".repeat(20_000)}\r\n\r\n`;
    expect(await raw(header)).toContain("431");
  });

  test("what is no message of ours is refused and harms nobody", async () => {
    const page = await mina.open();
    for (const text of ["{", "[]", "null", '{"type":"nothing"}', '{"type":"line","id":"x","text":"/help"}'])
      page.send(text);
    await expect.poll(() => page.got.filter(({ type }) => type === "refused").length).toBe(5);
    await page.says("/help");
    expect(page.feed().length).toBe(2);
  });

  test("a page that sends in a loop is slowed and then put out", async () => {
    const page = await mina.open();
    const closed = new Promise<number>((resolve) => page.socket.on("close", resolve));
    let sent = 0;
    // For as long as it is let: on a busy machine some of these are no longer too many in one second.
    for (; page.socket.readyState === WebSocket.OPEN; sent += 100) {
      for (let index = 0; index < 100; index += 1) page.send({ type: "ping", sentAt: index });
      await new Promise((resolve) => setImmediate(resolve));
    }
    expect(await closed).toBe(1008);
    expect(page.got.filter(({ type }) => type === "pong").length).toBeLessThan(sent);
  });

  test("one session opens at most eight pages", async () => {
    const pages: OpenPage[] = [];
    for (let index = 0; index < 9; index += 1) pages.push(await mina.open());
    await expect.poll(() => pages[0]?.socket.readyState).toBe(WebSocket.CLOSED);
    expect(pages[8]?.socket.readyState).toBe(WebSocket.OPEN);
  });

  test("a request that never comes to an end is cut off", async () => {
    const port = new URL(room.url).port;
    const answer = await raw(`POST /api/join HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Le`);
    expect(answer === "" || answer.includes("408")).toBe(true);
  });
});

/** Sends these bytes as they are and gives back all that comes until the other side hangs up. */
function raw(text: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let got = "";
    const socket = connect(Number(new URL(room.url).port), "127.0.0.1", () => socket.write(text));
    socket.on("data", (chunk) => (got += String(chunk)));
    socket.on("close", () => resolve(got));
    socket.on("error", reject);
  });
}
