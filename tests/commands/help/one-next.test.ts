import { expect, test } from "vitest";
import { createRoom } from "../../support/room.ts";

/* On whatever day one asks: one next thing, in bold at the head, with its key. */

test("nothing yet, a plan made, to be poured in, in the bath, over: each names one thing and its key", async () => {
  const room = createRoom();
  const help = () => {
    const { text, actions = [] } = room.asks("Mina", "/help").reply;
    expect(text).toMatch(/^\*\*[^*]+\*\*/);
    expect(text.split("\n")[0]?.match(/\*\*[^*]+\*\*/g)).toHaveLength(1);
    return { head: text.split("\n")[0] ?? "", first: actions[0]?.label };
  };
  expect(help()).toMatchObject({ first: "Make a plan" });

  room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  expect(help()).toEqual({ head: expect.stringContaining("Your plan P1 is ready"), first: "Start" });

  room.press("Mina", "Start");
  expect(help()).toEqual({ head: expect.stringContaining("R1 waits for you"), first: "Tank is full" });

  room.press("Mina", "Tank is full");
  await room.pass(60);
  expect(help()).toMatchObject({ head: expect.stringContaining("R1, developer") });

  // The developer should be out: the next bath is waited for.
  await room.pass(500);
  expect(help()).toEqual({
    head: expect.stringContaining("R1 waits for you: rinse 1"),
    first: "Water is in",
  });

  for (let guard = 0; guard < 20 && room.stores.runs.open(1).length > 0; guard += 1) {
    room.clock.advance(3600);
    await room.tick();
    room.asks("Mina", "/run next run:1 sure:yes");
  }
  expect(help()).toEqual({ head: expect.stringContaining("How did L1 come out?"), first: "1" });
});
