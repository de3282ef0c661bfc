import { describe, expect, it } from "vitest";
import { peopleOf } from "../../../../commands/class/say/audience.ts";
import { aPlan, aRun } from "../../../support/make.ts";
import { createRoom, type Room } from "../../../support/room.ts";

const running = (step: number) => ({ kind: "running", step, startedAtMs: 0, endsAtMs: 1 }) as const;

describe("the audience", () => {
  const runs = [
    aRun({ personId: "room:a", phase: running(0) }),
    aRun({ personId: "room:b", phase: running(3) }),
    aRun({ personId: "room:c", phase: { kind: "waiting", step: 3, sinceMs: 0 } }),
    aRun({ personId: "room:d", phase: running(4) }),
    aRun({ personId: "room:b", phase: running(6) }),
  ];

  it.each([
    [{ kind: "everyone" } as const, []],
    [{ kind: "working" } as const, ["room:a", "room:b", "room:c", "room:d"]],
    [{ kind: "at", step: "fix" } as const, ["room:b", "room:c"]],
    [{ kind: "before", step: "fix" } as const, ["room:a", "room:b", "room:c"]],
    [{ kind: "at", step: "stop" } as const, []],
  ])("%o is %j", (audience, people) => {
    expect(peopleOf(audience, runs)).toEqual(people);
  });
});

function atWork(room: Room, person: string): void {
  room.says(person, "/help");
  room.stores.plans.add(1, `room:${person.toLowerCase()}`, aPlan(), room.clock.now());
  room.says(person, "/run start");
}

describe("/class say", () => {
  it("reaches those at a step and nobody else, and shows who has it", async () => {
    const room = createRoom();
    atWork(room, "Mina");
    atWork(room, "Ben");
    room.says("Mina", "/run next");
    const said = room.says(
      "Iris",
      "/class say developer B3 is used up, take B5 to:at step:develop",
      "teacher",
    );
    expect(said).toBe("On its way to **2 people**: Mina and Ben.");
    expect(room.says("Iris", "/class said", "teacher")).toContain("**0 of 2** reached.");
    await room.pass(1);
    expect(room.heard.map(({ personId, text }) => [personId, text])).toContainEqual([
      "room:ben",
      "**Iris:** developer B3 is used up, take B5",
    ]);
    expect(room.press("Iris", "Refresh", "teacher")).toContain("**2 of 2** reached.");
  });

  it("says to the whole class in one message", async () => {
    const room = createRoom();
    room.says("Iris", "/class say ten minutes to the bell", "teacher");
    await room.pass(1);
    expect(room.heard.map(({ personId }) => personId)).toEqual([null]);
    expect(room.says("Iris", "/class said", "teacher")).toContain("- the class, in its channel: has it");
  });

  it("shows a person who could only be called by name", async () => {
    const room = createRoom();
    atWork(room, "Mina");
    room.outcomes.push({ kind: "refused", detail: "closed" });
    room.says("Iris", "/class say hello to:working", "teacher");
    await room.pass(2);
    expect(room.says("Iris", "/class said", "teacher")).toMatch(
      /- Mina: has it since .* \(called by name in the class's channel\)/,
    );
  });

  it("says nothing to nobody, and offers everyone", () => {
    const room = createRoom();
    const refused = room.asks("Iris", "/class say fixer is retired to:at step:fix", "teacher");
    expect(refused.code).toBe("ERR_NOBODY");
    expect(room.press("Iris", "Say it to everyone", "teacher")).toContain("the whole class");
  });

  it("keeps people from speaking in the bot's own marks", async () => {
    const room = createRoom();
    room.says("Iris", "/class say **<@everyone>** come", "teacher");
    await room.pass(1);
    expect(room.heard[0]?.text).not.toContain("<@everyone>");
  });
});
