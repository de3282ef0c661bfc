import { z } from "zod";
import { createDiscord, type Directory, type DiscordSettings } from "../../../bot/chat/discord/discord.ts";
import type { KnownPlace } from "../../../bot/chat/discord/settings.ts";
import type {
  ChatHandlers,
  CommandCall,
  CompletionRequest,
  Delivery,
  Place,
} from "../../../bot/chat/port.ts";
import { defineCommand, type Suggestion } from "../../../commands/define.ts";
import type { Role } from "../../../store/shapes/person.ts";
import { createMemoryLog } from "../room.ts";
import { createGateway, type Gateway, type GatewaySettings } from "./gateway.ts";

/* The adapter against the loopback platform, with small commands of the tests' own behind it. */

const nothing = (): never => {
  throw new Error("the adapter calls no handler itself");
};

export const TEST_COMMANDS = [
  defineCommand({
    name: "plan",
    summary: "Works out a plan for one tank",
    options: () => ({
      film: z.string().min(1).max(60).describe("The film's name"),
      temp: z.string().optional().describe("Temperature in the tank"),
      rolls: z.int().min(1).max(5).default(1).describe("Rolls in the tank"),
      stop: z.enum(["water", "acid"]).optional().describe("Stop bath"),
      drift: z.boolean().optional().describe("Reckon with a cold room"),
    }),
    who: "student",
    visibility: "private",
    complete: { film: () => [] },
    handle: nothing,
  }),
  defineCommand({
    name: "plan curve",
    summary: "Shows time against temperature",
    options: () => ({ number: z.int().min(1).optional().describe("Which plan") }),
    who: "student",
    visibility: "private",
    complete: { number: () => [] },
    handle: nothing,
  }),
  defineCommand({
    name: "run start",
    summary: "Starts a run",
    options: () => ({ plan: z.string().optional().describe("Which plan") }),
    who: "student",
    visibility: "class",
    handle: nothing,
  }),
  defineCommand({
    name: "run next",
    summary: "The next bath is in",
    options: () => ({
      run: z.string().optional().describe("Which run"),
      step: z.string().optional().describe("Which step"),
    }),
    who: "student",
    visibility: "private",
    handle: nothing,
  }),
  defineCommand({
    name: "roll rate",
    summary: "Rate the negatives",
    options: () => ({
      roll: z.string().max(12).optional().describe("Which roll"),
      rating: z.coerce.number().int().min(1).max(5).describe("1 to 5"),
    }),
    who: "student",
    visibility: "private",
    complete: { roll: () => [] },
    handle: nothing,
  }),
  defineCommand({
    name: "batch mix",
    summary: "Record a bottle",
    options: () => ({
      kind: z.enum(["developer", "fixer"]).describe("What it is for"),
      product: z.string().min(1).max(60).describe("The name on its packet"),
      volume: z.string().describe("How much"),
      source: z.string().max(200).optional().describe("Where the figures are from"),
      note: z.string().max(500).optional().describe("A note"),
      by: z.string().max(60).optional().describe("Who mixed it"),
    }),
    who: "aide",
    visibility: "class",
    complete: { product: () => [] },
    handle: nothing,
  }),
  defineCommand({
    name: "help",
    summary: "What to do next",
    options: () => ({}),
    who: "student",
    visibility: "private",
    handle: nothing,
  }),
] as const;

export interface MemoryDirectory extends Directory {
  readonly places: Map<string, { place: Place; role: Role }>;
  /** Of somebody in several classes; else theirs is that of `places`. */
  readonly classes: Map<string, readonly KnownPlace[]>;
  readonly channels: Map<string, string>;
  readonly refused: Set<string>;
  /** By the message that is about it. */
  readonly rolls: Map<string, number>;
  /** The class that a message was for, where the store tells it. */
  readonly told: Map<string, string>;
}

export function createMemoryDirectory(): MemoryDirectory {
  const places: MemoryDirectory["places"] = new Map();
  const classes: MemoryDirectory["classes"] = new Map();
  const channels: MemoryDirectory["channels"] = new Map();
  const refused: MemoryDirectory["refused"] = new Set();
  const rolls: MemoryDirectory["rolls"] = new Map();
  const told: MemoryDirectory["told"] = new Map();
  return {
    rolls,
    told,
    places,
    classes,
    channels,
    refused,
    placesOf(personId) {
      const last = places.get(personId);
      return classes.get(personId) ?? (last ? [{ ...last, seenAt: Date.now(), language: "en" }] : []);
    },
    lastPlace: (personId) => places.get(personId) ?? null,
    directChannel: (personId) => channels.get(personId) ?? null,
    isDirectRefused: (personId) => refused.has(personId),
    saveDirectChannel: (personId, channelId) => void channels.set(personId, channelId),
    photoOf: () => undefined,
    threads: {
      wanted: () => [],
      wantedOf: () => undefined,
      openOf: () => null,
      saveAsked: nothing,
      saveOpened: nothing,
      threadOf: () => null,
      lose: nothing,
      done: () => [],
      saveClosed: nothing,
    },
    rollOfMessage: (ref) => rolls.get(ref) ?? null,
    classOfMessage: (ref) => told.get(ref) ?? null,
    memberName: () => null,
    readLog: () => ({ head: "", portions: (async function* () {})(), tail: "" }),
    saveDirectRefused: (personId) => void refused.add(personId),
  };
}

