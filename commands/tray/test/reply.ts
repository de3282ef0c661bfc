import type { LampPlan } from "../../../store/shapes/lamp.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { joinAnd, makeNumber, plain } from "../../speech/wording.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const noSteps = (most: number, longest: number): string => words().noSteps(most, longest);

export function testReply(number: number, { lamp, minutes, steps }: LampPlan): Reply {
  const inAll = 2 * Math.max(...minutes);
  return {
    text: [
      words().head(plain(lamp), inAll, makeNumber("plan", number)),
      words().before,
      words().steps(joinAnd(minutes.map(String))),
      words().wait,
    ].join("\n"),
    fields: { plan: number, lamp, minutes, steps: steps.length },
    actions: [{ label: words().start, line: makeLine("run start", { plan: number }), weight: "main" }],
  };
}
