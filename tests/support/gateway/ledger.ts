import type { APIMessage } from "discord-api-types/v10";
import { writeUser, type World } from "./world.ts";

/** A file as it arrived. */
export interface StoredFile {
  readonly name: string;
  readonly type: string;
  readonly data: Buffer;
  readonly description: string | undefined;
}

export interface StoredMessage {
  readonly id: string;
  readonly channelId: string;
  readonly at: number;
  readonly nonce: string | undefined;
  /** The interaction it answers. */
  readonly interactionId: string | undefined;
  readonly isPrivate: boolean;
  /** The person's message that it is shown under. */
  readonly replyTo: string | undefined;
  content: string;
  components: NonNullable<APIMessage["components"]>;
  embeds: NonNullable<APIMessage["embeds"]>;
  files: readonly StoredFile[];
  /** Who the message called by name, as the platform decides it: named in the text and allowed. */
  calledIds: readonly string[];
  isEveryoneCalled: boolean;
  edits: number;
  isDeleted: boolean;
}

export interface MessageBody {
  readonly content?: string | null;
  readonly components?: APIMessage["components"];
  readonly embeds?: APIMessage["embeds"];
  readonly nonce?: string | number;
  readonly enforce_nonce?: boolean;
  readonly flags?: number;
  readonly message_reference?: { readonly message_id: string; readonly fail_if_not_exists?: boolean };
  readonly attachments?: readonly { id: number | string; description?: string }[];
  readonly allowed_mentions?: {
    parse?: readonly string[];
    users?: readonly string[];
    replied_user?: boolean;
  };
}

export interface LedgerSettings {
  /** How long a nonce is remembered. Published only as “the past few minutes”. */
  readonly nonceWindowMs: number;
  /** Published: by author; elsewhere said to be by channel. */
  readonly nonceScope: "author" | "channel";
  /** Whether a message read later still carries its nonce; not published. */
  readonly keepsNonce: boolean;
}

/** Every message ever made, with what became of it. */
export function createLedger(
  world: World,
  settings: LedgerSettings,
  nextId: () => string,
  now: () => number,
) {
  const messages: StoredMessage[] = [];
  /** Files that people sent along, by the path they lie at. */
  const sent = new Map<string, { readonly type: string; readonly data: Uint8Array }>();
  const byNonce = new Map<string, StoredMessage[]>();

  /** What the platform's own rule makes of a text: nothing allowed means everything in plain messages. */
  function readCalls(content: string, allowed: MessageBody["allowed_mentions"], isAnswer: boolean) {
    const parse = allowed?.parse ?? (allowed ? [] : isAnswer ? ["users"] : ["users", "roles", "everyone"]);
    const named = [...content.matchAll(/<@!?(\d{17,20})>/g)].map(([, id]) => id ?? "");
    return {
      calledIds: named.filter((id) => parse.includes("users") || allowed?.users?.includes(id)),
      isEveryoneCalled: parse.includes("everyone") && /@(everyone|here)/.test(content),
    };
  }

  return {
    messages,
    sent,
    findByNonce(nonce: string, channelId: string): StoredMessage | undefined {
      const since = now() - settings.nonceWindowMs;
      return byNonce
        .get(nonce)
        ?.find(
          (each) => each.at >= since && (settings.nonceScope === "author" || each.channelId === channelId),
        );
    },
    add(
      channelId: string,
      body: MessageBody,
      files: readonly StoredFile[],
      interactionId?: string,
    ): StoredMessage {
      const content = body.content ?? "";
      const message: StoredMessage = {
        id: nextId(),
        channelId,
        at: now(),
        nonce: body.nonce === undefined ? undefined : String(body.nonce),
        interactionId,
        isPrivate: ((body.flags ?? 0) & 64) !== 0,
        replyTo: body.message_reference?.message_id,
        content,
        components: body.components ?? [],
        embeds: body.embeds ?? [],
        files,
        ...readCalls(content, body.allowed_mentions, interactionId !== undefined),
        edits: 0,
        isDeleted: false,
      };
      messages.push(message);
      if (message.nonce !== undefined)
        byNonce.set(message.nonce, [...(byNonce.get(message.nonce) ?? []), message]);
      return message;
    },
    edit(message: StoredMessage, body: MessageBody, files: readonly StoredFile[]): void {
      if (body.content !== undefined) message.content = body.content ?? "";
      if (body.components !== undefined) message.components = body.components ?? [];
      if (body.embeds !== undefined) message.embeds = body.embeds;
      if (files.length > 0) message.files = files;
      const isAnswer = message.interactionId !== undefined;
      Object.assign(message, readCalls(message.content, body.allowed_mentions, isAnswer));
      message.edits += 1;
    },
    write(message: StoredMessage, isFresh: boolean) {
      const hasNonce = message.nonce !== undefined && (isFresh || settings.keepsNonce);
      return {
        id: message.id,
        channel_id: message.channelId,
        type: message.replyTo !== undefined ? 19 : message.interactionId === undefined ? 0 : 20,
        author: writeUser(world.bot, true),
        application_id: world.applicationId,
        content: message.content,
        timestamp: new Date(message.at).toISOString(),
        edited_timestamp: message.edits > 0 ? new Date(now()).toISOString() : null,
        tts: false,
        pinned: false,
        mention_everyone: message.isEveryoneCalled,
        mentions: message.calledIds.flatMap((id) => {
          const user = world.users.get(id);
          return user ? [writeUser(user)] : [];
        }),
        mention_roles: [],
        embeds: message.embeds.map((embed) => ({ type: "rich", ...embed })),
        flags: message.isPrivate ? 64 : 0,
        components: message.components.map((row, index) => writeRow(row, index)),
        attachments: message.files.map((file, index) => ({
          id: String(BigInt(message.id) + BigInt(index) + 1n),
          filename: file.name,
          size: file.data.length,
          url: `http://127.0.0.1/files/${file.name}`,
          proxy_url: `http://127.0.0.1/files/${file.name}`,
          content_type: file.type,
          ...(file.description === undefined ? {} : { description: file.description }),
        })),
        ...(hasNonce ? { nonce: message.nonce } : {}),
      };
    },
  };
}

export type Ledger = ReturnType<typeof createLedger>;

/** The platform numbers components itself. */
function writeRow(row: StoredMessage["components"][number], index: number): object {
  const first = index * 10 + 1;
  const inner = "components" in row ? row.components : [];
  return {
    ...row,
    id: first,
    components: inner.map((each, at) => ({
      // A list without numbers of its own takes one choice.
      ...(each.type === 3 ? { min_values: 1, max_values: 1 } : {}),
      ...each,
      id: first + at + 1,
    })),
  };
}
