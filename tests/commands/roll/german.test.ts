import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import { describe, expect, test } from "vitest";
import { CAUSES } from "../../../commands/roll/fault/cause-table.ts";
import { wordsOfCause } from "../../../commands/roll/fault/causes.ts";
import { parseDays } from "../../../commands/roll/dates.ts";
import { type BathFacts, findingsOf, type Surroundings } from "../../../commands/roll/fault/evidence.ts";
import { findingWords } from "../../../commands/roll/fault/finding-words.ts";
import { lookHelp, lookWord, readFault, sayFault } from "../../../commands/roll/look-words.ts";
import { LOOKS } from "../../../commands/roll/looks.ts";
import { photoFaultWords } from "../../../commands/roll/photo/photo-words.ts";
import { shownReply } from "../../../commands/roll/reply.ts";
import { drawTimeline } from "../../../commands/roll/timeline.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { speaking } from "../../../commands/speech/language.ts";
import { englishIn } from "../../support/english.ts";
import { createRoom } from "../../support/room.ts";
import { aNewRoll, aRoll } from "../../support/rolls.ts";

/** The one that pictures are drawn with. */
const FONT = join(
  dirname(createRequire(import.meta.url).resolve("@expo-google-fonts/atkinson-hyperlegible/package.json")),
  "400Regular",
  "AtkinsonHyperlegible_400Regular.ttf",
);

const german = <T>(work: () => T): T => speaking("de", work);

function aClass(rolls = 1, body = {}) {
  const room = createRoom();
  for (const name of ["Mina", "Ben"]) room.says(name, "/help");
  room.says("Mina", "/mine language language:de");
  for (let count = 0; count < rolls; count += 1)
    room.stores.rolls.add(aNewRoll({ personId: "room:mina", runId: null as never }, body));
  const says = (line: string, role: Role = "student"): string => {
    const { reply } = room.asks("Mina", line, role);
    const labels = (reply.actions ?? []).map(({ label }) => label);
    const alts = (reply.pictures ?? []).map(({ alt }) => alt);
    expect(englishIn(reply.text, ...labels, ...alts)).toEqual([]);
    return reply.text;
  };
  return { room, says };
}

describe("a roll in German", () => {
  test("is shown as planned and as it went", () => {
    const { says } = aClass(1, { dosePerMille: 880 });
    const lines = says("/roll show L1").split("\n");
    expect(lines[1]).toBe("Lantern 400 bei EI 400, House MQ 1+1, 20 °C");
    expect(lines).toContain("- Entwickler: 9:06 (geplant 9:00)");
    expect(lines).toContain(
      "**12 % weniger entwickelt als geplant**, nach gemessenen Zeiten und Temperaturen.",
    );
  });

  test("says what went otherwise, one batch or several, and why it was stopped", () => {
    const moved = { kind: "moved", step: 0, bySeconds: -70, atMs: 0 } as const;
    const warmer = {
      kind: "new-temperature",
      step: 0,
      tenthsC: 215,
      fromSeconds: 540,
      toSeconds: 485,
      atMs: 0,
    } as const;
    const over = { kind: "overrun", step: 1, bySeconds: 6, atMs: 0 } as const;
    const body = {
      deviations: [moved, warmer, { ...over, kind: "cut-short" } as const, over],
      missedCues: 1,
      reason: "Licht ging an",
      cause: "short-fixing",
    };
    const roll = aRoll(
      { outcome: "stopped", tank: 4, batches: "B3 B7", lateCues: 2, fault: "milky", rating: 3, note: "Rand" },
      body,
    );
    const { text } = german(() => shownReply(roll));
    expect(text.split("\n")[0]).toMatch(/, abgebrochen: Licht ging an$/);
    expect(text).toContain(", 20 °C, Dose 4, Flaschen B3 B7\n");
    expect(german(() => shownReply(aRoll({ batches: "B3" })).text)).toContain(", Flasche B3\n");
    for (const line of [
      "**Anders als geplant**",
      "- Entwickler: Eingießen 1 min 10 s früher gesetzt",
      "- Entwickler: 21,5 °C gemessen, aus 9:00 wurden 8:05",
      "- Zwischenwässerung 1: 6 s zu kurz",
      "- Zwischenwässerung 1: 6 s zu lang",
      "Signale: 2 verspätet, 1 verpasst.",
      "Fehler: milchig. Ursache: Zu kurz fixiert.",
      "Wertung: 3 von 5.",
      "Notiz: Rand",
    ])
      expect(text.split("\n")).toContain(line);
    expect(englishIn(text)).toEqual([]);
    expect(shownReply(roll).text).toContain("Fault: milky, put down to: not fixed long enough.");
  });

  test("draws its timeline so that the longest title ends before the bars begin", () => {
    const draw = () => drawTimeline(aRoll());
    const picture = german(draw);
    expect(picture?.alt).toMatch(
      /^L1, wie es lief: Entwickler: 9:06 von 9:00, Zwischenwässerung 1: 0:34 von 0:30, /,
    );
    expect(englishIn(picture?.alt ?? "")).toEqual([]);
    for (const { svg } of [picture, draw()].flatMap((each) => each ?? [])) {
      const left = Math.min(...[...svg.matchAll(/<line x1="([\d.]+)"/g)].map((found) => Number(found[1])));
      const titles = [...svg.matchAll(/<text x="20" y="\d+" font-size="20"[^>]*>[^<]+<\/text>/g)];
      expect(titles.length).toBeGreaterThan(3);
      for (const [title] of titles) expect(rightOf(title, svg)).toBeLessThan(left);
    }
  });

  test("is noted, rated, and its photo spoken of", () => {
    const { says } = aClass();
    expect(says("/roll note roll:L1 note:klar")).toBe(
      "Bei L1 notiert. Mit diesen Wörtern findest du den Film jetzt.",
    );
    expect(says("/roll rate roll:L1 rating:4")).toBe("L1 hat die Wertung 4 von 5.");
    expect(says("/roll photo roll:L1")).toBe("L1 hat noch kein Foto.");
    expect(says("/roll photo roll:L1 remove:yes")).toBe("L1 hat kein Foto.");
    expect(says("/roll show L9")).toBe("Einen Film L9 gibt es nicht. Such ihn mit `/roll find`.");
    expect(german(() => photoFaultWords({ code: "ERR_PHOTO_LARGE", bytes: 9 * 1024 * 1024 }))).toBe(
      "Das Foto hat 9 MB; höchstens 8. Mach es kleiner oder schneide es zu.",
    );
  });
});

