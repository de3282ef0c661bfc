import { beforeEach, describe, expect, test } from "vitest";
import { z } from "zod";
import { createDispatch, type PlainCall } from "../../../bot/calls/dispatch.ts";
import { type Command, defineCommand, UserError } from "../../../commands/define.ts";
import { inEach } from "../../../commands/speech/language.ts";
import { openStores, type OpenedStores } from "../../../store/index.ts";
import { createFakeClock } from "../../support/clock.ts";
import { ENGLISH_WORDS } from "../../support/english.ts";
import { aPlan, START } from "../../support/make.ts";
import { createMemoryLog } from "../../support/room.ts";

const spoken = inEach({ en: "Said.", de: "Gesagt." });
const refused = inEach({ en: "Refused.", de: "Verweigert." });

const tell = defineCommand({
  name: "try tell",
  summary: "tells the class",
  options: () => ({
    word: z.string().min(2).max(10).describe("Ein Wort"),
    ph: z.coerce.number().min(0).max(14).optional().describe("pH"),
    count: z.coerce.number().int().min(1).max(3).default(1).describe("Wie oft"),
    way: z.enum(["loud", "soft"]).optional().describe("Wie"),
  }),
  who: "student",
  visibility: "class",
  handle({ word, ph, way }, context) {
    context.stores.plans.add(context.class.id, context.person.id, aPlan(), context.now);
    if (word === "no") throw new UserError("ERR_NOBODY", refused());
    return { text: spoken(), fields: { ph: ph ?? null, way: way ?? null } };
  },
});
const aides = defineCommand({
  name: "try aide",
  summary: "for aides",
  options: () => ({}),
  who: "aide",
  visibility: "private",
  handle: () => ({ text: "" }),
});
const breaks = defineCommand({
  name: "try break",
  summary: "breaks",
  options: () => ({ how: z.enum(["bug", "full"]).describe("How") }),
  who: "student",
  visibility: "private",
  handle({ how }) {
    throw Object.assign(new Error("secret"), how === "full" ? { code: "SQLITE_FULL" } : {});
  },
});
const staff: Command = { ...aides, name: "try staff", who: "teacher" };

let stores: OpenedStores;
let dispatch: ReturnType<typeof createDispatch>;
let classId: number;

beforeEach(() => {
  stores = openStores(":memory:");
  const log = createMemoryLog();
  dispatch = createDispatch({
    commands: [tell, aides, staff, breaks],
    stores,
    clock: createFakeClock(),
    log,
  });
  classId = stores.classes.ensure("room:1", "Invented class", START).id;
  stores.members.see(classId, { id: "room:mina", name: "Mina" }, "student", START);
  stores.members.chooseLanguage(classId, "room:mina", "de");
});

const call = (name: string, options: object = {}, over: Partial<PlainCall> = {}): PlainCall => ({
  callId: null,
  name,
  options: options as Record<string, unknown>,
  person: { id: "room:mina", name: "Mina" },
  role: "student",
  place: { classKey: "room:1", className: "Invented class", channelRef: null },
  ...over,
});
const said = (...given: Parameters<typeof call>): string => dispatch.run(call(...given), START).reply.text;

describe("somebody who chose German reads German", () => {
  test("of every option that is wrong", () => {
    expect(said("try tell", { count: "9", way: "odd", wrod: "x", ph: "abc" }).split("\n")).toEqual([
      "`/try tell` kennt keine Angabe wrod. Meintest du word?",
      "word fehlt. Füg `word:…` hinzu (Ein Wort).",
      "ph:abc ist keine Zahl. pH.",
      "count:9 ist zu groß: höchstens 3.",
      "way:odd gibt es nicht. Nimm loud oder weich.",
    ]);
    expect(said("try tell", { word: "a", count: "1,5" }).split("\n")).toEqual([
      "word ist zu kurz. Ein Wort.",
      "count:1,5 muss eine ganze Zahl sein.",
    ]);
    expect(said("try tell", { word: "x".repeat(50), ph: "-1" }).split("\n")).toEqual([
      "word ist zu lang: 50 Zeichen, höchstens 10.",
      "ph:-1 ist zu klein: mindestens 0.",
    ]);
  });

  test("and types a choice as it is shown, in any language and with any capitals", () => {
    const wayOf = (way: string): unknown =>
      dispatch.run(call("try tell", { word: "ab", way }), START).reply.fields?.["way"];
    expect(["soft", "weich", "Weich", "SOFT "].map(wayOf)).toEqual(["soft", "soft", "soft", "soft"]);
    expect(wayOf("weicher")).toBeUndefined();
  });

  test("of what only staff may do", () => {
    expect(said("try aide")).toBe("`/try aide` dürfen nur eine Hilfskraft oder die Lehrkraft. Frag sie.");
    expect(said("try staff", {}, { role: "aide" })).toBe("`/try staff` darf nur die Lehrkraft. Frag sie.");
  });

  test("of a command there is not", () => {
    expect(said("try tel")).toBe("Den Befehl `/try tel` gibt es nicht. Meintest du `/try tell`?");
    expect(said("xyzzyxyzzy")).toBe("Den Befehl `/xyzzyxyzzy` gibt es nicht. Versuch `/help`.");
  });

  test("of what broke, and of a full disk", () => {
    expect(said("try break", { how: "bug" })).toMatch(/^Es ist ein Fehler aufgetreten/);
    expect(said("try break", { how: "full" })).toMatch(/^Die Platte des Kursrechners ist voll/);
    for (const how of ["bug", "full"]) expect(said("try break", { how })).not.toMatch(ENGLISH_WORDS);
  });

  test("though the chat says English; and the other way round, where nothing was chosen", () => {
    expect(said("try break", { how: "bug" }, { language: "en" })).toMatch(/^Es ist ein Fehler/);
    const ben = { person: { id: "room:ben", name: "Ben" } };
    expect(said("try break", { how: "bug" }, ben)).toMatch(/^Something broke/);
    expect(said("try break", { how: "bug" }, { ...ben, language: "de" })).toMatch(/^Es ist ein Fehler/);
    expect(said("try tel", {}, { ...ben, language: "de" })).toMatch(/^Den Befehl/);
  });
});

describe("what a whole class reads", () => {
  test("is in the class's language, its refusal in the caller's, and a refusal leaves nothing half-done", () => {
    expect(dispatch.run(call("try tell", { word: "yes" }), START)).toMatchObject({
      reply: { text: "Said." },
      visibility: "class",
    });
    expect(dispatch.run(call("try tell", { word: "no" }), START)).toMatchObject({
      reply: { text: "Verweigert." },
      visibility: "private",
    });
    expect(stores.db.prepare("select count(*) as n from plans").get()).toEqual({ n: 1 });
  });
});

test.each([
  ["5,5", 5.5],
  ["5.5", 5.5],
  ["7", 7],
])("a number typed %s is %d, whatever language somebody reads", (typed, ph) => {
  for (const over of [{}, { person: { id: "room:ben", name: "Ben" } }])
    expect(
      dispatch.run(call("try tell", { word: "yes", ph: typed }, over), START).reply.fields,
    ).toMatchObject({
      ph,
    });
});
