import { expect, test } from "vitest";
import { createRoomClock } from "../../../../bot/chat/room-page/clock.ts";

/** A phone whose clock is `aheadMs` in front of the room's, and moves when told to. */
function aPhone(aheadMs: number) {
  let roomMs = 1_000_000;
  return {
    pass: (ms: number) => void (roomMs += ms),
    room: () => roomMs,
    phone: () => roomMs + aheadMs,
  };
}

test("a phone seven minutes ahead shows the room's time", () => {
  const time = aPhone(7 * 60_000);
  const clock = createRoomClock(time.phone);
  const sentAt = time.phone();
  time.pass(20);
  const roomNow = time.room();
  time.pass(20);
  clock.take({ sentAt, cameAt: time.phone(), roomNow });
  expect(clock.now()).toBe(time.room());
  time.pass(90_000);
  expect(clock.now()).toBe(time.room());
});

test("a slow answer does not spoil what a quick one told", () => {
  const time = aPhone(-5000);
  const clock = createRoomClock(time.phone);
  clock.take({ sentAt: time.phone(), cameAt: time.phone(), roomNow: time.room() });
  const sentAt = time.phone();
  const roomNow = time.room();
  time.pass(900);
  // The whole delay was on the way back: half of it would be wrong by 450 ms.
  clock.take({ sentAt, cameAt: time.phone(), roomNow });
  expect(clock.now()).toBe(time.room());
});

test("a clock that was set in between is believed at once, however slow the answer", () => {
  let roomMs = 1_000_000;
  let ahead = 0;
  const clock = createRoomClock(() => roomMs + ahead);
  clock.take({ sentAt: roomMs, cameAt: roomMs, roomNow: roomMs });
  roomMs += 5000;
  ahead = -75_000;
  const sentAt = roomMs + ahead;
  roomMs += 100;
  clock.take({ sentAt, cameAt: roomMs + ahead, roomNow: roomMs - 50 });
  expect(clock.now()).toBe(roomMs);
});

test("after a minute any answer is better than an old one", () => {
  let ahead = 0;
  let roomMs = 0;
  const clock = createRoomClock(() => roomMs + ahead);
  clock.take({ sentAt: 0, cameAt: 0, roomNow: 0 });
  roomMs = 61_000;
  ahead = 10_000;
  clock.take({ sentAt: roomMs + ahead - 100, cameAt: roomMs + ahead, roomNow: roomMs - 50 });
  expect(clock.now()).toBe(roomMs);
});

test("at sixty times the speed a second of the phone is a minute of the room", () => {
  let phoneMs = 0;
  const clock = createRoomClock(() => phoneMs);
  clock.guess(0);
  clock.setSpeed(60);
  phoneMs = 1000;
  expect(clock.now()).toBe(60_000);
});
