import {
  InteractionResponseType,
  InteractionType,
  Routes,
  type APIApplicationCommandAutocompleteInteraction,
  type APIInteraction,
} from "discord.js";
import type { Language } from "../../../store/shapes/language.ts";
import type { Action, Reply, Suggestion } from "../../../commands/define.ts";
import { withLogFile } from "./log-file.ts";
import { discordWords } from "./words/discord.ts";
import { createAnswerer, type AnswerSettings, type Left } from "./answer.ts";
import { languageOfInteraction, type CallReader, type OpenCall, type ReadCall } from "./calls.ts";
import type { DirectChannels } from "./direct.ts";
import type { FetchFile } from "./files.ts";
import { makeForm, makeFormKey } from "./form.ts";
import type { ShownPhoto } from "./message.ts";
import type { TellReach } from "./reach.ts";
import type { Directory } from "./settings.ts";
import { shorten } from "./text.ts";
import { mayBeText, MOST_TEXT_BYTES, readText, textOptionOf } from "./text-file.ts";
import { isSpentBy, withoutUsed } from "./used.ts";
import type { ChatHandlers } from "../port.ts";

export interface InteractionSettings extends AnswerSettings, Pick<Directory, "photoOf" | "readLog"> {
  readonly fetchFile: FetchFile;
  readonly reader: CallReader;
  readonly direct: DirectChannels;
  readonly handlers: ChatHandlers;
  readonly tellReach: TellReach;
}

/** After a dropped connection the platform sends again what was seen already: this many ids are kept to tell. */
const KEPT_IDS = 5000;
const KEPT_UNTOLD = 500;
const MOST_UNTOLD = 600;

/** What begins a run: where its calls come is told with the answer. */
const BEGIN_RUNS: ReadonlySet<string> = new Set(["run start", "run trial"]);

