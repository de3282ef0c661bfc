import { type Command, type Context, type Reply, type Suggestion, UserError } from "../../commands/define.ts";
import { mayActAs } from "../../store/shapes/person.ts";
import { DEFAULT_LANGUAGE, type Language } from "../../store/shapes/language.ts";
import { inEach, speaking, spokenLanguage } from "../../commands/speech/language.ts";
import { nearNames } from "../../commands/speech/line.ts";
import type { Stores } from "../../store/index.ts";
import type { CommandCall, CompletionRequest } from "../chat/port.ts";
import type { Clock } from "../process/clock.ts";
import type { Log } from "../process/log.ts";
import { againOf, faultyOption, insteadActions } from "./again.ts";
import { issueWords, readOptions, unknownOptionWords } from "./option-words.ts";
import { type Asked, createShares } from "./shares.ts";
import { de } from "./words/dispatch.de.ts";
import { en } from "./words/dispatch.en.ts";

/** What became of a call. `repeat`: the chat delivered it twice, its work is done already. */
export interface Answered {
  readonly kind: "done" | "refused" | "broken" | "repeat";
  readonly code: string | null;
  readonly reply: Reply;
  readonly visibility: "private" | "class";
}

type Caller = Pick<CommandCall, "person" | "role" | "place" | "isVisit" | "language" | "file">;
export type PlainCall = Omit<CommandCall, "answer">;

export interface Dispatch {
  /** Does the work of a call in one transaction and says what to answer. Never throws. */
  run(call: PlainCall, now: number): Answered;
  onCommand(call: CommandCall): Promise<void>;
  onComplete(request: CompletionRequest): readonly Suggestion[];
}

const words = inEach({ en, de });

export interface DispatchDeps {
  readonly commands: readonly Command[];
  readonly stores: Stores;
  readonly clock: Clock;
  readonly log: Log;
  /** The time zone of a class that is met for the first time; UTC if left out. */
  readonly zone?: string;
  /** Called after each call that may have changed what is due or what is seen. */
  readonly onChange?: (classId: number) => void;
}

