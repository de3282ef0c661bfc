import fc from "fast-check";
import { z } from "zod";
import type { Command } from "../../commands/define.ts";
import type { Role } from "../../store/shapes/person.ts";
import { DEMO_SHEETS } from "../../bot/demo/demo.ts";
import { commands } from "../../commands/index.ts";
import { writeCsv } from "../../commands/sheet/csv.ts";
import { writeJson } from "../../commands/sheet/json.ts";

/* Calls drawn from the options' own schemas: mostly what somebody might type, sometimes anything at all. */

export interface DrawnCall {
  readonly name: string;
  readonly options: Readonly<Record<string, unknown>>;
  readonly person: string;
  readonly role: Role;
  /** Whether a file comes along. */
  readonly hasFile: boolean;
  /** So long after the call before. */
  readonly afterSeconds: number;
}

type Drawn = fc.Arbitrary<unknown>;

function weighed<T>(...parts: readonly (readonly [number, fc.Arbitrary<T>])[]): fc.Arbitrary<T> {
  return fc.oneof(...parts.map(([weight, arbitrary]) => ({ weight, arbitrary })));
}

const number = weighed(
  [6, fc.integer({ min: 1, max: 60 }).map(String)],
  [2, fc.integer({ min: 0, max: 100_000 }).map(String)],
  [
    2,
    fc.constantFrom(
      "0",
      "1",
      "0,5",
      "1.5",
      "0.01",
      "49",
      "50",
      "51",
      "999",
      "20000",
      "20001",
      "200000",
      "9999999",
    ),
  ],
  [
    1,
    fc.tuple(fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 0, max: 99 })).map(([a, b]) => `${a},${b}`),
  ],
  [1, fc.constantFrom("-1", "-0", "1e3", "٣", "½", "1 000", "1.000,5", "NaN", "Infinity", "")],
);
const withUnit = (...units: readonly string[]): fc.Arbitrary<string> =>
  fc.tuple(number, fc.constantFrom(...units)).map(([value, unit]) => `${value}${unit}`);
const pad = (value: number): string => String(value).padStart(2, "0");
const clock = weighed(
  [
    5,
    fc
      .tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 59 }))
      .map(([a, b]) => `${a}:${pad(b)}`),
  ],
  [
    1,
    fc
      .tuple(fc.integer({ min: 0, max: 25 }), fc.integer({ min: 0, max: 60 }))
      .map(([a, b]) => `${a}:${pad(b)}:00`),
  ],
);

/** For each way of writing a quantity: a sample by which an option that reads it is known, and what is drawn for it. */
const QUANTITIES: { readonly sample: string; readonly drawn: fc.Arbitrary<string> }[] = [
  {
    sample: "300 ml",
    drawn: withUnit("", " ml", " l", "l", " cl", " oz", " fl oz", " gal", " qt", " Liter"),
  },
  { sample: "9:00", drawn: weighed([2, clock], [2, withUnit(" s", " min", " h", "", " Sekunden", "′")]) },
  { sample: "20C", drawn: withUnit("", "C", "F", " °C", " °F", " Grad", "℃") },
  {
    sample: "1+9",
    drawn: weighed(
      [1, fc.constant("stock")],
      [6, fc.tuple(fc.nat(120), fc.constantFrom("+", ":"), fc.nat(1100)).map((parts) => parts.join(""))],
    ),
  },
  {
    sample: "30/5/60",
    drawn: weighed(
      [1, fc.constant("continuous")],
      [
        6,
        fc
          .tuple(fc.nat(3700), fc.nat(100), fc.nat(3700), fc.constantFrom("", " rotation", " 3 taps"))
          .map(([a, b, c, more]) => `${a}/${b}/${c}${more}`),
      ],
    ),
  },
  { sample: "20 films/l", drawn: withUnit(" films/l", "/l", " sq in/l", " m2/l", " per gal", " Filme/l") },
  { sample: "6 months", drawn: withUnit(" h", " days", " Wochen", " months", " years", " Jahre") },
  {
    sample: "1/10%/10",
    drawn: fc
      .tuple(fc.nat(120), fc.nat(120), fc.nat(700), fc.nat(220))
      .map(([a, b, c, d]) => `${a}/${b}%+${c}s/${d}`),
  },
];

