import { EventEmitter, once } from "node:events";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import type { RESTPostAPIChatInputApplicationCommandsJSONBody as CommandBody } from "discord-api-types/v10";
import { openapi } from "../openapi.ts";
import { createFaultPlan, type Fault } from "./faults.ts";
import { readAsked, refuse, writeAnswer, type Answered, type Asked } from "./http.ts";
import { createIds } from "./ids.ts";
import { createInteractions, type Answer, type Given, type Live, type Where } from "./interactions.ts";
import { createLedger, type LedgerSettings, type StoredMessage } from "./ledger.ts";
import { createLimits, PUBLISHED_LIMITS, type LimitSettings } from "./limits.ts";
import { createRoutes, limit, type Route } from "./routes.ts";
import { createSocketSide } from "./socket.ts";
import { createTyping } from "./typing.ts";
import { createTrips, type Trip } from "./trip.ts";
import { createWorld, writeGuild, writeGuildChannel, writeRole, type User } from "./world.ts";

export interface GatewaySettings extends LedgerSettings {
  readonly token: string;
  readonly port: number;
  readonly limits: LimitSettings;
  readonly answerWithinMs: number;
  readonly tokenLifeMs: number;
  readonly directOpenings: number;
  /** What a test waits for has to come within this time. */
  readonly waitMs: number;
  /** How long requests and answers are on their way; absent where they arrive at once. */
  readonly trip?: Trip;
  now(): number;
}

const DEFAULTS: GatewaySettings = {
  token: "a-token-for-the-loopback-platform",
  port: 0,
  limits: PUBLISHED_LIMITS,
  answerWithinMs: 3000,
  tokenLifeMs: 15 * 60_000,
  directOpenings: Number.POSITIVE_INFINITY,
  waitMs: 5000,
  nonceWindowMs: 120_000,
  nonceScope: "author",
  keepsNonce: false,
  now: () => Date.now(),
};

const MESSAGES = "/channels/{channel_id}/messages";

export interface Seen extends Asked {
  readonly at: number;
  status: number | undefined;
}

/**
 * A platform of one's own on 127.0.0.1: gateway and REST interface, with one server, one channel and whoever a test
 * adds. Bodies are checked both ways against the platform's OpenAPI document (where it is there) and against the rules
 * that document lacks; what fails is refused as the platform would, and listed in `violations`.
 */
