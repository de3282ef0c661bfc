import { describe, expect, test } from "vitest";
import { createRoom } from "../support/room.ts";

const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1";

describe("one student's roll, from plan to sleeved negatives", () => {
  test("every cue comes at its second, and the log keeps what was done", async () => {
    const room = createRoom();
    expect(room.says("Mina", PLAN)).toContain("**9:00** at 20 °C");
    expect(room.press("Mina", "Start")).toContain(
      "Pour in the developer: 150 ml of concentrate and 150 ml of water, mixed. Press the button when the tank is full.",
    );
    expect(room.press("Mina", "Tank is full")).toContain("**9:00** left in the developer");

    await room.tick();
    expect(room.news("Mina")).toEqual([
      "**Agitate 30 s.** Turn the tank over and back, then tap it firmly on the bench 2 times. 0:00 of 9:00.\n_R1, tank 1_",
    ]);
    await room.pass(59);
    expect(room.news()).toEqual([]);
    await room.pass(1);
    expect(room.news("Mina")).toEqual([
      "**Agitate 5 s.** Turn the tank over and back, then tap it firmly on the bench 2 times. 1:00 of 9:00.\n_R1, tank 1_",
    ]);
    await room.pass(420);
    expect(room.news("Mina")).toHaveLength(7);
    await room.pass(35);
    expect(room.news("Mina")).toEqual(["**Pour out in 15 s.** Get ready: rinse 1.\n_R1, tank 1_"]);
    await room.pass(15);
    expect(room.news("Mina")[0]).toMatch(/^\*\*Pour out now \(10 s\)\.\*\*/);
    await room.pass(10);
    expect(room.news("Mina")[0]).toMatch(/^\*\*Now: rinse 1\.\*\* Fill the tank with water\./);

    for (const label of [
      "Water is in",
      "Water is in",
      "Fixer is in",
      "Wash is running",
      "Wetting agent is in",
      "Film hangs",
    ]) {
      expect(room.press("Mina", label)).toMatch(/left (in|for) /);
      await room.pass(1200);
    }
    expect(room.press("Mina", "Cut and sleeved")).toContain("In the log as L1.");
    const shown = room.says("Mina", "/roll show");
    expect(shown).toContain("Developer: 9:00 (planned 9:00)");
    expect(shown).toContain("tank 1");
    room.says("Mina", "/roll note note:milky patch near the edge");
    expect(room.says("Mina", "/roll find milky")).toContain("**1 roll**");
    expect(room.says("Mina", "/roll find thunder")).toContain("No roll in the log is like that");
  });

  test("a process that was away says how late it is and what to do now", async () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.press("Mina", "Start");
    room.press("Mina", "Tank is full");
    await room.tick();
    room.news();
    room.away(190);
    await room.tick();
    const [late, ...more] = room.news("Mina");
    expect(more).toEqual([]);
    expect(late).toMatch(
      /^\*\*Agitate 5 s\.\*\* .*\n\*\*10 s late\*\*: this was for .*\. 2 calls before it were missed\. Do it now if you have not yet\./,
    );
  });

  test("a run stopped half-way is in the log too, with what was reached", () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.press("Mina", "Start");
    room.press("Mina", "Tank is full");
    expect(room.says("Mina", "/run stop")).toMatch(/^Stop \*\*R1, tank 1\*\*\?/);
    expect(room.press("Mina", "Yes, stop it")).toContain("In the log as L1.");
    expect(room.says("Mina", "/roll show")).toContain("Fixer: not reached");
  });
});

describe("a student who gets it wrong", () => {
  test("taps twice, taps an old button, taps too early: a kind sentence, and nothing changes", async () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.press("Mina", "Start");
    room.press("Mina", "Tank is full");
    expect(room.says("Mina", "run next run:1 step:0")).toContain(
      "Noted already: the developer is running, 9:00 left.",
    );
    expect(room.says("Mina", "run next run:1 step:5")).toContain(
      "That button is from another step. Nothing was changed",
    );
    await room.pass(60);
    expect(room.says("Mina", "run next run:1 step:1")).toContain(
      "8:00 is left in the developer. Nothing was changed.",
    );
    expect(room.stores.runs.find(1, 1)?.phase).toMatchObject({ kind: "running", step: 0 });
  });

  test("forgot to tap: poured 20 s ago moves every call", async () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.press("Mina", "Start");
    room.away(20);
    expect(room.says("Mina", "/run correct ago:20")).toContain("8:40");
    await room.tick();
    room.news();
    await room.pass(40);
    expect(room.news("Mina")[0]).toContain("1:00 of 9:00");
  });

  test("a new temperature in mid-step changes what is left, and says by how much", async () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.press("Mina", "Start");
    room.press("Mina", "Tank is full");
    await room.pass(240);
    const said = room.says("Mina", "/run correct temp:22");
    // The demo's sheet: 9:00 at 20, 6:30 at 24, so 22 lies between: five ninths of about 7:38 are left, not of 9:00.
    expect(said).toMatch(
      /^22 °C \(71\.6 °F\) in the tank\. \*\*\d+ s shorter\*\*: 4:1\d left instead of 5:00\./,
    );
    expect(room.says("Mina", "/run correct temp:99")).toMatch(/99/);
  });

  test("another student's run is not theirs to change, an aide may", () => {
    const room = createRoom();
    room.says("Mina", PLAN);
    room.press("Mina", "Start");
    expect(room.asks("Otto", "run next run:1").code).toBe("ERR_NOT_YOURS");
    expect(room.asks("Ida", "run next run:1", "aide").kind).toBe("done");
  });

  test.each([
    ["/plan film:Nonesuch developer:House MQ temp:20", /Nonesuch/],
    ["/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:99", /99/],
    ["/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 volume:-5", /volume/],
    [`/roll note note:${"x".repeat(5000)}`, /too long: 5000 characters, at most 2000/],
    ["/plan film:📷 developer:'); drop table rolls;-- temp:20", /./],
    ["/plan film:**bold** developer:@everyone temp:20", /./],
    ["/run start plan:P99", /There is no plan P99/],
    ["/run next run:banana", /There is no run/],
  ])("%s is answered with a clear sentence, and nothing is lost", (line, sentence) => {
    const room = createRoom();
    const { kind, reply } = room.asks("Mina", line);
    expect(kind).toBe("refused");
    expect(reply.text).toMatch(sentence);
    expect(reply.text).not.toMatch(/(?<!\\)\*\*bold|@everyone(?!\u2060)(?<!@\u2060everyone)/);
    expect(room.stores.sheets.list(1).length).toBeGreaterThan(0);
  });
});

test("thirty students at once each hear their own cues, in order, and nobody else's", async () => {
  const room = createRoom();
  const names = Array.from({ length: 30 }, (_, index) => `Student ${index + 1}`);
  for (const name of names) {
    room.says(name, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    room.press(name, "Start");
    room.press(name, "Tank is full");
    room.away(1);
  }
  await room.pass(541);
  const heard = room.heard;
  for (const name of names) {
    const own = heard.filter(({ personId }) => personId === `room:${name.toLowerCase()}`);
    // First agitation, eight more, get ready, pour out, next bath.
    expect(own.length).toBeGreaterThanOrEqual(11);
    expect(own.map(({ dueAt }) => dueAt)).toEqual(own.map(({ dueAt }) => dueAt).sort((a, b) => a - b));
  }
});
