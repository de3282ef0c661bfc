import { z } from "zod";
import { fail, ok, type Result } from "../commands/result.ts";

const port = z.coerce
  .number("a port is a whole number from 0 to 65535")
  .int("a port is a whole number from 0 to 65535")
  .min(0, "a port is a whole number from 0 to 65535")
  .max(65_535, "a port is a whole number from 0 to 65535");

const zone = z.string().refine(isZone, "not a time zone; write it like Europe/Lisbon");

/** The process's settings. README.md lists them for the operator. */
const schema = z.object({
  /** Folder of the store. */
  SINKSIDE_DATA: z.string().min(1).default("data"),
  SINKSIDE_ZONE: zone.default(() => Intl.DateTimeFormat().resolvedOptions().timeZone),
  /** Beyond loopback only by choice: the room's page is then open to the network it is bound to. */
  ROOM_HOST: z.string().min(1).default("127.0.0.1"),
  ROOM_PORT: port.default(4170),
  /** The address people use where a proxy stands in front: https://darkroom.example.org */
  ROOM_URL: z.url({ protocol: /^https?$/, error: "not a web address" }).optional(),
  DISCORD_TOKEN: z.string().min(1).optional(),
  DISCORD_API_URL: z
    .url({ protocol: /^https?$/, error: "not a web address" })
    .default("https://discord.com/api"),
  LOG_LEVEL: z
    .enum(["debug", "info", "warn", "error", "silent"], "one of debug, info, warn, error, silent")
    .default("warn"),
});
export type Config = z.output<typeof schema>;

/** Reads the environment; a fault names every setting that is wrong, not just the first. */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Result<Config, string[]> {
  const given = Object.fromEntries(
    Object.entries(env).filter(([, value]) => value !== undefined && value !== ""),
  );
  const parsed = schema.safeParse(given);
  if (parsed.success) return ok(parsed.data);
  return fail(parsed.error.issues.map((issue) => `${issue.path.join(".")}: ${issue.message}`));
}

function isZone(name: string): boolean {
  try {
    return Boolean(Intl.DateTimeFormat("en", { timeZone: name }));
  } catch {
    return false;
  }
}
