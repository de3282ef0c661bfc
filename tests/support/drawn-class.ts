import { createDispatch, type Answered } from "../../bot/calls/dispatch.ts";
import { openDemo } from "../../bot/demo/evening.ts";
import { DEMO_KEY } from "../../bot/demo/demo.ts";
import { DEMO_NAME } from "../../bot/demo/name.ts";
import { settleDue } from "./settle.ts";
import type { Command } from "../../commands/define.ts";
import type { Role } from "../../store/shapes/person.ts";
import { UNREADABLE_KINDS } from "../../store/shapes/unreadable.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import type { DrawnCall } from "./drawn-calls.ts";
import { EVERY_COMMAND } from "./every-command.ts";
import { START } from "./make.ts";
import { createMemoryLog } from "./room.ts";

/* One class with a past in it, on which drawn calls are tried; whatever they leave behind is taken back. */

export interface DrawnClass {
  readonly stores: OpenedStores;
  readonly classId: number;
  call(call: Omit<DrawnCall, "hasFile" | "afterSeconds">, file?: Uint8Array): Answered;
  /** Time goes by, with the bot awake. */
  pass(seconds: number): void;
  /** What went wrong since the last time it was asked: a call that broke, a run that could not be settled. */
  faults(): string[];
  /** Calls every command once in turn, keeping nothing; what broke. */
  readAll(): string[];
  /** Does it, and takes back all it did. */
  apart<T>(work: () => T): T;
}

class TakenBack extends Error {}

const STAFF = ["Tess", "Ada"];

const film = (tank: string) =>
  ["plan", { film: "Lantern 400", developer: "House MQ", dilution: "1+1", temp: "20C", tank }] as const;
/** What each student is at: two films in tanks, and prints in the trays. */
const FIRST_PLANS: Readonly<Record<string, readonly [string, Readonly<Record<string, string | number>>]>> = {
  Mina: film("T1"),
  Ben: film("T2"),
  Ole: ["tray plan", { paper: "fibre", temp: "20C", factor: 10 }],
};

export function createDrawnClass(commands: readonly Command[]): DrawnClass {
  const stores = openStores(":memory:");
  const log = createMemoryLog();
  let now = START;
  const clock = { now: () => now };
  openDemo(stores, "Europe/Berlin", clock, log);
  const classId = stores.classes.find(DEMO_KEY)?.id ?? 0;
  const dispatch = createDispatch({ commands, stores, clock, log });

  const drawn: DrawnClass = {
    stores,
    classId,
    call: ({ name, options, person, role }, file) =>
      dispatch.run(
        {
          callId: null,
          name,
          options,
          person: { id: `room:${person.toLowerCase()}`, name: person },
          role,
          place: { classKey: DEMO_KEY, className: DEMO_NAME, channelRef: null },
          ...(file ? { file } : {}),
        },
        now,
      ),
    pass(seconds) {
      now += seconds * 1000;
      settleDue({ stores, log }, now);
    },
    faults: () =>
      log.lines
        .splice(0)
        .filter(({ level }) => level === "error")
        .map(({ fields, message }) => `${message}: ${JSON.stringify(fields, errorText)}`),
    readAll() {
      for (const [name, options] of Object.entries(EVERY_COMMAND)) {
        drawn.apart(() => drawn.call({ name, options, person: "Tess", role: "teacher" }));
      }
      const unread = stores.unreadable
        .list(classId, UNREADABLE_KINDS)
        .map((row) => `unreadable: ${JSON.stringify(row)}`);
      return [...drawn.faults(), ...unread];
    },
    apart(work) {
      const before = now;
      let result: ReturnType<typeof work> | undefined;
      try {
        stores.atomically(() => {
          result = work();
          throw new TakenBack();
        });
      } catch (error) {
        if (!(error instanceof TakenBack)) throw error;
      } finally {
        now = before;
      }
      return result as ReturnType<typeof work>;
    },
  };
  for (const person of ["Mina", "Ben", "Ole", ...STAFF]) {
    const role: Role = STAFF.includes(person) ? "teacher" : "student";
    drawn.call({
      name: "mine language",
      options: { language: person === "Mina" ? "de" : "en" },
      person,
      role,
    });
    if (role === "student")
      for (const [name, options] of [FIRST_PLANS[person] ?? [], ["run start", {}]] as const)
        if (name) drawn.call({ name, options: options ?? {}, person, role });
  }
  return drawn;
}

const errorText = (_: string, value: unknown): unknown =>
  value instanceof Error
    ? `${value.name}: ${value.message} ${value.stack?.split("\n")[1] ?? ""}`.slice(0, 600)
    : value;
