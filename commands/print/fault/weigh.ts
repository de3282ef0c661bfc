import { weigh, type Weighed as WeighedOf } from "../../roll/fault/weigh.ts";
import type { PrintLook } from "../looks.ts";
import { type Cause, CAUSES } from "./cause-table.ts";
import { FACTORS, type Finding } from "./evidence.ts";

/* Causes in order of how well they explain what was seen, weighed by what the print's own record says. */

export type Weighed = WeighedOf<Cause, Finding>;

export const weighCauses = (look: PrintLook, findings: readonly Finding[]): Weighed[] =>
  weigh(
    CAUSES,
    findings,
    (cause) => cause.looks[look] ?? 0,
    ({ code }, { kind }) => FACTORS[kind][code] ?? 1,
  );
