import { beforeEach, describe, expect, test } from "vitest";
import { makeNumber } from "../../../commands/speech/wording.ts";
import { createRoom, type Room } from "../../support/room.ts";

/* What prints are made on, asked for by its kind or by its box. The box is invented. */

let room: Room;
const plan = (given: string) => room.asks("Mina", `/tray plan ${given} temp:20C`);

beforeEach(() => {
  room = createRoom();
  room.says("Tess", "/help", "teacher");
  room.says("Ada", "/tray set developer:Dock Print dilution:1+9 rc:60s fibre:2min", "aide");
  room.says("Ada", "/print paper paper:2 name:Harbour Gloss kind:fibre size:24x30 cm", "aide");
});

describe("a box of paper", () => {
  test("tells its kind and its size by its number, with its letter or without", () => {
    for (const paper of [makeNumber("paper", 2), "2", "x2"]) {
      const { reply } = plan(`paper:${paper}`);
      expect(reply.fields).toMatchObject({ paper: "fibre", box: 2, shortMm: 240, longMm: 300 });
      expect(reply.text).toContain("1 print of 24x30 cm, fibre paper (box X2).");
    }
  });

  test("gives way to a size that is said: a box is cut, too", () => {
    const { reply } = plan('paper:X2 size:"18x24 cm"');
    expect(reply.fields).toMatchObject({ paper: "fibre", box: 2, shortMm: 180, longMm: 240 });
  });

  test("is not needed: a kind alone is a sheet of the usual size from no box", () => {
    const { reply } = plan("paper:resin-coated");
    expect(reply.fields).toMatchObject({ paper: "resin-coated", box: null, shortMm: 180, longMm: 240 });
    expect(reply.text).not.toContain("box");
  });

  test("that the class has not, or a paper that is none, is refused with what there is", () => {
    expect(plan("paper:X9").code).toBe("ERR_UNKNOWN_PAPER");
    expect(plan("paper:X9").reply.text).toContain("The class has X2");
    const none = plan("paper:shiny");
    expect(none.code).toBe("ERR_UNKNOWN_PAPER");
    expect(none.reply.text).toContain("resin-coated or fibre");
    expect(none.reply.again?.option).toBe("paper");
  });

  test("asks for silver like its kind: a fibre box in a fixer that carries too much is refused", () => {
    for (const line of [
      "kind:paper-developer product:Dock Print dilution:1+9 volume:2 l",
      "kind:paper-stop product:Harbour Stop dilution:1+19 volume:2 l",
      "kind:paper-fixer product:Pier Fix dilution:1+4 volume:2 l",
    ])
      room.says("Ada", `/batch mix ${line}`, "aide");
    room.says("Ada", "/batch test batch:B3 silver:0.6", "aide");
    expect(plan("paper:fibre").code).toBe("ERR_PRINT_SILVER");
    expect(plan("paper:X2").code).toBe("ERR_PRINT_SILVER");
  });
});
