import {
  type APIMessage,
  ApplicationCommandType,
  type RESTPostAPIContextMenuApplicationCommandsJSONBody as MenuBody,
} from "discord-api-types/v10";
import { type LineForm, parseLine } from "../../../commands/speech/line.ts";
import { DEFAULT_LANGUAGE, LANGUAGES } from "../../../store/shapes/language.ts";
import { listLines } from "./keys.ts";
import { discordWords } from "./words/discord.ts";

/* What the platform offers on the menu of a message. Pure. */

export const RATE_ROLL = { name: discordWords(DEFAULT_LANGUAGE).rateRoll, command: "roll rate" } as const;

export const MESSAGE_MENU: readonly MenuBody[] = [
  {
    type: ApplicationCommandType.Message,
    name: RATE_ROLL.name,
    name_localizations: Object.fromEntries(
      LANGUAGES.filter((each) => each !== DEFAULT_LANGUAGE).map((each) => [
        each,
        discordWords(each).rateRoll,
      ]),
    ),
  },
];

/** The roll that a message's own keys name, if they name one alone; its words are not read. */
export function rollOfMessage(
  message: Pick<APIMessage, "components"> | undefined,
  forms: readonly LineForm[],
): number | null {
  const keys = listLines(message?.components ?? []);
  const rolls = keys.flatMap((key) => {
    const parsed = parseLine(key, forms);
    const number = parsed.ok ? /^L?(\d+)$/i.exec(parsed.value.options["roll"] ?? "")?.[1] : undefined;
    return number === undefined ? [] : [Number(number)];
  });
  const [first] = new Set(rolls);
  return first !== undefined && new Set(rolls).size === 1 ? first : null;
}
