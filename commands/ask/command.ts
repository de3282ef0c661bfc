import { z } from "zod";
import { defineCommand, type Action, type Command, type Context, type Reply } from "../define.ts";
import { fitsKey, makeLine } from "../speech/line.ts";
import { sheetsOf } from "../sheet/options.ts";
import { whoMay } from "../who.ts";
import { mayActAs } from "../../store/shapes/person.ts";
import { answerTo } from "./answer.ts";
import { factsFor } from "./facts.ts";
import { readSentence, type Reading } from "./read.ts";
import { INTENTS, type Intent } from "./rules.ts";
import type { Answer } from "./shape.ts";
import { createWays, type SummaryIn, type Way, type Ways } from "./ways.ts";
import { askWords as words } from "./words.ts";

const MOST_KEYS = 8;
/** Offered where nothing was understood, after what came nearest. */
const USUAL: readonly Intent[] = ["time", "where", "left"];

/** Answers a sentence, partly by what other commands say; those come from outside, as a list knows its members. */
export function makeAsk(commands: readonly Command[], summaryIn: SummaryIn): Command {
  const ways = createWays(commands, summaryIn);
  return defineCommand({
    name: "ask",
    summary: "Ask in your own words: how long left, is the fixer good, what is a reel",
    options: () => ({
      text: z.string().trim().max(2000).default("").describe("What you want to know"),
      // A list to choose from would be longer than a chat shows, and nobody has to choose from it.
      as: z.string().max(20).pipe(z.enum(INTENTS)).optional().describe("Set by buttons: what is meant"),
    }),
    who: whoMay("ask"),
    visibility: "private",
    rest: "text",
    // More than a list of choices may have.
    complete: {
      as: (typed) =>
        INTENTS.filter((intent) => intent.startsWith(typed.toLowerCase()))
          .slice(0, 25)
          .map((intent) => ({ label: intent, value: intent })),
    },
    handle: ({ text, as }, context) => ask(commands, ways, text, as, context),
  });
}

function ask(
  commands: readonly Command[],
  waysOf: Ways,
  text: string,
  as: Intent | undefined,
  context: Context,
): Reply {
  const sheets = sheetsOf(context);
  const reading = readSentence(text, {
    films: sheets.map(({ film }) => film),
    developers: sheets.map(({ developer }) => developer),
  });
  const intent = as ?? (reading.isTorn || reading.isUnsure ? undefined : reading.wanted[0]);
  const isStaff = mayActAs(context.role, "aide");
  const isHow = reading.signs.has("HOW");
  // Whoever is at a sink is answered from what is known of films first; staff ask how a class is run.
  const isVague = as === undefined && isHow && (intent === "help" || (intent === "where" && isStaff));
  const isOpen = isVague || (intent === undefined && (isStaff || isHow));
  const ways = isOpen ? waysOf(text, context.role) : [];
  if (intent === undefined || (intent === "help" ? ways.length > 0 : ways[0]?.isLikely))
    return chooseReply(text, reading, ways, isStaff);
  const answer = answerTo(intent, reading, factsFor(context));
  return replyOf(intent, answer, commands, context);
}

function replyOf(
  intent: Intent,
  { text, keys, show }: Answer,
  commands: readonly Command[],
  context: Context,
) {
  const command = show && commands.find(({ name }) => name === show.command);
  const shown: Reply = command
    ? command.handle(command.options.parse(asText(show?.options ?? {})), context)
    : { text: "" };
  const seen = new Set<string>();
  const actions = [...keys, ...(shown.actions ?? [])].filter(
    ({ line }) => !seen.has(line) && Boolean(seen.add(line)),
  );
  return {
    ...shown,
    text: [text, shown.text].filter(Boolean).join("\n\n"),
    fields: { ...shown.fields, wanted: intent },
    actions: actions.slice(0, MOST_KEYS),
  };
}

/**
 * Two readings, two keys; one that may be a chance, or none: the commands it may ask for, the three readings that come nearest,
 * and help.
 */
function chooseReply(
  text: string,
  { wanted, doubted, isTorn }: Reading,
  ways: readonly Way[],
  isStaff: boolean,
): Reply {
  const near = [...wanted.slice(0, 2), ...doubted, ...USUAL];
  const offered = isTorn ? wanted.slice(0, 2) : [...new Set(near)].slice(0, 3);
  const unread = isStaff ? words().unreadByStaff : words().unread;
  return {
    text: ways.length > 0 ? sayWays(ways) : isTorn ? words().torn : unread,
    fields: { wanted: null, offered: [...offered] },
    actions: [
      ...offered.map((intent) => meaningKey(text, intent)),
      ...(isTorn ? [] : [{ label: words().meant.help, line: "help" }]),
    ],
  };
}

/** Named and not pressed: some of them change what they are called for at once. */
const sayWays = (ways: readonly Way[]): string =>
  [words().ways, ...ways.map(({ command, summary }) => `- \`/${command.name}\`: ${summary}`)].join("\n");

/** The sentence goes along where a button has room for it. */
function meaningKey(text: string, as: Intent): Action {
  const whole = makeLine("ask", { text, as });
  return { label: words().meant[as], line: fitsKey(whole) ? whole : makeLine("ask", { as }) };
}

/** Options as they would be typed. */
const asText = (options: Readonly<Record<string, string | number>>): Record<string, string> =>
  Object.fromEntries(Object.entries(options).map(([name, value]) => [name, String(value)]));
