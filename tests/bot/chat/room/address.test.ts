import { request } from "node:http";
import { describe, expect, test } from "vitest";
import { addressesOf, hostnameOf, isOwnHost, isOwnOrigin } from "../../../../bot/chat/room/address.ts";
import { startRoom } from "../../../support/room-server.ts";

describe("host names", () => {
  test.each([
    ["192.168.1.20:8080", "192.168.1.20"],
    ["[::1]:8080", "::1"],
    ["room.local", "room.local"],
    ["a b", undefined],
    ["", undefined],
    [undefined, undefined],
  ])("%s names %s", (header, name) => {
    expect(hostnameOf(header)).toBe(name);
  });

  test("on loopback only loopback's names are ours; on the network any that leads here", () => {
    expect(isOwnHost("127.0.0.1:4170", "127.0.0.1", null)).toBe(true);
    expect(isOwnHost("localhost:4170", "127.0.0.1", null)).toBe(true);
    expect(isOwnHost("evil.example", "127.0.0.1", null)).toBe(false);
    expect(isOwnHost("room.school.example", "127.0.0.1", "https://room.school.example")).toBe(true);
    expect(isOwnHost("192.168.1.20:4170", "0.0.0.0", null)).toBe(true);
  });

  test("an origin is ours when it is the host that was asked, port and all", () => {
    expect(isOwnOrigin("http://127.0.0.1:4170", "127.0.0.1:4170", null)).toBe(true);
    expect(isOwnOrigin("http://127.0.0.1:9999", "127.0.0.1:4170", null)).toBe(false);
    expect(isOwnOrigin("http://127.0.0.1.evil.example:4170", "127.0.0.1:4170", null)).toBe(false);
    expect(isOwnOrigin(undefined, "127.0.0.1:4170", null)).toBe(false);
    expect(isOwnOrigin("null", "127.0.0.1:4170", null)).toBe(false);
    expect(isOwnOrigin("https://room.example", "127.0.0.1:4170", "https://room.example/")).toBe(true);
  });
});

test("the addresses to show are the stated one, or those of this computer", () => {
  expect(addressesOf("0.0.0.0", 4170, "https://room.example/")).toEqual(["https://room.example"]);
  expect(addressesOf("127.0.0.1", 4170, null)).toEqual(["http://127.0.0.1:4170"]);
  expect(addressesOf("192.168.1.20", 4170, null)).toEqual(["http://192.168.1.20:4170"]);
  for (const url of addressesOf("0.0.0.0", 4170, null)) expect(url).toMatch(/^http:\/\/[\d.]+:4170$/);
});

test("behind a proxy with https the cookie is for https only, and so is the policy", async () => {
  const room = await startRoom({ publicUrl: "https://room.example" });
  const { teacherPassphrase, joinCode } = room.room.firstSecrets[0] ?? {
    teacherPassphrase: "",
    joinCode: "",
  };
  const port = room.log.lines.find(({ message }) => message === "the room is open")?.fields.port;
  const headers = await new Promise<NodeJS.Dict<string | string[]>>((resolve, reject) => {
    const asking = request(
      {
        host: "127.0.0.1",
        port: Number(port),
        path: "/api/staff",
        method: "POST",
        headers: {
          host: "room.example",
          origin: "https://room.example",
          "content-type": "application/json",
        },
      },
      (response) => {
        response.resume();
        resolve(response.headers);
      },
    );
    asking.on("error", reject);
    asking.end(JSON.stringify({ code: joinCode, name: "Ms Teal", passphrase: teacherPassphrase }));
  });
  await room.stop();
  expect(String(headers["set-cookie"])).toContain("Secure");
  expect(headers["content-security-policy"]).toContain("wss://room.example");
  expect(headers["strict-transport-security"]).toBeDefined();
});
