import { fail, ok, type Result } from "../result.ts";

/*
 * Hot and cold water to a volume at a temperature. Equal heat for each ml: T = (V1 T1 + V2 T2) / (V1 + V2). Between
 * 10 and 60 °C water's heat varies by 0.3 % and its density by 1.7 % (IAPWS-95), so this is good to about 0.1 °C; the
 * vessel takes some heat too, so the reply says to measure.
 */

export interface TemperRequest {
  readonly totalMl: number;
  readonly targetTenthsC: number;
  readonly coldTenthsC: number;
  readonly hotTenthsC: number;
  /** Concentrate or stock that goes in, and its temperature; 0 ml: water alone. */
  readonly concentrateMl: number;
  readonly concentrateTenthsC: number;
}

export interface Tempered {
  /** Whole ml; with the concentrate they sum to the total. */
  readonly hotMl: number;
  readonly coldMl: number;
  readonly concentrateMl: number;
  /** What these whole ml really give, tenths °C. */
  readonly reachedTenthsC: number;
}

export type TemperFault =
  | { readonly code: "ERR_NO_WATER_LEFT"; readonly concentrateMl: number; readonly totalMl: number }
  | { readonly code: "ERR_HOT_IS_COLD"; readonly coldTenthsC: number; readonly hotTenthsC: number }
  | { readonly code: "ERR_TOO_COOL_TO_REACH"; readonly nearestTenthsC: number }
  | { readonly code: "ERR_TOO_WARM_TO_REACH"; readonly nearestTenthsC: number };

export function temper(request: TemperRequest): Result<Tempered, TemperFault> {
  const { totalMl, concentrateMl, coldTenthsC, hotTenthsC, targetTenthsC } = request;
  const waterMl = totalMl - concentrateMl;
  if (waterMl <= 0) return fail({ code: "ERR_NO_WATER_LEFT", concentrateMl, totalMl });
  if (hotTenthsC < coldTenthsC) return fail({ code: "ERR_HOT_IS_COLD", coldTenthsC, hotTenthsC });
  const warmest = reached(request, waterMl);
  const coolest = reached(request, 0);
  // Half a tenth of slack: what is shown as reachable must be reachable.
  if (targetTenthsC > warmest + 0.5)
    return fail({ code: "ERR_TOO_COOL_TO_REACH", nearestTenthsC: Math.round(warmest) });
  if (targetTenthsC < coolest - 0.5)
    return fail({ code: "ERR_TOO_WARM_TO_REACH", nearestTenthsC: Math.round(coolest) });
  const share = warmest === coolest ? 0 : (targetTenthsC - coolest) / (warmest - coolest);
  const hotMl = Math.round(waterMl * Math.min(1, Math.max(0, share)));
  const coldMl = waterMl - hotMl;
  return ok({ hotMl, coldMl, concentrateMl, reachedTenthsC: Math.round(reached(request, hotMl)) });
}

function reached(request: TemperRequest, hotMl: number): number {
  const { totalMl, concentrateMl, concentrateTenthsC, coldTenthsC, hotTenthsC } = request;
  const coldMl = totalMl - concentrateMl - hotMl;
  return (concentrateMl * concentrateTenthsC + coldMl * coldTenthsC + hotMl * hotTenthsC) / totalMl;
}