const halves = fc.constantFrom(
  "00",
  "0",
  "1/2",
  "2",
  "2½",
  "3,5",
  "5",
  "6",
  "4-5",
  "2 1/2",
  "1/3",
  "1 1/2",
  "12",
);
const sheets = fc.constantFrom("8x10", "18x24", "24 x 30 cm", "203x254 mm", "7x9", "1x1 mm", "5000x2 in");
const ofPrint = weighed<string>([3, number], [2, halves], [1, sheets]);
const amount = fc.tuple(halves, fc.constantFrom("", " s", " %", " stops")).map((parts) => parts.join(""));
QUANTITIES.push(
  { sample: "12.5 s", drawn: weighed([3, withUnit("", " s", " sek")], [1, clock]) },
  { sample: "2", drawn: halves },
  { sample: "18x24", drawn: sheets },
  {
    sample: "2 to 3",
    drawn: fc
      .tuple(ofPrint, fc.constantFrom(" to ", " auf ", ">", " "), ofPrint)
      .map((parts) => parts.join("")),
  },
  { sample: "42 cm", drawn: withUnit(" cm", "", " in", " mm", " m") },
  {
    sample: "42 cm to 55 cm",
    drawn: fc
      .tuple(withUnit(" cm", "", " in", " mm"), withUnit(" cm", "", " in", " mm"))
      .map((parts) => parts.join(" to ")),
  },
  { sample: "18x24 to 24x30", drawn: fc.tuple(sheets, sheets).map((parts) => parts.join(" to ")) },
  {
    sample: "sky 1/2",
    drawn: fc
      .array(fc.tuple(fc.constantFrom("sky", "Gesicht", "2 trees", "x".repeat(60), ""), amount), {
        minLength: 1,
        maxLength: 14,
      })
      .map((parts) => parts.map((part) => part.join(" ")).join(", ")),
  },
);

/** Numbers said aloud, mostly of what there is. */
const label = (letter: string, from: number, to: number): fc.Arbitrary<string> =>
  weighed(
    [
      12,
      fc
        .tuple(fc.constantFrom(letter, letter.toLowerCase(), ""), fc.integer({ min: from, max: to }))
        .map((parts) => parts.join("")),
    ],
    [1, fc.tuple(fc.constantFrom("R", "P", "B", "T", "L"), fc.nat(99_999)).map((parts) => parts.join(""))],
  );
const films = weighed(
  [6, fc.constantFrom("Lantern 400", "Quay 100")],
  [1, fc.constantFrom("lantern 400", "Kelp 50", "Lanten 400", "Nebel ß")],
);
const people = fc.constantFrom("Mina", "Ben", "Tess", "Ada", "mina", "Nobody");
const days = weighed(
  [
    4,
    fc.constantFrom("today", "yesterday", "gestern", "heute", "last week", "this year", "12 weeks", "3 Tage"),
  ],
  [
    1,
    fc
      .tuple(fc.nat(9999), fc.nat(13), fc.nat(32))
      .map(([y, m, d]) => `${String(y).padStart(4, "0")}-${pad(m)}-${pad(d)}`),
  ],
  [1, withUnit(" days", " weeks", " months", " years")],
);

