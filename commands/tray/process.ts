import type { TrayCautionCode, TrayPlan } from "../../store/shapes/tray.ts";
import { ok, type Result } from "../result.ts";
import { developPrint, type PrintDevelopment } from "./develop.ts";
import type { TrayFault, TrayRequest } from "./request.ts";
import { layOutTrays } from "./steps.ts";

type Caution = TrayPlan["cautions"][number];

/** Under 60 °F hydroquinone hardly works: Wellington handbook. */
const COLD_TENTHS_C = 156;
/** Warm developer veils and yellows (Clerc, 573); where that begins is our own reading of "70 to 74 °F" (US Army SS0509). */
const WARM_TENTHS_C = 240;
/** Trays of one line within 5 °F of each other: a drafting manual of the US Navy. */
const APART_TENTHS = 28;

/** Works out steps, times and cautions for the prints that go along the trays together. */
export function makeTrayPlan(request: TrayRequest): Result<TrayPlan, TrayFault> {
  const { line, paper, box, size, prints, tenthsC, factor } = request;
  const development = developPrint(request);
  if (!development.ok) return development;
  return ok({
    prints,
    paper,
    box,
    size: { shortMm: size.shortMm, longMm: size.longMm },
    line: line.number,
    developer: line.developer,
    dilution: line.dilution,
    tenthsC,
    factorPer10C: development.value.factorPer10C,
    factor,
    leastSeconds: development.value.leastSeconds,
    tank: null,
    steps: layOutTrays(request, development.value),
    cautions: cautionsFor(request, development.value),
  });
}

function cautionsFor(request: TrayRequest, development: PrintDevelopment): Caution[] {
  const { tenthsC, paper, baths } = request;
  const { seconds, stainSeconds, isRaised } = development;
  const others = [request.fixTenthsC, request.waterTenthsC].filter((each) => each !== null);
  const apart = Math.max(0, ...others.map((each) => Math.abs(each - tenthsC)));
  const of = (code: TrayCautionCode, holds: boolean, detail: Caution["detail"] = {}): Caution[] =>
    holds ? [{ code, detail }] : [];
  return [
    ...of("WARN_TRAY_COLD", tenthsC < COLD_TENTHS_C, { tenthsC }),
    ...of("WARN_TRAY_WARM", tenthsC > WARM_TENTHS_C, { tenthsC }),
    ...of("WARN_TRAYS_APART", apart > APART_TENTHS, { apartTenths: apart }),
    ...of("WARN_LEAST_TIME", isRaised, { seconds }),
    ...of("WARN_STAIN", stainSeconds !== null && seconds >= stainSeconds, { seconds: stainSeconds ?? 0 }),
    ...of("WARN_ONE_BATH", paper === "fibre" && baths === 1),
    ...of("NOTE_DRYER", paper !== "fibre"),
    ...of("NOTE_TRAYS", true),
  ];
}
