import type { Action } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { formatDilution, formatMl, makeNumber, plain } from "../speech/wording.ts";
import { formatRolls, labelOf, nameOf, standingWord } from "./batch-words.ts";
import { rollsIn, SQ_IN_PER_ROLL } from "./area.ts";
import { isForPaper } from "../../store/shapes/batch.ts";
import type { ChoiceFault } from "./choose.ts";
import { de } from "./words/refusal.de.ts";
import { en } from "./words/refusal.en.ts";

/* Why a bath can't be used, and what to use instead. */

const words = inEach({ en, de });

/** What to do comes after what is wrong, in one line. */
export function refusalWords(fault: ChoiceFault): string {
  const { noneReady, unknown, wrongKind, wrongProduct, worn, noRoom, mayBeAllowed } = words();
  switch (fault.code) {
    case "ERR_NO_BATCH_READY":
      if (fault.place !== null) return words().nonePaired(fault.place);
      return noneReady(fault.kind, fault.product === null ? null : plain(fault.product));
    case "ERR_UNKNOWN_BATCH":
      return unknown(plain(fault.typed));
    case "ERR_WRONG_BATCH": {
      const { kind, product, dilution } = fault.need;
      const name = nameOf(fault.batch);
      const wrong =
        product === null
          ? (isForPaper(fault.batch.kind) === isForPaper(kind) ? wrongKind : words().wrongMedium)(name, kind)
          : wrongProduct(name, plain(product), dilution && formatDilution(dilution));
      return `${wrong}${useWords(fault.instead)}`;
    }
    case "ERR_BATCH_WORN": {
      const leave = fault.standing === "discarded" ? "" : mayBeAllowed;
      return `${worn(labelOf(fault.batch), standingWord(fault.standing))}${useWords(fault.instead)}${leave}`;
    }
    case "ERR_BATCH_ROOM": {
      const [has, needs] = roomWords(fault);
      return `${noRoom(labelOf(fault.batch), has, needs)}${useWords(fault.instead)}`;
    }
  }
}

/** What there is room for and what is needed: volumes where a bath is used once, else whole rolls. */
function roomWords({
  batch,
  left,
  needed,
}: Extract<ChoiceFault, { code: "ERR_BATCH_ROOM" }>): [string, string] {
  if (batch.usage === "once") return [formatMl(Math.max(0, left)), formatMl(needed)];
  const whole = (rolls: number): string => formatRolls(rolls * SQ_IN_PER_ROLL, batch.kind);
  return [whole(rollsIn(left)), whole(Math.ceil(needed / SQ_IN_PER_ROLL))];
}

function useWords(instead: number | null): string {
  return instead === null ? words().nothingElse : words().useInstead(makeNumber("batch", instead));
}

/** What stands on a key that takes this bottle. */
export const takeWords = (label: string): string => words().take(label);

/** The button that puts the better bottle into a run that is going. */
export function takeAction(run: number, batch: number): Action {
  const label = makeNumber("batch", batch);
  return {
    label: words().take(label),
    line: makeLine("batch take", { run: makeNumber("run", run), batch: label }),
    weight: "main",
  };
}

export function wornAtPourWords(label: string, why: string, instead: number | null): string {
  const { wornAtPour, keepInWater, takeInstead, ifIn } = words();
  const next = instead === null ? keepInWater : takeInstead(makeNumber("batch", instead));
  return `${wornAtPour(label, why)}${next}${ifIn}`;
}
