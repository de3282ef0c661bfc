import type { PaperRule } from "../../store/shapes/paper.ts";
import type { TrayLine } from "../../store/shapes/tray-line.ts";
import { fail, ok, type Result } from "../result.ts";
import { HOUSE_FACTOR_PER_10C, timeAt } from "./rate.ts";
import type { TrayFault, TrayRequest } from "./request.ts";

/* How long a print is developed. */

/** Where the class has said nothing: resin-coated from memory, fibre the longer of 1 1/2 to 2 min (US Army SS0509). */
export const USUAL_SECONDS = { "resin-coated": 60, fibre: 120 } as const;

const SHORTEST_SECONDS = 15;
const LONGEST_SECONDS = 1800;

export interface PrintDevelopment {
  readonly seconds: number;
  /** Less gives no full black. */
  readonly leastSeconds: number;
  /** From then on it stains; null: not tried. */
  readonly stainSeconds: number | null;
  readonly factorPer10C: number;
  readonly rules: readonly PaperRule[];
  /** The class's own time is shorter than its own trial allows. */
  readonly isRaised: boolean;
}

/** Whole seconds, rounded up; never under what full black needs. */
export function developPrint({
  line,
  paper,
  tenthsC,
  factor,
}: Pick<TrayRequest, "line" | "paper" | "tenthsC" | "factor">): Result<PrintDevelopment, TrayFault> {
  const factorPer10C = line.factorPer10C ?? HOUSE_FACTOR_PER_10C;
  const here = (seconds: number): number =>
    Math.ceil(timeAt(seconds, line.atTenthsC, tenthsC, factorPer10C) - 1e-9);
  const own = here(paper === "fibre" ? line.fibreSeconds : line.rcSeconds);
  const tried = line.leastSeconds === null ? null : here(line.leastSeconds);
  const seconds = Math.max(own, tried ?? 0);
  if (seconds < SHORTEST_SECONDS || seconds > LONGEST_SECONDS)
    return fail({ code: "ERR_TRAY_TIME", seconds, tenthsC, atTenthsC: line.atTenthsC });
  return ok({
    seconds,
    leastSeconds: tried === null ? seconds : Math.max(SHORTEST_SECONDS, tried),
    stainSeconds: line.stainSeconds === null ? null : here(line.stainSeconds),
    factorPer10C,
    rules: rulesOf(line, tenthsC, tried, factor),
    isRaised: seconds > own,
  });
}

function rulesOf(
  line: TrayLine,
  tenthsC: number,
  tried: number | null,
  factor: number | null,
): readonly PaperRule[] {
  const coefficient = line.factorPer10C === null ? "usual-coefficient" : "own-coefficient";
  return [
    line.isUsual ? "usual-times" : "own-time",
    ...(tenthsC === line.atTenthsC ? [] : ([coefficient] as const)),
    tried === null ? "least-untried" : "least-tried",
    ...(factor === null ? [] : (["factor"] as const)),
  ];
}

/** A print stays between the least time for full black and twice that: Clerc, Photography: Theory and Practice, 556. */
export const MOST_TIMES_LEAST = 2;
