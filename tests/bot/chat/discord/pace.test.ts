import { expect, test } from "vitest";
import { createFakeClock } from "../../../support/clock.ts";
import { aDelivery, setStage } from "../../../support/gateway/bot.ts";

/* What messages are measured to take, through the real client. */

const OPENINGS = /^\/users\/@me\/channels$/;

test("what first commands wait for each other is no slowness of the chat: calls don't leave ahead by it", async () => {
  const clock = createFakeClock(Date.now());
  const stage = await setStage({ bot: { clock } });
  await stage.start();
  const { gateway, port } = stage;
  let release = (): void => {};
  const held = new Promise<void>((resolve) => (release = resolve));
  gateway.faults.add("POST", OPENINGS, { kind: "hold", release: held });
  const people = Array.from({ length: 6 }, (_, at) => gateway.addUser(`Student ${at}`));
  await Promise.all(people.map((user) => gateway.slash(user, "help")));
  // The client asks for one direct channel after the other.
  await expect.poll(() => gateway.asked("POST", OPENINGS).length).toBe(1);
  clock.advance(6);
  release();
  await expect.poll(() => stage.directory.channels.size).toBe(people.length);
  expect(port.pace.aheadMs(clock.now())).toBe(0);

  // Messages that take long are.
  let letGo = (): void => {};
  const late = new Promise<void>((resolve) => (letGo = resolve));
  gateway.faults.add("POST", /^\/channels\/\d+\/messages$/, { kind: "hold", release: late });
  const said = Promise.all(
    ["one", "two", "three", "four"].map((key) => port.send(aDelivery(stage, { key }))),
  );
  await expect.poll(() => gateway.asked("POST", /^\/channels\/\d+\/messages$/).length).toBe(1);
  clock.advance(3);
  letGo();
  await said;
  expect(port.pace.aheadMs(clock.now())).toBe(3000);
  await stage.stop();
});
