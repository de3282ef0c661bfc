import type { Enlarger } from "../../store/shapes/enlarger.ts";
import type { FieldValue } from "../define.ts";

/** An enlarger's facts as data. */
export function enlargerFields({ standing = null, ...enlarger }: Enlarger): { [key: string]: FieldValue } {
  return { ...enlarger, standing: standing === null ? null : { ...standing } };
}