/** What a text option usually holds, by its name. */
const TEXTS: Readonly<Record<string, fc.Arbitrary<string>>> = {
  film: films,
  also: films,
  developer: weighed([6, fc.constant("House MQ")], [1, fc.constantFrom("Pier Fine", "Brine")]),
  dilution: weighed(
    [12, fc.constant("1+1")],
    [3, fc.constantFrom("stock", "1+4")],
    [2, QUANTITIES.find(({ sample }) => sample === "1+9")?.drawn ?? fc.constant("")],
  ),
  product: fc.constantFrom("House MQ", "Pier Fix", "Brine", "Gull Rinse"),
  tank: label("T", 1, 5),
  batch: label("B", 1, 4),
  devbatch: label("B", 1, 1),
  fixbatch: label("B", 2, 2),
  plan: weighed([2, label("P", 7, 8)], [1, label("P", 9, 12)]),
  run: weighed([2, label("R", 7, 8)], [1, label("R", 9, 12)]),
  roll: label("L", 1, 7),
  print: label("V", 1, 4),
  with: label("V", 1, 4),
  person: people,
  by: weighed([1, people], [1, clock]),
  numbers: fc.constantFrom("1-5", "1-12", "7", "1, 2, 5", "T4", "0", "999", "1000", "1-999", "9-3"),
  zone: fc.constantFrom(
    "UTC",
    "Europe/Berlin",
    "Asia/Kathmandu",
    "America/St_Johns",
    "Lisbon",
    "Pacific/Apia",
  ),
  days: fc.constantFrom("mon-fri", "mon", "sa, so", "täglich", "weekdays", "sun-mon"),
  day: fc.constantFrom("monday", "so", "mittwochs", "mon-fri"),
  from: weighed([1, clock], [1, days]),
  to: weighed([1, clock], [1, days]),
  at: clock,
  quietfrom: clock,
  quietto: clock,
  when: days,
  date: days,
  mixed: days,
  ago: withUnit("", " s", " min"),
  cause: fc.constantFrom("short-fixing", "unknown", "light-leak"),
  agitation: QUANTITIES.find(({ sample }) => sample === "30/5/60")?.drawn ?? fc.constant(""),
  name: fc.constantFrom("Harbour workshop, evening class (invented demo)", "Thursday class", "Mina"),
  file: fc.constantFrom(
    writeCsv(DEMO_SHEETS),
    writeJson(DEMO_SHEETS),
    "BEGIN:VCALENDAR\nVERSION:2.0\nBEGIN:VEVENT\nDTSTART:20260105T180000\nDTEND:20260105T200000\nRRULE:FREQ=WEEKLY;BYDAY=MO\nSUMMARY:x\nEND:VEVENT\nEND:VCALENDAR",
    '[{"film":"Kelp 50"}]',
  ),
};

/** Anything: letters of every script, signs that mean something to a chat or a file, and none at all. */
const anyText = weighed(
  [3, fc.string({ unit: "grapheme", maxLength: 40 })],
  [1, fc.string({ unit: "binary", maxLength: 80 })],
  [
    2,
    fc.constantFrom(
      "a\u0000b",
      "\ud800",
      "**bold** `code` <@1> @everyone",
      "‮rtl",
      "👩‍🔬".repeat(15),
      "__proto__",
      "constructor",
      "null",
      "'; drop table tanks; --",
      '"quoted" \\',
      "line\nbreak",
      " ",
      "",
    ),
  ],
);

