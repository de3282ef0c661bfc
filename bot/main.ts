#!/usr/bin/env node
import { StoreError } from "../store/open.ts";
import { certificateFaults, readConfig } from "./process/config.ts";
import { createLog } from "./process/log.ts";
import { outliveReaders, watchForStop } from "./process/stopping.ts";
import { startBot, type Running } from "./start.ts";

/* The process. Exit codes, for whoever supervises it: */
const EXIT = {
  /** Something unforeseen. */
  broken: 1,
  /** A setting is wrong (EX_CONFIG). */
  config: 78,
  /** The store can't be used (EX_CANTCREAT). */
  store: 73,
  /** Another process holds the store (EX_TEMPFAIL). */
  held: 75,
  /** The chat rejects the token (EX_NOPERM). */
  token: 77,
} as const;

const STORE_EXIT: Readonly<Record<string, number>> = {
  ERR_STORE_HELD: EXIT.held,
  ERR_DATA_PATH: EXIT.config,
};

/** Nothing may keep a process alive that was told to stop. */
const HARD_STOP_MS = 8000;

async function main(): Promise<void> {
  const config = readConfig(process.env);
  const faults = [...(config.ok ? [] : config.fault), ...certificateFaults(process.env, Date.now())];
  if (!config.ok || faults.length > 0)
    return leave(EXIT.config, `These settings are wrong:\n${faults.map((each) => `  ${each}`).join("\n")}`);
  const log = createLog(config.value.LOG_LEVEL);
  let starting: Promise<Running> | undefined;
  let isStopping = false;
  const stop = (code: number, sentence: string): void => {
    if (isStopping) return;
    isStopping = true;
    say(process.stderr, sentence);
    setTimeout(() => {
      log.error({}, "something did not end; the process is ended without it");
      process.exit(code);
    }, HARD_STOP_MS).unref();
    // Cues are said before all the rest has started: what is on its way then is waited for as well.
    void Promise.resolve(starting)
      .then((running) => running?.stop())
      .catch((error: unknown) => log.error({ err: error }, "the process could not end in good order"))
      .finally(() => process.exit(code));
  };
  const isUnderNpm = process.env["npm_lifecycle_event"] !== undefined;
  watchForStop({ isUnderNpm, onStop: () => stop(0, "Stopping.") });
  process.on("unhandledRejection", (error) =>
    log.error({ err: error }, "a promise was rejected and nobody looked"),
  );
  let running: Running;
  try {
    starting = startBot(config.value, log, (sentence, cause) =>
      stop({ chat: EXIT.token, store: EXIT.store, first: EXIT.held }[cause], sentence),
    );
    // The first calls are made by now; to make these streams takes a while.
    outliveReaders();
    running = await starting;
  } catch (error) {
    return leave(...explain(error, config.value.ROOM_PORT));
  }
  const { room } = running;
  if (!room) return;
  for (const secrets of room.firstSecrets) {
    say(
      process.stdout,
      `${secrets.className}: join with code ${secrets.joinCode}. Passphrases, shown this once: teacher "${secrets.teacherPassphrase}", aide "${secrets.aidePassphrase}".`,
    );
  }
  say(process.stdout, `Sinkside is ready: open ${room.urls.join(" or ")}`);
}

function explain(error: unknown, port: number): [number, string] {
  if (error instanceof StoreError) return [STORE_EXIT[error.code] ?? EXIT.store, error.message];
  const { code, message } = error as { code?: string; message?: string };
  if (/^SQLITE_(FULL|IOERR)/.test(code ?? ""))
    return [EXIT.store, "The disk of the store is full or failing. Free some space and start again."];
  if (code === "ERR_SETTING") return [EXIT.config, message ?? ""];
  if (code === "EADDRINUSE")
    return [EXIT.config, `Port ${port} is in use. Stop what uses it, or set ROOM_PORT to another number.`];
  if (code === "EACCES" || code === "EADDRNOTAVAIL")
    return [EXIT.config, `The room can't listen at ROOM_HOST and ROOM_PORT: ${message}.`];
  if (code === "TokenInvalid")
    return [EXIT.token, "Discord rejects the token. Copy it anew into DISCORD_TOKEN."];
  return [
    EXIT.broken,
    `Sinkside could not start: ${error instanceof Error ? (error.stack ?? message) : String(error)}`,
  ];
}

function leave(code: number, sentence: string): void {
  say(process.stderr, sentence);
  process.exit(code);
}

function say(stream: NodeJS.WriteStream, sentence: string): void {
  stream.write(`${sentence}\n`);
}

void main();
