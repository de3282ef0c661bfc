import { describe, expect, test } from "vitest";
import { callsOf } from "../../../../bot/chat/room-page/calls.ts";
import { de } from "../../../../bot/chat/room-page/words.de.ts";
import { en } from "../../../../bot/chat/room-page/words.en.ts";
import { nameOfView } from "../../../../commands/run/run-view.ts";
import { viewOf } from "../../../../commands/run/view.ts";
import { runNameOf } from "../../../../store/shapes/run.ts";
import { aRun, START } from "../../../support/make.ts";
import { after, aTrayRun, next } from "../../../support/trays.ts";

/* What the page calls a run: a film by its tank, prints by their line of trays. */

const prints = after(aTrayRun({ number: 9 }), next(START));
const film = aRun({ number: 7 });

describe("a run's name on the page", () => {
  test("is that of the run itself, of prints and of a trial too", () => {
    for (const run of [film, prints, { ...film, speed: 60 }])
      expect(nameOfView(viewOf(run, "Mina"))).toEqual(runNameOf(run));
  });

  test("tells trays as it tells a tank, in both languages", () => {
    expect(en.runs.name(nameOfView(viewOf(prints, "")))).toBe("R9 · Trays 1");
    expect(de.runs.name(nameOfView(viewOf(prints, "")))).toBe("R9 · Schalen 1");
    expect(de.runs.name({ number: 7, tank: 3, isTrial: true })).toBe("Probelauf R7 · Dose 3");
    expect(en.runs.name({ number: 7, tank: null })).toBe("R7");
  });

  test("a plan that goes through no bath by a temperature names none", () => {
    for (const { runs } of [en, de]) expect(runs.planned("", "")).toBe("");
    expect(en.runs.planned("House MQ 1+1", "20 °C")).toBe("in House MQ 1+1 at 20 °C");
  });

  test("stands on each of its calls", () => {
    const calls = callsOf(viewOf(prints, ""));
    expect(calls.length).toBeGreaterThan(0);
    for (const { run } of calls) expect(run).toEqual({ number: 9, tank: null, trays: 1 });
  });
});

test("the words over one's runs fit prints as well as films", () => {
  for (const { runs } of [en, de])
    for (const said of [runs.title, runs.none, runs.ofClass(1), runs.ofClass(2)])
      expect(said).not.toMatch(/film|tank|dose/i);
});
