import type { FieldValue, Reply } from "../../define.ts";
import { plain } from "../../speech/wording.ts";
import type { ReportFigures, Tally } from "./report.ts";
import { drawReport } from "./picture.ts";
import { reportPage } from "./page.ts";
import { chemistryLines, headLine, printLines, summaryLines, words } from "./report-words.ts";

export function reportReply(figures: ReportFigures, zone: string, isCut: boolean): Reply {
  const picture = drawReport(figures, zone);
  return {
    text: [
      `**${plain(headLine(figures, zone))}**`,
      ...summaryLines(figures).map((line) => `- ${line}`),
      ...printLines(figures).map((line) => `- ${plain(line)}`),
      ...chemistryLines(figures).map((line) => `- ${plain(line)}`),
      isCut ? words().cut : "",
    ]
      .filter(Boolean)
      .join("\n"),
    fields: fieldsOf(figures),
    pictures: [picture],
    attachments: [
      { name: "class-report.html", mediaType: "text/html", content: reportPage(figures, picture.svg, zone) },
    ],
  };
}

function fieldsOf(figures: ReportFigures): { [key: string]: FieldValue } {
  const tallies = (list: readonly Tally[]): FieldValue => list.map(({ name, count }) => ({ name, count }));
  return {
    fromMs: figures.fromMs,
    untilMs: figures.untilMs,
    rolls: figures.rolls,
    finished: figures.finished,
    people: figures.people,
    weeks: figures.weeks.map(({ startsAtMs, rolls }) => ({ startsAtMs, rolls })),
    runsOnTime: figures.runsOnTime,
    runsCalled: figures.runsCalled,
    dosePerMille: figures.dose && { ...figures.dose },
    faulty: figures.faulty,
    faults: tallies(figures.faults),
    rating: figures.rating && { ...figures.rating },
    films: tallies(figures.films),
    developers: figures.developers.map(({ name, ml, concentrateMl }) => ({ name, ml, concentrateMl })),
    prints: {
      count: figures.prints.count,
      people: figures.prints.people,
      faulty: figures.prints.faulty,
      rating: figures.prints.rating && { ...figures.prints.rating },
      papers: tallies(figures.prints.papers),
    },
    batchesMixed: tallies(figures.batchesMixed),
    silver: { ...figures.silver },
  };
}

export const noRolls = (): string => words().noRolls;
