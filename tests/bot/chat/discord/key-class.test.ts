import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readClass, withClass } from "../../../../bot/chat/discord/key-class.ts";
import { aDelivery, listBreaches, setStage, type Stage } from "../../../support/gateway/bot.ts";
import type { User } from "../../../support/gateway/world.ts";

/* Keys in a direct message carry their class, since a press there tells of no server. */

describe("in front of a line", () => {
  test.each(["10000000000000000", "424242424242424242", "18446744073709551615"])("server %s", (id) => {
    const key = withClass("run next run:7 step:2", `discord:${id}`);
    expect(key).not.toContain(id);
    expect(readClass(key)).toEqual({ line: "run next run:7 step:2", classKey: `discord:${id}` });
  });

  test("no class, another chat's, and no room: the line alone", () => {
    const long = `plan film:"${"x".repeat(80)}"`;
    expect(withClass("help", undefined)).toBe("help");
    expect(withClass("help", "room:demo")).toBe("help");
    expect(withClass(long, "discord:424242424242424242")).toBe(long);
    expect(readClass(long)).toEqual({ line: long });
  });

  test("what has the longest line with room for it is taken by the platform", () => {
    const line = "x".repeat(100 - withClass("", "discord:424242424242424242").length);
    expect(withClass(line, "discord:424242424242424242")).toHaveLength(100);
  });
});

describe("through the client", () => {
  let stage: Stage;
  let amina: User;
  const other = "424242424242424242";
  const place = (id: string, className: string) => ({
    place: { classKey: `discord:${id}`, className, channelRef: null },
    role: "student" as const,
    seenAt: 0,
    language: "en" as const,
  });

  /** In two classes, and seen in that of this server last. */
  beforeEach(async () => {
    stage = await setStage();
    amina = stage.gateway.addUser("Amina");
    await stage.start();
    const both = [place(stage.gateway.guild.id, "Tuesday"), place(other, "Friday")];
    stage.directory.classes.set(`discord:${amina.id}`, both);
    await stage.gateway.slash(amina, "help");
    await stage.gateway.until(() => stage.directory.channels.get(`discord:${amina.id}`));
    stage.calls.length = 0;
  });
  afterEach(async () => {
    const breaches = listBreaches(stage);
    await stage.stop();
    expect(breaches).toEqual([]);
  });

  const callTo = (actions: readonly { label: string; line: string }[]) =>
    stage.port.send(
      aDelivery(stage, { classKey: `discord:${other}`, personId: `discord:${amina.id}`, actions }),
    );
  const classes = (): string[] => stage.calls.map(({ place: { className } }) => className);

  test("a key, and the keys of its answer, are of the class that called", async () => {
    await callTo([{ label: "Next", line: "run next run:7" }]);
    stage.onCommand = (call) =>
      call.answer({ text: "Sure?", actions: [{ label: "Yes", line: "run next run:7 step:2" }] }, "private");
    await stage.gateway.press(amina, "run next run:7");
    stage.onCommand = (call) => call.answer({ text: "ok" }, "private");
    await stage.gateway.slash(amina, "help");
    await stage.gateway.press(amina, "run next run:7 step:2");
    expect(classes()).toEqual(["Friday", stage.gateway.guild.name, "Friday"]);
    expect(stage.calls.map(({ name }) => name)).toEqual(["run next", "help", "run next"]);
  });

  test("so is a choice from a list", async () => {
    await callTo(
      Array.from({ length: 8 }, (_, at) => ({ label: `Plan ${at}`, line: `run start plan:P${at}` })),
    );
    await stage.gateway.press(amina, "run start plan:P3");
    expect(stage.calls[0]).toMatchObject({ name: "run start", options: { plan: "P3" } });
    expect(classes()).toEqual(["Friday"]);
  });

  test("so are the form that a key opens, and what is offered in it", async () => {
    await callTo([{ label: "Make a plan", line: "plan" }]);
    const opened = await stage.gateway.press(amina, "plan");
    expect(stage.completions[0]?.place.className).toBe("Friday");
    await stage.gateway.slash(amina, "help");
    await stage.gateway.submit(amina, opened, { film: "Pier 100", temp: "20" }, { isDirect: true });
    expect(stage.calls.at(-1)).toMatchObject({ name: "plan", options: { film: "Pier 100" } });
    expect(classes()).toEqual([stage.gateway.guild.name, "Friday"]);
  });

  test("so is a roll that is rated from the message's menu", async () => {
    await callTo([{ label: "Good", line: "roll rate roll:L12 rating:4" }]);
    const message = stage.gateway.ledger.messages.at(-1);
    if (!message) throw new Error("nothing was said");
    const opened = await stage.gateway.useMenu(amina, "Rate this roll", message);
    await stage.gateway.submit(amina, opened, { rating: "4" }, { isDirect: true });
    expect(stage.calls[0]).toMatchObject({ name: "roll rate", options: { roll: "L12" } });
    expect(classes()).toEqual(["Friday"]);
  });

  test("the one that was pressed goes, with those about the same", async () => {
    await callTo([
      { label: "Good", line: "roll rate roll:L12 rating:4" },
      { label: "Poor", line: "roll rate roll:L12 rating:2" },
      { label: "Next", line: "run next run:7" },
    ]);
    const message = stage.gateway.ledger.messages.at(-1);
    await stage.gateway.press(amina, "roll rate roll:L12 rating:4");
    expect(JSON.stringify(message?.components)).not.toContain("L12");
    expect(JSON.stringify(message?.components)).toContain("run next run:7");
  });

  test("a class they are in no more is not guessed", async () => {
    await callTo([{ label: "Next", line: "run next run:7" }]);
    stage.directory.classes.set(`discord:${amina.id}`, [place(stage.gateway.guild.id, "Tuesday")]);
    expect((await stage.gateway.press(amina, "run next run:7")).text).toMatch(/class's server/);
    expect(stage.calls).toEqual([]);
  });

  test("in the class's channel the server is the class, and the key its line alone", async () => {
    await stage.port.send(aDelivery(stage, { actions: [{ label: "Next", line: "run next run:7" }] }));
    expect(JSON.stringify(stage.gateway.ledger.messages.at(-1)?.components)).toContain('"run next run:7"');
    await stage.gateway.press(amina, "run next run:7");
    expect(stage.calls[0]?.place.classKey).toBe(`discord:${stage.gateway.guild.id}`);
  });
});
