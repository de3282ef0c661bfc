import type { Action, FieldValue, Reply } from "../define.ts";
import { makeLine } from "../line.ts";
import { titleOf } from "../plan/step-words.ts";
import type { Deviation } from "../run/run.ts";
import {
  countOf,
  formatBothScales,
  formatSeconds,
  instant,
  makeNumber,
  plain,
  saySeconds,
} from "../wording.ts";
import type { Roll } from "./roll.ts";

export function foundReply(
  rolls: readonly Roll[],
  total: number,
  page: number,
  pageSize: number,
  more: (page: number) => string,
): Reply {
  if (total === 0) {
    return { text: "No roll in the log is like that. Try fewer words.", fields: { total: 0, rolls: [] } };
  }
  const pages = Math.ceil(total / pageSize);
  if (rolls.length === 0) {
    return { text: `There are only ${countOf(pages, "page")}.`, fields: { total, page, rolls: [] } };
  }
  const head = `**${countOf(total, "roll")}**${pages > 1 ? `, page ${page} of ${pages}` : ""}`;
  const actions: Action[] = rolls.slice(0, 3).map((roll) => showAction(roll));
  if (page > 1) actions.push({ label: "Newer", line: more(page - 1) });
  if (page < pages) actions.push({ label: "Older", line: more(page + 1) });
  return {
    text: [head, ...rolls.map((roll) => `- ${lineOf(roll)}`)].join("\n"),
    fields: { total, page, pages, rolls: rolls.map(fieldsOf) },
    actions,
  };
}

function showAction(roll: Roll): Action {
  const label = makeNumber("roll", roll.number);
  return { label, line: makeLine("roll show", { roll: roll.number }) };
}

function lineOf(roll: Roll): string {
  const parts = [
    `${makeNumber("roll", roll.number)} ${plain(roll.personName)}: ${plain(roll.film)} at ${roll.body.exposureIndex} in ${plain(roll.developer)} ${roll.dilution}`,
    roll.body.developedSeconds === null ? "never developed" : formatSeconds(roll.body.developedSeconds),
    instant(roll.endedAt, "date"),
  ];
  if (roll.outcome === "stopped") parts.push("stopped");
  if (roll.rating !== null) parts.push(`rated ${roll.rating} of 5`);
  if (roll.fault !== "") parts.push(plain(roll.fault));
  return parts.join(", ");
}

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
  if (roll.rating !== null) lines.push(`Rated ${roll.rating} of 5.`);
  if (roll.note !== "") lines.push(`Note: ${plain(roll.note)}`);
  return { text: lines.join("\n"), fields: fieldsOf(roll) };
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
export const UNKNOWN_PERSON = (name: string): string => `I know nobody called ${plain(name)} in this class.`;
