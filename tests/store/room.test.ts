import { beforeEach, expect, test } from "vitest";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { type RoomStore } from "../../store/room.ts";

let stores: OpenedStores;
let rooms: RoomStore;
let classId: number;

beforeEach(() => {
  stores = openStores(":memory:");
  rooms = stores.rooms;
  classId = stores.classes.add("room:1", "Tuesday class", "UTC", false, 1000).id;
});

const session = (tokenHash: string, personId = "room:amina") => ({
  tokenHash,
  classId,
  personId,
  device: "iPhone",
});

test("a session is found by its token's hash until it is removed", () => {
  rooms.addSession(session("h1"), 1000);
  expect(rooms.findSession("h1")).toMatchObject({ personId: "room:amina", createdAt: 1000, seenAt: 1000 });
  rooms.touchSession("h1", 2000);
  expect(rooms.findSession("h1")?.seenAt).toBe(2000);
  rooms.removeSession("h1");
  expect(rooms.findSession("h1")).toBeUndefined();
});

test("signing a person out takes every device of theirs and nobody else's", () => {
  rooms.addSession(session("h1"), 1000);
  rooms.addSession(session("h2"), 1000);
  rooms.addSession(session("h3", "room:bo"), 1000);
  rooms.removePerson(classId, "room:amina");
  expect(rooms.sessionsOf(classId).map(({ tokenHash }) => tokenHash)).toEqual(["h3"]);
});

test("a secret is kept per class and kind, and a new one replaces the old one", () => {
  rooms.setSecret(classId, "join", "abc234", 1000);
  expect(rooms.classIdByJoinCode("abc234")).toBe(classId);
  rooms.setSecret(classId, "join", "xyz789", 2000);
  expect(rooms.classIdByJoinCode("abc234")).toBeUndefined();
  expect(rooms.secret(classId, "join")).toBe("xyz789");
  expect(rooms.secret(classId, "teacher")).toBeUndefined();
});

test("a passphrase's hash is no join code", () => {
  rooms.setSecret(classId, "teacher", "abc234", 1000);
  expect(rooms.classIdByJoinCode("abc234")).toBeUndefined();
});
