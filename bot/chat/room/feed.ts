import { logName } from "../../../commands/print/export/pieces.ts";
import { makeNumber } from "../../../commands/speech/wording.ts";
import { PHOTO_KINDS } from "../../../store/shapes/photo.ts";
import { z } from "zod";
import type { Message } from "../../../store/messages.ts";
import { logFileSchema } from "../../../store/shapes/log-file.ts";
import { runNameSchema } from "../../../store/shapes/run.ts";
import type { EventKind, FeedEvent } from "./wire.ts";

/* What the room keeps of each thing said, and how one person sees it. */

const actionSchema = z.object({
  label: z.string(),
  line: z.string(),
  weight: z.enum(["main", "plain", "danger"]).optional(),
});

export const bodySchema = z.object({
  kind: z.enum(["line", "reply", "cue", "notice"]) satisfies z.ZodType<EventKind>,
  text: z.string(),
  actions: z.array(actionSchema).default([]),
  pictures: z.array(z.object({ name: z.string(), alt: z.string(), svg: z.string() })).default([]),
  attachments: z
    .array(
      z.object({
        name: z.string(),
        mediaType: z.enum(["text/csv", "application/json", "text/html"]),
        content: z.string(),
      }),
    )
    .default([]),
  /** The log as a file: what is in it is read when it is fetched. */
  log: logFileSchema.optional(),
  /** Where a photo belongs. The photo itself is not kept here: it goes with its roll or print. */
  photo: z
    .object({ kind: z.enum(PHOTO_KINDS), number: z.int(), isKept: z.boolean(), mayAdd: z.boolean() })
    .optional(),
  /** Of a refused call: how it is made again. */
  again: z.object({ line: z.string(), option: z.string().nullable() }).optional(),
  dueAt: z.int().nullable().default(null),
  /** Which word to many it is. */
  say: z.int().optional(),
  /** Who caused it, by name as it was then. */
  author: z.string().nullable().default(null),
  mentions: z.array(z.string()).default([]),
  /** The runs it speaks of. */
  runs: z.array(runNameSchema).default([]),
  /** Somebody else has changed its person's run. */
  isChange: z.literal(true).optional(),
  /** The step of that run which is given another bottle, or none. */
  rebottled: z.int().optional(),
});
export type FeedBody = z.output<typeof bodySchema>;
/** As it may be written: what is empty may be left out. */
export type KeptBody = z.input<typeof bodySchema>;

/** The event as `personId` sees it; undefined where the kept body is none of ours. */
export function eventFor(message: Message, personId: string): FeedEvent | undefined {
  const parsed = bodySchema.safeParse(message.body);
  if (!parsed.success) return undefined;
  const body = parsed.data;
  return {
    id: message.id,
    at: message.at,
    kind: body.kind,
    isPrivate: message.personId !== null,
    author: body.author === null ? null : { name: body.author, isYou: message.authorId === personId },
    callsYou: body.mentions.includes(personId),
    text: body.text,
    runs: body.runs,
    actions: body.actions.map(({ label, line, weight }) =>
      weight === undefined ? { label, line } : { label, line, weight },
    ),
    pictures: body.pictures.map(({ name, alt }, index) => ({
      name,
      alt,
      src: `/pictures/${message.id}/${index}.svg`,
    })),
    files: [
      ...body.attachments.map(({ name }, index) => ({ name, href: `/files/${message.id}/${index}` })),
      ...(body.log ? [{ name: logName(body.log), href: `/logs/${message.id}` }] : []),
    ],
    dueAt: body.dueAt,
    ...(body.again ? { again: body.again } : {}),
    ...(body.isChange ? { isChange: true } : {}),
    ...(body.rebottled === undefined ? {} : { rebottled: body.rebottled }),
    // Nobody is called by their own word.
    isWord: body.say !== undefined && message.authorId !== personId,
    ...(body.photo
      ? {
          photo: {
            name: makeNumber(body.photo.kind, body.photo.number),
            kind: body.photo.kind,
            mayAdd: body.photo.mayAdd,
            // The entry's number in the address, so that a new photo is a new picture.
            src: body.photo.isKept
              ? `/photos/${makeNumber(body.photo.kind, body.photo.number)}?${message.id}`
              : null,
          },
        }
      : {}),
  };
}
