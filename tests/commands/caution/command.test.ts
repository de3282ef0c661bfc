import { describe, expect, it } from "vitest";
import { TASKS } from "../../../commands/caution/tasks.ts";
import { createRoom } from "../../support/room.ts";

describe("/caution", () => {
  it.each(TASKS)("for %s says what to mind and who has the last word", (task) => {
    const { reply } = createRoom().asks("Mina", `/caution ${task}`);
    expect(reply.text.split("\n- ").length).toBeGreaterThan(2);
    expect(reply.text).toContain("its safety data sheet and your school's rules come first");
    expect(reply.fields).toEqual({ tasks: [task] });
  });

  it("has everything in reach from anything, within what one message holds", () => {
    const { reply } = createRoom().asks("Mina", "/caution");
    for (const about of [
      "Acid into water",
      "Never bring acid and household bleach together",
      "carries silver",
      "Gloves",
    ])
      expect(reply.text).toContain(about);
    expect(reply.text.length).toBeLessThanOrEqual(2000);
    expect(reply.actions?.map(({ line }) => line)).toContain("caution about:spill");
  });

  it("names the tasks where one is asked for that there is not", () => {
    expect(createRoom().says("Mina", "/caution dancing")).toContain(
      `mixing, developing, fixing, "trays, dryers and light", waste or a spill`,
    );
  });
});
