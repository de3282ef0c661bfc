import type { Action } from "../define.ts";
import { makeLine } from "../line.ts";
import { countOf, formatDilution, formatMl, makeNumber, plain } from "../wording.ts";
import { rollsIn } from "./area.ts";
import { KIND_WORDS, labelOf, nameOf, STANDING_WORDS } from "./batch-words.ts";
import type { ChoiceFault } from "./choose.ts";

/* Why a bath can't be used, and what to use instead. */

type FaultWords = { [Fault in ChoiceFault as Fault["code"]]: (fault: Fault) => string };

const WORDS: FaultWords = {
  ERR_NO_BATCH_READY: ({ kind, product }) =>
    `No ${product === null ? KIND_WORDS[kind] : plain(product)} that is fit for use is mixed. Ask an aide or the teacher to mix some (\`/batch mix\`); see what there is with \`/batch status\`.`,
  ERR_UNKNOWN_BATCH: ({ typed }) =>
    `I know no batch ${plain(typed)} on the shelf. See the bottles with \`/batch status\`.`,
  ERR_WRONG_BATCH: ({ batch, need, instead }) => {
    const wanted =
      need.product === null
        ? KIND_WORDS[need.kind]
        : `${plain(need.product)}${need.dilution ? ` ${formatDilution(need.dilution)} or stock` : ""}`;
    return `${nameOf(batch)} is not the bath for this: it needs ${wanted}. ${useWords(instead)}`;
  },
  ERR_BATCH_WORN: ({ batch, standing, instead }) =>
    `**${labelOf(batch)} is ${STANDING_WORDS[standing]}**: it is not used any more. ${useWords(instead)}${allowWords(standing)}`,
  ERR_BATCH_ROOM: ({ batch, left, needed, instead }) => {
    const [has, needs] =
      batch.usage === "once"
        ? [formatMl(Math.max(0, left)), formatMl(needed)]
        : [countOf(rollsIn(left), "roll"), countOf(Math.ceil(needed / 80), "roll")];
    return `**${labelOf(batch)} has room for ${has}**, with what is promised to films under way; this needs ${needs}. ${useWords(instead)}`;
  },
};

function useWords(instead: number | null): string {
  return instead === null
    ? "Nothing else is ready: ask an aide or the teacher to mix some (`/batch mix`)."
    : `Use **${makeNumber("batch", instead)}** instead.`;
}

function allowWords(standing: string): string {
  return standing === "discarded"
    ? ""
    : " A teacher or an aide can allow it for you by name (`/batch allow`).";
}

export function refusalWords(fault: ChoiceFault): string {
  return (WORDS[fault.code] as (fault: ChoiceFault) => string)(fault);
}

/** The button that puts the better bottle into a run that is going. */
export function takeAction(run: number, batch: number): Action {
  const label = makeNumber("batch", batch);
  return {
    label: `Take ${label}`,
    line: makeLine("batch take", { run: makeNumber("run", run), batch: label }),
    weight: "main",
  };
}

export function wornAtPourWords(label: string, why: string, instead: number | null): string {
  const next =
    instead === null
      ? "Keep the film in water, which does no harm, and tell the teacher."
      : `Take **${makeNumber("batch", instead)}** instead; till then the film is safe in water.`;
  return `**Don't use ${label}**: ${why}. ${next} If it is in already, an aide or the teacher must allow it (\`/batch allow\`).`;
}
