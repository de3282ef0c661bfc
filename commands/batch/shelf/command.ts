import { z } from "zod";
import { defineCommand, UserError } from "../../define.ts";
import { textIn } from "../../speech/shaped.ts";
import { dilutionOption, volumeIn, volumeOption } from "../../speech/quantity.ts";
import { BATCH_KINDS, batchSchema } from "../../../store/shapes/batch.ts";
import { FORMS, packSchema, type Pack } from "../../../store/shapes/shelf.ts";
import * as words from "./reply.ts";

export const batchShelf = defineCommand({
  name: "batch shelf",
  summary: "What concentrates and powders the class has",
  options: () => ({}),
  who: "student",
  visibility: "private",
  handle: (_, { stores, class: { id } }) => words.shelfReply(stores.shelf.list(id)),
});

export const batchRestock = defineCommand({
  name: "batch restock",
  was: ["batch stock"],
  summary: "Note packs that came to the shelf, or put right how much is left",
  options: () => ({
    product: textIn(batchSchema.shape.product).describe("Name on the pack"),
    packs: z.coerce.number().int().min(-99).max(999).optional().describe("How many came (below 0: went)"),
    left: volumeOption.optional().describe("What is left in all, to put the shelf right, like 750 ml"),
    kind: z.enum(BATCH_KINDS).optional().describe("What it is for; needed the first time"),
    size: volumeIn(packSchema.shape.packMl)
      .optional()
      .describe("A bottle of concentrate, or what a pack of powder makes; needed the first time"),
    form: z.enum(FORMS).optional().describe("What is in the pack"),
    dilution: dilutionOption.optional().describe("Working strength, like 1+4; of a powder: stock"),
  }),
  who: "aide",
  visibility: "private",
  complete: {
    product: (typed, { stores, class: { id } }) =>
      stores.shelf
        .list(id)
        .filter(({ product }) => product.toLowerCase().includes(typed.toLowerCase()))
        .map(({ product }) => ({ label: product, value: product })),
  },
  handle(input, context) {
    const { stores } = context;
    const known = stores.shelf.find(context.class.id, input.product);
    const pack = packOf(input, known?.pack);
    if (input.packs === undefined && input.left === undefined)
      throw new UserError("ERR_HOW_MUCH", words.howMuch());
    const before = known?.leftMl ?? 0;
    const changeMl = input.left === undefined ? (input.packs ?? 0) * pack.packMl : input.left - before;
    if (before + changeMl < 0) throw new UserError("ERR_NOT_SO_MUCH", words.notSoMuch(before));
    const product = known?.product ?? input.product;
    stores.shelf.change(context.class.id, product, pack, changeMl, context.person, context.now);
    return words.stockedReply({ product, pack, leftMl: before + changeMl });
  },
});

interface PackInput {
  readonly kind?: Pack["kind"] | undefined;
  readonly size?: number | undefined;
  readonly form?: Pack["form"] | undefined;
  readonly dilution?: Pack["dilution"] | undefined;
}

function packOf({ kind, size, form, dilution }: PackInput, known: Pack | undefined): Pack {
  const found = {
    kind: kind ?? known?.kind,
    packMl: size ?? known?.packMl,
    form: form ?? known?.form ?? (dilution === undefined || dilution.waterParts > 0 ? "liquid" : "powder"),
    dilution: dilution ?? known?.dilution ?? (form === "powder" ? STOCK : undefined),
  };
  if (found.kind === undefined || found.packMl === undefined || found.dilution === undefined)
    throw new UserError("ERR_WHAT_PACK", words.whatPack());
  const { concentrateParts, waterParts } = found.dilution;
  return { ...found, kind: found.kind, packMl: found.packMl, dilution: { concentrateParts, waterParts } };
}

const STOCK = { concentrateParts: 1, waterParts: 0 };
