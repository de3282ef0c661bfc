import type { Action, FieldValue, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { titleOf } from "../plan/step-words.ts";
import type { Deviation } from "../run/run.ts";
import { formatBothScales, formatSeconds, instant, makeNumber, plain, saySeconds } from "../wording.ts";
import { causeTitle } from "./causes.ts";
import type { Roll } from "./roll.ts";
import { drawTimeline } from "./timeline.ts";

export function shownReply(roll: Roll): Reply {
  const { body } = roll;
  const head = `**${makeNumber("roll", roll.number)}** ${plain(roll.personName)}, ${instant(roll.endedAt, "date")}${roll.outcome === "stopped" ? `, stopped${body.reason ? `: ${plain(body.reason)}` : ""}` : ""}`;
  const lines = [
    head,
    `${plain(roll.film)} at exposure index ${body.exposureIndex}, ${plain(roll.developer)} ${roll.dilution}, ${formatBothScales(body.tenthsC)}${roll.tank === null ? "" : `, tank ${roll.tank}`}${roll.batches ? `, batches ${plain(roll.batches)}` : ""}`,
    ...body.steps.map(stepLine),
  ];
  const dose = doseLine(body.dosePerMille);
  if (dose !== null) lines.push(dose);
  if (body.deviations.length > 0)
    lines.push(
      "**Otherwise than planned**",
      ...body.deviations.map((each) => `- ${deviationLine(each, roll)}`),
    );
  if (roll.lateCues + body.missedCues > 0) {
    lines.push(`Calls: ${roll.lateCues} late, ${body.missedCues} missed.`);
  }
  if (roll.fault !== "") lines.push(`Fault: ${plain(roll.fault)}${causeWords(body.cause)}.`);
  if (roll.rating !== null) lines.push(`Rated ${roll.rating} of 5.`);
  if (roll.note !== "") lines.push(`Note: ${plain(roll.note)}`);
  const picture = drawTimeline(roll);
  return {
    text: lines.join("\n"),
    fields: fieldsOf(roll),
    actions: [faultAction(roll)],
    ...(picture ? { pictures: [picture] } : {}),
  };
}

function causeWords(cause: string | null): string {
  const title = cause === null ? undefined : causeTitle(cause);
  return title === undefined ? "" : `, put down to: ${title.toLowerCase()}`;
}

function faultAction(roll: Roll): Action {
  return { label: "Look for a fault's cause", line: makeLine("roll fault", { roll: roll.number }) };
}

function showAction(roll: Roll): Action {
  return { label: makeNumber("roll", roll.number), line: makeLine("roll show", { roll: roll.number }) };
}

/** Less than this is what thermometers and hands differ by. */
const DOSE_AS_PLANNED_PER_MILLE = 30;

function doseLine(dosePerMille: number | null): string | null {
  if (dosePerMille === null) return null;
  const off = dosePerMille - 1000;
  if (Math.abs(off) < DOSE_AS_PLANNED_PER_MILLE) return "Developed as planned.";
  return `**Developed ${Math.round(Math.abs(off) / 10)} % ${off < 0 ? "short of" : "beyond"} plan**, by the times and temperatures measured.`;
}

function stepLine(step: Roll["body"]["steps"][number]): string {
  const name = titleOf(step);
  if (step.startedAtMs === null) return `- ${name}: not reached`;
  const actual = step.actualSeconds === null ? "begun" : formatSeconds(step.actualSeconds);
  const planned = step.plannedSeconds === null ? "" : ` (planned ${formatSeconds(step.plannedSeconds)})`;
  return `- ${name}: ${actual}${planned}`;
}

function deviationLine(deviation: Deviation, roll: Roll): string {
  const step = roll.body.steps[deviation.step];
  const name = step ? titleOf(step) : "Step";
  switch (deviation.kind) {
    case "moved":
      return `${name}: pour-in put ${saySeconds(Math.abs(deviation.bySeconds))} ${deviation.bySeconds < 0 ? "earlier" : "later"}`;
    case "new-temperature":
      return `${name}: ${formatBothScales(deviation.tenthsC)} measured, time ${formatSeconds(deviation.fromSeconds)} became ${formatSeconds(deviation.toSeconds)}`;
    case "cut-short":
      return `${name}: ${saySeconds(deviation.bySeconds)} too short`;
    case "overrun":
      return `${name}: ${saySeconds(deviation.bySeconds)} too long`;
  }
}

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
    steps: roll.body.steps.map((step) => ({ ...step })),
    deviations: roll.body.deviations.map((each) => ({ ...each })),
  };
}

export function notedReply(roll: Roll): Reply {
  return {
    text: `Noted on ${makeNumber("roll", roll.number)}. It can be found by these words now.`,
    fields: fieldsOf(roll),
    actions: [showAction(roll)],
  };
}

export function ratedReply(roll: Roll): Reply {
  return {
    text: `${makeNumber("roll", roll.number)} is rated ${roll.rating} of 5.`,
    fields: fieldsOf(roll),
    actions: [showAction(roll)],
  };
}

export const UNKNOWN_ROLL = (text: string): string =>
  `I know no roll ${plain(text)}. Find it with \`/roll find\`.`;
export const NOT_YOUR_ROLL = "Only the roll's owner, an aide or the teacher can write on it.";
export const NO_ROLL_YET = "You have no roll in the log yet. A run that ends writes one.";