export function createDispatch({
  commands,
  stores,
  clock,
  log,
  zone = "UTC",
  onChange,
}: DispatchDeps): Dispatch {
  const byName = new Map(
    commands.flatMap((command) => [command.name, ...(command.was ?? [])].map((name) => [name, command])),
  );

  const shares = createShares(stores.shares);

  function askedOf({ name, person, role, place, file }: PlainCall): Asked {
    return {
      classKey: place.classKey,
      personId: person.id,
      isStaff: role !== "student",
      isForFilm: name.startsWith("run "),
      kind: file ? "photos" : "words",
    };
  }

  function contextOf(call: Caller, now: number): Context {
    const found = stores.classes.ensure(call.place.classKey, call.place.className, now, zone);
    if (call.place.channelRef !== null && stores.classes.channelRef(found.id) === null) {
      stores.classes.setChannelRef(found.id, call.place.channelRef);
    }
    const known = call.isVisit ? stores.members.find(found.id, call.person.id)?.role : undefined;
    const member = stores.members.see(found.id, call.person, known ?? call.role, now);
    if (call.language) stores.members.hearLanguage(found.id, member.personId, call.language);
    return {
      now,
      person: { id: member.personId, name: member.name },
      role: call.role,
      class: found,
      stores,
      here: {
        channelRef: call.place.channelRef,
        missingPermissions: call.place.missingPermissions ?? [],
        channelName: call.place.channelName,
        picked: call.place.picked,
        threads: call.place.threads,
        look: call.place.look,
      },
      ...(call.file ? { file: call.file } : {}),
    };
  }

  /** For who is still typing: nothing is written of them. Undefined in a class that is not known yet: it has nothing to offer. */
  function readingContext({ person, role, place }: CompletionRequest, now: number): Context | undefined {
    const found = stores.classes.find(place.classKey);
    if (!found) return undefined;
    const name = stores.members.find(found.id, person.id)?.name ?? person.name;
    return { now, person: { id: person.id, name }, role, class: found, stores };
  }

  const readerLanguage = ({ class: { id }, person }: Context): Language =>
    stores.members.languageOf(id, person.id);

  function work(call: PlainCall, now: number): Answered & { classId?: number } {
    const command = byName.get(call.name);
    const context = contextOf(call, now);
    return speaking(readerLanguage(context), () => {
      if (!command) throw new UserError("ERR_UNKNOWN_COMMAND", unknownCommandWords(call.name, commands));
      const reply = sayNewName(command, call.name, handle(command, call, context));
      return { kind: "done", code: null, reply, visibility: command.visibility, classId: context.class.id };
    });
  }

  function handle(command: Command, call: PlainCall, context: Context): Reply {
    if (!mayActAs(call.role, command.who)) {
      const least = command.who === "aide" ? "aide" : "teacher";
      throw new UserError("ERR_ROLE", words().onlyStaff(command.name, least));
    }
    const given = Object.fromEntries(Object.entries(call.options).filter(([, value]) => value !== undefined));
    const faults = unknownOptionWords(command, given);
    const parsed = readOptions(command, given);
    if (!parsed.success) faults.push(...issueWords(command, parsed.error.issues, given));
    if (faults.length > 0) {
      const option = faultyOption(command, given, parsed.error?.issues ?? []);
      throw new UserError("ERR_OPTIONS", faults.join("\n"), [], { option });
    }
    const answer = (): Reply => command.handle(parsed.data ?? {}, context);
    const { language } = context.class.habits;
    if (command.visibility !== "class" || language === spokenLanguage()) return answer();
    // What the whole class reads is in the class's language; a refusal is read by the caller alone.
    try {
      return stores.atomically(() => speaking(language, answer));
    } catch (error) {
      if (error instanceof UserError) return answer();
      throw error;
    }
  }

  /** Whose words a fault takes, of which the store may be the cause. */
  function languageAfterFault({ place, person, language }: Caller): Language {
    try {
      const found = stores.classes.find(place.classKey);
      const known = found && stores.members.find(found.id, person.id);
      if (known) return stores.members.languageOf(known.classId, known.personId);
    } catch {
      // The fault itself is told all the same.
    }
    return language ?? DEFAULT_LANGUAGE;
  }

  function run(call: PlainCall, now: number): Answered {
    try {
      const answered = stores.atomically(() => {
        if (call.callId !== null && !stores.calls.claim(call.callId, now)) return undefined;
        const spent = shares.spent(askedOf(call), now);
        if (spent)
          throw new UserError(
            "ERR_SHARE",
            speaking(languageAfterFault(call), () => words().shareSpent(spent)),
          );
        const worked = work(call, now);
        shares.keep(now);
        return worked;
      });
      if (!answered)
        return { kind: "repeat", code: "ERR_REPEAT", reply: { text: "" }, visibility: "private" };
      if (answered.classId !== undefined) onChange?.(answered.classId);
      return answered;
    } catch (error) {
      return refuse(error, call);
    }
  }

  function refuse(error: unknown, call: PlainCall): Answered {
    const about = { command: call.name, person: call.person.id };
    if (error instanceof UserError) {
      log.debug({ ...about, code: error.code }, "refused");
      const again = againOf(error, call);
      const reply = {
        text: error.message,
        fields: { code: error.code },
        actions: [...error.actions, ...insteadActions(error, call)],
        ...(again ? { again } : {}),
      };
      return { kind: "refused", code: error.code, reply, visibility: "private" };
    }
    const code = (error as { code?: string }).code ?? "";
    log.error({ ...about, err: error }, "a call broke");
    const isFull = code === "SQLITE_FULL" || code.startsWith("SQLITE_IOERR");
    const text = speaking(languageAfterFault(call), () => (isFull ? words().diskFull : words().broken));
    return { kind: "broken", code: code || "ERR_BROKEN", reply: { text }, visibility: "private" };
  }

  return {
    run,
    async onCommand(call) {
      const startedAt = clock.now();
      const answered = run(call, startedAt);
      log.debug({ command: call.name, outcome: answered.kind, ms: clock.now() - startedAt }, "call");
      if (answered.kind === "repeat") return;
      const { file } = call;
      const asked = askedOf(call);
      // The question and its answer are kept in a feed; a photo with its roll.
      const written = JSON.stringify([call.options, answered.reply]).length;
      shares.add({ ...asked, kind: "words" }, written, startedAt);
      if (file && answered.kind === "done") shares.add(asked, file.length, startedAt);
      try {
        await call.answer(answered.reply, answered.visibility, answered.code);
      } catch (error) {
        // The work is done and kept; only its answer was lost. Answering again could say it twice.
        log.warn({ command: call.name, err: error }, "an answer could not be given");
      }
    },
    onComplete(request) {
      const command = byName.get(request.name);
      // What a call would refuse is not offered either; and of an object's own names only ours.
      if (!command?.complete || !mayActAs(request.role, command.who)) return [];
      if (!Object.hasOwn(command.complete, request.option)) return [];
      const completer = command.complete[request.option];
      if (!completer) return [];
      try {
        const context = readingContext(request, clock.now());
        if (!context) return [];
        return speaking(readerLanguage(context), () =>
          completer(request.typed, context, request.others),
        ).slice(0, 25);
      } catch (error) {
        log.warn({ command: request.name, option: request.option, err: error }, "a completion broke");
        return [];
      }
    },
  };
}

/** A call by a name of before is answered like any, with the name of today. */
function sayNewName({ name }: Command, called: string, reply: Reply): Reply {
  return called === name ? reply : { ...reply, text: `${reply.text}\n\n${words().renamed(called, name)}` };
}

function unknownCommandWords(name: string, commands: readonly Command[]): string {
  const near = nearNames(
    name.toLowerCase(),
    commands.map((command) => command.name),
  );
  return words().unknownCommand(name.replaceAll("`", "").slice(0, 60), near);
}
