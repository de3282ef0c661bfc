import { describe, expect, test } from "vitest";
import { signTest, weigh, type LookedAt } from "../../../../commands/sheet/judge/weigh.ts";
import { aNewRoll } from "../../../support/rolls.ts";
import { createRoom } from "../../../support/room.ts";

const rolls = (count: number, look: string, dosePerMille: number | null = 1000): LookedAt[] =>
  Array.from({ length: count }, () => ({ look, rating: 3, dosePerMille, isDeveloperWorn: false }));

describe("what a class's negatives say of its time", () => {
  test("the sign test: 5 of 5 by chance is 1 in 32, 8 of 10 is 56 in 1024 (binomial, by hand)", () => {
    expect(signTest(5, 5)).toBeCloseTo(1 / 32, 10);
    expect(signTest(8, 10)).toBeCloseTo(56 / 1024, 10);
  });

  test("steadily too flat asks for 10 to 15 % more, too hard for as much less (Kodak F-4016)", () => {
    expect(weigh([...rolls(6, "flat"), ...rolls(9, "")]).percent).toBe(10);
    expect(weigh(rolls(6, "flat")).percent).toBe(15);
    expect(weigh([...rolls(6, "contrasty"), ...rolls(9, "")]).percent).toBe(-10);
  });

  test("few, or both ways, say nothing", () => {
    expect(weigh(rolls(3, "flat")).percent).toBe(0);
    expect(weigh([...rolls(5, "flat"), ...rolls(4, "dense")]).percent).toBe(0);
    expect(weigh([]).percent).toBe(0);
  });

  test("a roll that was not developed as planned explains itself, and a thin one may be the camera", () => {
    const verdict = weigh([...rolls(6, "thin", 880), ...rolls(2, "thin")]);
    expect(verdict).toMatchObject({ percent: 0, explained: 6, weak: 2, maybeCamera: 2 });
  });
});

test("a roll from a developer that the ledger had worn out is left out, and is said", () => {
  const worn = rolls(6, "flat").map((each) => ({ ...each, isDeveloperWorn: true }));
  expect(weigh([...worn, ...rolls(2, "flat")])).toMatchObject({ percent: 0, worn: 6, explained: 0, weak: 2 });
});

describe("/sheet judge and /sheet move", () => {
  test("a proposal has its key however long the names are, and the key makes the sheet the class's own", () => {
    const room = createRoom();
    const [film, developer] = [
      "Long Shore Panchromatic Special Edition 400",
      "Harbour Workshop Metol Quinol",
    ];
    room.says(
      "Aida",
      `/sheet add film:"${film}" developer:"${developer}" dilution:1+1 temp:20C time:10:00 speed:400 source:invented`,
      "aide",
    );
    const stored = room.stores.sheets.list(1).find(({ sheet }) => sheet.film === film);
    for (let at = 0; at < 6; at += 1) {
      const roll = room.stores.rolls.add(
        aNewRoll(
          { classId: 1, runId: null as never, film, developer, dilution: "1+1" },
          { dosePerMille: 1000 },
        ),
      );
      room.stores.rolls.blame(roll.id, "flat", null);
    }
    const { reply } = room.asks("Aida", `/sheet judge film:"${film}"`, "aide");
    const [adopt] = reply.actions ?? [];
    expect(adopt?.line.length).toBeLessThanOrEqual(100);
    room.says("Tess", `/${adopt?.line ?? ""}`, "teacher");
    const moved = room.stores.sheets.list(1).find(({ id }) => id === stored?.id)?.sheet.points[0];
    expect(moved?.seconds).toBe(690);
  });

  test("proposes nothing without rolls, and changes nothing by itself", () => {
    const room = createRoom();
    const before = room.stores.sheets.list(1);
    const said = room.says("Aida", '/sheet judge film:"Lantern 400" dilution:1+1', "aide");
    expect(said).toMatch(/^\*\*No change\*\*/);
    expect(room.stores.sheets.list(1)).toEqual(before);
  });

  test("a teacher moves the times, and each keeps what it was", () => {
    const room = createRoom();
    const move = '/sheet move film:"Lantern 400" dilution:stock percent:10';
    expect(room.asks("Aida", move, "aide").kind).toBe("refused");
    expect(room.says("Tess", move, "teacher")).toContain("7:00 is now 7:42");
    const sheet = room.stores.sheets.list(1).find(({ sheet: each }) => each.dilution.waterParts === 0)?.sheet;
    expect(sheet?.points.find(({ tenthsC }) => tenthsC === 200)).toMatchObject({ seconds: 462 });
    expect(sheet?.points[0]?.source).toMatch(/\+10 % on 7:00, .* by Tess; before: invented/);
  });
});
