import type { APIAllowedMentions, APIEmbed, APIMessageTopLevelComponent } from "discord-api-types/v10";
import type { RawFile } from "discord.js";
import type { Action, Attachment, Picture } from "../../../commands/define.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { Photo, PhotoOf } from "../../../store/shapes/photo.ts";
import { photoFileName } from "../../../commands/roll/photo/photo.ts";
import { makeNumber } from "../../../commands/speech/wording.ts";
import { chunk } from "./chunk.ts";
import { BUTTONS_PER_MESSAGE, makeRows } from "./keys.ts";
import { discordWords } from "./words/discord.ts";
import { type DiscordSettings, readUserId } from "./settings.ts";
import { MESSAGE_CHARACTERS, shorten, showInstants, splitText } from "./text.ts";

/** The photo of a roll's contact sheet, or of a print. */
export type ShownPhoto = Photo & PhotoOf;

export interface View {
  readonly text: string;
  readonly actions: readonly Action[];
  readonly pictures: readonly Picture[];
  readonly attachments: readonly Attachment[];
  /** Person ids. They are called by name, in front of the text. */
  readonly mentions: readonly string[];
  readonly photo?: ShownPhoto;
  /** Of what is added to the text, where something of the view is lost. */
  readonly language?: Language | undefined;
  /** The class its keys carry: in a direct message a press does not tell it. */
  readonly keysOf?: string | undefined;
}

/** One message of the platform; a long view needs several. */
export interface Part {
  readonly body: {
    readonly content?: string;
    readonly components?: APIMessageTopLevelComponent[];
    /** A drawing each, in the size the platform gives to what is to be looked at. */
    readonly embeds?: APIEmbed[];
    readonly attachments?: { id: string; filename: string; description?: string }[];
    /** Always there, in every message and edit: nobody is called but who is meant. */
    readonly allowed_mentions: APIAllowedMentions;
  };
  readonly files: RawFile[];
}

const FILES_PER_MESSAGE = 10;
const EMBEDS_PER_MESSAGE = 10;
/** Of one file. */
export const FILE_BYTES = 10 * 1024 * 1024;
/** 2000 characters hold some 90 bare mentions; the rest of the text needs room as well. */
const MENTIONS_PER_MESSAGE = 60;

export interface PartSettings extends Pick<DiscordSettings, "renderPicture" | "log"> {
  /** Commands as they are called on this platform. */
  sayPaths(text: string): string;
}

function makeWords(
  { mentions, text }: Pick<View, "mentions" | "text">,
  { sayPaths }: Pick<PartSettings, "sayPaths">,
) {
  const userIds = [...new Set(mentions.flatMap((personId) => readUserId(personId) ?? []))];
  const groups = chunk(userIds, MENTIONS_PER_MESSAGE).map((ids) => ids.map((id) => `<@${id}>`).join(" "));
  const first = [groups[0] ?? "", showInstants(sayPaths(text))].filter((each) => each !== "");
  return { userIds, groups, first };
}

/** Whether a view needs one message only, with a button for each of its actions. */
export function isOneMessage(
  view: Pick<View, "mentions" | "text" | "actions">,
  settings: Pick<PartSettings, "sayPaths">,
): boolean {
  const { groups, first } = makeWords(view, settings);
  return (
    groups.length <= 1 &&
    view.actions.length <= BUTTONS_PER_MESSAGE &&
    first.join("\n").length <= MESSAGE_CHARACTERS
  );
}

/** The messages a view needs, in order; buttons and files go with the last of the text. */
export async function makeParts(view: View, { renderPicture, log, sayPaths }: PartSettings): Promise<Part[]> {
  const { files, lost } = await makeFiles(view, renderPicture, log);
  const { userIds, groups, first } = makeWords(view, { sayPaths });
  const text = [...first, ...lost].join("\n");
  const texts: (string | undefined)[] = [...splitText(text, MESSAGE_CHARACTERS), ...groups.slice(1)];
  const fileGroups = chunk(files, FILES_PER_MESSAGE);
  const rows = makeRows(view, log);
  if (texts.length === 0) texts.push(fileGroups.length > 0 ? undefined : discordWords(view.language).done);
  const last = texts.length - 1;
  const parts = texts.map((each, index) =>
    makePart(each, userIds, index === last ? rows : [], index === last ? (fileGroups[0] ?? []) : []),
  );
  return [...parts, ...fileGroups.slice(1).map((group) => makePart(undefined, [], [], group))];
}

interface NamedFile {
  readonly name: string;
  readonly description?: string;
  readonly data: Buffer;
  readonly contentType: string;
  readonly isDrawing?: boolean;
}

function makePart(
  text: string | undefined,
  userIds: readonly string[],
  rows: APIMessageTopLevelComponent[],
  files: readonly NamedFile[],
): Part {
  const drawings = files.filter(({ isDrawing }) => isDrawing).slice(0, EMBEDS_PER_MESSAGE);
  const users = userIds.filter((id) => text?.includes(`<@${id}>`));
  return {
    body: {
      ...(text === undefined ? {} : { content: text }),
      ...(rows.length > 0 ? { components: rows } : {}),
      ...(drawings.length > 0
        ? { embeds: drawings.map(({ name }) => ({ image: { url: `attachment://${name}` } })) }
        : {}),
      ...(files.length > 0
        ? {
            attachments: files.map(({ name, description }, id) => ({
              id: String(id),
              filename: name,
              ...(description === undefined ? {} : { description: shorten(description, 1024) }),
            })),
          }
        : {}),
      allowed_mentions: { parse: [], ...(users.length > 0 ? { users } : {}) },
    },
    files: files.map(({ name, data, contentType }) => ({ name, data, contentType })),
  };
}

async function makeFiles(
  view: View,
  renderPicture: DiscordSettings["renderPicture"],
  log: DiscordSettings["log"],
): Promise<{ files: NamedFile[]; lost: string[] }> {
  const files: NamedFile[] = [];
  const lost: string[] = [];
  for (const { name, alt, svg } of view.pictures) {
    try {
      const data = Buffer.from(await renderPicture(svg));
      files.push({ name: `${name}.png`, description: alt, data, contentType: "image/png", isDrawing: true });
    } catch (error) {
      log.error({ err: error, picture: name }, "a picture could not be drawn");
      lost.push(discordWords(view.language).lostPicture(alt));
    }
  }
  if (view.photo) {
    const { bytes, mediaType, kind, number } = view.photo;
    const description = discordWords(view.language).photoOf[kind](makeNumber(kind, number));
    const name = photoFileName(view.photo, mediaType);
    files.push({ name, description, data: Buffer.from(bytes), contentType: mediaType });
  }
  for (const { name, content, mediaType } of view.attachments) {
    const data = Buffer.from(content, "utf8");
    if (data.length <= FILE_BYTES) files.push({ name, data, contentType: mediaType });
    else lost.push(discordWords(view.language).tooLarge(name, Math.ceil(data.length / 1e6)));
  }
  return { files, lost };
}
