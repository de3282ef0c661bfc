import { describe, expect, test } from "vitest";
import type { Action } from "../../../commands/define.ts";
import { speaking } from "../../../commands/speech/language.ts";
import type { Step } from "../../../store/shapes/plan.ts";
import { cueMessage, type Lateness, lateWords, missedWords } from "../../../commands/run/cue-words.ts";
import { CUE_KINDS, type CueKind } from "../../../store/shapes/cue.ts";
import { faultWords } from "../../../commands/run/fault-words.ts";
import * as replies from "../../../commands/run/reply.ts";
import type { RunFault } from "../../../commands/run/machine.ts";
import type { Run } from "../../../store/shapes/run.ts";
import { doingNow } from "../../../commands/run/doing.ts";
import { cueWords, viewOf } from "../../../commands/run/view.ts";
import { sayInstants } from "../../../commands/speech/wording.ts";
import { englishIn } from "../../support/english.ts";
import { aPlan, aRun, someSteps, START } from "../../support/make.ts";
import { createRoom, type Room } from "../../support/room.ts";

const german = <T>(work: () => T): T => speaking("de", work);
const at = (step: number, over: Partial<Run> = {}): Run =>
  aRun({
    plan: aPlan({ tank: 3 }),
    phase: { kind: "running", step, startedAtMs: START, endsAtMs: START + 540_000 },
    ...over,
  });
const said = (run: Run, kind: CueKind, step: number): string => {
  const cue = { id: 1, key: "k", kind, step, number: 0, dueAtMs: START, madeAtMs: START };
  return sayInstants(cueMessage(run, { cue }, START).text, START, "UTC");
};

function room(): Room {
  const made = createRoom();
  made.says("Mina", "/mine language language:de");
  made.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
  return made;
}
const labelsOf = (actions: readonly Action[] = []): string[] => actions.map(({ label }) => label);

