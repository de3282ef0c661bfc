import { z } from "zod";
import { readCertificate, type CertificateFiles } from "./certificate.ts";
import { fail, ok, type Result } from "../../commands/result.ts";

const port = z.coerce
  .number("a port is a whole number from 0 to 65535")
  .int("a port is a whole number from 0 to 65535")
  .min(0, "a port is a whole number from 0 to 65535")
  .max(65_535, "a port is a whole number from 0 to 65535");

const days = z.coerce
  .number("a whole number of days from 1 to 3650")
  .int("a whole number of days from 1 to 3650")
  .min(1, "a whole number of days from 1 to 3650")
  .max(3650, "a whole number of days from 1 to 3650");

const zone = z.string().refine(isZone, "not a time zone; write it like Europe/Lisbon");

const CRON_FIELD = String.raw`(\*|\w+(-\w+)?)(/\d+)?`;
/** Five fields or six, each of them a list. What a field may hold is examined where it is used. */
const CRON = new RegExp(String.raw`^(${CRON_FIELD}(,${CRON_FIELD})*\s+){4,5}${CRON_FIELD}(,${CRON_FIELD})*$`);

/** The process's settings. README.md lists them for the operator. */
const schema = z.object({
  /** Folder of the store. */
  SINKSIDE_DATA: z.string().min(1).default("data"),
  SINKSIDE_ZONE: zone.optional(),
  /** Beyond loopback only by choice: the room's page is then open to the network it is bound to. */
  ROOM_HOST: z.string().min(1).default("127.0.0.1"),
  ROOM_PORT: port.default(4170),
  /** https: the certificate, with those it hangs on behind it, and its key, as PEM files. Both or neither. */
  ROOM_TLS_CERT: z.string().min(1).optional(),
  ROOM_TLS_KEY: z.string().min(1).optional(),
  /** The address people use where a proxy stands in front: https://darkroom.example.org */
  ROOM_URL: z.url({ protocol: /^https?$/, error: "not a web address" }).optional(),
  /** Push services of the school's own, which may have an address inside: `push.school.example` or with a port, by commas. */
  PUSH_HOSTS: z
    .string()
    .regex(/^[\w.-]+(:\d+)?(,[\w.-]+(:\d+)?)*$/, "names of hosts, by commas, like push.school.example:8443")
    .transform((text) => text.toLowerCase().split(","))
    .default([]),
  DISCORD_TOKEN: z.string().min(1).optional(),
  DISCORD_API_URL: z
    .url({ protocol: /^https?$/, error: "not a web address" })
    .default("https://discord.com/api"),
  /** Over how many processes the classes on Discord are spread. */
  DISCORD_SHARDS: z.coerce
    .number("a whole number from 1 to 64")
    .int("a whole number from 1 to 64")
    .min(1, "a whole number from 1 to 64")
    .max(64, "a whole number from 1 to 64")
    .default(1),
  /** Set by the first of several processes for each of the others: which one it is. */
  SINKSIDE_SHARD: z.coerce.number().int().min(1).max(63).optional(),
  /** When backups are made, as cron writes it, on the clock of SINKSIDE_ZONE; `off`: never by itself. */
  BACKUP_CRON: z
    .string()
    .refine(
      (text) => text === "off" || CRON.test(text),
      'not a time as cron writes it; like "30 3 * * *", or off',
    )
    .default("30 3 * * *"),
  /** How many backups are kept, the newest. */
  BACKUP_KEEP: z.coerce
    .number("a whole number from 1 to 1000")
    .int("a whole number from 1 to 1000")
    .min(1, "a whole number from 1 to 1000")
    .max(1000, "a whole number from 1 to 1000")
    .default(14),
  /** Where they go; another disk is best. Left out: `backups` in SINKSIDE_DATA. */
  BACKUP_FOLDER: z.string().min(1).optional(),
  /** How long messages on the room's page are kept, and whom a message of the teacher has reached. */
  KEEP_MESSAGES_DAYS: days.default(28),
  /** How long plans are kept, and runs that are over; their rolls stay in the log. */
  KEEP_RUNS_DAYS: days.default(28),
  /** Figures and health for whoever runs the bot, on loopback only; left out: none. */
  METRICS_PORT: port.optional(),
  LOG_LEVEL: z
    .enum(["debug", "info", "warn", "error", "silent"], "one of debug, info, warn, error, silent")
    .default("info"),
});
export type Config = z.output<typeof schema>;

/** The zone of new classes. Asked where it is needed only: to know the computer's takes as long as to open the store. */
export const zoneOf = ({ SINKSIDE_ZONE }: Config): string =>
  SINKSIDE_ZONE ?? Intl.DateTimeFormat().resolvedOptions().timeZone;

type Environment = Readonly<Record<string, string | undefined>>;

/** Reads the environment; a fault names every setting that is wrong, not just the first. */
export function readConfig(env: Environment): Result<Config, string[]> {
  const given = givenOf(env);
  // Read once: code made for it would take longer than reading it without.
  const parsed = schema.safeParse(given, { jitless: true });
  if (parsed.success) return ok(parsed.data);
  return fail(parsed.error.issues.map((issue) => `${issue.path.join(".")}: ${issue.message}`));
}

function givenOf(env: Environment): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(env).filter(
      (entry): entry is [string, string] => entry[1] !== undefined && entry[1] !== "",
    ),
  );
}

/** The files of https; null where none are set. */
export function certificateFilesOf(config: Config): CertificateFiles | null {
  const { ROOM_TLS_CERT: certificate, ROOM_TLS_KEY: key } = config;
  return certificate === undefined || key === undefined ? null : { certificate, key };
}

/** What is wrong with the files of https: to be told with the other faults, by the process that would serve them. */
export function certificateFaults(env: Environment, now: number): string[] {
  const { ROOM_TLS_CERT: certificate, ROOM_TLS_KEY: key } = givenOf(env);
  if (certificate === undefined && key === undefined) return [];
  if (certificate === undefined) return ["ROOM_TLS_CERT: is not set, and ROOM_TLS_KEY is; https needs both"];
  if (key === undefined) return ["ROOM_TLS_KEY: is not set, and ROOM_TLS_CERT is; https needs both"];
  const read = readCertificate({ certificate, key }, now);
  return read.ok ? [] : read.fault;
}

function isZone(name: string): boolean {
  try {
    return Boolean(Intl.DateTimeFormat("en", { timeZone: name }));
  } catch {
    return false;
  }
}
