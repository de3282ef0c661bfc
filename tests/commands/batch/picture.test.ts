import { expect, test } from "vitest";
import { renderPicture } from "../../../bot/chat/picture.ts";
import { gaugesPicture } from "../../../commands/batch/picture.ts";
import { traceOf } from "../../../commands/batch/trace.ts";
import { aBatch, aDeveloper, DAY_MS, ledger, mixed, tested, used } from "../../support/batch.ts";
import { START } from "../../support/make.ts";

const worn = traceOf(
  aBatch({ number: 7 }),
  ledger(mixed(1000, 45), used(6), tested(55), used(14)),
  START + DAY_MS,
);
const full = traceOf(
  aDeveloper({ product: 'A <b>&"long" developer of many words' }),
  ledger(mixed(5000)),
  START,
);

test("the gauges show each bottle's label, what is left and its state in words", () => {
  const { svg, alt } = gaugesPicture([worn, full], START + DAY_MS);
  expect(svg).toContain(">B7<");
  expect(svg).toContain(">EXHAUSTED<");
  expect(svg).toContain(">5 l left<");
  expect(alt).toContain("B7, Pier Fix 1+4: EXHAUSTED, 0 rolls left");
});

test("a clearing time is drawn over the rolls, with the line at which it ends", () => {
  const { svg } = gaugesPicture([worn], START);
  expect(svg).toContain("exhausted at 1:30");
  expect(worn.clearing.map(({ rolls, isTest }) => [rolls, isTest])).toEqual([
    [0, true],
    [6, false],
    [6, true],
    [20, false],
  ]);
});

test("words of people can't break out of the drawing", () => {
  const { svg } = gaugesPicture([full], START);
  expect(svg).not.toContain("<b>");
  expect(svg).toContain("&lt;b&gt;&amp;");
});

test("it becomes a PNG, 1200 wide", async () => {
  const png = await renderPicture(gaugesPicture([worn, full], START).svg);
  expect(png.subarray(1, 4).toString()).toBe("PNG");
  expect(png.readUInt32BE(16)).toBe(1200);
});
