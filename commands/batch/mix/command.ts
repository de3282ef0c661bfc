import { enterLine } from "../enter.ts";
import { z } from "zod";
import { defineCommand, UserError, type Completer, type Context } from "../../define.ts";
import { textIn } from "../../speech/shaped.ts";
import { dilutionOption, durationIn, volumeIn } from "../../speech/quantity.ts";
import { CLEARING_SECONDS } from "../../../store/shapes/limits.ts";
import type { Dilution } from "../../../store/shapes/sheet.ts";
import {
  BATCH_KINDS,
  isForPaper,
  batchSchema,
  USAGES,
  type BatchKind,
  type NewBatch,
} from "../../../store/shapes/batch.ts";
import { capacityOption, shelfLifeOption } from "../figures.ts";
import * as words from "./reply.ts";
import { readDayOption, readState } from "../options.ts";
import { OWN_FIRST, presetFor, presetFrom, type Preset } from "../presets.ts";
import { concentrateFor } from "../../../store/shapes/shelf.ts";

const completeProduct: Completer = (typed, { stores, class: { id } }) => {
  const known = [
    ...stores.shelf.list(id).map(({ product }) => product),
    ...stores.batches.list(id).map(({ product }) => product),
    ...stores.sheets.list(id).map(({ sheet }) => sheet.developer),
  ];
  return [...new Set(known)]
    .filter((product) => product.toLowerCase().includes(typed.toLowerCase()))
    .map((product) => ({ label: product, value: product }));
};

const { shape } = batchSchema;
const REPLENISH_ML = shape.replenishMlPerRoll;

export const batchMix = defineCommand({
  name: "batch mix",
  summary: "Note a freshly mixed bottle and get its label; what is left out is taken from the last one",
  options: () => ({
    kind: z.enum(BATCH_KINDS).describe("What it is for"),
    product: textIn(shape.product).describe("Name on the pack"),
    volume: volumeIn(shape.volumeMl).describe("How much is mixed, like 2 l"),
    dilution: dilutionOption.optional().describe("Concentrate + water, like 1+4, or stock"),
    clearing: durationIn(CLEARING_SECONDS)
      .optional()
      .describe("Fixer: how long a scrap of film takes to clear, like 45 s"),
    bottle: volumeIn(shape.bottleMl).optional().describe("What its bottle holds, if more than is in it"),
    capacity: capacityOption
      .optional()
      .describe("What it takes, like 20 films/l, 50 prints/l (8x10 in) or 1600 sq in/l"),
    tabular: capacityOption
      .optional()
      .describe("The same for tabular-grain film (or fibre paper), if lower: 10 films/l"),
    silver: z.coerce
      .number()
      .min(0.1)
      .max(20)
      .optional()
      .describe("Fixer: silver by strip at which it ends, grams per litre, like 4"),
    replenish: volumeIn(REPLENISH_ML)
      .optional()
      .describe("Developer: replenisher for each roll, like 70 ml; it is then poured back"),
    full: shelfLifeOption.optional().describe("Shelf life in a full bottle, like 6 months"),
    part: shelfLifeOption.optional().describe("Shelf life in a part-full bottle, like 1 month"),
    use: z.enum(USAGES).optional().describe("How it is used"),
    source: textIn(shape.source).optional().describe("Where these figures are from"),
    by: z.string().trim().min(1).max(60).optional().describe("Who mixed it; you if left out"),
    mixed: z.string().max(20).optional().describe("When, if not now: yesterday, 2026-05-31"),
  }),
  who: "aide",
  visibility: "class",
  complete: { product: completeProduct },
  handle(input, context) {
    const { stores, now } = context;
    const mixedAtMs = readDayOption(context, input.mixed) ?? now;
    if (mixedAtMs > now) throw new UserError("ERR_NOT_YET", words.notYet());
    const earlier = stores.batches.latestOf(context.class.id, input.product);
    const shelved = stores.shelf.find(context.class.id, input.product);
    const dilution: Dilution = input.dilution ??
      earlier?.dilution ??
      shelved?.pack.dilution ?? { concentrateParts: 1, waterParts: 0 };
    const isSameMix = earlier?.kind === input.kind && isSame(earlier.dilution, dilution);
    const preset = isSameMix ? presetFrom(earlier) : presetFor(input.kind, dilution);
    const batch = stores.batches.add({
      ...draftOf(input, preset),
      carryMlPerRoll: isForPaper(input.kind) ? null : context.class.habits.carryMlPerRoll,
      dilution: { concentrateParts: dilution.concentrateParts, waterParts: dilution.waterParts },
      classId: context.class.id,
      // A product keeps the spelling it came with.
      product: earlier?.product ?? shelved?.product ?? input.product,
      mixedAtMs,
    });
    const line = {
      batchId: batch.id,
      key: null,
      runId: null,
      atMs: mixedAtMs,
      person: mixerOf(context, input.by),
      about: null,
      body: { kind: "mixed", volumeMl: input.volume, clearingSeconds: input.clearing ?? null },
    } as const;
    enterLine(stores, batch, line, now);
    const takenMl = shelved ? concentrateFor(input.volume, dilution) : 0;
    if (shelved)
      stores.shelf.change(context.class.id, shelved.product, shelved.pack, -takenMl, context.person, now);
    const shelf = shelved ? { pack: shelved.pack, takenMl, leftMl: shelved.leftMl - takenMl } : null;
    const wasRatio = input.dilution?.wasRatio ?? false;
    const { measureStepMl } = context.class.habits;
    return words.mixedReply(batch, readState(context, batch), shelf, wasRatio, measureStepMl);
  },
});

