import { describe, expect, it } from "vitest";
import { drawReport } from "../../../../commands/class/report/picture.ts";
import { reportPage } from "../../../../commands/class/report/page.ts";
import { reportOf } from "../../../../commands/class/report/report.ts";
import { speaking } from "../../../../commands/speech/language.ts";
import { START } from "../../../support/make.ts";
import { aNewRoll, aRoll } from "../../../support/rolls.ts";
import { englishIn, germanRoom } from "../in-german.ts";

describe("the term's report in German", () => {
  const figures = () =>
    reportOf({
      className: "Abendkurs (erfunden)",
      zone: "UTC",
      fromMs: START - 14 * 86_400_000,
      untilMs: START + 86_400_000,
      rolls: [aRoll(), aRoll({ dilution: "stock", fault: "thin", rating: 4 })],
      prints: [],
      mixed: ["fixer", "wash-aid"],
      silver: { ml: 1500, lowMg: 1500, highMg: 4500, measuredMl: 0 },
    });

  it("draws its picture and its page in German, with decimal commas", () => {
    const picture = speaking("de", () => drawReport(figures(), "UTC"));
    for (const words of ["Filme je Woche", "Entwicklung in % des Plans", "Gesehene Fehler", "Chemie"])
      expect(picture.svg).toContain(words);
    const words = picture.svg.replaceAll(/<[^>]*>/g, "\n").replaceAll("House MQ", "");
    expect(words).toContain(" Stammlösung: ");
    expect(words).toContain("\ndünn\n");
    expect(words).toContain("Fixierbad gesammelt: 1,5 l, Silber 1,5 bis 4,5 g");
    expect(englishIn(words)).toBeUndefined();
    expect(englishIn(picture.alt)).toBeUndefined();
    const page = speaking("de", () => reportPage(figures(), picture.svg, "UTC"));
    expect(page).toContain('<html lang="de">');
    expect(page).toContain('<th scope="row">dünn</th><td>1</td>');
    expect(englishIn(page.replace(/<style>.*?<\/style>/s, "").replaceAll(/<[^>]*>/g, "\n"))).toBeUndefined();
  });

  it("keeps its lines within the picture: none is cut off", () => {
    const big = {
      ...figures(),
      developers: [{ name: "House MQ 1+1", ml: 60_000, concentrateMl: 30_000 }],
      silver: { ml: 12_000, lowMg: 12_000, highMg: 84_000, measuredMl: 0 },
    };
    const { svg } = speaking("de", () => drawReport(big, "UTC"));
    expect(svg).not.toContain("…");
  });

  it("is English for whoever reads English", () => {
    const page = reportPage(figures(), "", "UTC");
    expect(page).toContain('<html lang="en">');
    expect(page).toContain("Used fixer: 1.5 l collected, silver 1.5 to 4.5 g");
    expect(page).toContain("Batches mixed: fixer 1, wash aid 1");
  });

  it("answers with a number first", () => {
    const room = germanRoom();
    room.stores.rolls.add(aNewRoll({ runId: null as never, endedAt: room.clock.now() }));
    expect(room.teacher("/class report")).toContain(
      "1 Film von 1 Person**\n- 1 von 1 Film kam bis zum Ende.",
    );
    room.stores.rolls.add(aNewRoll({ runId: null as never, endedAt: room.clock.now() }));
    expect(room.teacher("/class report")).toContain("- 2 von 2 Filmen kamen bis zum Ende.");
  });
});
