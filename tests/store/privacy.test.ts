import { mkdtempSync, readFileSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readJson } from "../../commands/roll/export/file.ts";
import { createEraser } from "../../bot/rounds/eraser.ts";
import { TEXT_COLUMNS } from "../../store/text-columns.ts";
import { openStores } from "../../store/index.ts";
import { createFakeClock } from "../support/clock.ts";
import { aPlan } from "../support/make.ts";
import { createMemoryLog, createRoom, type Room } from "../support/room.ts";
import { aNewRoll, takeLog } from "../support/rolls.ts";

/** A name that is in no word, no path and no other name. */
const NAME = "Zarquilla Öhrwurm";
const ID = "room:zarquilla öhrwurm";

/** Text columns that hold no person's name: each with its reason. */
const NAMELESS: Readonly<Record<string, string>> = {
  "batches.kind": "a word of ours",
  "batches.medium": "a word of ours",
  "batches.product": "a product",
  "boards.channel_ref": "a channel's number",
  "boards.ref": "a message's number",
  "classes.key": "a place's number",
  "classes.name": "the class's own name",
  "classes.zone": "a time zone",
  "classes.channel_ref": "a channel's number",
  "classes.calendar_token": "drawn by lot",
  "cues.key": "a key of ours",
  "cues.kind": "a word of ours",
  "run_threads.channel_ref": "a channel's number",
  "run_threads.ref": "a channel's number",
  "run_threads.state": "a word of ours",
  "set_aside.kind": "a word of ours",
  "set_aside.person_id": "goes with the person",
  "cues.state": "a word of ours",
  "erased_numbers.kind": "a word of ours",
  "erasures.kind": "a word of ours",
  "ledger.kind": "a word of ours",
  "ledger.key": "run and step",
  "batch_marks.mark": "a word of ours",
  "outbox.key": "a key of ours",
  "outbox.state": "a word of ours",
  "outbox.ref": "a message's number",
  "outbox.bundle": "a key of ours",
  "owner.address": "this computer's address",
  "erased_people.hash": "a hash",
  "push_owed.key": "a key of ours",
  "push_owed.topic": "a run's number",
  "print_photos.media_type": "a word of ours",
  "prints.paper": "read from the body",
  "return_codes.code_hash": "a hash",
  "roll_photos.media_type": "a word of ours",
  "roll_values.kind": "a word of ours",
  "rolls.film": "a film",
  "rolls.developer": "a developer",
  "rolls.dilution": "numbers",
  "rolls.outcome": "a word of ours",
  "rolls.seen": "digits",
  "room_secrets.kind": "a word of ours",
  "room_secrets.value": "the class's code, or a hash",
  "room_sessions.token_hash": "a hash",
  "runs.phase_kind": "a word of ours",
  "says.audience": "a word of ours",
  "settings.name": "a word of ours",
  "settings.value": "the process's own",
  "sinks.device": "a word for a device that is everybody's",
  "sinks.token_hash": "a hash",
  "sink_presses.device": "a word for a device that is everybody's",
  "sheets.film": "a film",
  "sheets.developer": "a developer",
  "sheets.dilution": "numbers",
  "shares.kind": "a word of ours",
  "shelf.product": "a product",
};

/** Columns whose rows go, or whose value is set anew, when a person is erased. */
const TAKEN_OUT = [
  "calls.call_id",
  "direct_channels.person_id",
  "direct_channels.channel_ref",
  "handovers.person_id",
  "handovers.person_name",
  "ledger.person_id",
  "ledger.person_name",
  "ledger.about_id",
  "ledger.about_name",
  "members.person_id",
  "members.name",
  "members.role",
  "members.language",
  "members.chosen_language",
  "messages.person_id",
  "messages.author_id",
  "messages.key",
  "outbox.person_id",
  "plans.person_id",
  "prints.person_id",
  "prints.person_name",
  "push_subscriptions.person_id",
  "push_subscriptions.endpoint",
  "push_subscriptions.p256dh",
  "push_subscriptions.auth",
  "push_subscriptions.token_hash",
  "return_codes.person_id",
  "roll_values.value",
  "rolls.person_id",
  "rolls.person_name",
  "rolls.marks",
  "room_sessions.person_id",
  "room_sessions.device",
  "runs.person_id",
  "says_shown.person_id",
  "sheet_imports.person_id",
  "shares.person_id",
  "sheets.added_by",
  "sink_people.person_id",
  "sink_presses.call_id",
  "sink_presses.person_id",
  "strips.person_id",
  "shelf.person_id",
  "shelf.person_name",
];

