import { z } from "zod";
import { defineCommand, UserError } from "../../define.ts";
import { durationIn } from "../../speech/quantity.ts";
import { numberIn } from "../../speech/shaped.ts";
import { trayLineSchema } from "../../../store/shapes/tray-line.ts";
import { whoMay } from "../../who.ts";
import { AGENTS, CONTRASTS, factorHad, factorOf, wholeSeconds, type Agent } from "../factor.ts";
import * as words from "./reply.ts";

const SEEN_SECONDS = { least: 1, most: 1800 };
const WHOLE_SECONDS = { least: 5, most: 7200 };

export const trayFactor = defineCommand({
  name: "tray factor",
  summary: "Development by first appearance: a factor for the agents, the whole time, or the factor you had",
  options: () => ({
    agents: z
      .string()
      .trim()
      .min(1)
      .max(100)
      .optional()
      .describe(`Developing agents, like metol or pyro, metol`),
    contrast: z.enum(CONTRASTS).default("normal").describe("How contrasty the prints are to be"),
    factor: numberIn(trayLineSchema.shape.factor).optional().describe("A factor you know, like 15"),
    seen: durationIn(SEEN_SECONDS).optional().describe("When the image first appeared, like 9 s"),
    whole: durationIn(WHOLE_SECONDS).optional().describe("The whole developing time, like 2:15"),
  }),
  who: whoMay("tray factor"),
  visibility: "private",
  complete: {
    agents: (typed) =>
      AGENTS.filter((agent) => agent.includes(typed.toLowerCase())).map((agent) => ({
        label: agent,
        value: agent,
      })),
  },
  handle({ agents: text, contrast, factor: known, seen, whole }) {
    const agents = text === undefined ? [] : readAgents(text);
    const factor =
      known ??
      (agents.length > 0
        ? factorOf(agents, contrast)
        : seen !== undefined && whole !== undefined
          ? factorHad(seen, whole)
          : null);
    if (factor === null) throw new UserError("ERR_NO_FACTOR", words.nothingGiven());
    const inAll = seen === undefined ? null : wholeSeconds(factor, seen);
    return words.factorReply({ factor, agents, contrast, seen: seen ?? null, inAll, whole: whole ?? null });
  },
});

/** @throws UserError where a word is no agent with a factor. */
function readAgents(text: string): Agent[] {
  const typed = text.split(/[,+]/).map((each) => each.trim().toLowerCase());
  const known = typed.map((each) => AGENTS.find((agent) => agent === each));
  if (known.some((each) => each === undefined))
    throw new UserError("ERR_UNKNOWN_AGENT", words.unknownAgent(text, AGENTS));
  return known as Agent[];
}