interface Property {
  readonly type?: string;
  readonly enum?: readonly (string | number)[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
}

/** What its form gives as examples: `like 300 ml, 10 oz`. */
function examplesOf(option: z.ZodType): string[] {
  return (option.description ?? "")
    .split(/[,;:()]\s|\b(?:like|or|and|to|if|of)\b/)
    .map((part) => part.trim())
    .filter((part) => /\d/.test(part) && option.safeParse(part).success);
}

function drawText(name: string, option: z.ZodType, longest: number | undefined): Drawn {
  const reads = QUANTITIES.filter(({ sample }) => option.safeParse(sample).success);
  const isQuantity = longest === undefined && reads.length < QUANTITIES.length;
  const edge =
    longest === undefined
      ? anyText
      : fc.constantFrom("x", "ß", "𝒳").map((sign) => sign.repeat(longest / sign.length));
  const given = examplesOf(option);
  const examples = given.length > 0 ? given : reads.map(({ sample }) => sample);
  const own = TEXTS[name];
  if (own || !isQuantity)
    return weighed<unknown>([30, own ?? fc.lorem({ maxCount: 6 })], [2, anyText], [1, edge]);
  return weighed<unknown>(
    [20, fc.constantFrom(...examples)],
    [8, fc.oneof(...reads.map(({ drawn }) => drawn))],
    [1, anyText],
  );
}

function drawNumber({ type, minimum = -100, maximum = 1000 }: Property): Drawn {
  const least = Math.max(minimum, -1e6);
  const most = Math.max(least, Math.min(maximum, 1e6));
  const [from, to] = [Math.ceil(least), Math.floor(most)];
  const whole = from <= to ? fc.integer({ min: from, max: to }) : fc.constant(from);
  const few = fc.integer({ min: Math.min(Math.max(1, from), to), max: Math.max(1, Math.min(9, to), from) });
  const inside =
    type === "number" ? weighed([1, whole], [2, fc.double({ min: least, max: most, noNaN: true })]) : whole;
  return weighed<unknown>(
    [14, few],
    [6, inside],
    [3, inside.map(String)],
    [2, fc.constantFrom(least, most, least - 1, most + 1)],
    [1, fc.constantFrom("", " 5 ", "1e2", "0x10", "5,5", "five", true, null, "99999999999999999999")],
  );
}

function drawOption(name: string, option: z.ZodType): Drawn {
  const property = z.toJSONSchema(option, { io: "input", unrepresentable: "any" }) as Property;
  if (property.enum) return weighed<unknown>([20, fc.constantFrom(...property.enum)], [1, anyText]);
  if (property.type === "integer" || property.type === "number") return drawNumber(property);
  return drawText(name, option, property.maxLength);
}

/** Options that one reaches for seldom, since they end what others are about. */
const SELDOM: Readonly<Record<string, number>> = {
  "class erase": 1,
  "mine erase": 1,
  "class forget": 1,
  "tank remove": 2,
};
/** Calls others build on. */
const OFTEN: Readonly<Record<string, number>> = {
  plan: 12,
  "run start": 8,
  "run next": 16,
  "batch mix": 8,
  "tank add": 8,
  "class setup": 8,
  "sheet add": 8,
};

/** Options without which most calls are refused. */
const LIKELY: Readonly<Record<string, readonly string[]>> = {
  plan: ["developer", "dilution"],
  "mix class": ["developer", "dilution"],
  "sheet show": ["developer", "dilution"],
  "sheet add": ["speed"],
  "run next": ["run", "sure"],
  "run stop": ["run", "sure"],
  "run correct": ["run", "ago"],
  "class periods": ["days", "from", "to"],
  "print log": ["seconds"],
  "batch restock": ["kind", "size", "dilution", "packs"],
  "class forget": ["sure"],
};

function drawCall(command: Command): fc.Arbitrary<DrawnCall> {
  const shape = Object.entries(command.options.shape as Record<string, z.ZodType>);
  const options = shape.map(([name, option]) => {
    const drawn = drawOption(name, option).map((value): [string, unknown][] => [[name, value]]);
    const isNeeded = !option.safeParse(undefined).success;
    const isLikely = isNeeded || LIKELY[command.name]?.includes(name);
    const [given, left] = isLikely ? [40, 1] : [2, shape.length];
    return weighed([given, drawn], [left, fc.constant<[string, unknown][]>([])]);
  });
  return fc.record({
    name: fc.constant(command.name),
    options: fc.tuple(...options).map((entries) => Object.fromEntries(entries.flat())),
    person: fc.constantFrom("Mina", "Ben", "Ole", "Tess", "Ada"),
    role: weighed<Role>([1, fc.constant("student")], [1, fc.constant("aide")], [6, fc.constant("teacher")]),
    hasFile: command.file ? fc.boolean() : fc.constant(false),
    afterSeconds: weighed(
      [80, fc.integer({ min: 0, max: 90 })],
      [8, fc.integer({ min: 0, max: 4000 })],
      [1, fc.integer({ min: 0, max: 90 * 86_400 })],
    ),
  });
}

/** One call of any command, or of those named. */
export function drawCalls(
  names: readonly string[] = commands.map(({ name }) => name),
): fc.Arbitrary<DrawnCall> {
  const drawn = commands.filter(({ name }) => names.includes(name));
  return fc.oneof(
    ...drawn.map((command) => ({
      weight: SELDOM[command.name] ?? OFTEN[command.name] ?? 4,
      arbitrary: drawCall(command),
    })),
  );
}
