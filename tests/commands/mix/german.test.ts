import { describe, expect, it } from "vitest";
import { speaking } from "../../../commands/speech/language.ts";
import { classReply } from "../../../commands/mix/class/reply.ts";
import type { ClassDay, MixItem } from "../../../commands/mix/class/needs.ts";
import { diluteFault, dilutedReply, temperFault, temperedReply } from "../../../commands/mix/reply.ts";
import { forms } from "../../../commands/mix/words/form.de.ts";
import { sayInstants } from "../../../commands/speech/wording.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { START } from "../../support/make.ts";
import { createRoom, type Room } from "../../support/room.ts";
import { expectForms } from "../../support/forms.ts";

/* The German terms of the trade are common practice, no source; the sentences are our own. */

const german = <T>(work: () => T): T => speaking("de", work);

function germanRoom(): Room {
  const room = createRoom();
  room.says("Mina", "/mine language de");
  return room;
}

const LANTERN = 'film:"Lantern 400" dilution:1+1';
const LINES = [
  "/mix dilute dilution:1:9 total:300 ml",
  "/mix dilute dilution:1+9",
  "/mix dilute dilution:1+9 concentrate:30 ml water:100 ml",
  "/mix dilute dilution:1+9 concentrate:30 ml water:270 ml",
  "/mix dilute dilution:1+9 concentrate:30 ml water:270 ml total:400 ml",
  "/mix dilute dilution:1+9 total:3 ml",
  "/mix dilute dilution:stock total:300 ml",
  "/mix dilute dilution:stock water:300 ml",
  "/mix temper total:1 l target:20 cold:12 hot:50",
  "/mix temper total:1 l target:20 cold:12 hot:50 dilution:1:9",
  "/mix temper total:1 l target:20 cold:22 hot:50",
  "/mix temper total:1 l target:40 cold:12 hot:30",
  "/mix temper total:1 l target:20 cold:30 hot:12",
  "/mix temper total:1 l target:20 cold:12 hot:50 dilution:stock",
  `/mix class rolls:24 ${LANTERN}`,
  `/mix class rolls:1 ${LANTERN} date:morgen format:120`,
  `/mix class rolls:1 ${LANTERN} date:gestern`,
  '/mix class rolls:1 film:"Lantern 400"',
];
const worded = (text: string): string => text.replace(/`[^`]*`/g, "");

describe("every call of /mix in German", () => {
  it("answers without an English word, where the English of the same call has some", () => {
    const [room, english] = [germanRoom(), createRoom()];
    for (const line of LINES) {
      const said = room.says("Mina", line);
      expect([line, ENGLISH_WORDS.exec(worded(said))?.[0]]).toEqual([line, undefined]);
      expect(english.says("Mina", line)).not.toBe(said);
    }
  });

  it("keeps codes and fields as they are in English", () => {
    const [de, en] = [germanRoom(), createRoom()];
    for (const line of LINES) {
      const [here, there] = [de.asks("Mina", line), en.asks("Mina", line)];
      expect([line, here.code, here.reply.fields]).toEqual([line, there.code, there.reply.fields]);
    }
  });
});

describe("diluting and tempering", () => {
  const nine = { concentrateParts: 1, waterParts: 9 };

  it("puts the amounts first, with a decimal comma", () => {
    const mix = { concentrateMl: 150, waterMl: 1350, totalMl: 1500, isChecked: true, off: 0 };
    expect(german(() => dilutedReply(mix, { ...nine, percent: null, wasRatio: true }).text)).toBe(
      "**150 ml Konzentrat + 1350 ml Wasser** = 1,5 l in der Verdünnung 1+9. Das stimmt.\n" +
        "Ich lese es als 1+9: 1:9 heißt bei Herstellern 1+9.\n" +
        "Erst das Wasser, dann das Konzentrat. Säure kommt ins Wasser, nie Wasser in die Säure. Handschuhe und Schutzbrille an; das Etikett geht vor.",
    );
    expect(dilutedReply(mix, { ...nine, percent: null, wasRatio: false }).text).toMatch(
      /^\*\*150 ml concentrate \+ 1350 ml water\*\* = 1\.5 l at 1\+9\. That is right\.\nWater first, then the concentrate\. Acid goes into water/,
    );
    const tempered = { hotMl: 225, coldMl: 675, concentrateMl: 100, reachedTenthsC: 205 };
    expect(german(() => temperedReply(tempered, 1000, 450, false).text)).toMatch(
      /^\*\*225 ml heiß \+ 675 ml kalt \+ 100 ml Konzentrat\*\* = 1 l bei 20,5 °C\.\n/,
    );
  });

  it("refuses with the nearest that can be done", () => {
    expect(
      german(() =>
        diluteFault({ code: "ERR_OTHER_DILUTION", asked: nine, givenTenths: 33, rightWaterMl: 270 }),
      ),
    ).toBe("Das ist 1+3,3, nicht 1+9. Für 1+9 braucht so viel Konzentrat 270 ml Wasser.");
    expect(german(() => temperFault({ code: "ERR_TOO_COOL_TO_REACH", nearestTenthsC: 305 }))).toBe(
      "Selbst mit heißem Wasser allein kommst du nicht dahin. Am nächsten liegt 30,5 °C: Nimm heißeres Wasser.",
    );
  });
});

describe("mixing for a class", () => {
  const ITEM: MixItem = {
    kind: "developer",
    product: "House MQ",
    dilution: { concentrateParts: 1, waterParts: 1 },
    needMl: 7200,
    needSqIn: null,
    readyMl: 2000,
    readySqIn: null,
    readyFrom: [1, 2],
    mixMl: 5200,
    concentrateMl: 2600,
    waterMl: 2600,
    bottlesMl: [5000, 250],
    shelfMl: 1500,
    packMl: 1000,
    isPowder: false,
    buyPacks: 2,
  };
  const says = (rolls: number, ...items: MixItem[]): string =>
    german(() =>
      sayInstants(classReply({ rolls } as ClassDay, items, "Lantern 400", START).text, START, "UTC"),
    );

  it("counts films, baths, bottles and packs, one or several", () => {
    // START is 15 January 2026.
    expect(says(24, ITEM, ITEM)).toMatch(
      /^\*\*2 Bäder anzusetzen\*\* für 24 Filme Lantern 400 am 15\.01\.2026:\n/,
    );
    expect(says(1, ITEM)).toMatch(/^\*\*1 Bad anzusetzen\*\* für 1 Film Lantern 400 am 15\.01\.2026:\n/);
    expect(says(24, ITEM)).toContain(
      "\n- House MQ 1+1 (Entwickler): für 7,2 l, 2 l bereit in B1 und B2. **5,2 l ansetzen**: " +
        "2,6 l Konzentrat oder Stammlösung + 2,6 l Wasser. Flaschen: 1 zu 5 l und 1 zu 250 ml. " +
        "Im Regal: 1,5 l. **Kauf 2 Packungen** zu 1 l.\n",
    );
    expect(says(24, { ...ITEM, buyPacks: 1 })).toContain("**Kauf 1 Packung** zu 1 l.");
    expect(says(24, { ...ITEM, mixMl: 0 })).toBe(
      "**Nichts anzusetzen** für 24 Filme Lantern 400 am 15.01.2026: Was bereit ist, reicht.\n" +
        "- House MQ 1+1 (Entwickler): für 7,2 l, 2 l bereit in B1 und B2. Nichts anzusetzen.",
    );
  });

  it("says how powder is made up, in both languages", () => {
    const powder = { ...ITEM, isPowder: true, concentrateMl: 3000, buyPacks: 0 };
    expect(says(24, powder)).toContain(
      "Pulver für 3 l Stammlösung, ganze Packungen; 400 ml Stammlösung übrig; am Becken 1+1 verdünnen. ",
    );
    expect(says(24, powder)).toContain("Im Regal: 1,5 l. Das ist genug.");
    expect(classReply({ rolls: 24 } as ClassDay, [powder], "Lantern 400", START).text).toContain(
      "**Mix 5.2 l**: powder for 3 l of stock, whole packs; 400 ml of stock is left over; dilute 1+1 at the sink. " +
        "Bottles: 1 of 5 l and 1 of 250 ml. The shelf has 1.5 l: enough.\n",
    );
    const unknown = { ...ITEM, product: null, kind: "fixer" as const, readyFrom: [] };
    expect(says(24, unknown)).toContain(
      "- Fixierbad: für 7,2 l, nichts bereit. **5,2 l ansetzen**: wie auf dem Etikett. ",
    );
  });
});

describe("the forms of /mix", () => {
  it("have German for each option, at most 100 characters", () => {
    expectForms("mix", forms);
  });
});
