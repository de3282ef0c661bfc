import { Agent } from "node:https";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { DEMO_KEY } from "../../../../../bot/demo/demo.ts";
import { makeCertificate } from "../../../../support/certificate.ts";
import { needing } from "../../../../support/needs.ts";
import {
  decrypt,
  type Pushed,
  type PushService,
  readVapid,
  startPushService,
} from "../../../../support/push-service.ts";
import { type RoomServer, startRoom, type Visitor } from "../../../../support/room-server.ts";

const from64 = (text: string): Buffer => Buffer.from(text, "base64url");

test("the phone's side reads the worked example of RFC 8291, 5 and appendix A", () => {
  const body = from64(
    "DGv6ra1nlYgDCS1FRnbzlwAAEABBBP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27mlmlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A_yl95bQpu6cVPTpK4Mqgkf1CXztLVBSt2Ks3oZwbuwXPXLWyouBWLVWGNWQexSgSxsj_Qulcy4a-fN",
  );
  const keys = {
    privateKey: from64("q1dXpw3UpT5VOmu_cf_v6ih07Aems3njxI-JWgLcM94"),
    auth: from64("BTBZMqHH6r4Tts7J_aSIgg"),
  };
  expect(decrypt(body, keys)).toBe("When I grow up, I want to be a watermelon");
});

