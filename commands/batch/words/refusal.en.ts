import { isForPaper, type BatchKind } from "../../../store/shapes/batch.ts";
import { en as batch } from "./batch.en.ts";

/* Why a bath can't be used, and what to use instead. */

export const en = {
  /** `product`: a developer's; null: any of the kind does. */
  noneReady: (kind: BatchKind, product: string | null) =>
    `No ${product ?? batch.kind[kind]} that is fit for use is mixed. Ask an aide or the teacher to mix some (\`/batch mix\`); see what there is with \`/batch status\`.`,
  /** `place`: first or second of two fixing baths. */
  nonePaired: (place: number) =>
    `No fixing bath ${place} is ready: the class fixes in two. An aide or the teacher names the bottles (\`/batch pair\`), or moves the second up (\`/batch rotate\`).`,
  unknown: (typed: string) => `There is no bottle ${typed}. See the bottles with \`/batch status\`.`,
  wrongKind: (name: string, kind: BatchKind) =>
    `${name} is not the bath for this: it needs ${batch.kind[kind]}. `,
  wrongMedium: (name: string, kind: BatchKind) =>
    isForPaper(kind)
      ? `**${name} is a bath for film**: paper never goes into it. This needs ${batch.kind[kind]}. `
      : `**${name} is a bath for paper**: film never goes into it. This needs ${batch.kind[kind]}. `,
  wrongProduct: (name: string, product: string, dilution: string | null) =>
    `${name} is not the bath for this: it needs ${product}${dilution === null ? "" : ` ${dilution} or stock`}. `,
  worn: (label: string, standing: string) => `**${label} is ${standing}**: it is not used any more. `,
  noRoom: (label: string, has: string, needs: string) =>
    `**${label} has room for ${has}**, with what is promised to films under way; this needs ${needs}. `,
  nothingElse: "Nothing else is ready: ask an aide or the teacher to mix some (`/batch mix`).",
  useInstead: (label: string) => `Use **${label}** instead.`,
  mayBeAllowed: " A teacher or an aide can allow it for you by name (`/batch allow`).",
  take: (label: string) => `Take ${label}`,
  wornAtPour: (label: string, why: string) => `**Don't use ${label}**: ${why}. `,
  keepInWater: "Keep the film in water, which does no harm, and tell the teacher.",
  takeInstead: (label: string) => `Take **${label}** instead; till then the film is safe in water.`,
  ifIn: " If it is in already, an aide or the teacher must allow it (`/batch allow`).",
};
export type RefusalWords = typeof en;
