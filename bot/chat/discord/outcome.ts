import type { RestFault } from "./rest.ts";
import type { Outcome } from "../port.ts";

/* What a failed request means for a delivery. Pure. */

type Denial = Extract<RestFault, { kind: "denied" }>;

const UNKNOWN_CHANNEL = 10003;
const MISSING_ACCESS = 50001;
const CANNOT_SEND_TO_USER = 50007;
const MISSING_PERMISSIONS = 50013;
const ARCHIVED = 50083;
const LOCKED = 160005;
const NO_MUTUAL_SERVER = 50278;

/** How long to wait where the platform was not reached at all. */
const UNREACHED_MS = 2000;
/** After a rejected token: the process is about to end. */
const REJECTED_MS = 60_000;

export function toOutcome(fault: RestFault, denial: string): Outcome {
  if (fault.kind === "busy") return { kind: "later", afterMs: fault.afterMs };
  if (fault.kind === "unsent") return { kind: "later", afterMs: UNREACHED_MS };
  if (fault.kind === "lost") return { kind: "unknown", detail: fault.detail };
  if (fault.status === 401) return { kind: "later", afterMs: REJECTED_MS };
  if (fault.status === 429) return { kind: "later", afterMs: UNREACHED_MS };
  return { kind: "refused", detail: denial };
}

/** This person takes no direct messages: closed to the server's members, blocked, or in no server with the bot. */
export function isUnreachable({ code }: Denial): boolean {
  return [CANNOT_SEND_TO_USER, NO_MUTUAL_SERVER, UNKNOWN_CHANNEL, MISSING_ACCESS].includes(code);
}

/** This channel takes nothing of the bot's: gone, hidden, forbidden, or closed for good. */
export function isShutOut({ status, code }: Denial): boolean {
  return status === 403 || status === 404 || code === ARCHIVED || code === LOCKED;
}

/** One sentence that says what to do. `missing` names permissions as the platform's own settings page does. */
export function describeDenial(fault: Denial, channelId: string, missing: readonly string[]): string {
  const names =
    missing.length > 0 ? missing : fault.code === MISSING_ACCESS ? ["View Channel"] : ["Send Messages"];
  if (fault.code === MISSING_ACCESS || fault.code === MISSING_PERMISSIONS) {
    const list = names.map((name) => `“${name}”`).join(" and ");
    return `I may not write in <#${channelId}>: a server manager has to give me ${list} there.`;
  }
  if (fault.code === UNKNOWN_CHANNEL)
    return "The class channel is gone: call a command in the channel to use instead.";
  if (fault.code === CANNOT_SEND_TO_USER || fault.code === NO_MUTUAL_SERVER)
    return "This person takes no direct messages from me.";
  return `The platform refused the message: ${fault.detail}`;
}