export async function createGateway(given: Partial<GatewaySettings> = {}) {
  const settings = { ...DEFAULTS, ...given };
  const { now } = settings;
  const changes = new EventEmitter().setMaxListeners(0);
  const changed = (): void => void changes.emit("change");
  const nextId = createIds(now);
  const world = createWorld(nextId);
  const { guild, channel } = world.addGuild("Harbour workshop, Tuesday evening", ["Aide"]);
  const ledger = createLedger(world, settings, nextId, now);
  const limits = createLimits(settings.limits, now);
  const faults = createFaultPlan();
  const drawTrip = settings.trip && createTrips(settings.trip);
  const requests: Seen[] = [];
  const violations: string[] = [];
  const commands = new Map<string, readonly CommandBody[]>();
  let token = settings.token;

  const server = createServer((request, response) => {
    serve(request, response).catch((error: unknown) => {
      violations.push(`the loopback server broke: ${String(error)}`);
      response.destroy();
    });
  });
  const address = (): string => `127.0.0.1:${(server.address() as AddressInfo).port}`;
  const socketUrl = (): string => `ws://${address()}`;
  const socket = createSocketSide(server, world, {
    token: () => token,
    resumeUrl: socketUrl,
    nextId,
    onChange: changed,
  });
  const matchers = new Map<Route, RegExp>();
  const commandsOf = (guildId: string | null): readonly CommandBody[] => commands.get(guildId ?? "") ?? [];
  const interactions = createInteractions(
    world,
    ledger,
    commandsOf,
    socket.dispatch,
    nextId,
    now,
    () => `http://${address()}`,
  );
  const typing = createTyping(world, socket, nextId, now);
  const routes = createRoutes({
    ...settings,
    world,
    ledger,
    live: interactions.live,
    commands,
    socketUrl,
    dispatch: socket.dispatch,
    countMessage: limits.countMessage,
    nextId,
  });

  async function serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const file = request.method === "GET" ? ledger.sent.get(request.url ?? "") : undefined;
    if (file) return void response.writeHead(200, { "content-type": file.type }).end(file.data);
    const asked = await readAsked(request);
    const pass = drawTrip?.();
    await pass?.();
    const seen: Seen = { ...asked, at: now(), status: undefined };
    requests.push(seen);
    const fault = faults.take(asked.method, asked.path);
    if (fault?.kind === "hold") await fault.release;
    const answer = answerFault(fault) ?? work(asked);
    seen.status = answer.status;
    changed();
    if (fault?.kind === "hang") return;
    if (fault?.kind === "cut") return void request.socket.destroy();
    await pass?.();
    if (fault?.kind === "instead") return writeAnswer(response, { status: 200, body: fault.body });
    writeAnswer(response, fault?.kind === "status" && fault.after ? { status: fault.status } : answer);
  }

  /** undefined: the work is done first, or nothing is wrong. */
  function answerFault(fault: Fault | undefined): Answered | undefined {
    if (fault === undefined || fault.kind === "hold") return undefined;
    if (fault.kind === "instead") return fault.after ? undefined : { status: 200 };
    if (fault.kind === "limit") return limit(fault.seconds, fault.scope, {}, fault.page);
    if (fault.after) return undefined;
    if (fault.kind !== "status") return { status: 0 };
    return fault.status >= 500
      ? { status: fault.status }
      : refuse(fault.status, fault.code ?? 0, "Refused by the plan");
  }

  function work(asked: Asked): Answered {
    const found = findRoute(asked);
    if (!found) return note(asked, [`${asked.method} ${asked.path} is unknown here`]);
    const { route, params } = found;
    if (!route.isInteraction) {
      if (asked.authorization !== `Bot ${token}`) return refuse(401, 0, "401: Unauthorized");
      const counted = limits.countGlobal();
      if (counted.refusedSeconds !== undefined) return limit(counted.refusedSeconds, "global");
    } else if (asked.authorization !== undefined)
      violations.push("an interaction was answered with the bot's own token");
    if (!asked.userAgent?.startsWith("DiscordBot (")) violations.push(`user agent ${asked.userAgent}`);
    const wrong = [
      ...openapi.request(asked.method, route.path, asked.body),
      ...(route.faults?.(asked) ?? []),
    ];
    if (wrong.length > 0) return note(asked, wrong);
    const answer = route.handle(asked, params);
    if (route.method === "POST" && route.path === MESSAGES && answer.status === 200)
      typing.echo(answer.body as { id: string; channel_id: string });
    const own = openapi.answer(asked.method, route.path, answer.status, answer.body);
    for (const each of own)
      violations.push(`answer ${answer.status} to ${asked.method} ${route.path}: ${each}`);
    return answer;
  }

  function findRoute({ method, path }: Asked) {
    for (const route of routes) {
      if (route.method !== method) continue;
      const pattern =
        matchers.get(route) ?? new RegExp(`^${route.path.replaceAll(/\{(\w+)\}/g, "(?<$1>[^/]+)")}$`);
      matchers.set(route, pattern);
      const match = pattern.exec(path);
      if (match) return { route, params: { ...match.groups } };
    }
    return undefined;
  }

  function note(asked: Asked, wrong: readonly string[]): Answered {
    violations.push(...wrong.map((each) => `${asked.method} ${asked.path}: ${each}`));
    return { status: 400, body: { code: 50035, message: "Invalid Form Body" } };
  }

  /** Waits for no clock: looks again whenever the bot has done something. */
  async function until<T>(look: () => T | undefined | false | null, what = String(look)): Promise<T> {
    const signal = AbortSignal.timeout(settings.waitMs);
    for (;;) {
      const value = look();
      if (value !== undefined && value !== false && value !== null) return value;
      await once(changes, "change", { signal }).catch(() => {
        throw new Error(`never came: ${what}`);
      });
    }
  }

  const answered = async ({ answer }: Live): Promise<Answer> => {
    await until(() => [8, 9].includes(answer.callback ?? 0) || answer.messages.length > 0, "an answer");
    return answer;
  };

  server.listen(settings.port, "127.0.0.1");
  await once(server, "listening");

  return {
    api: `http://${address()}/api`,
    token: settings.token,
    guild,
    channel,
    world,
    ledger,
    faults,
    socket,
    requests,
    violations,
    commands,
    until,
    /** Commands the server's own settings show to everybody. */
    opened: interactions.opened,
    /** Something has happened on the bot's side: whoever waits looks again. */
    changed,
    addUser: (name: string, more: Partial<Omit<User, "id" | "name">> = {}) =>
      world.addUser({ name, ...more }),
    /** Resolves with the answer once the person sees one. */
    slash: (user: User, name: string, options: Given = {}, where: Where = {}) =>
      answered(interactions.slash(user, name, options, where)),
    /** Writes a message; resolves with what the bot has said to it. */
    async write(user: User, text: string, where: Where = {}) {
      const id = typing.write(user, text, where);
      await until(() => ledger.messages.some(({ replyTo }) => replyTo === id), `an answer to “${text}”`);
      return ledger.messages.filter(({ replyTo }) => replyTo === id);
    },
    /** The same without waiting; the message's id. */
    beginWriting: (user: User, text: string, where: Where = {}) => typing.write(user, text, where),
    press: (user: User, line: string) => answered(interactions.press(user, line)),
    /** Fills in the form that an answer opened. */
    submit: (user: User, { form }: Answer, filled: Readonly<Record<string, string>>, where: Where = {}) => {
      if (!form) throw new Error("no form was opened");
      return answered(interactions.submit(user, form, filled, where));
    },
    useMenu: (user: User, name: string, message: StoredMessage) =>
      answered(interactions.useMenu(user, name, message)),
    /** Types into one option; `others` are filled in already. */
    complete: (
      user: User,
      name: string,
      option: string,
      typed: string | number,
      others: Given = {},
      where: Where = {},
    ) => answered(interactions.slash(user, name, { ...others, [option]: typed }, where, option)),
    /** Somebody adds the bot to one more server. */
    invite(name: string, denied = 0n, locale?: string) {
      const added = world.addGuild(name, [], locale);
      added.channel.denied = denied;
      socket.dispatch("GUILD_CREATE", writeGuild(added.guild, world));
      return added;
    },
    /** Somebody makes one more channel on a server. */
    addChannel(guildId: string, name: string, denied = 0n) {
      const added = world.addChannel({ guildId, name, denied });
      socket.dispatch("CHANNEL_CREATE", writeGuildChannel(added, world.bot.id));
      return added;
    },
    /** Somebody makes one more role on a server; its id. */
    addRole(guildId: string, name: string, permissions: bigint): string {
      const id = nextId();
      socket.dispatch("GUILD_ROLE_CREATE", { guild_id: guildId, role: writeRole(id, name, permissions) });
      return id;
    },
    /** The same without waiting. */
    begin: interactions.slash,
    messagesIn: (channelId: string) =>
      ledger.messages.filter((each) => each.channelId === channelId && !each.isDeleted),
    threads: () => [...world.channels.values()].filter(({ thread }) => thread !== undefined),
    messagesTo: (user: User) =>
      ledger.messages.filter((each) => world.channels.get(each.channelId)?.userId === user.id),
    asked: (method: string, path: RegExp) =>
      requests.filter((each) => each.method === method && path.test(each.path)),
    /** From now on the token counts for nothing. */
    revoke: (): void => void (token = "another token"),
    async stop() {
      socket.stop();
      server.closeAllConnections();
      server.close();
      await once(server, "close");
    },
  };
}

export type Gateway = Awaited<ReturnType<typeof createGateway>>;
