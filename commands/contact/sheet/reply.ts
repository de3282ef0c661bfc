import type { Enlarger } from "../../../store/shapes/enlarger.ts";
import type { PaperSize } from "../../../store/shapes/paper.ts";
import type { Roll } from "../../../store/shapes/roll.ts";
import type { Action, Reply } from "../../define.ts";
import { inEach } from "../../speech/language.ts";
import { makeLine } from "../../speech/line.ts";
import { joinAnd, makeNumber } from "../../speech/wording.ts";
import { marksOf } from "../../roll/frame-words.ts";
import { sumOf } from "../../print/adjust.ts";
import { cautionLines, partLine } from "../../print/adjust-words.ts";
import { stopsWord } from "../../print/print-words.ts";
import { formatSize } from "../../print/sizes.ts";
import type { Corrected } from "../correct.ts";
import { ruleLines, settingWords } from "../standing-words.ts";
import { formatExposure } from "../../print/stops.ts";
import { de } from "./de.ts";
import { en } from "./en.ts";
import type { Layout, LayoutFault, Sleeves } from "./layout.ts";
import { drawContact, MOST_PICTURES } from "./picture.ts";

const words = inEach({ en, de });

export const nothingToLay = (): string => words().nothingToLay;
export const tooManyRolls = (most: number): string => words().tooManyRolls(most);
export const paperSmall = ({ widthMm, heightMm }: LayoutFault, size: PaperSize): string =>
  words().paperSmall(formatSize(size), widthMm, heightMm);

export interface Contact {
  readonly rolls: readonly Roll[];
  readonly layout: Layout;
  readonly size: PaperSize;
  readonly sleeves: Sleeves;
  /** null: it is not told which of the class's, or there is none. */
  readonly enlarger: Enlarger | null;
  readonly hasEnlargers: boolean;
  /** null: the enlarger has no standing exposure. */
  readonly exposure: Corrected | null;
}

export function contactReply(contact: Contact): Reply {
  const { rolls, layout, size, sleeves, exposure } = contact;
  const marks = new Map(rolls.map(({ number, body }) => [number, body.frameMarks]));
  const strips = layout.sheets.flat().length;
  const sheets = layout.sheets.length;
  const lines = [
    ...exposureLines(contact),
    words().laid(
      joinAnd(rolls.map(nameOf)),
      strips,
      formatSize(size),
      sheets,
      layout.widthMm > layout.heightMm,
    ),
    sleeves === "in" ? words().sleevesIn : words().sleevesOut,
    sheets > MOST_PICTURES ? words().drawn(MOST_PICTURES) : "",
    ...rolls
      .filter(({ body }) => body.frameMarks.length > 0)
      .map((roll) => words().marks(nameOf(roll), marksOf(roll.body.frameMarks))),
    ...(exposure === null ? ruleLines() : []),
  ];
  return {
    text: lines.filter(Boolean).join("\n"),
    fields: {
      rolls: rolls.map(({ number }) => number),
      strips,
      sheets,
      paper: { ...size },
      sleeves,
      laid: layout.sheets.map((sheet) =>
        sheet.map(({ roll, from, frames, xMm, yMm }) => ({ roll, from, frames, xMm, yMm })),
      ),
      exposureTenths: exposure?.setTenths ?? null,
      exactSeconds: exposure === null ? null : Math.round(exposure.exact * 1000) / 1000,
    },
    pictures: drawContact(layout, size, marks),
    actions: actionsOf(rolls),
  };
}

const nameOf = ({ number }: Roll): string => makeNumber("roll", number);

function exposureLines({ enlarger, hasEnlargers, exposure }: Contact): string[] {
  if (enlarger === null) return [hasEnlargers ? words().whichEnlarger : words().noEnlarger];
  const name = makeNumber("enlarger", enlarger.number);
  if (exposure === null) return [words().noStanding(name)];
  const { standing, parts, exact, setTenths, now } = exposure;
  const untried = standing.isTried ? "" : words().untried;
  if (parts.length === 0) return [words().expose(settingWords(standing), name), untried];
  return [
    words().corrected(
      settingWords(now),
      formatExposure(standing.tenths),
      stopsWord(sumOf(parts), true),
      name,
    ),
    ...parts.map((part) => `- ${partLine(part)}`),
    ...cautionLines(parts, exact, enlarger),
    setTenths / 10 < 2 ? words().short : "",
    untried,
  ];
}

function actionsOf(rolls: readonly Roll[]): Action[] {
  const [only, other] = rolls;
  if (!only || other) return [];
  return [{ label: words().photo, line: makeLine("roll photo", { roll: nameOf(only) }) }];
}