describe("every text in the store", () => {
  it("is known to hold no name, or is seen to when a person is erased", () => {
    const { db } = openStores(":memory:");
    const columns = db
      .prepare<[], { id: string }>(
        `select tables.name || '.' || columns.name as id from pragma_table_list as tables, pragma_table_xinfo(tables.name) as columns
         where tables.type = 'table' and tables.name not like 'sqlite_%' and tables.name not like 'rolls_text%' and tables.name not like 'prints_text%'
           and columns.type in ('TEXT', 'ANY', '')`,
      )
      .all()
      .map(({ id }) => id);
    const seenTo = [...TEXT_COLUMNS.map(({ table, column }) => `${table}.${column}`), ...TAKEN_OUT];
    const unknown = columns.filter((id) => !seenTo.includes(id) && NAMELESS[id] === undefined);
    expect(unknown).toEqual([]);
    const gone = [...seenTo, ...Object.keys(NAMELESS)].filter((id) => !columns.includes(id));
    expect(gone).toEqual([]);
  });
});

/** A class on disk in which this person has left their name wherever one can. */
function aClassThatKnows(path: string): Room {
  const room = createRoom(path, createFakeClock());
  const { stores, clock } = room;
  const now = clock.now();
  room.says("Iris", "/help", "teacher");
  room.says("Ben", "/help");
  room.says(NAME, "/class board");
  room.says(
    NAME,
    "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20 devbatch:Zarquilla's bottle",
  );
  room.says(NAME, "/run start");
  room.says(NAME, "/tray plan paper:fibre temp:20 devbatch:Zarquilla's tray");
  room.says("Iris", "/tray lamp lamp:Zarquilla after:3", "teacher");
  room.says("Iris", `/class say Well done, ${NAME}! to:working`, "teacher");
  room.says("Iris", `/class say zarquilla öhrwurm left a towel`, "teacher");
  room.says(NAME, `/run stop reason:Zarquilla spilt it sure:yes`);
  room.says(NAME, `/roll note roll:L1 note:mine, ${NAME}`);
  room.says(NAME, `/print strip base:8`);
  room.says(
    NAME,
    `/print log seconds:12.5 title:${NAME} at the pier frame:3 note:mine, Zarquilla burn:zarquilla 1/2`,
  );
  room.says("Ben", `/print log seconds:9 title:zarquilla öhrwurm waves note:after ${NAME}`);
  room.says("Iris", `/print paper paper:1 name:Zarquilla gloss`, "aide");
  room.says("Iris", `/print enlarger enlarger:1 name:that of ${NAME}`, "teacher");
  room.says("Ben", `/tank report tank:2 fault:dropped by Zarquilla`);
  room.says("Iris", "/batch mix kind:fixer product:Brine volume:1 l", "aide");
  room.says(NAME, "/batch mix kind:developer product:Surf volume:1 l", "aide");
  room.says("Iris", `/batch correct batch:B1 ml:-50 reason:spilt by ${NAME}`, "aide");
  room.says("Iris", `/batch allow batch:B1 person:${NAME} reason:she asked`, "teacher");
  stores.rolls.add(aNewRoll({ personId: "room:ben", personName: "Ben", runId: null as never }));
  room.says("Ben", `/roll note roll:L2 note:developed with ZARQUILLA ÖHRWURM and Zarquilla`);
  stores.messages.add({
    classId: 1,
    personId: null,
    authorId: ID,
    key: `l:${ID}:1`,
    at: now,
    body: { kind: "line", text: "/help", author: NAME },
  });
  stores.messages.add({
    classId: 1,
    personId: null,
    authorId: "room:ben",
    key: "l:room:ben:2",
    at: now,
    body: { kind: "line", text: `ask "${NAME}"`, author: "Ben" },
  });
  stores.rooms.addSession({ tokenHash: "h", classId: 1, personId: ID, device: "phone" }, now);
  stores.members.saveDirectChannel(ID, "77");
  stores.calls.claim(`${ID}:abc`, now);
  stores.boards.place(1, "77");
  stores.boards.saveShown(1, "m", `**T1** ${NAME}, Developer`, now);
  return room;
}

