import type { Action, Reply } from "../define.ts";
import { inEach } from "../speech/language.ts";
import { makeLine } from "../speech/line.ts";
import { titleOf } from "../sheet/step-words.ts";
import type { FilmDeviation } from "../../store/shapes/run.ts";
import {
  formatBothScales,
  formatSeconds,
  instant,
  makeNumber,
  plain,
  sayDilution,
  saySeconds,
} from "../speech/wording.ts";
import { causeTitle } from "./fault/causes.ts";
import { sayFault } from "./look-words.ts";
import type { Roll } from "../../store/shapes/roll.ts";
import { framesLine } from "./frame-words.ts";
import { drawTimeline } from "./timeline.ts";
import { de } from "./words/reply.de.ts";
import { en } from "./words/reply.en.ts";
import { fieldsOf } from "./fields.ts";

const words = inEach({ en, de });

export function shownReply(roll: Roll): Reply {
  const { body } = roll;
  const lines = [headLine(roll), bathsLine(roll), ...body.steps.map(stepLine)];
  const dose = doseLine(body.dosePerMille);
  if (dose !== null) lines.push(dose);
  if (body.deviations.length > 0)
    lines.push(words().otherwise, ...body.deviations.map((each) => `- ${deviationLine(each, roll)}`));
  if (roll.lateCues + body.missedCues > 0) lines.push(words().calls(roll.lateCues, body.missedCues));
  if (roll.fault !== "") {
    const cause = body.cause === null ? undefined : causeTitle(body.cause);
    lines.push(words().fault(plain(sayFault(roll.fault)), cause));
  }
  if (roll.rating !== null) lines.push(words().rating(roll.rating));
  if (roll.note !== "") lines.push(words().note(plain(roll.note)));
  if (body.frameMarks.length > 0) lines.push(framesLine(body.frameMarks));
  const picture = drawTimeline(roll);
  return {
    text: lines.join("\n"),
    fields: fieldsOf(roll),
    actions: [
      faultAction(roll),
      { label: words().contact, line: makeLine("contact sheet", { roll: makeNumber("roll", roll.number) }) },
    ],
    ...(picture ? { pictures: [picture] } : {}),
  };
}

function headLine({ number, personName, endedAt, outcome, body: { reason } }: Roll): string {
  const roll = makeNumber("roll", number);
  const person = plain(personName);
  const on = instant(endedAt, "date");
  return outcome === "stopped"
    ? words().headStopped(roll, person, on, plain(reason ?? ""))
    : words().head(roll, person, on);
}

function bathsLine({ film, developer, dilution, tank, batches, body }: Roll): string {
  return words().baths(
    plain(film),
    body.exposureIndex,
    `${plain(developer)} ${sayDilution(dilution)}`,
    formatBothScales(body.tenthsC),
    tank,
    plain(batches).split(" ").filter(Boolean),
  );
}

function faultAction(roll: Roll): Action {
  return { label: words().lookForCause, line: makeLine("roll fault", { roll: roll.number }) };
}

function showAction(roll: Roll): Action {
  return { label: makeNumber("roll", roll.number), line: makeLine("roll show", { roll: roll.number }) };
}

/** Less than this is what thermometers and hands differ by. */
const DOSE_AS_PLANNED_PER_MILLE = 30;

function doseLine(dosePerMille: number | null): string | null {
  if (dosePerMille === null) return null;
  const off = dosePerMille - 1000;
  if (Math.abs(off) < DOSE_AS_PLANNED_PER_MILLE) return words().asPlanned;
  const percent = Math.round(Math.abs(off) / 10);
  return off < 0 ? words().short(percent) : words().beyond(percent);
}

function stepLine(step: Roll["body"]["steps"][number]): string {
  const name = titleOf(step);
  if (step.startedAtMs === null) return `- ${words().notReached(name)}`;
  const took = step.actualSeconds === null ? words().begun : formatSeconds(step.actualSeconds);
  const planned = step.plannedSeconds === null ? null : formatSeconds(step.plannedSeconds);
  return `- ${words().step(name, took, planned)}`;
}

function deviationLine(deviation: FilmDeviation, roll: Roll): string {
  const step = roll.body.steps[deviation.step];
  const name = step ? titleOf(step) : words().someStep;
  switch (deviation.kind) {
    case "moved": {
      const by = saySeconds(Math.abs(deviation.bySeconds));
      return deviation.bySeconds < 0 ? words().earlier(name, by) : words().later(name, by);
    }
    case "new-temperature":
      return words().newTemperature(
        name,
        formatBothScales(deviation.tenthsC),
        formatSeconds(deviation.fromSeconds),
        formatSeconds(deviation.toSeconds),
      );
    case "cut-short":
      return words().cutShort(name, saySeconds(deviation.bySeconds));
    case "overrun":
      return words().overrun(name, saySeconds(deviation.bySeconds));
  }
}

export function notedReply(roll: Roll): Reply {
  return {
    text: words().noted(makeNumber("roll", roll.number)),
    fields: fieldsOf(roll),
    actions: [showAction(roll)],
  };
}

export function ratedReply(roll: Roll): Reply {
  return {
    text: words().rated(makeNumber("roll", roll.number), roll.rating),
    fields: fieldsOf(roll),
    actions: [showAction(roll)],
  };
}

export const unknownRoll = (typed: string): string => words().unknownRoll(plain(typed));
export const notYourRoll = (): string => words().notYourRoll;
export const noRollYet = (): string => words().noRollYet;
