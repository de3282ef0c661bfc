import { dilutionSchema } from "../../store/shapes/sheet.ts";
import type { z } from "zod";
import { SQ_IN_PER_ROLL } from "./area.ts";
import type { Batch, BatchKind, Usage } from "../../store/shapes/batch.ts";

/*
 * What is taken for granted of a bath whose maker's figures nobody has given. The label and the maker's sheet come first:
 * published figures disagree by two to five times, so each value carries where it is from.
 */

export interface Preset {
  readonly usage: Usage;
  readonly fullHours: number | null;
  readonly partHours: number | null;
  readonly capacitySqInPerLitre: number | null;
  readonly tabularSqInPerLitre: number | null;
  readonly silverCapMgPerLitre: number | null;
  readonly replenishMlPerRoll: number | null;
  readonly source: string;
}

const DAY = 24;
const MONTH = 30 * DAY;
const films = (perLitre: number): number => perLitre * SQ_IN_PER_ROLL;

/** Kept with a batch in English, whoever mixed it; said in the reader's language by source-words.ts. */
export const HOUSE_SOURCES = {
  developer: "stock developer: from memory, check the maker's sheet",
  stop: "12 rolls per litre: Anchell, The Darkroom Cookbook, 3rd ed., p. 268; shelf life from memory",
  fixer:
    "20 rolls per litre where the capacity is not known, working fixer keeps 2 months: Anchell, The Darkroom Cookbook, 3rd ed., p. 108; tabular-grain film half of that, part-full bottle 1 month: users' reports",
  "wash-aid": "from memory, check the maker's sheet",
  "wetting-agent": "fresh each week: common practice, no source",
  "working-developer": "diluted developer is mixed for the day: from memory, check the maker's sheet",
  "paper-developer":
    "50 prints of 8x10 in per litre on resin-coated paper, half that on fibre, a day in its tray: from memory, no published figure seen; check the maker's sheet; dark brown is exhausted",
  "paper-stop":
    "a day in its tray: common practice, no source; an indicator stop is exhausted when it turns blue or purple",
  "paper-fixer":
    "20 prints of 8x10 in per litre where the capacity is not known: Anchell, The Darkroom Cookbook, 3rd ed., p. 108; US Navy NAVEDTRA 14209 has 200 in a US gallon, 53 per litre; first of two baths to 2 g/l of silver: a print maker's page; a week in use: from memory",
  "paper-wash-aid": "from memory, check the maker's sheet",
} as const satisfies Record<BatchKind | "working-developer", string>;
export type HouseSource = keyof typeof HOUSE_SOURCES;

/** Before the house's source where somebody gave figures of their own. */
export const OWN_FIRST = "as given when it was mixed; else ";

/**
 * Silver at which a fixer ends: about 4 g/l for ammonium thiosulfate and 2 g/l for sodium thiosulfate (a compliance text for
 * printers); a maker's sheet, from memory, allows film 8 to 10 g/l. The class may set its own.
 */
const SILVER_CAP_MG_PER_LITRE = 4000;

/** First of two fixing baths, for fibre prints that last; a single bath ends far earlier (PRINT_SILVER in tray/fixing.ts). */
const PAPER_SILVER_CAP_MG_PER_LITRE = 2000;

const PRESETS = {
  developer: {
    usage: "once",
    fullHours: 6 * MONTH,
    partHours: 2 * MONTH,
    capacitySqInPerLitre: null,
    tabularSqInPerLitre: null,
    silverCapMgPerLitre: null,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES.developer,
  },
  stop: {
    usage: "again",
    fullHours: MONTH,
    partHours: MONTH,
    capacitySqInPerLitre: films(12),
    tabularSqInPerLitre: null,
    silverCapMgPerLitre: null,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES.stop,
  },
  fixer: {
    usage: "again",
    fullHours: 2 * MONTH,
    partHours: MONTH,
    capacitySqInPerLitre: films(20),
    // T-MAX films take 50 to 70 % of the capacity (practitioner's page): the lower end.
    tabularSqInPerLitre: films(10),
    silverCapMgPerLitre: SILVER_CAP_MG_PER_LITRE,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES.fixer,
  },
  "wash-aid": {
    usage: "again",
    fullHours: 3 * MONTH,
    partHours: MONTH,
    capacitySqInPerLitre: null,
    tabularSqInPerLitre: null,
    silverCapMgPerLitre: null,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES["wash-aid"],
  },
  "wetting-agent": {
    usage: "again",
    fullHours: 7 * DAY,
    partHours: 7 * DAY,
    capacitySqInPerLitre: null,
    tabularSqInPerLitre: null,
    silverCapMgPerLitre: null,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES["wetting-agent"],
  },
  "paper-developer": {
    usage: "again",
    fullHours: DAY,
    partHours: DAY,
    capacitySqInPerLitre: films(50),
    tabularSqInPerLitre: films(25),
    silverCapMgPerLitre: null,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES["paper-developer"],
  },
  "paper-stop": {
    usage: "again",
    fullHours: DAY,
    partHours: DAY,
    capacitySqInPerLitre: null,
    tabularSqInPerLitre: null,
    silverCapMgPerLitre: null,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES["paper-stop"],
  },
  "paper-fixer": {
    usage: "again",
    fullHours: 7 * DAY,
    partHours: 7 * DAY,
    capacitySqInPerLitre: films(20),
    tabularSqInPerLitre: null,
    silverCapMgPerLitre: PAPER_SILVER_CAP_MG_PER_LITRE,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES["paper-fixer"],
  },
  "paper-wash-aid": {
    usage: "again",
    fullHours: DAY,
    partHours: DAY,
    capacitySqInPerLitre: null,
    tabularSqInPerLitre: null,
    silverCapMgPerLitre: null,
    replenishMlPerRoll: null,
    source: HOUSE_SOURCES["paper-wash-aid"],
  },
} as const satisfies Record<BatchKind, Preset>;

/** Diluted developer is mixed for the day. From memory, both makers. */
const WORKING_DEVELOPER: Preset = {
  ...PRESETS.developer,
  fullHours: DAY,
  partHours: DAY,
  source: HOUSE_SOURCES["working-developer"],
};

export function presetFor(kind: BatchKind, dilution: z.output<typeof dilutionSchema>): Preset {
  return kind === "developer" && dilution.waterParts > 0 ? WORKING_DEVELOPER : PRESETS[kind];
}

/** What the class said of this product last time comes before the house's own figures. */
export function presetFrom(earlier: Batch): Preset {
  const { usage, fullHours, partHours, capacitySqInPerLitre, tabularSqInPerLitre, source } = earlier;
  const silverCapMgPerLitre = earlier.silverCapMgPerLitre ?? PRESETS[earlier.kind].silverCapMgPerLitre;
  return {
    usage,
    fullHours,
    partHours,
    capacitySqInPerLitre,
    tabularSqInPerLitre,
    silverCapMgPerLitre,
    replenishMlPerRoll: earlier.replenishMlPerRoll ?? null,
    source,
  };
}
