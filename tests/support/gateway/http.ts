import type { IncomingMessage, ServerResponse } from "node:http";
import type { StoredFile } from "./ledger.ts";

/** One request as the routes see it. */
export interface Asked {
  readonly method: string;
  /** As it came, without the version: `/channels/123/messages`. */
  readonly path: string;
  readonly query: URLSearchParams;
  readonly body: unknown;
  readonly files: readonly StoredFile[];
  readonly authorization: string | undefined;
  readonly userAgent: string | undefined;
}

export interface Answered {
  readonly status: number;
  readonly body?: unknown;
  readonly headers?: Record<string, string>;
}

const VERSION = "/api/v10";

export async function readAsked(request: IncomingMessage): Promise<Asked> {
  const url = new URL(request.url ?? "/", "http://127.0.0.1");
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const type = request.headers["content-type"] ?? "";
  const { body, files } = await readBody(Buffer.concat(chunks), type);
  return {
    method: request.method ?? "GET",
    path: decodeURIComponent(
      url.pathname.startsWith(VERSION) ? url.pathname.slice(VERSION.length) : url.pathname,
    ),
    query: url.searchParams,
    body,
    files,
    authorization: request.headers.authorization,
    userAgent: request.headers["user-agent"],
  };
}

async function readBody(raw: Buffer, type: string): Promise<{ body: unknown; files: StoredFile[] }> {
  if (raw.length === 0) return { body: undefined, files: [] };
  if (!type.startsWith("multipart/form-data")) return { body: JSON.parse(String(raw)) as unknown, files: [] };
  const form = await new Response(raw, { headers: { "content-type": type } }).formData();
  const payload = form.get("payload_json");
  const body = JSON.parse(typeof payload === "string" ? payload : "{}") as {
    attachments?: { id: number | string; description?: string }[];
    data?: { attachments?: { id: number | string; description?: string }[] };
  };
  const described = body.attachments ?? body.data?.attachments ?? [];
  const files: StoredFile[] = [];
  for (const [key, value] of form.entries()) {
    if (typeof value === "string") continue;
    const number = /^files\[(\d+)\]$/.exec(key)?.[1];
    const description = described.find(({ id }) => String(id) === number)?.description;
    files.push({
      name: value.name,
      type: value.type,
      data: Buffer.from(await value.arrayBuffer()),
      description,
    });
  }
  return { body, files };
}

export function writeAnswer(response: ServerResponse, { status, body, headers }: Answered): void {
  if (response.destroyed) return;
  if (body === undefined) response.writeHead(status, headers).end();
  else if (typeof body === "string")
    response.writeHead(status, { "content-type": "text/html", ...headers }).end(body);
  else
    response.writeHead(status, { "content-type": "application/json", ...headers }).end(JSON.stringify(body));
}

/** The platform's own way to refuse. */
export const refuse = (status: number, code: number, message: string): Answered => ({
  status,
  body: { message, code },
});
