import { expect, test } from "vitest";
import { createGuideBot } from "../../../../bot/chat/room-page/guide-bot.ts";

const START = 1_000_000;

test("the tour goes from the plan to the end of the run by its own buttons", () => {
  const bot = createGuideBot();
  expect(bot.stage).toBe("start");
  expect(bot.say("/plan film:x temp:20", START)?.text).toContain("9:00");
  expect(bot.stage).toBe("planned");
  let now = START;
  let reply = bot.say("run start plan:1", now);
  const lines: string[] = [];
  for (let round = 0; round < 40 && bot.stage !== "over"; round += 1) {
    const next = reply?.actions?.find(({ weight }) => weight === "main");
    if (bot.stage === "waiting" && next) {
      lines.push(next.line);
      reply = bot.say(next.line, now);
    }
    for (let at = bot.nextCallAt(); at !== undefined && bot.stage === "running"; at = bot.nextCallAt()) {
      now = at;
      for (const call of bot.callsUntil(now)) {
        // Each is decided at its own moment, so none is late.
        expect(call.text).not.toContain("late");
        if ((call.actions ?? []).length > 0) reply = { text: call.text, actions: call.actions ?? [] };
      }
    }
  }
  expect(bot.stage).toBe("over");
  expect(lines[0]).toBe("run next run:1 step:0");
  expect(new Set(lines).size).toBe(lines.length);
});

test("a correction moves what is still to be called", () => {
  const bot = createGuideBot();
  bot.say("/plan", START);
  bot.say("/run start", START);
  bot.say("/run next", START);
  bot.callsUntil(START);
  const before = bot.nextCallAt() ?? 0;
  // Pressed at START, poured 20 s before.
  bot.say("/run correct ago:50 s", START + 30_000);
  expect(bot.nextCallAt()).toBe(before - 20_000);
});
