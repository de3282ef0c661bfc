#!/usr/bin/env node
import { chatOf, makeChatKey } from "../store/shapes/chat-key.ts";
import { join } from "node:path";
import { pipeline } from "node:stream/promises";
import { parseArgs } from "node:util";
import { lineFormsOf } from "../commands/forms.ts";
import { type Role, ROLES } from "../store/shapes/person.ts";
import { commands } from "../commands/index.ts";
import { DEFAULT_LANGUAGE } from "../store/shapes/language.ts";
import { speaking } from "../commands/speech/language.ts";
import { lineFaultWords } from "../commands/speech/line-words.ts";
import { readTyped } from "../commands/ask/typed.ts";
import { sayInstants } from "../commands/speech/wording.ts";
import { LOG_TYPES, logName, type LogStores, piecesOf } from "../commands/print/export/pieces.ts";
import type { LogFile } from "../store/shapes/log-file.ts";
import { openStores, type Stores } from "../store/index.ts";
import { StoreError } from "../store/open.ts";
import { backupFolderOf } from "./disk/backup.ts";
import { createClock } from "./process/clock.ts";
import { readConfig, zoneOf } from "./process/config.ts";
import { DEMO_KEY } from "./demo/demo.ts";
import { type Answered, createDispatch } from "./calls/dispatch.ts";
import { makeDataFolder } from "./disk/folder.ts";
import { refuseEmptied } from "./disk/guard.ts";
import { createLog } from "./process/log.ts";

/*
 * One call from a terminal on the class's own store, running bot or not. The owner of the store sees the change at its
 * next beat and calls the cues.
 */

const DONE = 0;
const REFUSED = 1;
const BROKEN = 2;

const USAGE = `Usage: npm run ask -- [--as NAME] [--role student|aide|teacher] [--class NAME] [--json] [--now ISO] '/plan film:… temp:20'
  --as NAME     who asks (default: Operator)
  --role ROLE   what they may do (default: student)
  --class NAME  which class (default: the only one; the demo where there is none)
  --json        the answer as JSON: text, fields with numbers in named units, buttons
  --now ISO     the instant of the call, for checks: 2026-01-31T18:00:00Z`;

interface Request {
  readonly line: string;
  readonly as: string;
  readonly role: Role;
  readonly className: string | undefined;
  readonly json: boolean;
  readonly now: number;
}

async function main(): Promise<number> {
  const request = readRequest(process.argv.slice(2));
  if (typeof request === "string") return complain(request);
  const config = readConfig(process.env);
  if (!config.ok) return complain(config.fault.join("\n"));
  try {
    makeDataFolder(config.value.SINKSIDE_DATA);
    const path = join(config.value.SINKSIDE_DATA, "sinkside.db");
    refuseEmptied(path, backupFolderOf(config.value));
    const stores = openStores(path);
    try {
      const clock = { now: () => request.now };
      if (stores.classes.list().length === 0) {
        const { openDemo } = await import("./demo/evening.ts");
        openDemo(stores, zoneOf(config.value), clock, createLog(config.value.LOG_LEVEL));
      }
      return await ask(request, stores, config.value.LOG_LEVEL);
    } finally {
      stores.close();
    }
  } catch (error) {
    return complain(error instanceof StoreError ? error.message : String(error));
  }
}