describe("what a run answers in German", () => {
  test("from the start to the end", async () => {
    const { says, press, pass } = room();
    expect(says("Mina", "/run start")).toMatch(
      /^\*\*R1, Dose 1\*\*: 9 min im Entwickler bei 20 °C\.\nAls Nächstes: Gieß den Entwickler ein: 150 ml Konzentrat und 150 ml Wasser, gemischt\./,
    );
    expect(says("Mina", "/run status")).toMatch(
      /^\*\*R1, Dose 1\*\*, Entwickler\. Gieß den Entwickler ein: 150 ml Konzentrat und 150 ml Wasser, gemischt\./,
    );
    expect(press("Mina", "Dose ist voll")).toMatch(
      /^\*\*9:00\*\* noch im Entwickler, bis 18:09:00 \(\*\*R1, Dose 1\*\*\)\.\nBewegen: .+\nAusgießen um 18:08:50, in 8 min 50 s\.$/,
    );
    await pass(60);
    expect(says("Mina", "/run next run:R1")).toBe(
      "Noch 8:00 im Entwickler. Es wurde nichts geändert. Ist das nächste Bad wirklich schon drin?",
    );
    expect(says("Mina", "/run correct ago:1:20")).toMatch(
      /^Notiert\. Alle Signale dieses Schritts sind verschoben\.\n\*\*7:40\*\* noch im Entwickler/,
    );
    await pass(460);
    expect(press("Mina", "Wasser ist drin")).toMatch(/^\*\*0:30\*\* noch in der Zwischenwässerung 1, bis /);
    expect(says("Mina", "/run stop")).toBe(
      "**R1, Dose 1** abbrechen? Die Signale enden jetzt, aber das Bad wirkt weiter: Mach nach der Uhr fertig oder frag die Lehrkraft. Im Filmbuch bleibt, was getan wurde.",
    );
    expect(press("Mina", "Ja, abbrechen")).toBe("**R1, Dose 1** ist abgebrochen. Im Filmbuch als L1.");
    expect(says("Mina", "/run next run:R1")).toBe(
      "R1, Dose 1 ist vorbei. Es wurde nichts geändert. Du findest den Film mit `/roll find`.",
    );
  });

  test("a new temperature, longer and shorter, with a decimal comma in and out", () => {
    const { says, press } = room();
    says("Mina", "/run start");
    press("Mina", "Dose ist voll");
    const colder = says("Mina", "/run correct temp:19,5");
    expect(colder).toMatch(
      /^19,5 °C in der Dose\. \*\*.+ länger\*\*: noch \d+:\d\d statt 9:00\. Was der Film/,
    );
    expect(says("Mina", "/run correct temp:20.5 Grad")).toMatch(/^20,5 °C in der Dose\. \*\*.+ kürzer\*\*/);
    expect(says("Mina", "/run correct")).toBe(
      "Sag, was zu berichtigen ist: `ago:20`, wenn du vor 20 s eingegossen hast, oder `temp:21,5` für eine neue Temperatur.",
    );
    expect(says("Mina", "/run correct temp:48C")).toMatch(
      /^Für diese Temperatur hat das Datenblatt keine Zeit\. Es wurde nichts geändert\./,
    );
  });

  test("one film and two films are counted", () => {
    const over = (rolls: number): string =>
      german(() =>
        replies.overReply(
          at(0, { plan: aPlan({ rolls }), phase: { kind: "finished", atMs: START } }),
          Array.from({ length: rolls }, (_, index) => ({ number: index + 12 })),
        ),
      ).text;
    expect(over(1)).toBe(
      "**R7** ist fertig. 1 Film mit Negativen, bereit für den Kontaktbogen. Im Filmbuch als L12.",
    );
    expect(over(2)).toBe(
      "**R7** ist fertig. 2 Filme mit Negativen, bereit für den Kontaktbogen. Im Filmbuch als L12, L13.",
    );
  });

  test("who has no run, no plan, a wrong number, another's run, a tank in use", () => {
    const made = room();
    const { says } = made;
    expect(says("Mina", "/run next")).toBe("Du hast gerade keinen Lauf. Mach erst einen Plan: `/plan`.");
    expect(says("Mina", "/run status")).toBe("Gerade gibt es keinen Lauf. Mach erst einen Plan: `/plan`.");
    expect(says("Mina", "/run status run:R9")).toBe(
      "Einen Lauf R9 gibt es nicht. Deine siehst du mit `/run status`.",
    );
    expect(says("Mina", "/run start plan:P9")).toBe(
      "Einen Plan P9 gibt es nicht. Mach einen mit `/plan`, dann drück auf Start.",
    );
    says("Kofi", "/mine language language:de");
    expect(says("Kofi", "/run start")).toBe(
      "Du hast noch keinen Plan. Mach einen mit `/plan`, dann drück auf Start.",
    );
    says("Mina", "/run start");
    expect(says("Kofi", "/run stop run:R1")).toBe(
      "R1, Dose 1 gehört jemand anderem. Ändern dürfen ihn nur die Person selbst, eine Hilfskraft oder die Lehrkraft.",
    );
    expect(says("Mina", "/run start")).toBe(
      "Dose 1 ist belegt von deinem eigenen Lauf R1. Nimm eine andere Dose, oder brich diesen Lauf erst ab.",
    );
    says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:2");
    says("Mina", "/run start");
    expect(says("Mina", "/run next")).toBe(
      "Du hast 2 Läufe. Sag, welchen du meinst: R1, Dose 1; R2, Dose 2.",
    );
  });

  const FAULTS: readonly RunFault[] = [
    { code: "ERR_RUN_OVER" },
    ...[0, 1, 4, 6, 99].flatMap((step): RunFault[] => [
      { code: "ERR_OLD_BUTTON", step },
      { code: "ERR_ALREADY_RUNNING", step, leftSeconds: 61 },
      { code: "ERR_TOO_EARLY", step, leftSeconds: 61 },
      { code: "ERR_BEFORE_LAST_STEP", step, mostSeconds: 61 },
      { code: "ERR_NOTHING_RUNNING", step },
    ]),
    { code: "ERR_POURING_OUT", step: 0 },
    { code: "ERR_NOT_DEVELOPING", step: 1 },
    { code: "ERR_ALREADY_SEEN", step: 0 },
  ];
  test.each(FAULTS)("%o leaves no word in English", (fault) => {
    const { text, actions } = german(() => faultWords(fault, at(0), START));
    expect(englishIn(text, ...labelsOf(actions))).toEqual([]);
    expect(text).not.toBe(faultWords(fault, at(0), START).text);
  });

  test("each article goes with its noun", () => {
    const waits = (step: number): string =>
      german(() => faultWords({ code: "ERR_NOTHING_RUNNING", step }, at(0), START).text);
    const left = (step: number): string =>
      german(() => faultWords({ code: "ERR_TOO_EARLY", step, leftSeconds: 60 }, at(0), START).text);
    expect(waits(0)).toContain("wartet auf den Entwickler:");
    expect(waits(1)).toContain("wartet auf die Zwischenwässerung 1:");
    expect(waits(3)).toContain("wartet auf das Fixierbad:");
    expect([0, 1, 3, 4, 5, 6].map((step) => left(step).split(".")[0])).toEqual([
      "Noch 1:00 im Entwickler",
      "Noch 1:00 in der Zwischenwässerung 1",
      "Noch 1:00 im Fixierbad",
      "Noch 1:00 in der Wässerung",
      "Noch 1:00 im Netzmittel",
      "Noch 1:00 beim Trocknen",
    ]);
  });
});

