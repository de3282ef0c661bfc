import type { APIAttachment } from "discord-api-types/v10";
import { DISCORD_API } from "./settings.ts";

/* Files that people send with a call lie on the platform's file servers, and are fetched from nowhere else. */

const FILE_HOSTS: ReadonlySet<string> = new Set(["cdn.discordapp.com", "media.discordapp.net"]);
const FETCH_WITHIN_MS = 10_000;

export interface FileSettings {
  /** Where the platform's interface is; another than its own (in tests) gives its files out itself. */
  readonly api: string;
  readonly signal: AbortSignal;
}

/** The bytes, or undefined where they can't be had. */
export type FetchFile = (
  file: Pick<APIAttachment, "url" | "size">,
  mostBytes: number,
) => Promise<Uint8Array | undefined>;

export function createFileFetcher({ api, signal }: FileSettings): FetchFile {
  const isAllowed = (url: URL): boolean =>
    api === DISCORD_API
      ? url.protocol === "https:" && FILE_HOSTS.has(url.host)
      : url.host === new URL(api).host;

  return async ({ url, size }, mostBytes) => {
    if (size > mostBytes || !URL.canParse(url) || !isAllowed(new URL(url))) return undefined;
    try {
      const response = await fetch(url, {
        redirect: "error",
        signal: AbortSignal.any([signal, AbortSignal.timeout(FETCH_WITHIN_MS)]),
      });
      if (!response.ok || !response.body) return undefined;
      return await readAtMost(response.body, mostBytes);
    } catch {
      return undefined;
    }
  };
}

/** What is said of a file's size is not believed: reading ends where there is more. */
async function readAtMost(
  body: AsyncIterable<Uint8Array>,
  mostBytes: number,
): Promise<Uint8Array | undefined> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of body) {
    bytes += chunk.byteLength;
    if (bytes > mostBytes) return undefined;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