describe("the log in German", () => {
  test("is found, paged and counted", () => {
    const { room, says } = aClass(9);
    expect(says("/roll find film:lantren 400")).toContain(
      "„lantren 400“ habe ich als Lantern 400 verstanden.\n**9 Filme**, Seite 1 von 2.",
    );
    expect((room.asks("Mina", "/roll find").reply.actions ?? []).at(-1)?.label).toBe("Ältere");
    says("/roll rate roll:L1 rating:4");
    says("/roll rate roll:L2 rating:3");
    expect(says("/roll find")).toContain("Wertung im Schnitt 3,5 von 5 (2 bewertet).");
    expect(says("/roll find page:7")).toBe("Es gibt nur 2 Seiten.");
    expect(says("/roll find rating:4").split("\n")[0]).toBe("**1 Film**.");
    expect(says("/roll find xyzzy")).toBe(
      "So einen Film gibt es im Filmbuch nicht. Lass eine Angabe weg oder nimm mehr Tage dazu.",
    );
    expect(says("/roll find film:Kelp")).toMatch(/^Im Filmbuch steht kein Film „Kelp“\./);
    expect(says("/roll find when:irgendwann")).toMatch(/^„irgendwann“ kann ich nicht als Tage lesen\./);
    expect(says("/roll export as:json", "teacher")).toMatch(/^\*\*9 Filme\*\* als JSON: /);
    expect(aClass(0).says("/roll find")).toBe(
      "Das Filmbuch ist noch leer: Wenn ein Lauf endet, kommt ein Film hinein.",
    );
  });

  test("takes days as they are said", () => {
    const now = Date.UTC(2026, 2, 18, 12);
    for (const [said, meant] of [
      ["heute", "today"],
      ["Gestern", "yesterday"],
      ["letzte Woche", "last week"],
      ["diesen Monat", "this month"],
      ["3 Wochen", "3 weeks"],
      ["letzte 10 Tage", "10 days"],
      ["2 Monate", "2 months"],
      ["1 Jahr", "1 year"],
    ] as const)
      expect(parseDays(said, "Europe/Berlin", now)).toEqual(parseDays(meant, "Europe/Berlin", now));
    expect(parseDays("3 Monde", "Europe/Berlin", now).ok).toBe(false);
  });
});