export interface Stage {
  readonly gateway: Gateway;
  readonly port: ReturnType<typeof createDiscord>;
  readonly directory: MemoryDirectory;
  readonly log: ReturnType<typeof createMemoryLog>;
  readonly calls: CommandCall[];
  readonly completions: CompletionRequest[];
  readonly fatal: string[];
  /** What the handler does with a call; answers “ok” until it is replaced. */
  onCommand: ChatHandlers["onCommand"];
  suggestions: readonly Suggestion[];
  /** Until the commands are in place. */
  start(): Promise<void>;
  stop(): Promise<void>;
}

/** What a test may leave to the defaults. */
export interface StageSettings {
  readonly gateway?: Partial<GatewaySettings>;
  readonly bot?: Partial<DiscordSettings>;
}

export async function setStage({ gateway: given = {}, bot = {} }: StageSettings = {}): Promise<Stage> {
  const gateway = await createGateway(given);
  const directory = createMemoryDirectory();
  const log = createMemoryLog();
  const wake = (level: "debug" | "info" | "warn" | "error") => (fields: object, message: string) => {
    log[level]({ ...fields }, message);
    gateway.changed();
  };
  const port = createDiscord({
    token: gateway.token,
    api: gateway.api,
    commands: TEST_COMMANDS,
    log: { debug: wake("debug"), info: wake("info"), warn: wake("warn"), error: wake("error") },
    clock: { now: () => Date.now() },
    directory,
    renderPicture: async (svg) => Buffer.from(`PNG of ${svg}`),
    ...bot,
    times: { retryMs: 10, guildWaitMs: 50, ...bot.times },
  });
  const stage: Stage = {
    gateway,
    port,
    directory,
    log,
    calls: [],
    completions: [],
    fatal: [],
    onCommand: (call) => call.answer({ text: "ok" }, "private"),
    suggestions: [],
    async start() {
      await port.start({
        async onCommand(call) {
          stage.calls.push(call);
          directory.places.set(call.person.id, { place: call.place, role: call.role });
          await stage.onCommand(call);
        },
        onComplete(request) {
          stage.completions.push(request);
          return stage.suggestions;
        },
        onFatal: (sentence) => void stage.fatal.push(sentence),
      });
      if (stage.fatal.length === 0)
        await gateway.until(
          () => gateway.commands.has(gateway.guild.id) && gateway.commands.has(""),
          "commands",
        );
    },
    async stop() {
      await port.stop();
      await gateway.stop();
    },
  };
  return stage;
}

/** A cue as the outbox hands it over. */
export function aDelivery(stage: Stage, over: Partial<Delivery> = {}): Delivery {
  return {
    key: "run7-step1-cue3",
    classKey: `discord:${stage.gateway.guild.id}`,
    channelRef: stage.gateway.channel.id,
    personId: null,
    mentions: [],
    runs: [],
    text: "R7: pour out the developer now.",
    actions: [],
    pictures: [],
    attachments: [],
    dueAt: Date.now(),
    ...over,
  };
}

/** What holds in every test: nothing the platform would refuse, nobody called who was not meant. */
export function listBreaches({ gateway }: Stage): string[] {
  const texts = gateway.requests.filter(
    ({ path, method }) => method !== "GET" && /messages|callback|webhooks/.test(path),
  );
  const open = texts.filter(({ body }) => {
    const { data = body, type } = (body ?? {}) as { data?: unknown; type?: number };
    // A form calls nobody.
    if (
      type === 9 ||
      typeof data !== "object" ||
      data === null ||
      !("content" in data || "components" in data)
    )
      return false;
    const allowed = (data as { allowed_mentions?: { parse?: unknown } }).allowed_mentions;
    return !Array.isArray(allowed?.parse) || allowed.parse.length > 0;
  });
  const everyone = gateway.ledger.messages.filter(({ isEveryoneCalled }) => isEveryoneCalled);
  return [
    ...gateway.violations,
    ...open.map(({ method, path }) => `${method} ${path} leaves mentions open`),
    ...everyone.map(({ content }) => `everyone was called: ${content}`),
  ];
}