interface MixInput {
  readonly kind: BatchKind;
  readonly volume: number;
  readonly bottle?: number | undefined;
  readonly capacity?: number | undefined;
  readonly tabular?: number | undefined;
  readonly silver?: number | undefined;
  readonly replenish?: number | undefined;
  readonly full?: number | undefined;
  readonly part?: number | undefined;
  readonly use?: NewBatch["usage"] | undefined;
  readonly source?: string | undefined;
}

function draftOf(
  input: MixInput,
  preset: Preset,
): Omit<NewBatch, "classId" | "product" | "dilution" | "mixedAtMs" | "carryMlPerRoll"> {
  if (input.bottle !== undefined && input.bottle < input.volume)
    throw new UserError("ERR_BOTTLE_TOO_SMALL", words.bottleTooSmall(input.bottle, input.volume));
  if (input.use === "once" && isForPaper(input.kind)) throw new UserError("ERR_TRAY_BATH", words.trayBath());
  const capacity = input.capacity ?? preset.capacitySqInPerLitre;
  // A developer with a capacity, or one that is replenished, is one that is poured back.
  const isPouredBack = input.capacity !== undefined || input.replenish !== undefined;
  const usage = input.use ?? (isPouredBack ? "again" : preset.usage);
  const presetTabular = input.capacity === undefined ? preset.tabularSqInPerLitre : null;
  const tabular = input.tabular ?? presetTabular;
  if (tabular !== null && (capacity === null || tabular > capacity))
    throw new UserError("ERR_TABULAR_ABOVE", words.tabularAbove());
  const isOwn = [input.capacity, input.tabular, input.silver, input.replenish, input.full, input.part].some(
    (each) => each !== undefined,
  );
  return {
    kind: input.kind,
    volumeMl: input.volume,
    bottleMl: input.bottle ?? input.volume,
    usage,
    fullHours: input.full ?? preset.fullHours,
    partHours: input.part ?? preset.partHours,
    capacitySqInPerLitre: usage === "once" ? null : capacity,
    tabularSqInPerLitre: usage === "once" ? null : tabular,
    replenishMlPerRoll: usage === "once" ? null : (input.replenish ?? preset.replenishMlPerRoll),
    silverCapMgPerLitre:
      input.silver === undefined ? preset.silverCapMgPerLitre : Math.round(input.silver * 1000),
    source: input.source ?? (isOwn ? ownFirst(preset.source) : preset.source),
  };
}

/** Said once, however often a product is mixed with figures of its own. */
function ownFirst(source: string): string {
  return source.startsWith(OWN_FIRST) ? source : `${OWN_FIRST}${source}`.slice(0, 300);
}

function isSame(a: Dilution, b: Dilution): boolean {
  return a.concentrateParts === b.concentrateParts && a.waterParts === b.waterParts;
}

function mixerOf(context: Context, name: string | undefined): { id: string | null; name: string } {
  if (name === undefined) return context.person;
  const member = context.stores.members.findByName(context.class.id, name);
  return member ? { id: member.personId, name: member.name } : { id: null, name };
}
