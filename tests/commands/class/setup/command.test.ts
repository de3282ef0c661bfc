import { describe, expect, it } from "vitest";
import { roleOfMember } from "../../../../commands/class/roles.ts";
import { findZone, suggestZones } from "../../../../commands/class/setup/zones.ts";
import { createDispatch } from "../../../../bot/calls/dispatch.ts";
import { commands } from "../../../../commands/index.ts";
import { openStores } from "../../../../store/index.ts";
import { createFakeClock } from "../../../support/clock.ts";
import { createMemoryLog, createRoom } from "../../../support/room.ts";

describe("/class setup", () => {
  it("shows what is set, and asks the next with the usual answers as buttons", () => {
    const room = createRoom();
    const first = room.asks("Iris", "/class setup", "teacher");
    expect(first.reply.text).toContain("**2 of 11** parts are set.");
    expect(first.reply.text).toContain("**Next: Name.**");
    expect(first.reply.text).toContain("- Tanks: 5");
    expect(room.press("Iris", "Keep this name", "teacher")).toContain("Noted: the name.");
  });

  it("lets each part be set again", () => {
    const room = createRoom();
    room.says("Iris", "/class setup sinks:2", "teacher");
    room.says("Iris", "/class setup sinks:3", "teacher");
    expect(room.stores.classes.get(1)?.habits).toMatchObject({ sinks: 3, answered: ["sinks"] });
  });

  it("takes many parts in one line, and what is left out stays", () => {
    const room = createRoom();
    room.says("Iris", "/class setup name:Harbour two zone:lisbon fixmin:8 min stop:acid", "teacher");
    const school = room.stores.classes.get(1);
    expect(school).toMatchObject({ name: "Harbour two", zone: "Europe/Lisbon" });
    expect(school?.habits).toMatchObject({ fixMinSeconds: 480, stop: "acid", washMinSeconds: 180 });
  });

  it("changes nothing at all where one part is wrong", () => {
    const room = createRoom();
    const refused = room.asks("Iris", "/class setup name:New sinks:4 zone:Lisbonn", "teacher");
    expect(refused.code).toBe("ERR_UNKNOWN_ZONE");
    expect(refused.reply.text).toContain("Is it Europe/Lisbon?");
    expect(room.stores.classes.get(1)).toMatchObject({ zone: "UTC", habits: { sinks: 12 } });
    expect(room.stores.classes.get(1)?.name).not.toBe("New");
  });

  it("reaches the plan: a class's own agitation and fixing count", () => {
    const room = createRoom();
    room.says("Iris", "/class setup agitation:60/10/30 fixmin:10 min", "teacher");
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    const plan = room.stores.plans.latest(1, "room:mina")?.plan;
    expect(plan?.steps[0]?.agitation).toMatchObject({
      initialSeconds: 60,
      burstSeconds: 10,
      cycleSeconds: 30,
    });
    expect(plan?.steps.find(({ kind }) => kind === "fix")?.seconds).toBe(600);
    room.says("Iris", "/class setup agitation:sheet", "teacher");
    expect(room.stores.classes.get(1)?.habits.agitation).toBeNull();
  });

  it("refuses times out of range in words", () => {
    const room = createRoom();
    expect(room.says("Iris", "/class setup fixmin:5 s", "teacher")).toContain("between 1:00 and 30:00");
  });

  it("is the teacher's alone", () => {
    const room = createRoom();
    expect(room.asks("Mina", "/class setup").code).toBe("ERR_ROLE");
    expect(room.asks("Mina", "/class setup sinks:9", "aide").code).toBe("ERR_ROLE");
  });
});

describe("/class periods", () => {
  it("adds, lists and takes off periods, and says when the bell rings", () => {
    const room = createRoom();
    const added = room.says(
      "Iris",
      "/class periods days:mon, thu from:18:00 to:20:30 name:Evening",
      "teacher",
    );
    expect(added).toContain("**2 periods** a week (UTC):");
    // The clock stands at Thursday 18:00.
    expect(added).toContain("The bell rings at 20:30:00, in 2 h 30 min.");
    expect(room.says("Iris", "/class periods remove:2", "teacher")).toContain(
      "Taken off: Thursday 18:00-20:30, Evening.",
    );
    expect(room.says("Iris", "/class periods", "teacher")).toContain("The next one begins");
  });

  it("refuses in words what it can't read", () => {
    const room = createRoom();
    const ask = (line: string): string | null => room.asks("Iris", line, "teacher").code;
    expect(ask("/class periods days:mon from:18:00")).toBe("ERR_INCOMPLETE");
    expect(ask("/class periods days:noday from:18:00 to:19:00")).toBe("ERR_NO_DAYS");
    expect(ask("/class periods days:mon from:6 to:19:00")).toBe("ERR_NO_CLOCK");
    expect(ask("/class periods remove:1")).toBe("ERR_NO_SUCH_PERIOD");
  });
});

