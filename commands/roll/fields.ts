import type { FieldValue } from "../define.ts";
import type { Roll } from "../../store/shapes/roll.ts";

export function fieldsOf(roll: Roll): { [key: string]: FieldValue } {
  return {
    roll: roll.number,
    person: roll.personName,
    film: roll.film,
    developer: roll.developer,
    dilution: roll.dilution,
    exposureIndex: roll.body.exposureIndex,
    tenthsC: roll.body.tenthsC,
    tank: roll.tank,
    batches: roll.batches,
    outcome: roll.outcome,
    endedAtMs: roll.endedAt,
    plannedSeconds: roll.body.plannedSeconds,
    developedSeconds: roll.body.developedSeconds,
    dosePerMille: roll.body.dosePerMille,
    lateCues: roll.lateCues,
    missedCues: roll.body.missedCues,
    rating: roll.rating,
    fault: roll.fault,
    cause: roll.body.cause,
    note: roll.note,
    frameMarks: roll.body.frameMarks.map((each) => ({ ...each })),
    steps: roll.body.steps.map((step) => ({ ...step })),
    deviations: roll.body.deviations.map((each) => ({ ...each })),
  };
}
