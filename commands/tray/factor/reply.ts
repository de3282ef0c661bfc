import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { formatNumber, formatSeconds, joinOr, plain } from "../../speech/wording.ts";
import { PYRO_RIVAL, type Agent, type Contrast } from "../factor.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const nothingGiven = (): string => words().nothingGiven;
export const unknownAgent = (typed: string, known: readonly string[]): string =>
  words().unknownAgent(plain(typed), joinOr(known));

export interface FactorFacts {
  readonly factor: number;
  readonly agents: readonly Agent[];
  readonly contrast: Contrast;
  readonly seen: number | null;
  readonly inAll: number | null;
  readonly whole: number | null;
}

export function factorReply({ factor, agents, contrast, seen, inAll, whole }: FactorFacts): Reply {
  const factorText = formatNumber(factor);
  const isHad = agents.length === 0 && whole !== null && seen !== null && inAll === whole;
  const head =
    isHad || seen === null || inAll === null
      ? words().factor(factorText)
      : words().whole(formatSeconds(inAll), factorText, formatSeconds(seen));
  return {
    text: [
      head,
      agents.length > 0 ? words().source(agents.join(" + "), contrast) : "",
      agents.includes("pyro") ? words().pyro(PYRO_RIVAL.normal, PYRO_RIVAL.softer.join(", ")) : "",
      words().limits,
    ]
      .filter(Boolean)
      .join("\n"),
    fields: { factor, wholeSeconds: inAll ?? whole },
  };
}
