import { describe, expect, test } from "vitest";
import { createRoom, type Room } from "../../../support/room.ts";
import { aNewRoll } from "../../../support/rolls.ts";
import { ENGLISH_WORDS } from "../../../support/english.ts";

/* The list of a new class: ticked off by what the class has, whoever brought it there. */

/** An empty class of its own, as the page makes one. */
function newClass(): Room {
  const room = createRoom();
  room.stores.db.exec("update classes set demo = 0");
  for (const { id } of room.stores.sheets.list(1)) room.stores.sheets.remove(1, id);
  for (const { number } of room.stores.tanks.list(1)) room.stores.tanks.remove(1, number);
  room.stores.rooms.setSecret(1, "join", "abc1de", room.clock.now());
  return room;
}

const states = (room: Room): string => {
  const { fields = {} } = room.asks("Tess", "/class firstday", "teacher").reply;
  const steps = fields["steps"] as { readonly step: string; readonly state: string }[];
  return steps.map(({ step, state }) => `${step} ${state}`).join(", ");
};
const nextOf = (room: Room): unknown =>
  room.asks("Tess", "/class firstday", "teacher").reply.fields?.["next"];

describe("/class firstday", () => {
  test("goes from one step to the next by the keys of each, until the class can develop", async () => {
    const room = newClass();
    expect(nextOf(room)).toBe("name");
    expect(room.press("Tess", "Keep both", "teacher")).toContain("Noted: the name and the time zone.");
    expect(nextOf(room)).toBe("tanks");
    room.says("Tess", "/tank add numbers:1-12 reels:2 volume:500 ml", "teacher");
    expect(nextOf(room)).toBe("times");
    room.says(
      "Tess",
      '/sheet import film:"Kelp 50" developer:Brine dilution:1+9 speed:50 file:"EI\t20 °C\t24 °C\n50\t9\t6 1/2"',
      "teacher",
    );
    expect(nextOf(room)).toBe("bottles");
    room.says("Tess", "/batch mix kind:fixer product:Pier Fix volume:1 l dilution:1+4", "teacher");
    // One of the two: the other is still asked for, and no longer the one there is.
    const bottles = room.asks("Tess", "/class firstday", "teacher").reply;
    expect(bottles.fields?.["next"]).toBe("bottles");
    expect(bottles.actions?.map(({ label }) => label)).toEqual(["Enter a developer", "Later"]);
    room.says("Tess", "/batch restock product:Brine kind:developer size:1 l dilution:1+9 packs:1", "teacher");
    expect(nextOf(room)).toBe("code");
    expect(room.says("Tess", "/class firstday", "teacher")).toContain("**ABC-1DE**");
    room.says("Mina", "/help");
    expect(nextOf(room)).toBe("trial");
    room.press("Tess", "Start the trial run", "teacher");
    for (let second = 0; second < 180 && room.stores.runs.open(1).length > 0; second += 1) {
      const [run] = room.stores.runs.open(1);
      if (run?.phase.kind === "waiting") room.says("Tess", `/run next run:${run.number}`, "teacher");
      await room.pass(1);
    }
    expect(room.says("Tess", "/class firstday", "teacher")).toContain("6 of 6 done");
    expect(room.says("Tess", "/class firstday", "teacher")).toContain("the class can develop");
    expect(room.asks("Mina", "/plan film:Kelp 50 temp:22C tank:3").kind).toBe("done");
  });

  test("what is put off is kept, is no longer asked for, and is ticked off all the same once it is done", () => {
    const room = newClass();
    expect(nextOf(room)).toBe("name");
    expect(room.press("Tess", "Later", "teacher")).toContain("Name and time zone _(later)_");
    expect(states(room)).toContain("name later, tanks open");
    room.says("Tess", "/class firstday later:tanks", "teacher");
    expect(states(room)).toContain("tanks later");
    // Setting something else up keeps it.
    room.says("Tess", "/class setup sinks:6", "teacher");
    expect(states(room)).toContain("tanks later");
    room.says("Tess", "/tank add numbers:1 volume:300 ml", "teacher");
    expect(states(room)).toContain("tanks done");
    for (const step of ["times", "bottles", "code", "trial"])
      room.says("Tess", `/class firstday later:${step}`, "teacher");
    expect(room.says("Tess", "/class firstday", "teacher")).toContain("What is left can wait.");
    room.says("Tess", "/class firstday later:none", "teacher");
    expect(nextOf(room)).toBe("name");
  });

  test("help names the next of them, with its key, and only to who may do it", () => {
    const room = newClass();
    const { reply } = room.asks("Tess", "/help", "teacher");
    expect(reply.text.split("\n")[0]).toMatch(/^\*\*Next before the first film: Name and time zone\.\*\*/);
    expect(reply.actions?.[0]?.label).toBe("Keep both");
    expect(room.asks("Tess", "/help", "aide").reply.text).not.toContain("first film");
    expect(room.asks("Mina", "/class firstday").code).toBe("ERR_ROLE");
  });

  test("a class with rolls in its log is past it, and so is the invented one", async () => {
    const room = createRoom();
    expect(room.says("Tess", "/class firstday", "teacher")).toContain("The invented class has all it needs.");
    expect(room.says("Tess", "/help", "teacher")).toContain("not set up yet");
    const own = newClass();
    own.says("Tess", "/help", "teacher");
    own.stores.rolls.add(aNewRoll({ personId: "room:tess", runId: null as never }));
    expect(own.says("Tess", "/class firstday", "teacher")).toContain("past its first film");
  });

  test("says every step in German", () => {
    const room = newClass();
    room.says("Tess", "/mine language de", "teacher");
    for (const step of ["name", "tanks", "times", "bottles", "code", "trial"]) {
      const { reply } = room.asks("Tess", "/class firstday", "teacher");
      expect(reply.fields?.["next"]).toBe(step);
      const said = [
        reply.text.replace(/```[^]*?```|`[^`]*`|Harbour workshop[^,]*, evening class \(invented demo\)/g, ""),
        ...(reply.actions ?? []).map(({ label }) => label),
      ].join("\n");
      expect(ENGLISH_WORDS.exec(said.replace(/Harbour workshop.*?demo\)/, ""))?.[0], said).toBe(undefined);
      room.says("Tess", `/class firstday later:${step}`, "teacher");
    }
  });
});
