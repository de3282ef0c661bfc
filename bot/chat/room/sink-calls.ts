import type { FastifyRequest } from "fastify";
import { z } from "zod";
import type { Stores } from "../../../store/index.ts";
import type { Sink } from "../../../store/sinks.ts";
import { isAtSink } from "./calls.ts";
import type { Admitted, Page } from "./hub.ts";
import { tokenOf } from "./cookie.ts";
import { hashToken } from "./secrets.ts";
import type { FromPage } from "./wire.ts";

/* What a device at a sink may call, for whom, and how it is written down. */

/** What can be called from a sink: nothing of it shows what others did. */
const AT_SINK: ReadonlySet<string> = new Set([
  "plan",
  "run start",
  "run next",
  "run status",
  "run correct",
  "run stop",
  "caution",
]);
/** Of a film that is under way already: the bath does not wait for a device to be opened again. */
const WHEN_LOCKED: ReadonlySet<string> = new Set(["run next", "run status", "run correct", "run stop"]);

export const mayCallAtSink = (sink: Pick<Sink, "isLocked">, command: string): boolean =>
  (sink.isLocked ? WHEN_LOCKED : AT_SINK).has(command);

/** The device of this request, if it is one of a sink. */
export function findSink(request: FastifyRequest, { sinks }: Pick<Stores, "sinks">): Sink | undefined {
  const token = tokenOf(request);
  return token === undefined ? undefined : sinks.find(hashToken(token));
}

const asSchema = z.object({ as: z.string().max(100) });

/** Whom a page at a sink is open for; undefined where this request's device is none, or they are not chosen at it. */
export function admitAtSink(request: FastifyRequest, stores: Stores): Admitted | undefined {
  const sink = findSink(request, stores);
  const query = asSchema.safeParse(request.query);
  if (!sink || !query.success) return undefined;
  const { classId } = sink;
  const personId = query.data.as;
  const tokenHash = hashToken(tokenOf(request) ?? "");
  if (!isAtSink(stores, tokenHash, stores.members.find(classId, personId))) return undefined;
  return { tokenHash, classId, personId, sinkId: sink.id };
}

/** Every press is one person's, at this device. Written before it is done, once however often it is sent. */
export function notePress(
  { sinks }: Pick<Stores, "sinks">,
  { tokenHash, classId, personId }: Page,
  { id, text }: Extract<FromPage, { type: "line" }>,
  now: number,
): void {
  const sink = sinks.find(tokenHash);
  if (!sink) return;
  const line = text
    .trim()
    .replace(/^\/?\s*/, "")
    .slice(0, 300);
  sinks.addPress({
    callId: `${personId}:${id}`,
    sinkId: sink.id,
    device: sink.device,
    classId,
    personId,
    line,
    at: now,
  });
}