/** Returns what is done with each interaction; it never throws, and does nothing for one that came before. */
export function createInteractionHandler(settings: InteractionSettings) {
  const { reader, handlers, log, rest, direct, fetchFile, photoOf, tellReach } = settings;
  const seen = new Set<string>();
  const open = new Set<{ close(): void }>();
  /** By person, the answer of theirs that came too late, until it is told. */
  const untold = new Map<string, string>();

  function isRepeat(id: string): boolean {
    if (seen.has(id)) return true;
    seen.add(id);
    const [oldest] = seen;
    if (oldest !== undefined && seen.size > KEPT_IDS) seen.delete(oldest);
    return false;
  }

  async function handleInteraction(interaction: APIInteraction): Promise<void> {
    const read = reader.readCall(interaction);
    if (read?.kind === "form") await openForm(interaction, read);
    else if (read) await handleCall(interaction, read);
  }

  /** Where no form can hold it, the call is made as it is: its refusal says what it lacks. */
  async function openForm(
    interaction: APIInteraction,
    { asked, caller }: Extract<ReadCall, { kind: "form" }>,
  ): Promise<void> {
    const { command, given } = asked;
    const { language } = caller;
    const others = Object.fromEntries(Object.entries(given).map(([name, value]) => [name, String(value)]));
    const suggest = (option: string): readonly Suggestion[] =>
      handlers.onComplete({ ...caller, name: command.name, option, typed: "", others });
    const form = makeForm({ ...asked, language, classKey: keysOf(interaction, caller), suggest });
    if (form) return createAnswerer(interaction, "private", settings).ask(form);
    const call = { callId: interaction.id, name: command.name, options: given, ...caller };
    await handleCall(interaction, { kind: "call", command, file: undefined, pressed: undefined, call });
  }

  async function handleCall(
    interaction: APIInteraction,
    read: Exclude<ReadCall, { kind: "form" }>,
  ): Promise<void> {
    const expected = read.kind === "call" ? (read.command?.visibility ?? "private") : "private";
    const personId = read.kind === "call" ? read.call.person.id : null;
    let said = "";
    const answerer = createAnswerer(interaction, expected, {
      ...settings,
      onTooLate: () => personId !== null && keepUntold(personId, said),
    });
    open.add(answerer);
    let isAnswered = false;
    let started: Reply | undefined;
    try {
      if (read.kind === "sentence") return await answerer.answer({ text: read.text }, "private");
      direct.meet(interaction, read.call.person.id);
      const sent = await fetchSent(read);
      if (typeof sent === "string") return await answerer.answer({ text: sent }, "private");
      await handlers.onCommand({
        ...read.call,
        ...sent,
        async answer(given, visibility, code) {
          isAnswered = true;
          started = BEGIN_RUNS.has(read.call.name) && code == null ? given : undefined;
          const reply = await withLogFile(given, settings, read.call.language);
          said = reply.text;
          const text = takeUntold(read.call.person.id, read.call.language) + reply.text;
          const told = { ...reply, text, actions: withFormKey(reply, read.call.language) };
          const photo = photoFor(reply, read.call.place.classKey);
          const left = leftOf(read, reply, code ?? null);
          return answerer.answer(told, visibility, { photo, left, keysOf: keysOf(interaction, read.call) });
        },
      });
      const reach = started ? await tellReach(read.call, started) : null;
      if (reach !== null) await answerer.answer({ text: reach }, "private");
    } catch (error) {
      log.error({ err: error, interaction: interaction.id }, "a call failed");
      const text = discordWords(languageOfInteraction(interaction)).broken;
      if (!isAnswered) await answerer.answer({ text }, "private");
    } finally {
      answerer.close();
      open.delete(answerer);
    }
  }

  /** Of a refused call, a key that opens its form as it was filled in. */
  function withFormKey({ actions = [], again }: Reply, language: Language | undefined): readonly Action[] {
    const line = again && makeFormKey(again.line, again.option);
    return line === undefined ? actions : [...actions, { label: discordWords(language).changeAndSend, line }];
  }

  /** The keys that are left where the one that was pressed has done its work. */
  function leftOf(
    { pressed, call }: Extract<ReadCall, { kind: "call" }>,
    reply: Reply,
    code: string | null,
  ): Left | undefined {
    if (!pressed || code !== null || !isSpentBy(pressed.line, call.name, reply)) return undefined;
    const keys = withoutUsed(pressed, reader.forms);
    return keys && { message: pressed.message, keys };
  }

  function keepUntold(personId: string, text: string): void {
    untold.set(personId, shorten(text, MOST_UNTOLD));
    const [oldest] = untold.keys();
    if (oldest !== undefined && untold.size > KEPT_UNTOLD) untold.delete(oldest);
  }

  function takeUntold(personId: string, language: Language | undefined): string {
    const text = untold.get(personId);
    untold.delete(personId);
    return text === undefined ? "" : `${discordWords(language).answeredLate(text)}\n`;
  }

  function photoFor({ photo }: Reply, classKey: string): ShownPhoto | undefined {
    const kept = photo?.isKept ? photoOf(classKey, photo) : undefined;
    return photo && kept && { ...kept, kind: photo.kind, number: photo.number };
  }

  /** What the file that came with a call adds to it, or the sentence that says why it can't be had. */
  async function fetchSent(
    read: Extract<ReadCall, { kind: "call" }>,
  ): Promise<{ file?: Uint8Array; options?: OpenCall["options"] } | string> {
    const { file, command, call } = read;
    if (!file) return {};
    const option = textOptionOf(command);
    const words = discordWords(call.language);
    const mostBytes = option === undefined ? (command?.file?.mostBytes ?? 0) : MOST_TEXT_BYTES;
    if (file.size > mostBytes) return words.fileTooLarge(file.size / 2 ** 20, mostBytes / 2 ** 20);
    if (option !== undefined && !mayBeText(file)) return words.fileNoText;
    const bytes = await fetchFile(file, mostBytes);
    if (!bytes) return words.fileNotFetched;
    if (option === undefined) return { file: bytes };
    const text = readText(bytes);
    return text === undefined ? words.fileNoText : { options: { ...call.options, [option]: text } };
  }

  async function handleCompletion(interaction: APIApplicationCommandAutocompleteInteraction): Promise<void> {
    const read = reader.readCompletion(interaction);
    let suggestions: readonly Suggestion[] = [];
    try {
      if (read) suggestions = handlers.onComplete(read.request);
    } catch (error) {
      log.error({ err: error, interaction: interaction.id }, "a completion failed");
    }
    const answer = await rest.request({
      method: "POST",
      route: Routes.interactionCallback(interaction.id, interaction.token),
      body: {
        type: InteractionResponseType.ApplicationCommandAutocompleteResult,
        data: { choices: makeChoices(suggestions, read?.isNumber ?? false) },
      },
      isInteraction: true,
    });
    if (!answer.ok) log.debug({ interaction: interaction.id, ...answer.fault }, "a completion came too late");
  }

  return {
    async handle(interaction: APIInteraction): Promise<void> {
      if (isRepeat(interaction.id)) {
        log.debug({ interaction: interaction.id }, "an interaction came again");
        return;
      }
      try {
        if (interaction.type === InteractionType.ApplicationCommandAutocomplete)
          await handleCompletion(interaction);
        else await handleInteraction(interaction);
      } catch (error) {
        log.error({ err: error, interaction: interaction.id }, "an interaction failed");
      }
    },
    stop() {
      for (const answerer of open) answerer.close();
    },
  };
}

/** The class that keys given to somebody alone carry: pressed there, they tell of no server. */
const keysOf = (interaction: APIInteraction, { place }: Pick<OpenCall, "place">): string | undefined =>
  interaction.guild_id === undefined ? place.classKey : undefined;

/** At most 25 of at most 100 characters. A value is never cut, for it would be another value. */
export function makeChoices(
  suggestions: readonly Suggestion[],
  isNumber: boolean,
): { name: string; value: string | number }[] {
  return suggestions
    .map(({ label, value }) => ({
      name: shorten(label.trim() === "" ? value : label, 100),
      value: isNumber ? Number(value) : value,
    }))
    .filter(
      ({ name, value }) => name !== "" && value !== "" && `${value}`.length <= 100 && !Number.isNaN(value),
    )
    .slice(0, 25);
}
