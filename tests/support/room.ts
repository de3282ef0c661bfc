import { createDeliverer, type Deliverer } from "../../bot/deliver/deliver.ts";
import { type Answered, createDispatch } from "../../bot/calls/dispatch.ts";
import { DEMO_KEY, inventDemo } from "../../bot/demo/demo.ts";
import { DEMO_NAME } from "../../bot/demo/name.ts";
import type { Log } from "../../bot/process/log.ts";
import { settleDue } from "./settle.ts";
import type { ChatPort, Delivery, Outcome } from "../../bot/chat/port.ts";
import { lineFormsOf } from "../../commands/forms.ts";
import type { Role } from "../../store/shapes/person.ts";
import { commands } from "../../commands/index.ts";
import { speaking } from "../../commands/speech/language.ts";
import type { Language } from "../../store/shapes/language.ts";
import { readTyped } from "../../commands/ask/typed.ts";
import { lineFaultWords } from "../../commands/speech/line-words.ts";
import { sayInstants } from "../../commands/speech/wording.ts";
import type { SchoolClass } from "../../store/shapes/school.ts";
import { openStores, type OpenedStores } from "../../store/index.ts";
import { createFakeClock, type FakeClock } from "./clock.ts";

export interface Logged {
  readonly level: "debug" | "info" | "warn" | "error";
  readonly fields: Readonly<Record<string, unknown>>;
  readonly message: string;
}

export function createMemoryLog(): Log & { readonly lines: Logged[] } {
  const lines: Logged[] = [];
  const at =
    (level: Logged["level"]) =>
    (fields: Readonly<Record<string, unknown>>, message: string): void =>
      void lines.push({ level, fields, message });
  return { lines, debug: at("debug"), info: at("info"), warn: at("warn"), error: at("error") };
}

/** A class that has set a short wash of its own, so that an evening is over sooner. */
function washShort(stores: OpenedStores, school: SchoolClass | undefined): void {
  if (school?.habits.washMinSeconds === null)
    stores.classes.setHabits(school.id, { ...school.habits, washMinSeconds: 180 });
}

const idOf = (person: string): string => `room:${person.toLowerCase()}`;

/** A chat that lives in memory, with the whole bot but its clock behind it. */
export interface Room {
  readonly stores: OpenedStores;
  readonly clock: FakeClock;
  readonly log: ReturnType<typeof createMemoryLog>;
  /** What the bot said unasked, in order. */
  readonly heard: Delivery[];
  /** Texts heard since the last call of this, for one person (or everyone). */
  news(person?: string): string[];
  /** A person types a line (or presses a button: the same thing). */
  asks(person: string, line: string, role?: Role): Answered;
  says(person: string, line: string, role?: Role): string;
  /** Presses the button of that label on the newest thing this person was told. */
  press(person: string, label: string, role?: Role): string;
  /** Time goes by, a second at a time, with the bot awake. */
  pass(seconds: number): Promise<void>;
  /** Time goes by with the bot away. */
  away(seconds: number): void;
  tick(): Promise<void>;
  /** What the next sends come to; `sent` when empty. */
  readonly outcomes: Outcome[];
}

export function createRoom(path = ":memory:", clock: FakeClock = createFakeClock()): Room {
  const stores = openStores(path);
  const log = createMemoryLog();
  const heard: Delivery[] = [];
  const outcomes: Outcome[] = [];
  const buttons = new Map<string, Map<string, string>>();
  let read = 0;

  const port: ChatPort = {
    chat: "room",
    start: async () => {},
    async send(delivery) {
      const outcome = outcomes.shift() ?? { kind: "sent", ref: delivery.key };
      if (outcome.kind !== "sent") return outcome;
      if (!heard.some(({ key }) => key === delivery.key)) heard.push(delivery);
      keepButtons(delivery.personId ?? "", delivery.actions);
      return outcome;
    },
    stop: async () => {},
  } satisfies ChatPort;

  washShort(stores, inventDemo(stores, "UTC", clock.now()));
  const dispatch = createDispatch({ commands, stores, clock, log });
  const deliverer: Deliverer = createDeliverer({
    stores,
    clock,
    log,
    ports: new Map([["room", port]]),
    onOutcome: () => {},
  });

  /** Of a person; of the class, where nobody is named. */
  function languageOf(personId: string | null): Language {
    const found = stores.classes.find(DEMO_KEY);
    if (!found) return "en";
    return personId === null ? found.habits.language : stores.members.languageOf(found.id, personId);
  }

  function keepButtons(person: string, actions: readonly { label: string; line: string }[]): void {
    if (actions.length > 0) buttons.set(person, new Map(actions.map(({ label, line }) => [label, line])));
  }

  function asks(person: string, line: string, role: Role = "student"): Answered {
    const parsed = readTyped(line, lineFormsOf(commands));
    if (!parsed.ok) {
      return {
        kind: "refused",
        code: parsed.fault.code,
        reply: { text: speaking(languageOf(idOf(person)), () => lineFaultWords(parsed.fault)) },
        visibility: "private",
      };
    }
    const id = idOf(person);
    const answered = dispatch.run(
      {
        callId: null,
        name: parsed.value.name,
        options: parsed.value.options,
        person: { id, name: person },
        role,
        place: { classKey: DEMO_KEY, className: DEMO_NAME, channelRef: null },
      },
      clock.now(),
    );
    keepButtons(id, answered.reply.actions ?? []);
    return answered;
  }

  const says: Room["says"] = (person, line, role) => {
    const { reply, visibility } = asks(person, line, role);
    return show(reply.text, visibility === "class" ? null : idOf(person));
  };

  function show(text: string, personId: string | null): string {
    return speaking(languageOf(personId), () => sayInstants(text, clock.now(), "UTC"));
  }

  async function tick(): Promise<void> {
    settleDue({ stores, log }, clock.now());
    deliverer.pump();
    await deliverer.drain(1000);
  }

  return {
    stores,
    clock,
    log,
    heard,
    outcomes,
    asks,
    says,
    tick,
    news(person) {
      const fresh = heard.slice(read);
      read = heard.length;
      const wanted = person === undefined ? fresh : fresh.filter(({ personId }) => personId === idOf(person));
      return wanted.map(({ text, personId }) => show(text, personId));
    },
    press(person, label, role) {
      const line = buttons.get(idOf(person))?.get(label);
      if (line === undefined) throw new Error(`${person} sees no button ${label}`);
      return says(person, line, role);
    },
    async pass(seconds) {
      for (let second = 0; second < seconds; second += 1) {
        clock.advance(1);
        await tick();
      }
    },
    away: (seconds) => clock.advance(seconds),
  };
}
