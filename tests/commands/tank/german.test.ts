import { describe, expect, test } from "vitest";
import type { Role } from "../../../store/shapes/person.ts";
import { englishIn } from "../../support/english.ts";
import { createRoom } from "../../support/room.ts";
import { parseNumbers } from "../../../commands/tank/numbers.ts";

function shop() {
  const room = createRoom();
  for (const name of ["Lehrerin", "Mina"]) room.says(name, "/mine language language:de");
  const says = (line: string, role: Role = "teacher"): string => {
    const { reply } = room.asks("Lehrerin", line, role);
    const labels = (reply.actions ?? []).map(({ label }) => label);
    expect(englishIn(reply.text, ...labels)).toEqual([]);
    return reply.text;
  };
  return { room, says };
}

describe("tanks in German", () => {
  test("one is added, several are added, and some anew", () => {
    const { says } = shop();
    expect(says("/tank add numbers:40 reels:1 volume:0,3 l format:135")).toBe(
      "**1 Dose**: 40 (1 Spirale, 300 ml, 135).",
    );
    expect(says("/tank add numbers:40 bis 42 und 44 reels:2 volume:1,5 Liter cooling:45 Minuten")).toBe(
      "**4 Dosen**: 40-42, 44 (je 2 Spiralen, 1,5 l, jedes Format). Davon gab es 40 schon: neu gesetzt.",
    );
    expect(says("/tank list")).toContain(
      "- **Dose 41**: 2 Spiralen, 1,5 l, jedes Format; 63 % des Wegs zum Raum in 45 min; frei",
    );
  });

  test("the list counts what is free, says faults and who has which", () => {
    const { room, says } = shop();
    const { tanks } = room.stores;
    const classId = room.stores.classes.list()[0]?.id ?? 0;
    for (const { number } of tanks.list(classId)) tanks.remove(classId, number);
    expect(says("/tank list")).toBe(
      "Der Kurs hat noch keine Dose. Die Lehrkraft nimmt sie auf: `/tank add numbers:1-12 reels:2 volume:500 ml`.",
    );
    says("/tank add numbers:1 volume:300 ml");
    expect(says("/tank list").split("\n")[0]).toBe("**1 von 1** Dose ist frei und in Ordnung.");
    says("/tank add numbers:2-3 volume:300 ml");
    expect(says("/tank list").split("\n")[0]).toBe("**3 von 3** Dosen sind frei und in Ordnung.");
    room.says("Mina", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 tank:1");
    room.says("Mina", "/run start");
    const [, second] = tanks.list(classId);
    if (second) tanks.save(classId, { ...second, condition: "leckt" });
    expect(says("/tank list").split("\n")).toEqual([
      "**1 von 3** Dosen ist frei und in Ordnung.",
      "- **Dose 1**: 1 Spirale, 300 ml, jedes Format; belegt von R1, Mina: Entwickler",
      "- **Dose 2**: 1 Spirale, 300 ml, jedes Format; Mangel: leckt; frei",
      "- **Dose 3**: 1 Spirale, 300 ml, jedes Format; frei",
    ]);
    expect(says("/tank remove tank:1")).toBe(
      "Dose 1 ist belegt von R1, Mina: Entwickler. Nimm sie von der Liste, wenn sie frei ist.",
    );
    expect(says("/tank remove tank:3")).toBe(
      "Dose 3 ist von der Liste. Im Filmbuch bleibt, was durch sie ging.",
    );
    expect(says("/tank remove tank:9")).toBe("Dose 9 gibt es nicht. Der Kurs hat 1-2.");
  });

  test("a fault is told to the class in the class's language, a mistake to its caller in theirs", () => {
    const { room, says } = shop();
    expect(room.asks("Mina", "/tank report tank:1 fault:leckt am Deckel").reply.text).toMatch(
      /^Noted on \*\*tank 1\*\*: leckt am Deckel\./,
    );
    expect(says("/tank clear tank:99")).toMatch(/^Dose 99 gibt es nicht\. Der Kurs hat /);
    room.says("Lehrerin", "/class setup language:de", "teacher");
    expect(says("/tank report tank:1 fault:leckt am Deckel")).toBe(
      "Notiert zu **Dose 1**: leckt am Deckel. Jeder Plan für sie sagt es, bis eine Hilfskraft oder die Lehrkraft sie wieder freigibt. Stell die Dose beiseite.",
    );
    expect(says("/tank clear tank:1")).toBe("Dose 1 ist wieder in Ordnung. Notiert war: leckt am Deckel.");
    expect(says("/tank clear tank:1")).toBe("Zu Dose 1 war nichts notiert. Sie ist in Ordnung.");
  });

  test("how fast it follows the room, measured with decimal commas", () => {
    const { says } = shop();
    // Newton's law of cooling: tau = t / ln((T1 - room) / (T2 - room)) = 20 min / ln(6 / 4.5) = 4171 s.
    expect(says("/tank measure tank:1 first:24 second:22,5 room:18 apart:20 Minuten")).toBe(
      "**1 h 10 min**: In dieser Zeit legt Dose 1 den Weg zum Raum zu 63 % zurück. Pläne für sie rechnen damit, wenn `room:` angegeben ist.",
    );
    expect(says("/tank measure tank:1 first:24 second:24 room:18 apart:20 min")).toMatch(
      /^Die beiden Messungen sind gleich\./,
    );
    expect(says("/tank measure tank:1 first:24 second:25 room:18 apart:20 min")).toMatch(
      /^Das Wasser hat sich vom Raum entfernt\./,
    );
    expect(says("/tank measure tank:1 first:18,5 second:18,2 room:18 apart:20 min")).toMatch(
      /^Die Messungen liegen zu nah am Raum/,
    );
    expect(says("/tank measure tank:1 first:24 second:18,1 room:18 apart:10 s")).toMatch(
      /^Das wären \d+ s, und das tut keine Dose\./,
    );
  });

  test("numbers that can't be read", () => {
    const { says } = shop();
    expect(says("/tank add numbers:viele volume:300 ml")).toBe(
      "„viele“ kann ich nicht als Nummern lesen. Schreib sie so: 1-12 oder 1, 2, 5.",
    );
    expect(says("/tank add numbers:9-3 volume:300 ml")).toBe(
      "„9-3“ ist kein Bereich von Nummern. Sie gehen von 1 bis 999, die kleinere zuerst.",
    );
    expect(says("/tank add numbers:1-100 volume:300 ml")).toBe(
      "Das wären 100 Dosen. Nimm höchstens 60 auf einmal auf.",
    );
  });
});

test.each([
  ["1 bis 3", [1, 2, 3]],
  ["5 und 7-8", [5, 7, 8]],
])("%s is read", (text, numbers) => expect(parseNumbers(text)).toEqual({ ok: true, value: numbers }));