describe("calls to a closed page", needing("openssl"), () => {
  let server: RoomServer;
  let service: PushService;
  let mina: Visitor;
  let teacher: Visitor;

  beforeEach(async () => {
    const made = makeCertificate();
    service = await startPushService(made);
    const agent = new Agent({ ca: made.pem, keepAlive: false });
    server = await startRoom({ pushHosts: [service.host], pushAgentOf: () => agent });
    mina = server.visitor();
    await mina.joinDemo("Mina");
    teacher = server.visitor();
    await teacher.joinDemo("Iris", "teacher");
  });
  afterEach(async () => {
    await server.stop();
    await service.stop();
  });

  const allow = (isAllowed = true): Promise<Response> => teacher.post("/api/push/allow", { isAllowed });
  const turnOn = (path = "mina"): Promise<Response> => mina.post("/api/push/on", service.subscription(path));

  /** Mina's tank is full: she is called to agitate at once, and each minute from then on. */
  async function begin(): Promise<void> {
    const page = await mina.open();
    await page.says("/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:3");
    await page.says("/run start");
    await page.says("/run next run:1 step:0");
    page.socket.close();
    await server.pass(1);
  }

  async function gets(count: number): Promise<Pushed[]> {
    for (let tries = 0; tries < 300 && service.got.length < count; tries += 1)
      await new Promise((resolve) => setImmediate(() => setTimeout(resolve, 10)));
    expect(service.got.length).toBeGreaterThanOrEqual(count);
    return service.got;
  }

  test("are allowed and forbidden by a command as in the door's panel, and forbidden forgets every phone", async () => {
    const iris = await teacher.open();
    await iris.says("/class setup closedpages:yes");
    expect((await turnOn()).status).toBe(200);
    await iris.says("/class setup");
    expect(iris.feed().at(-1)).toContain("- Calls to closed pages: allowed");
    await iris.says("/class setup closedpages:no");
    expect(iris.feed().at(-1)).toContain("- Calls to closed pages: not allowed");
    expect(await (await mina.get("/api/push")).json()).toMatchObject({ isAllowed: false, isOn: false });
    await begin();
    await server.pass(60);
    expect(service.got).toEqual([]);
  });

  test("are off until the teacher allows them for the class, and the person turns them on", async () => {
    expect((await turnOn()).status).toBe(403);
    expect((await mina.post("/api/push/allow", { isAllowed: true })).status).toBe(403);
    await begin();
    expect(await (await mina.get("/api/push")).json()).toMatchObject({ isAllowed: false, isOn: false });
    await allow();
    await server.pass(60);
    expect(service.got).toEqual([]);
    expect(await (await turnOn()).json()).toMatchObject({ isAllowed: true, isOn: true });
    await server.pass(60);
    await gets(1);
  });

  test("come encrypted and signed, for as long as the call is of use, and a newer one takes the place of an older", async () => {
    await allow();
    const { publicKey } = (await (await turnOn()).json()) as { publicKey: string };
    await begin();
    const [first] = await gets(1);
    expect(first?.body).toMatchObject({ title: "R1, tank 3", tag: "c1r1", language: "en" });
    expect(first?.body["text"]).toMatch(/agitate/i);
    expect(first?.body["text"]).not.toMatch(/[*_]/);
    expect(first?.headers).toMatchObject({
      topic: "c1r1",
      urgency: "high",
      "content-encoding": "aes128gcm",
    });
    // The next agitation comes a minute later: until then this one may help.
    const ttl = Number(first?.headers["ttl"]);
    expect(ttl).toBeGreaterThan(0);
    expect(ttl).toBeLessThanOrEqual(60);
    const { claims, key } = readVapid(String(first?.headers["authorization"]));
    expect(key).toBe(publicKey);
    expect(claims).toMatchObject({ aud: `https://${service.host}` });
    await server.pass(60);
    const [, second] = await gets(2);
    expect(second?.headers["topic"]).toBe("c1r1");
    expect(second?.body["key"]).not.toBe(first?.body["key"]);
  });

  test("go to each device of the person and to nobody else, and end with its session", async () => {
    await allow();
    await turnOn();
    const bo = server.visitor();
    await bo.joinDemo("Bo");
    await bo.post("/api/push/on", service.subscription("bo"));
    await begin();
    await gets(1);
    expect(service.got.map(({ path }) => path)).toEqual(["/mina"]);
    await mina.post("/api/leave", { isSure: true });
    await server.pass(120);
    expect(service.got).toHaveLength(1);
  });

  test("stop for a phone whose push service knows it no more, and for good where the class turns them off", async () => {
    await allow();
    await turnOn();
    service.answer(() => ({ status: 410 }));
    await begin();
    await gets(1);
    await server.pass(60);
    expect(service.got).toHaveLength(1);
    expect(await (await mina.get("/api/push")).json()).toMatchObject({ isOn: false });
    await turnOn();
    await allow(false);
    expect(await (await mina.get("/api/push")).json()).toMatchObject({ isAllowed: false, isOn: false });
  });

  test("are tried again where no answer came, under the same topic and key, and not once they are of no use", async () => {
    await allow();
    await turnOn();
    service.answer(() => undefined);
    await begin();
    const [first] = await gets(1);
    service.answer(() => ({ status: 201 }));
    // That no answer came is known here only a moment after the question came there.
    await expect.poll(() => server.stores.pushes.ready(server.clock.now(), 10)).toEqual([]);
    server.clock.advance(2);
    server.room.refresh(DEMO_KEY);
    const [, again] = await gets(2);
    expect([again?.headers["topic"], again?.body["key"]]).toEqual([
      first?.headers["topic"],
      first?.body["key"],
    ]);
    service.answer(() => ({ status: 503, retryAfter: 600 }));
    await server.pass(60);
    const count = (await gets(3)).length;
    server.clock.advance(600);
    expect(server.stores.pushes.ready(server.clock.now(), 10).length).toBeLessThanOrEqual(1);
    server.stores.pushes.dropStale(server.clock.now());
    expect(server.stores.pushes.ready(server.clock.now(), 10)).toEqual([]);
    expect(service.got.length).toBe(count);
  });

  test("what is still to reach a phone goes to its new address, and a late word of the old one changes nothing", async () => {
    await allow();
    await turnOn();
    service.answer(() => ({ status: 503 }));
    await begin();
    const [first] = await gets(1);
    await expect.poll(() => server.stores.pushes.ready(server.clock.now(), 10)).toEqual([]);
    const answeredLate = server.stores.db
      .prepare<[], { id: number }>("select id from push_subscriptions")
      .get();
    service.answer(() => ({ status: 201 }));
    await turnOn("mina-moved");
    server.stores.pushes.forget(answeredLate?.id ?? 0);
    server.clock.advance(2);
    server.room.refresh(DEMO_KEY);
    const got = await gets(2);
    expect(got.map(({ path, body }) => `${path} ${String(body["key"])}`)).toEqual([
      `/mina ${String(first?.body["key"])}`,
      `/mina-moved ${String(first?.body["key"])}`,
    ]);
    expect(server.stores.db.prepare("select endpoint from push_subscriptions").all()).toEqual([
      { endpoint: service.subscription("mina-moved").endpoint },
    ]);
    // The same address told again, as each opening of the page does: one device, and its calls go on.
    await turnOn("mina-moved");
    await server.pass(60);
    await gets(3);
    expect(server.stores.db.prepare("select count(*) as n from push_subscriptions").get()).toEqual({ n: 1 });
  });

  test("a person has at most four devices called, are shown them, and lose them with all the rest", async () => {
    await allow();
    const member = server.stores.members.findByName(1, "Mina");
    const id = member?.personId ?? "";
    for (let at = 0; at < 6; at += 1) {
      server.stores.rooms.addSession({ tokenHash: `t${at}`, classId: 1, personId: id, device: "iPhone" }, at);
      const { endpoint, keys } = service.subscription(`p${at}`);
      server.stores.pushes.subscribe(
        { classId: 1, personId: id, tokenHash: `t${at}`, endpoint, ...keys },
        at,
      );
    }
    const held = server.stores.mine.gather(1, id).pushed.map(({ endpoint }) => endpoint.split("/").at(-1));
    expect(held).toEqual(["p2", "p3", "p4", "p5"]);
    const page = await mina.open();
    page.send({ type: "line", id: "call-erase-1", text: "/mine erase name:Mina" });
    await page.hears("gone");
    expect(server.stores.db.prepare("select * from push_subscriptions").all()).toEqual([]);
  });

  test("an address inside the school is not taken for a push service", async () => {
    await allow();
    const { keys } = service.subscription("x");
    for (const endpoint of ["https://192.168.1.1/x", "http://push.example.org/x", "https://localhost:1/x"])
      expect((await mina.post("/api/push/on", { endpoint, keys })).status).toBe(400);
    expect(
      (await mina.post("/api/push/on", { ...service.subscription("x"), keys: { p256dh: "x", auth: "y" } }))
        .status,
    ).toBe(400);
  });
});
