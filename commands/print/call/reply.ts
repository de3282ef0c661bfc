import type { Strip } from "../../../store/shapes/print.ts";
import type { StripPlan } from "../../../store/shapes/strip-plan.ts";
import type { Reply } from "../../define.ts";
import { cardMove } from "../../sheet/step-words.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { makeNumber } from "../../speech/wording.ts";
import { type Bar, CALL_TENTHS } from "../bars.ts";
import type { CalledFault } from "../called-strip.ts";
import { formatExposure } from "../stops.ts";
import { tableOf, tooFine } from "../strip-words.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** Too quick for a chat: the table it goes by instead. */
export function notCalled(fault: CalledFault, strip: Strip, bars: readonly Bar[]): string {
  if (fault.code === "ERR_STRIP_FINE") return tooFine(strip, fault.bar);
  const { shortestTenths } = fault;
  return [
    words().tooQuick(formatExposure(shortestTenths), formatExposure(CALL_TENTHS)),
    ...tableOf(strip, bars),
    words().slower,
  ].join("\n");
}

export function callReply(number: number, { strip, steps }: StripPlan, bars: readonly Bar[]): Reply {
  const exposures = steps.filter(({ kind }) => kind === "expose");
  const [first, last] = [bars[0], bars.at(-1)];
  return {
    text: [
      words().head(
        makeNumber("plan", number),
        strip.bars,
        formatExposure(first?.totalTenths ?? 0),
        formatExposure(last?.totalTenths ?? 0),
      ),
      ...exposures.map((step, at) =>
        words().step(at + 1, cardMove(step), formatExposure((step.seconds ?? 0) * 10)),
      ),
      words().hand,
    ].join("\n"),
    fields: {
      plan: number,
      bars: bars.map((bar) => ({
        number: bar.number,
        totalTenths: bar.totalTenths,
        addTenths: bar.addTenths,
      })),
    },
    actions: [{ label: words().start, line: makeLine("run start", { plan: number }), weight: "main" }],
  };
}
