import { z } from "zod";
import type { Limits } from "../../store/shapes/limits.ts";

/* Options whose limits are those of the shape that keeps them: a range is written once, in the shape. */

/** The schema of a number, perhaps one that may be null, left out or stand at a default. */
export type NumberShape = z.ZodType<number | null | undefined>;
export type TextShape = z.ZodType<string | null | undefined>;

function innermost(shape: z.ZodType): z.ZodType {
  let inner = shape;
  while (inner instanceof z.ZodNullable || inner instanceof z.ZodDefault || inner instanceof z.ZodOptional)
    inner = inner.unwrap() as z.ZodType;
  return inner;
}

/** @throws where the shape states no limit: an option must not be wider than what keeps it. */
export function limitsOf(shape: NumberShape | Limits): Limits {
  if (!(shape instanceof z.ZodType)) return shape;
  const number = innermost(shape);
  const [least, most] = number instanceof z.ZodNumber ? [number.minValue, number.maxValue] : [null, null];
  // zod states the largest whole number where a schema names no bound.
  if (least === null || most === null || Math.max(-least, most) >= Number.MAX_SAFE_INTEGER)
    throw new RangeError("a shape that options are made of states both its limits");
  return { least, most };
}

/** A whole number as it may be typed. */
export function wholeIn(shape: NumberShape) {
  const { least, most } = limitsOf(shape);
  return z.coerce.number().int().min(least).max(most);
}

/** A number that need not be whole; what is kept is `perOne` times as large (tenths: 10). */
export function numberIn(shape: NumberShape, perOne = 1) {
  const { least, most } = limitsOf(shape);
  return z.coerce
    .number()
    .min(least / perOne)
    .max(most / perOne);
}

/** Signs that no text is made of: controls but tab and line end, and halves of letters. */
const NO_TEXT = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]|\p{Surrogate}/gu;

/** A text without space at its ends and without signs that no text is made of, of at least `least` characters. */
export function textIn(shape: TextShape, least = 1) {
  const text = innermost(shape);
  const most = text instanceof z.ZodString ? text.maxLength : null;
  if (most === null) throw new RangeError("a shape that options are made of states its longest text");
  return z
    .string()
    .overwrite((typed) => typed.replace(NO_TEXT, "").trim())
    .min(least)
    .max(most);
}
