import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dilute } from "../../../commands/mix/dilute.ts";
import { parsePercent } from "../../../commands/mix/strength.ts";
import { splitVolume } from "../../../commands/plan/volume.ts";
import { measurableMl } from "../../../commands/speech/tenths.ts";
import { createRoom } from "../../support/room.ts";

const total = (waterParts: number, totalMl: number) =>
  dilute({ dilution: { concentrateParts: 1, waterParts }, totalMl, concentrateMl: null, waterMl: null });

describe("little concentrate", () => {
  test("1+100 in 350 ml is 3.5 ml, not 3: 350/101 = 3.465 (arithmetic)", () => {
    expect(splitVolume(350, { concentrateParts: 1, waterParts: 100 })).toEqual({
      concentrateMl: 3.5,
      waterMl: 346.5,
    });
    const room = createRoom();
    expect(room.says("Mina", "/mix dilute dilution:1+100 total:350 ml")).toMatch(
      /^\*\*3.5 ml concentrate \+ 346.5 ml water\*\*/,
    );
    expect(room.asks("Mina", "/mix dilute dilution:1+100 total:350 ml concentrate:3 ml").code).toBe(
      "ERR_OTHER_DILUTION",
    );
    expect(room.says("Mina", "/mix dilute dilution:1+100 total:350 ml concentrate:3.5 ml")).toContain(
      "right",
    );
  });

  test("tenths below 10 ml, halves below 25, whole ml above", () => {
    expect([3.465, 9.94, 9.96, 12.3, 24.9, 25.4].map((ml) => measurableMl(ml))).toEqual([
      3.5, 9.9, 10, 12.5, 25, 25,
    ]);
  });

  test("what is mixed is said where it is off by more than 2 %", () => {
    const room = createRoom();
    // 100/101 = 0.99 -> 1.0 ml is 1 % off; 75/101 = 0.743 -> 0.7 ml is 5.7 % weak.
    expect(room.says("Mina", "/mix dilute dilution:1+100 total:100 ml")).not.toMatch(/weaker|stronger/);
    expect(room.says("Mina", "/mix dilute dilution:1+100 total:75 ml")).toMatch(/1\+106.1, 6 % weaker/);
  });

  test("too little to measure is refused with the least volume, in a plan too", () => {
    expect(total(100, 40)).toMatchObject({ fault: { code: "ERR_TOO_LITTLE", leastTotalMl: 51 } });
    expect(total(100, 51).ok).toBe(true);
    const room = createRoom();
    room.asks(
      "Iris",
      "/sheet add film:Kelp 50 developer:Brine dilution:1+1000 temp:20C time:9:00 speed:50 source:invented",
      "teacher",
    );
    const refused = room.asks("Mina", "/plan film:Kelp 50 temp:20 volume:300 ml");
    expect(refused.code).toBe("ERR_NO_CONCENTRATE");
    expect(refused.reply.text).toContain("at least 501 ml");
    expect(room.says("Mina", "/plan film:Kelp 50 temp:20 volume:501 ml")).toContain("0.5 ml concentrate");
  });

  test("sums are exact to 0.1 ml, and there is concentrate in everything that is accepted", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 1, max: 200_000 }),
        (concentrateParts, waterParts, totalMl) => {
          const made = dilute({
            dilution: { concentrateParts, waterParts },
            totalMl,
            concentrateMl: null,
            waterMl: null,
          });
          if (!made.ok) return;
          const { concentrateMl, waterMl } = made.value;
          expect(Math.round(concentrateMl * 10) + Math.round(waterMl * 10)).toBe(totalMl * 10);
          expect(concentrateMl).toBeGreaterThanOrEqual(0.5);
          expect(Math.abs(concentrateMl * 10 - Math.round(concentrateMl * 10))).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 5000 },
    );
  });
});

describe("per cent", () => {
  test("28 % to 2 % is 1+13: 2 parts of 28 (percent rule, US Army SS0513)", () => {
    expect(parsePercent("28% to 2%")).toMatchObject({ concentrateParts: 1, waterParts: 13 });
    expect(parsePercent("28 % auf 2 %")).toMatchObject({ concentrateParts: 1, waterParts: 13 });
    const room = createRoom();
    expect(room.says("Mina", "/mix dilute dilution:28% to 2% total:1 l")).toMatch(
      /^\*\*71 ml concentrate \+ 929 ml water\*\* = 1 l[\s\S]*28 % becomes 2 %[\s\S]*Acid goes into water/,
    );
  });

  test("1.5 oz of 28 % in 32 oz of water is a stop bath of 1.25 % (US Army SS0509-8 p. 14; derived)", () => {
    const parts = parsePercent("28% to 1.25%");
    // 1.5 / 33.5 of it is acid of 28 %.
    expect(28 * (1.5 / 33.5)).toBeCloseTo(1.25, 1);
    expect((parts?.waterParts ?? 0) / (parts?.concentrateParts ?? 1)).toBeCloseTo(32 / 1.5, 0);
  });

  test("28 % from glacial acid is published as 3 + 8, which makes 27 % (Anchell p. 170): the rule gives 7 + 18", () => {
    expect(parsePercent("100% to 28%")).toMatchObject({ concentrateParts: 7, waterParts: 18 });
    expect((3 / 11) * 100).toBeCloseTo(27.3, 1);
  });

  test("no water makes it stronger, and a stock takes no concentrate after", () => {
    const room = createRoom();
    expect(room.asks("Mina", "/mix dilute dilution:2% to 28% total:1 l").reply.text).toMatch(
      /like 28% to 2%/,
    );
    expect(room.says("Mina", "/mix dilute dilution:stock total:1 l")).not.toMatch(/then the concentrate/);
    expect(room.asks("Mina", "/mix dilute dilution:often total:1 l").reply.text).toMatch(
      /can't read|no dilution|1\+9/,
    );
  });
});

describe("a tank's volume is the tank's own", () => {
  const PLAN = "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20";

  test("10 US oz (class notes, 296 ml) and 290 ml are taken as stated, by tank or by hand", () => {
    const room = createRoom();
    for (const [numbers, volume] of [
      ["30", "10 oz"],
      ["31", "290 ml"],
    ])
      expect(room.asks("Iris", `/tank add numbers:${numbers} reels:1 volume:${volume}`, "teacher").kind).toBe(
        "done",
      );
    expect(room.asks("Mina", `${PLAN} tank:30`).reply.fields).toMatchObject({ volumeMl: 296 });
    expect(room.asks("Mina", `${PLAN} tank:31`).reply.fields).toMatchObject({ volumeMl: 290 });
    const byHand = room.asks("Mina", `${PLAN} volume:290 ml`).reply;
    expect(byHand.fields).toMatchObject({ volumeMl: 290 });
    expect(byHand.text).toMatch(/Does 290 ml cover the film\? That stands on the tank/);
    expect(room.asks("Mina", `${PLAN} tank:31 volume:280 ml`).reply.text).toMatch(/does not cover.*290 ml/);
  });

  test("what covers the film and what develops it are told apart", () => {
    const room = createRoom();
    room.asks(
      "Iris",
      "/sheet add film:Kelp 50 developer:Brine dilution:1+9 temp:20C time:9:00 speed:50 source:invented minimum:50 ml",
      "teacher",
    );
    room.asks("Iris", "/tank add numbers:31 reels:1 volume:290 ml", "teacher");
    const { text } = room.asks("Mina", "/plan film:Kelp 50 temp:20 tank:31").reply;
    expect(text).toMatch(/29 ml of concentrate is too little for this film: the .*sheet asks for 50 ml/);
    expect(text).not.toMatch(/cover/);
  });
});
