import type { Lamp } from "../../../store/shapes/lamp.ts";
import type { Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { instant, plain, saySeconds } from "../../speech/wording.ts";
import type { LampVerdict } from "../lamp.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

/** As many as the class's own shape takes. */
export const MOST_LAMPS = 20;

export const tooMany = (): string => words().tooMany(MOST_LAMPS);
export const beyondLongest = (longest: number): string => words().beyondLongest(longest);

export function lampReply(lamp: Lamp, { safeSeconds, isAtLeast }: LampVerdict): Reply {
  const { name, nextAtMs } = lamp;
  const head =
    safeSeconds === null
      ? words().unsafe(plain(name))
      : isAtLeast
        ? words().atLeast(saySeconds(safeSeconds), plain(name))
        : words().safe(saySeconds(safeSeconds), plain(name));
  return {
    text: [
      head,
      safeSeconds === null ? words().mend : words().adds,
      words().next(instant(nextAtMs, "date")),
      words().rests,
    ].join("\n"),
    fields: { lamp: name, safeSeconds, isAtLeast, nextAtMs },
    actions:
      safeSeconds === null ? [{ label: words().again, line: makeLine("tray test", { lamp: name }) }] : [],
  };
}

export function lampsReply(lamps: readonly Lamp[], now: number): Reply {
  if (lamps.length === 0)
    return {
      text: words().none,
      fields: { lamps: [] },
      actions: [{ label: words().test, line: "tray test", weight: "main" }],
    };
  const lines = lamps.map(({ name, safeSeconds, testedAtMs, nextAtMs }) =>
    words().line(
      plain(name),
      safeSeconds === null ? null : saySeconds(safeSeconds),
      instant(testedAtMs, "date"),
      instant(nextAtMs, "date"),
      nextAtMs <= now,
    ),
  );
  return {
    text: lines.join("\n"),
    fields: { lamps: lamps.map((lamp) => ({ ...lamp })) },
    actions: lamps
      .slice(0, 5)
      .map(({ name }) => ({ label: words().testOne(name), line: makeLine("tray test", { lamp: name }) })),
  };
}