describe("/class role", () => {
  it("makes an aide of a student, and never takes the last teacher", () => {
    const room = createRoom();
    room.says("Mina", "/help");
    room.says("Iris", "/help", "teacher");
    expect(room.says("Iris", "/class role person:mina role:aide", "teacher")).toBe(
      "Mina is an aide of this class from now on.",
    );
    expect(room.stores.members.find(1, "room:mina")?.role).toBe("aide");
    expect(room.asks("Iris", "/class role person:Iris role:student", "teacher").code).toBe(
      "ERR_LAST_TEACHER",
    );
    expect(room.asks("Iris", "/class role person:Nobody role:aide", "teacher").code).toBe(
      "ERR_UNKNOWN_PERSON",
    );
  });
});

describe("roles of a chat", () => {
  const member = { roleIds: ["812345678901234567"], roleNames: ["Lab aides"], managesServer: false };

  it.each([
    [{ aideRole: null, teacherRole: null }, "student"],
    [{ aideRole: "lab aides", teacherRole: null }, "aide"],
    [{ aideRole: "@Lab aides", teacherRole: null }, "aide"],
    [{ aideRole: "<@&812345678901234567>", teacherRole: null }, "aide"],
    [{ aideRole: "812345678901234567", teacherRole: "Lab aides" }, "teacher"],
    [{ aideRole: "812345678901234568", teacherRole: null }, "student"],
    [undefined, "student"],
  ])("%o makes %s", (habits, role) => {
    expect(roleOfMember(habits, member)).toBe(role);
  });

  it("never lock out whoever manages the server", () => {
    expect(roleOfMember({ aideRole: null, teacherRole: "Staff" }, { ...member, managesServer: true })).toBe(
      "teacher",
    );
  });
});

describe("time zones", () => {
  it.each([
    ["Europe/Lisbon", "Europe/Lisbon"],
    ["lisbon", "Europe/Lisbon"],
    ["new york", "America/New_York"],
    ["utc", "UTC"],
    ["Lisbonn", undefined],
    ["", undefined],
  ])("%j is %s", (typed, zone) => {
    expect(findZone(typed)).toBe(zone);
  });

  it("are suggested over a slip of the finger", () => {
    expect(suggestZones("Lisbonn", 3)).toContain("Europe/Lisbon");
    expect(suggestZones("madr", 3)[0]).toBe("Europe/Madrid");
  });
});

describe("a chat with channels", () => {
  function callFrom(channelRef: string | null, missingPermissions: readonly string[]) {
    const stores = openStores(":memory:");
    const clock = createFakeClock();
    const dispatch = createDispatch({ commands, stores, clock, log: createMemoryLog() });
    return (name: string, options: Readonly<Record<string, string>>) =>
      dispatch.run(
        {
          callId: null,
          name,
          options,
          person: { id: "discord:1", name: "Iris" },
          role: "teacher",
          place: { classKey: "discord:9", className: "Harbour", channelRef, missingPermissions },
        },
        clock.now(),
      );
  }

  it("is asked for its channel and its roles", () => {
    const call = callFrom("77", []);
    expect(call("class setup", {}).reply.fields?.["missing"]).toContain("roles");
    expect(call("class setup", { channel: "here" }).reply.text).toContain("- Class channel: set");
    expect(call("class setup", { aiderole: "Lab aides" }).reply.text).toContain("aide: Lab aides");
    expect(call("class board", { channel: "here" }).reply.text).toContain("The board stands in this channel");
  });

  it("is told what the bot lacks in a channel, and how to give it", () => {
    const call = callFrom("77", ["Send Messages", "Attach Files"]);
    const { text } = call("class setup", { channel: "here" }).reply;
    expect(text).toContain(
      "- Class channel: set, but I may not Send Messages and Attach Files there _(not set)_",
    );
    expect(text).toContain(
      "Open the channel's settings, then Permissions, choose my role, and turn on Send Messages",
    );
    expect(call("class board", { channel: "here" }).code).toBe("ERR_NO_CHANNEL");
  });

  it("has no pages that are closed, and says so", () => {
    const call = callFrom("77", []);
    expect(call("class setup", { closedpages: "yes" }).code).toBe("ERR_NO_CLOSED_PAGES");
    expect(call("class setup", {}).reply.text).not.toContain("closed pages");
  });

  it("can't have a channel where a call came from none", () => {
    expect(callFrom(null, [])("class setup", { channel: "here" }).code).toBe("ERR_NO_CHANNEL");
  });
});
