import { expect, test } from "vitest";
import { readConfig } from "../../../bot/process/config.ts";

test("nothing set is a room on loopback", () => {
  const config = readConfig({});
  expect(config.ok && config.value).toMatchObject({
    ROOM_HOST: "127.0.0.1",
    ROOM_PORT: 4170,
    SINKSIDE_DATA: "data",
  });
});

test("an empty value is as good as none", () => {
  expect(readConfig({ DISCORD_TOKEN: "" })).toMatchObject({ ok: true });
});

test("all faults are told at once", () => {
  const config = readConfig({
    ROOM_PORT: "eighty",
    DISCORD_API_URL: "nonsense",
    LOG_LEVEL: "loud",
    SINKSIDE_ZONE: "Mars/Base",
  });
  expect(config.ok ? [] : config.fault).toEqual([
    "SINKSIDE_ZONE: not a time zone; write it like Europe/Lisbon",
    "ROOM_PORT: a port is a whole number from 0 to 65535",
    "DISCORD_API_URL: not a web address",
    "LOG_LEVEL: one of debug, info, warn, error, silent",
  ]);
});