const lateBy = (lateMs: number, kind: CueKind, missed: number): Lateness => ({
  lateMs,
  dueAtMs: START,
  missed,
  kind,
  leftMs: null,
});

describe("what a run calls in German", () => {
  test("the main calls, exactly", () => {
    const run = at(0);
    expect(german(() => CUE_KINDS.map((kind) => said(run, kind, kind === "nudge" ? 1 : 0)))).toEqual([
      "**30 s bewegen.** Dose kippen und wieder aufrichten, dann 2-mal fest aufklopfen. 0:00 von 9:00.",
      "**5 s bewegen.** Dose kippen und wieder aufrichten, dann 2-mal fest aufklopfen. 0:00 von 9:00.",
      "**In 15 s ausgießen.** Stell bereit: Zwischenwässerung 1.",
      "**Jetzt ausgießen (10 s).** Gieß den Entwickler aus. Er wird nur einmal benutzt: in den Kanister oder Ausguss, den dein Kurs dafür nimmt. Dann: Zwischenwässerung 1.",
      "**Jetzt: Zwischenwässerung 1.** Füll die Dose mit Wasser. Drück auf den Knopf, wenn sie voll ist.",
      "**Ist die Zwischenwässerung 1 drin?** Der Entwickler wirkt weiter. Füll die Dose mit Wasser. Drück auf den Knopf, wenn sie voll ist.",
    ]);
  });

  test("late, with one call missed and with two; and missed, on time", () => {
    const late = (missed: number): string =>
      german(() => sayInstants(lateWords(lateBy(40_000, "agitate", missed)), START, "UTC"));
    expect(late(0)).toBe("**40 s zu spät**: Das war für 18:00:00. Tu es jetzt, wenn noch nicht geschehen.");
    expect(late(1)).toBe(
      "**40 s zu spät**: Das war für 18:00:00. 1 Signal davor ist ausgefallen. Tu es jetzt, wenn noch nicht geschehen.",
    );
    expect(late(2)).toBe(
      "**40 s zu spät**: Das war für 18:00:00. 2 Signale davor sind ausgefallen. Tu es jetzt, wenn noch nicht geschehen.",
    );
    expect(german(() => missedWords(1))).toBe("**1 Signal davor ist ausgefallen.**");
    expect(german(() => missedWords(3))).toBe("**3 Signale davor sind ausgefallen.**");
  });

  test("late to get ready, it says what is left; a question says only how late it is", () => {
    const late = (kind: CueKind): string =>
      german(() => sayInstants(lateWords({ ...lateBy(8000, kind, 0), leftMs: 6200 }), START, "UTC"));
    expect(late("get-ready")).toBe("**8 s zu spät**: Das war für 18:00:00. Nur noch 7 s.");
    expect(late("nudge")).toBe("**8 s zu spät**: Das war für 18:00:00.");
  });

  test("whoever was not told to pour out is told so before the next bath", () => {
    const cue = (kind: CueKind) => ({
      id: 1,
      key: "k",
      kind,
      step: 0,
      number: 0,
      dueAtMs: START,
      madeAtMs: START,
    });
    const text = german(
      () => cueMessage(at(0), { cue: cue("next-bath"), merged: [cue("pour-out")] }, START).text,
    );
    expect(text).toMatch(
      /^\*\*Jetzt: Zwischenwässerung 1\.\*\* Noch drin\? Gieß den Entwickler aus\. .* Füll die Dose mit Wasser\./,
    );
  });

  test("taps once, turns a reel, and moves all the time", () => {
    const moved = (agitation: Partial<NonNullable<Step["agitation"]>>, kind: CueKind = "agitate"): string => {
      const steps = someSteps().map((step) =>
        step.agitation ? { ...step, agitation: { ...step.agitation, ...agitation } } : step,
      );
      return german(() => said(at(0, { plan: aPlan({ steps }) }), kind, 0));
    };
    expect(moved({ taps: 1 })).toContain("Dose kippen und wieder aufrichten, dann einmal fest aufklopfen.");
    expect(moved({ manner: "rotation", taps: 0 })).toContain("**5 s bewegen.** Spirale drehen. 0:00");
    expect(moved({ manner: "continuous" }, "agitate-first")).toMatch(
      /^\*\*Ständig bewegen,\*\* bis ich sage: ausgießen\. 0:00 von 9:00\.$/,
    );
  });

  test("no call and no view of any step leaves a word in English, and none is the English one", () => {
    for (const [step] of someSteps().entries()) {
      const run = at(step);
      for (const kind of CUE_KINDS) {
        const cue = { key: "k", kind, step, number: 0, dueAtMs: START };
        const text = german(() => said(run, kind, step));
        expect(englishIn(text)).toEqual([]);
        expect(text).not.toBe(said(run, kind, step));
        expect(englishIn(german(() => cueWords(run, cue)))).toEqual([]);
      }
      const { title, resting, sayings, actions } = german(() => viewOf(run, "Mina"));
      const calls = Object.values(sayings).flatMap(({ does, how, spoken, brief }) => [
        does,
        how,
        spoken,
        brief,
      ]);
      expect(calls.length).toBeGreaterThan(0);
      expect(englishIn(title, resting, ...calls, ...labelsOf(actions))).toEqual([]);
    }
  });

  test("a page's few words", () => {
    const view = german(() => viewOf(at(0), ""));
    const nowAt = (gone: number): string => doingNow(view, START + gone * 1000);
    expect([0, 45, 62].map(nowAt)).toEqual(["30 s bewegen.", "Ruhen lassen.", "5 s bewegen."]);
    expect(nowAt(535)).toMatch(/^Jetzt ausgießen \(10 s\)\. Gieß den Entwickler aus\./);
    const brief = (["agitate", "get-ready", "pour-out", "next-bath"] as const).map(
      (kind) => view.sayings[kind]?.brief,
    );
    expect(brief).toEqual([
      "5 s bewegen",
      "Zwischenwässerung 1 vorbereiten",
      "Ausgießen",
      "Zwischenwässerung 1",
    ]);
    expect(view.sayings.agitate?.spoken).toBe("Bewegen, 5 Sekunden.");
    expect(labelsOf(view.actions)).toEqual(["Wasser ist drin", "Lauf abbrechen"]);
    const over = (phase: Run["phase"]): string => german(() => viewOf(at(0, { phase }), "").resting);
    expect(over({ kind: "finished", atMs: START })).toBe("Fertig. Der Film steht im Filmbuch.");
    expect(over({ kind: "stopped", step: 0, atMs: START, reason: "" })).toBe("Abgebrochen.");
  });
});
