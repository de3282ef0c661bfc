import { expect, test } from "vitest";
import { createKnownViews, textOf } from "../../../../bot/chat/room/known-views.ts";
import { speaking } from "../../../../commands/speech/language.ts";
import { advance } from "../../../../commands/run/machine.ts";
import { viewOf } from "../../../../commands/run/view.ts";
import { openStores } from "../../../../store/index.ts";
import { aPlan, aRun, START } from "../../../support/make.ts";

test("a view is made once for a run as it is, in each language, and anew once the run has changed", () => {
  const stores = openStores(":memory:");
  const { id: classId } = stores.classes.add("room:1", "Tuesday", "UTC", false, START);
  const { id: _id, number: _number, ...draft } = aRun({ classId, plan: aPlan({ tank: 2 }) });
  const added = stores.runs.add(draft);
  const read = () => stores.runs.get(added.id) ?? added;
  const viewIn = createKnownViews();

  const first = viewIn(read(), "Mina", "en");
  expect(viewIn(read(), "Mina", "en")).toBe(first);
  expect(first).toEqual(viewOf(added, "Mina"));
  expect(textOf(first)).toBe(JSON.stringify(first));
  expect(viewIn(read(), "Mina", "de")).toEqual(speaking("de", () => viewOf(added, "Mina")));
  expect(viewIn(read(), "Jo", "en").owner).toBe("Jo");

  const begun = advance(added, { kind: "next", step: 0, sure: false, atMs: START });
  if (!begun.ok) throw new Error(begun.fault.code);
  stores.runs.save(begun.value);
  const running = viewIn(read(), "Mina", "en");
  expect(running).toEqual(viewOf(begun.value, "Mina"));
  expect(running.phase).toBe("running");
  // What was taken back in the store is taken back here.
  stores.runs.save(added);
  expect(viewIn(read(), "Mina", "en")).toEqual(first);
  stores.close();
});