async function ask(request: Request, stores: Stores, logLevel: string): Promise<number> {
  const classes = stores.classes.list();
  const wanted = request.className?.toLowerCase();
  const own = classes.filter(({ key }) => key !== DEMO_KEY);
  const usual = own.length === 0 ? classes[0] : own.length === 1 ? own[0] : undefined;
  const found =
    wanted === undefined
      ? usual
      : classes.find(({ key, name }) => key === wanted || name.toLowerCase() === wanted);
  if (!found)
    return complain(`Say which class: ${classes.map(({ name }) => `--class "${name}"`).join(", ")}.`);
  const line = readTyped(request.line, lineFormsOf(commands));
  const known = stores.members.findByName(found.id, request.as);
  const spoken = known ? stores.members.languageOf(found.id, known.personId) : DEFAULT_LANGUAGE;
  if (!line.ok) return complain(speaking(spoken, () => lineFaultWords(line.fault)));
  const dispatch = createDispatch({ commands, stores, clock: createClock(), log: createLog(logLevel) });
  const chat = chatOf(found.key);
  const person = {
    id: known?.personId ?? makeChatKey(chat, `ask-${request.as.toLowerCase()}`),
    name: request.as,
  };
  const answered = dispatch.run(
    {
      callId: null,
      name: line.value.name,
      options: line.value.options,
      person,
      role: request.role,
      isVisit: true,
      place: { classKey: found.key, className: found.name, channelRef: null },
    },
    request.now,
  );
  const language =
    answered.visibility === "class" ? found.habits.language : stores.members.languageOf(found.id, person.id);
  process.stdout.write(speaking(language, () => toText(answered, request, found.zone)));
  const { log } = answered.reply;
  if (log) await writeLog(stores, log, request.json);
  return answered.kind === "done" ? DONE : answered.kind === "refused" ? REFUSED : BROKEN;
}

/** The answer; of one with the log as a file, all that stands before the log. */
function toText({ reply, kind, code }: Answered, request: Request, zone: string): string {
  const text = sayInstants(reply.text, request.now, zone);
  const { fields = {}, actions = [], pictures = [], attachments = [], log } = reply;
  if (request.json) {
    const answer = { outcome: kind, code, text, fields, buttons: actions, pictures };
    if (log) return `${JSON.stringify(answer, null, 2).slice(0, -2)},\n  "attachments": `;
    return `${JSON.stringify({ ...answer, attachments }, null, 2)}\n`;
  }
  return [
    text,
    ...actions.map(({ label, line }) => `  [${label}]  /${line}`),
    ...attachments.map(({ name, content }) => `\n--- ${name}\n${content}`),
    ...(log ? [`\n--- ${logName(log)}`] : []),
    "",
  ].join("\n");
}

/** Written as it is read, however long it is. As JSON: the one attachment of the answer, and its end. */
async function writeLog(stores: LogStores, log: LogFile, asJson: boolean): Promise<void> {
  const pieces = piecesOf(stores, log);
  await pipeline(asJson ? inJson(pieces, log) : pieces, process.stdout, { end: false }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code !== "EPIPE") throw error;
    },
  );
}

function* inJson(pieces: Iterable<string>, log: LogFile): Generator<string> {
  const head = JSON.stringify({ name: logName(log), mediaType: LOG_TYPES[log.format], content: "" });
  yield `[${head.slice(0, -2)}`;
  for (const piece of pieces) yield JSON.stringify(piece).slice(1, -1);
  yield '"}]}\n';
}

function readRequest(argv: readonly string[]): Request | string {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        as: { type: "string", default: "Operator" },
        role: { type: "string", default: "student" },
        class: { type: "string" },
        json: { type: "boolean", default: false },
        now: { type: "string" },
        help: { type: "boolean", default: false },
      },
    });
    if (values.help) return USAGE;
    const role = ROLES.find((each) => each === values.role);
    if (!role) return `--role ${values.role} is none I know. Use student, aide or teacher.`;
    const now = values.now === undefined ? createClock().now() : Date.parse(values.now);
    if (Number.isNaN(now))
      return `--now ${values.now} is no instant I can read. Write it like 2026-01-31T18:00:00Z.`;
    if (positionals.length === 0) return USAGE;
    return {
      line: positionals.join(" "),
      as: values.as,
      role,
      className: values.class,
      json: values.json,
      now,
    };
  } catch (error) {
    return `${(error as Error).message}\n${USAGE}`;
  }
}

function complain(sentence: string): number {
  process.stderr.write(`${sentence}\n`);
  return BROKEN;
}

// Whoever reads the answer may stop reading (`| head`): the work is done all the same.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});
void main().then((code) => void (process.exitCode = code));