describe("a fault in German", () => {
  test("is asked for, ranked and noted; who reads English finds the same one", () => {
    const { room, says } = aClass(1, { dosePerMille: 880 });
    expect(says("/roll fault")).toContain("**Was sieht an L1 falsch aus?**");
    room.says("Mina", "/roll fault");
    expect(room.press("Mina", "Zu hell")).toContain("**Was siehst du auf L1?**");
    expect(room.press("Mina", "dünn")).toMatch(/^Dünn\. \*\*Sieh dir den Filmrand an:\*\*/);
    const ranked = room.press("Mina", "Schwach");
    expect(ranked).toContain("**1. Zu wenig entwickelt (zu kurz oder zu kalt)** (wahrscheinlich)");
    expect(ranked).toContain("Dafür: 12 % weniger entwickelt als geplant.");
    expect(ranked).toContain("_Quelle: Studio Light, 1917; Dunkelkammerseite eines Vereins (phsc.ca)_");
    expect(englishIn(ranked)).toEqual([]);
    expect(room.press("Mina", "1: Zu wenig entwickelt (zu kurz oder zu kalt)")).toBe(
      "Bei L1 notiert: **dünn**. Ursache: Zu wenig entwickelt (zu kurz oder zu kalt).",
    );
    expect(says("/roll find fault:dünn")).toContain(", Fehler: dünn");
    expect(room.says("Ben", "/roll find fault:thin")).toContain(", fault: thin");
    // Among all words as well: by what is read, whole or begun, with or without its accent.
    for (const word of ["dünn", "dün", "dunn", "thin"]) expect(says(`/roll find ${word}`)).toContain("- L1 ");
    expect(says("/roll find milchig")).not.toContain("- L1 ");
    expect(room.says("Ben", "/roll find dünn")).not.toContain("- L1 ");
    expect(room.asks("Mina", "/roll show L1").reply.fields?.fault).toBe("thin");
    expect(says("/roll fault roll:L1 look:none")).toBe("Bei L1 ist jetzt kein Fehler notiert.");
  });

  test("every look, cause and finding has German words, short enough for a button", () => {
    for (const look of LOOKS) {
      expect(german(() => englishIn(lookWord(look), lookHelp(look)))).toEqual([]);
      expect(german(() => lookWord(look)).length).toBeLessThanOrEqual(40);
      expect(readFault(german(() => lookWord(look)).toUpperCase())).toBe(lookWord(look));
      expect(german(() => sayFault(lookWord(look)))).toBe(german(() => lookWord(look)));
    }
    expect(german(() => sayFault("bent by the cat"))).toBe("bent by the cat");
    for (const { code } of CAUSES)
      expect(german(() => englishIn(...Object.values(wordsOfCause(code))))).toEqual([]);
    const bath = (standing: BathFacts["standing"]): BathFacts => ({
      label: "B3",
      standing,
      clearingSeconds: 200,
    });
    const around: Surroundings = {
      developer: bath("exhausted"),
      fixer: bath("out-of-date"),
      tankCondition: "leckt",
    };
    const rolls = [
      aRoll({ lateCues: 1 }, { dosePerMille: 880, missedCues: 2, isTabular: true, tenthsC: 250 }),
      aRoll({}, { dosePerMille: 1120 }),
      aRoll({}, { developedSeconds: null }),
    ];
    const said = german(() => rolls.flatMap((roll) => findingsOf(roll, around).map(findingWords)));
    expect(said).toContain("2 Signale verpasst und 1 Signal verspätet");
    expect(said).toContain("Entwickler B3 war verbraucht");
    expect(said).toContain("die Dose wurde gemeldet: leckt");
    expect(said).toContain("5:05 fixiert, und 3-mal die Klärzeit waren 10:00");
    expect(said.length).toBeGreaterThan(15);
    expect(englishIn(...said)).toEqual([]);
  });
});

/** Where a text of a picture ends, as the renderer sets it. */
function rightOf(text: string, svg: string): number {
  const open = /<svg[^>]*>/.exec(svg)?.[0] ?? "";
  const box = new Resvg(`${open}${text}</svg>`, {
    font: { loadSystemFonts: false, fontFiles: [FONT], defaultFontFamily: "Atkinson Hyperlegible" },
  }).getBBox();
  if (!box) throw new Error(`no box for ${text}`);
  return box.x + box.width;
}
