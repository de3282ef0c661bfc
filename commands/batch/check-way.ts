import { isFixer, type Batch } from "../../store/shapes/batch.ts";
import type { Destination } from "../../store/shapes/ledger.ts";
import { UserError } from "../define.ts";
import { notIntoSilver, silverDrain } from "./way-words.ts";
import { mayGo } from "./ways.ts";

/** @throws UserError where a bath of this kind must not go there. */
export function checkWay(batch: Batch, to: Destination): void {
  if (mayGo(batch.kind, to)) return;
  if (isFixer(batch.kind)) throw new UserError("ERR_SILVER_DRAIN", silverDrain(batch));
  throw new UserError("ERR_NOT_INTO_SILVER", notIntoSilver(batch));
}
