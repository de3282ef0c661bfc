import type { Reply } from "../../define.ts";
import type { MeasureStep } from "../../speech/tenths.ts";
import { inEach } from "../../speech/language.ts";
import { formatMl, formatSeconds, instant } from "../../speech/wording.ts";
import { rollsIn } from "../area.ts";
import { isForPaper, type Batch } from "../../../store/shapes/batch.ts";
import { bathName, capital, labelOf, slowWords } from "../batch-words.ts";
import { fieldsOf } from "../fields.ts";
import { formatShelfLife } from "../figures.ts";
import { mixingCautions } from "../hazards.ts";
import { splitVolume } from "../../plan/volume.ts";
import type { Pack } from "../../../store/shapes/shelf.ts";
import { sourceWords } from "../source-words.ts";
import type { BatchState } from "../state.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";

const words = inEach({ en, de });

export const notYet = (): string => words().notYet;
export const bottleTooSmall = (bottleMl: number, volumeMl: number): string =>
  words().bottleTooSmall(formatMl(bottleMl), formatMl(volumeMl));
export const trayBath = (): string => words().trayBath;
export const tabularAbove = (): string => words().tabularAbove;

export function mixedReply(
  batch: Batch,
  state: BatchState,
  shelf: { readonly pack: Pack; readonly takenMl: number; readonly leftMl: number } | null,
  wasRatio: boolean,
  stepMl: MeasureStep,
): Reply {
  const { mixed, figures } = words();
  const lines = [
    mixed(
      labelOf(batch),
      formatMl(batch.volumeMl),
      bathName(batch),
      batch.kind,
      instant(batch.mixedAtMs, "date"),
    ),
    limitWords(batch, state),
    batch.kind === "fixer" ? testWords(batch, state) : "",
    sumWords(batch, shelf?.pack ?? null, stepMl),
    ...mixingCautions(batch.kind, shelf?.pack.form ?? null),
    shelf ? shelfWords(shelf) : "",
    wasRatio ? words().wasRatio : "",
    figures(sourceWords(batch.source)),
  ];
  return { text: lines.filter(Boolean).join("\n"), fields: fieldsOf(batch, state) };
}

/** What went into it, where it is diluted; a powder's stock is made up as its pack says. */
function sumWords({ volumeMl, dilution }: Batch, pack: Pack | null, stepMl: MeasureStep): string {
  if (dilution.waterParts === 0) return pack?.form === "powder" ? words().powder(formatMl(volumeMl)) : "";
  const { concentrateMl, waterMl } = splitVolume(volumeMl, dilution, stepMl);
  return words().sum(formatMl(concentrateMl), formatMl(waterMl), pack?.form === "powder");
}

function limitWords(batch: Batch, state: BatchState): string {
  const { goodFor, orTabular, until, partFull } = words();
  const ofPaper = isForPaper(batch.kind);
  const { tabularSqInPerLitre: tabular, partHours } = batch;
  const good = [
    state.leftRolls !== null && batch.usage === "again" ? goodFor(state.leftRolls, ofPaper) : "",
    tabular === null ? "" : orTabular(rollsIn((tabular * batch.volumeMl) / 1000), ofPaper),
    state.expiresAtMs === null ? "" : until(instant(state.expiresAtMs, "date")),
  ].filter(Boolean);
  const part =
    partHours !== null && partHours !== batch.fullHours && !state.isPartFull
      ? partFull(formatShelfLife(partHours))
      : "";
  return good.length === 0 ? "" : `${capital(good.join(", "))}${part}.`;
}

function testWords(batch: Batch, { clearing }: BatchState): string {
  return clearing
    ? [words().freshTested(formatSeconds(clearing.freshSeconds)), slowWords(clearing.freshSeconds)]
        .join(" ")
        .trim()
    : words().testNext(labelOf(batch));
}

function shelfWords({ pack, takenMl, leftMl }: { pack: Pack; takenMl: number; leftMl: number }): string {
  const { concentrateShort, powderShort, concentrateTaken, powderTaken } = words();
  const isLiquid = pack.form === "liquid";
  return leftMl < 0
    ? (isLiquid ? concentrateShort : powderShort)(formatMl(takenMl), formatMl(-leftMl))
    : (isLiquid ? concentrateTaken : powderTaken)(formatMl(takenMl), formatMl(leftMl));
}
