import type { Batch } from "../../store/shapes/batch.ts";
import { inEach } from "../speech/language.ts";
import { labelOf } from "./batch-words.ts";
import { de } from "./words/way.de.ts";
import { en } from "./words/way.en.ts";

/* Where a bath must not go, and where it may. */

const words = inEach({ en, de });

export const silverDrain = (batch: Batch): string => words().silverDrain(labelOf(batch));
export const notIntoSilver = (batch: Batch): string => words().notIntoSilver(labelOf(batch), batch.kind);
