import { fork, type ChildProcess } from "node:child_process";
import { join } from "node:path";
import type { AboutDirect } from "../chat/discord/settings.ts";
import type { Config } from "../process/config.ts";
import type { Log } from "../process/log.ts";
import { dataOf, ownerOf } from "./shard.ts";
import { type Known, type KnownOf, toFirst, type ToOther } from "./link.ts";
import { createTurns } from "./turns.ts";

/* The first process's side: it starts the others, and starts them again. */

export interface Others {
  /** Resolves when this process may identify itself. */
  waitForTurn(): Promise<void>;
  /**
   * Gives a direct message's interaction to another process: that of its class, or whichever has said the message it came
   * from, or that of the class its person was seen in last.
   */
  handOver(interaction: object, personId: string, about?: AboutDirect): Promise<boolean>;
  /** Ends them, and waits for it. */
  stop(): Promise<void>;
}

export interface OthersDeps {
  readonly config: Config;
  readonly log: Log;
  readonly knownOf: KnownOf;
}

type Answer = Known & { readonly id: number };

const FIRST_PAUSE_MS = 1000;
const LONGEST_PAUSE_MS = 60_000;
/** A process that has run so long is well again. */
const WELL_AFTER_MS = 60_000;
/** People wait three seconds at most for an answer. */
const ASK_MS = 500;
/** EX_NOPERM: the chat rejects the token, and it would reject it again. */
const TOKEN_REJECTED = 77;

export function startOthers({ config, log, knownOf }: OthersDeps): Others {
  const takeTurn = createTurns();
  const children = new Map<number, ChildProcess>();
  const asked = new Map<string, (known: Known) => void>();
  let questions = 0;
  let isStopping = false;

  function start(id: number, pauseMs: number): void {
    const startedAt = performance.now();
    const child = fork(process.argv[1] ?? "", [], {
      env: { ...process.env, ...envOf(config, id) },
      stdio: ["ignore", "inherit", "inherit", "ipc"],
    });
    children.set(id, child);
    child.on("message", (message) => receive(id, child, message));
    child.on("error", (error) =>
      log.error({ shard: id, err: error }, "a process of this bot could not be reached"),
    );
    child.once("exit", (code) => {
      children.delete(id);
      if (isStopping) return;
      // This process is told the same, and turns the chat off for its own classes.
      if (code === TOKEN_REJECTED)
        return log.error({ shard: id }, "a process of this bot can't use its chat; it stays off");
      log.error(
        { shard: id, code, againInMs: pauseMs },
        "a process of this bot has ended; it is started again",
      );
      const isWell = performance.now() - startedAt > WELL_AFTER_MS;
      const next = isWell ? FIRST_PAUSE_MS : Math.min(pauseMs * 2, LONGEST_PAUSE_MS);
      setTimeout(() => !isStopping && start(id, next), isWell ? 0 : pauseMs).unref();
    });
  }

  function receive(id: number, child: ChildProcess, given: unknown): void {
    const message = toFirst.safeParse(given);
    if (!message.success) return log.error({ shard: id }, "a process of this bot said something unknown");
    const { data } = message;
    if (data.kind === "turn") void takeTurn().then(() => tell(child, { kind: "go", id: data.id }));
    else if (data.kind === "seen") asked.get(`${id}.${data.id}`)?.(data);
    else log.info({ shard: id }, "a process of this bot has started");
  }

  function ask(id: number, child: ChildProcess, personId: string, ref: string | null): Promise<Answer> {
    questions += 1;
    const question = questions;
    return new Promise((resolve) => {
      const answer = ({ at, hasSaid }: Known): void => {
        clearTimeout(timer);
        asked.delete(`${id}.${question}`);
        resolve({ id, at, hasSaid });
      };
      const timer = setTimeout(() => answer({ at: null, hasSaid: false }), ASK_MS);
      asked.set(`${id}.${question}`, answer);
      tell(child, { kind: "who", id: question, personId, ref });
    });
  }

  function give(id: number, interaction: object): boolean {
    const child = children.get(id);
    if (child) tell(child, { kind: "interaction", interaction: { ...interaction } });
    return child !== undefined;
  }

  for (let id = 1; id < config.DISCORD_SHARDS; id += 1) start(id, FIRST_PAUSE_MS);

  return {
    waitForTurn: takeTurn,
    async handOver(interaction, personId, { classKey, ref = null } = {}) {
      if (classKey !== undefined) return give(ownerOf(classKey, config.DISCORD_SHARDS), interaction);
      const others = await Promise.all([...children].map(([id, child]) => ask(id, child, personId, ref)));
      const answers = [{ id: 0, ...knownOf(personId, ref) }, ...others];
      const newest = answers.reduce((best, each) => ((each.at ?? -1) > (best.at ?? -1) ? each : best));
      return give((answers.find(({ hasSaid }) => hasSaid) ?? newest).id, interaction);
    },
    async stop() {
      isStopping = true;
      await Promise.all(
        [...children.values()].map((child) => {
          const exit = new Promise((resolve) => child.once("exit", resolve));
          child.kill("SIGTERM");
          return exit;
        }),
      );
    },
  };
}

function tell(child: ChildProcess, message: ToOther): void {
  if (child.connected) child.send(message);
}

/** What differs for process `id`: each has a folder for its store and its backups, and a port for its figures. */
function envOf({ SINKSIDE_DATA, BACKUP_FOLDER, METRICS_PORT }: Config, id: number): Record<string, string> {
  return {
    SINKSIDE_SHARD: String(id),
    SINKSIDE_DATA: dataOf(SINKSIDE_DATA, id),
    ...(BACKUP_FOLDER === undefined ? {} : { BACKUP_FOLDER: join(BACKUP_FOLDER, `shard-${id}`) }),
    ...(METRICS_PORT === undefined
      ? {}
      : { METRICS_PORT: String(METRICS_PORT === 0 ? 0 : METRICS_PORT + id) }),
  };
}
