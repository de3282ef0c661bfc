import { describe, expect, test } from "vitest";
import { createRoom } from "../../support/room.ts";

describe("the hot tap", () => {
  test.each(["50", "50C", "122F"])("is read from %s", (hot) => {
    const room = createRoom();
    // 1000 ml at 20 from 12 and 50: 210.5 ml hot and 789.5 ml cold (equal heats: h = (20 - 12) / (50 - 12)).
    const { reply } = room.asks("Mina", `/mix temper total:1 l target:20 cold:12 hot:${hot}`);
    expect(reply.text).toContain("211 ml hot + 789 ml cold");
  });
});
