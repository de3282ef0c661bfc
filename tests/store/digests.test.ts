import { expect, it } from "vitest";
import { openStores } from "../../store/index.ts";
import { START } from "../support/make.ts";
import { aNewRoll } from "../support/rolls.ts";

it("judges bottles by the newest rolls, however many there are", () => {
  const stores = openStores(":memory:");
  const { id: classId } = stores.classes.add("room:one", "One", "UTC", false, START);
  stores.atomically(() => {
    for (let at = 0; at < 2010; at += 1) {
      const roll = aNewRoll({ classId, runId: null as never, batches: `B${at}`, endedAt: START + at });
      stores.rolls.add({ ...roll, outcome: "finished" });
    }
  });
  const judged = stores.digests.judgedRolls(classId, START);
  expect(judged).toHaveLength(2000);
  expect([judged[0]?.batches, judged.at(-1)?.batches]).toEqual(["B2009", "B10"]);
  expect(stores.digests.judgedRolls(classId, START + 2005).map(({ batches }) => batches)).toHaveLength(5);
});
