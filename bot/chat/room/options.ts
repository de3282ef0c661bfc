import type { Command } from "../../../commands/define.ts";
import type { Stores } from "../../../store/index.ts";
import type { Log } from "../../process/log.ts";
import type { ChatPort } from "../port.ts";
import type { FirstSecrets } from "./first.ts";
import type { LiveCertificate } from "./https.ts";
import type { PusherDeps } from "./push/pusher.ts";
import type { ViewOf } from "./view.ts";

/* What the room is made of, and what it is to the rest of the process. */

export interface RoomOptions {
  /** The address to listen on; anything but loopback lets other computers in. */
  readonly host: string;
  /** 0: any free one. */
  readonly port: number;
  /** The address a proxy in front gives the room, with its scheme; null where there is none. */
  readonly publicUrl: string | null;
  /** null: no https of the room's own. */
  readonly certificate?: LiveCertificate | null;
  readonly stores: Stores;
  readonly commands: readonly Command[];
  readonly log: Log;
  readonly viewOf: ViewOf;
  renderPicture(svg: string): Promise<Buffer>;
  now(): number;
  /** How many of the room's seconds pass in one real second; 1 unless this is the guided demo. */
  readonly speed?: number;
  /** The address at which a server of another chat takes the bot in; null: there is none. */
  inviteUrl?(): string | null;
  /** Push services of the school's own, at an address inside: `name` or `name:port`. */
  readonly pushHosts?: readonly string[];
  /** How push services are connected to, if not as any other server outside. */
  readonly pushAgentOf?: PusherDeps["agentOf"];
  /** Where the built page lies, if not beside this file. */
  readonly pageDir?: string;
}

export interface Room extends ChatPort {
  /** Codes and passphrases made by this start, to be shown once. Filled by `start`. */
  readonly firstSecrets: readonly FirstSecrets[];
  /** The addresses to show, once started. */
  readonly urls: readonly string[];
  /** Says that runs of this class have changed by other ways than a call or a delivery. */
  refresh(classKey: string): void;
  /** To all pages: since when nobody can be called, as nothing can be recorded; null: it can again. */
  tellTrouble(sinceMs: number | null): void;
  /** New passphrases for a class whose old ones are lost. */
  resetPassphrases(classKey: string): Promise<FirstSecrets | undefined>;
}
