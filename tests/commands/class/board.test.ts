import { describe, expect, it } from "vitest";
import { boardOf } from "../../../commands/class/board.ts";
import { boardText } from "../../../commands/class/board-words.ts";
import { renderInstants } from "../../../commands/speech/wording.ts";
import { aPlan, aRun, START } from "../../support/make.ts";
import { createRoom } from "../../support/room.ts";

const MEMBERS = [
  { personId: "room:mina", name: "Mina" },
  { personId: "room:ben", name: "Ben" },
];
const running = (step: number, endsIn: number) =>
  ({ kind: "running", step, startedAtMs: START, endsAtMs: START + endsIn * 1000 }) as const;
const waiting = (step: number, sinceAgo: number) =>
  ({ kind: "waiting", step, sinceMs: START - sinceAgo * 1000 }) as const;

describe("the board", () => {
  it("shows person, step, end and next cue of a running tank", () => {
    const run = aRun({ plan: aPlan({ tank: 3 }), phase: running(0, 540) });
    expect(boardOf([run], MEMBERS, START + 1000)).toEqual([
      {
        run: "R7",
        tank: 3,
        person: "Mina",
        step: "Developer",
        stepNumber: 1,
        stepCount: 8,
        state: "running",
        endsAtMs: START + 540_000,
        sinceMs: null,
        lateSeconds: 0,
        waitsForTank: null,
        isUnreached: false,
        nextCue: { text: "Agitate 5 s", atMs: START + 60_000 },
      },
    ]);
  });

  it.each([
    ["a first bath that is not in yet", waiting(0, 300), "loading"],
    ["a bath that is waited for 19 s after the developer", waiting(1, 19), "waiting"],
    ["the same at 20 s", waiting(1, 20), "late"],
    ["a wash that is waited for after the fixer", waiting(4, 60), "late"],
    ["a film that can wait in its wash", waiting(5, 3600), "waiting"],
    ["a film that hangs", waiting(7, 3600), "waiting"],
  ])("calls %s rightly", (_, phase, state) => {
    expect(boardOf([aRun({ phase })], MEMBERS, START)[0]?.state).toBe(state);
  });

  it("puts the most urgent first, and leaves out what is over", () => {
    const runs = [
      aRun({ number: 1, phase: waiting(0, 0) }),
      aRun({ number: 2, phase: running(3, 200) }),
      aRun({ number: 3, phase: running(0, 100) }),
      aRun({ number: 4, phase: waiting(1, 60) }),
      aRun({ number: 5, phase: waiting(7, 60) }),
      aRun({ number: 6, phase: { kind: "finished", atMs: START } }),
    ];
    expect(boardOf(runs, MEMBERS, START).map(({ run }) => run)).toEqual(["R4", "R3", "R2", "R5", "R1"]);
  });

  it("names a person who has left somebody", () => {
    expect(boardOf([aRun({ personId: "room:gone" })], MEMBERS, START)[0]?.person).toBe("somebody");
  });
});

describe("the board's message", () => {
  it("stays the same while only time goes by, and changes when a tank is late", () => {
    const run = aRun({ phase: waiting(1, 0) });
    const textAt = (seconds: number): string => boardText(boardOf([run], MEMBERS, START + seconds * 1000));
    expect(textAt(0)).toBe(textAt(19));
    expect(textAt(20)).not.toBe(textAt(19));
    expect(textAt(20)).toBe(textAt(500));
    expect(textAt(20)).toContain("**1 late**");
  });

  it("holds thirty tanks within what one message may hold", () => {
    const name = "Wilhelmina-Alexandra Ravensbourne";
    const runs = Array.from({ length: 30 }, (_, at) =>
      aRun({ number: at + 1, plan: aPlan({ tank: at + 1 }), phase: running(3, 300 + at) }),
    );
    const text = boardText(boardOf(runs, [{ personId: "room:mina", name }], START));
    // The chat's own form of an instant.
    const sent = renderInstants(text, (atMs, style) => `<t:${Math.floor(atMs / 1000)}:${style.slice(0, 1)}>`);
    expect(sent.length).toBeLessThanOrEqual(2000);
    expect(text).toMatch(/and \d+ more$/);
    const short = boardText(boardOf(runs, MEMBERS, START));
    expect(short.length).toBeLessThanOrEqual(2000);
  });

  it("says so where no tank is in use", () => {
    expect(boardText([])).toBe("**No tank is in use.**");
  });
});

describe("/class board", () => {
  it("shows everybody's tanks to a student", () => {
    const room = createRoom();
    room.says("Ben", "/help");
    room.stores.plans.add(1, "room:ben", aPlan({ tank: 2 }), room.clock.now());
    room.says("Ben", "/run start");
    expect(room.says("Mina", "/class board")).toContain("**T2** Ben, Developer: not poured in yet");
  });

  it("has a page of its own in the room, and is the teacher's to place", () => {
    const room = createRoom();
    expect(room.asks("Mina", "/class board channel:here").code).toBe("ERR_ROLE");
    expect(room.asks("Iris", "/class board channel:here", "teacher").code).toBe("ERR_BOARD_HAS_A_PAGE");
  });
});