const WANTED = [
  NAME,
  NAME.toLowerCase(),
  NAME.toUpperCase(),
  "Zarquilla",
  "zarquilla",
  "ZARQUILLA",
  "Öhrwurm",
  "öhrwurm",
  ID,
];

/** Which of these byte strings stand in any file of the folder; also as hex, as the index of marks has them. */
function foundIn(folder: string): string[] {
  const files = readdirSync(folder).map((name) => ({ name, bytes: readFileSync(join(folder, name)) }));
  return WANTED.flatMap((text) => [text, Buffer.from(text).toString("hex")]).flatMap((text) =>
    files
      .filter(({ bytes }) =>
        [text, text.toUpperCase(), text.toLowerCase()].some(
          (each) => bytes.includes(Buffer.from(each, "utf8")) || bytes.includes(Buffer.from(each, "utf16le")),
        ),
      )
      .map(({ name }) => `${text} in ${name}`),
  );
}

async function sweepAfter(room: Room): Promise<void> {
  await room.pass(2);
  room.away(120);
  createEraser({ stores: room.stores, clock: room.clock, log: createMemoryLog() }).beat();
}

describe("a person who erases themselves", () => {
  it("is gone from every byte of the store's files, while it is open and after", async () => {
    const folder = mkdtempSync(join(tmpdir(), "sinkside-erase-"));
    const room = aClassThatKnows(join(folder, "sinkside.db"));
    await room.pass(2);
    expect(foundIn(folder).length).toBeGreaterThan(4);
    expect(room.says(NAME, `/mine erase name:${NAME}`)).toContain("**Done.** I know you no more.");
    // What a chat writes down after the answer, as the room does.
    room.stores.messages.add({
      classId: 1,
      personId: ID,
      authorId: null,
      key: `a1:${ID}:9`,
      at: room.clock.now(),
      body: { kind: "reply", text: "Done." },
    });
    await sweepAfter(room);
    expect(foundIn(folder)).toEqual([]);
    room.stores.close();
    expect(foundIn(folder)).toEqual([]);
  });

  it("leaves the log's figures, nameless, and everybody else's things as they were", async () => {
    const folder = mkdtempSync(join(tmpdir(), "sinkside-erase-"));
    const room = aClassThatKnows(join(folder, "sinkside.db"));
    const before = room.stores.batches.lines(1).map(({ body }) => body);
    room.says(NAME, `/mine erase name:${NAME}`);
    await sweepAfter(room);
    const found = room.says("Ben", "/roll find");
    expect(found).toContain("**2 rolls**");
    expect(found).toContain("L1 Somebody: Lantern 400");
    expect(room.says("Ben", "/roll show L2")).toContain("developed with somebody and somebody");
    expect(room.says("Ben", "/print find")).toContain("**2 prints**");
    expect(room.says("Ben", "/print show V1")).toContain("Somebody");
    expect(room.says("Ben", "/print find zarquilla")).toContain("No print is like that.");
    expect(room.says("Ben", "/roll find zarquilla")).toContain("No roll in the log is like that.");
    const after = room.stores.batches.lines(1).map(({ body }) => body);
    expect(after.map((body) => ({ ...body, reason: "" }))).toEqual(
      before.map((body) => ({ ...body, reason: "" })),
    );
    expect(() => room.stores.db.exec("update ledger set kind = 'used'")).toThrow(/never changed/);
    const log = takeLog(room.stores, room.asks("Iris", "/roll export as:json", "teacher").reply);
    expect(readJson(log)).toHaveLength(2);
    expect(log).not.toMatch(/zarquilla/i);
    room.stores.db.exec("insert into rolls_text (rolls_text) values ('integrity-check')");
    expect(room.stores.db.pragma("integrity_check", { simple: true })).toBe("ok");
    expect(room.stores.db.pragma("foreign_key_check")).toEqual([]);
  });

  it("leaves no number of a plan or a run to be given once more", () => {
    const room = createRoom();
    room.says("Ben", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    room.says(NAME, "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20");
    expect(room.says(NAME, "/run start")).toContain("R1");
    room.says(NAME, "/run stop sure:yes");
    room.says(NAME, `/mine erase ${NAME}`);
    expect(room.says("Ben", "/run start")).toContain("R2");
    expect(room.says("Ben", "/plan film:Lantern 400 developer:House MQ dilution:1+1 temp:20")).toContain(
      "P3",
    );
    room.stores.atomically(() => room.stores.privacy.eraseClass(1));
    expect(room.stores.db.prepare("select count(*) as n from erased_numbers").get()).toEqual({ n: 0 });
  });

  it("takes nobody else along: two of one first name", () => {
    const room = createRoom();
    for (const person of ["Mina Vale", "Mina Reed", "Iris"])
      room.says(person, "/help", person === "Iris" ? "teacher" : "student");
    room.says("Iris", "/tank report tank:1 fault:Mina Vale and Mina Reed dropped it, says Mina");
    room.says("Mina Vale", "/mine erase name:mina vale");
    expect(room.stores.tanks.find(1, 1)?.condition).toBe("somebody and Mina Reed dropped it, says Mina");
    expect(
      room.stores.members
        .list(1)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(["Iris", "Mina Reed"]);
  });
});

describe("a class that is erased", () => {
  it("is gone from every byte, and others stay", async () => {
    const folder = mkdtempSync(join(tmpdir(), "sinkside-erase-"));
    const room = aClassThatKnows(join(folder, "sinkside.db"));
    const other = room.stores.classes.add("room:other", "Other", "UTC", false, 0);
    room.stores.rolls.add(aNewRoll({ classId: other.id, runId: null as never }));
    room.stores.plans.add(other.id, "room:ola", aPlan(), 0);
    const name = room.stores.classes.get(1)?.name ?? "";
    expect(room.says("Iris", `/class erase name:${name}`, "teacher")).toContain("**Planned.**");
    room.away(6 * 86_400);
    const eraser = createEraser({ stores: room.stores, clock: room.clock, log: createMemoryLog() });
    eraser.beat();
    expect(room.stores.classes.get(1)?.name).toBe(name);
    room.away(86_400 + 1);
    eraser.beat();
    expect(room.stores.classes.get(1)).toBeUndefined();
    room.away(60);
    eraser.beat();
    expect(foundIn(folder)).toEqual([]);
    expect(room.stores.classes.list().map((each) => each.name)).toEqual(["Other"]);
    expect(room.stores.plans.find(other.id, 1)?.number).toBe(1);
    const left = room.stores.db
      .prepare<[], { name: string }>(
        "select name from sqlite_master where type = 'table' and sql like '%class_id%'",
      )
      .all()
      .filter(({ name: table }) => table !== "erasures")
      .flatMap(({ name: table }) =>
        room.stores.db.prepare(`select * from ${table} where class_id = 1`).all(),
      );
    expect(left).toEqual([]);
  });
});
