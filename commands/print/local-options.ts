import type { Local } from "../../store/shapes/print.ts";
import { UserError } from "../define.ts";
import { toLocal, type TypedLocal } from "./locals.ts";
import { tooMuchLocal } from "./print-words.ts";

/** @throws UserError for one that holds back more than there is, or burns in more than anybody does. */
export function localsFrom(typed: readonly TypedLocal[], baseSeconds: number): Local[] {
  if (typed.length > 12) throw new UserError("ERR_LOCAL_RANGE", tooMuchLocal(null));
  return typed.map((each) => {
    const local = toLocal(each, baseSeconds);
    if (local === undefined) throw new UserError("ERR_LOCAL_RANGE", tooMuchLocal(each.place));
    return local;
  });
}
