import type { PaperKind } from "../../store/shapes/paper.ts";
import type { StepKind } from "../../store/shapes/plan.ts";
import type { Print } from "../../store/shapes/print.ts";
import type { TrayLine } from "../../store/shapes/tray-line.ts";
import type { Action } from "../define.ts";
import type { PrintLook } from "../print/looks.ts";
import { USUAL_SIZE } from "../print/sizes.ts";
import { titleOf } from "../sheet/step-words.ts";
import { makeLine } from "../speech/line.ts";
import { formatBothScales, formatSeconds, makeNumber, plain } from "../speech/wording.ts";
import { makeTrayPlan } from "../tray/process.ts";
import { paperWord } from "../tray/tray-words.ts";
import type { Facts } from "./facts.ts";
import type { Reading } from "./read.ts";
import type { Sign } from "./rules.ts";
import { says, shows, type Answer, type Answerer } from "./shape.ts";
import { askWords as words, basicsWords } from "./words.ts";

/* Answers about prints: the thing itself where the class's records have it, and the key to the form that does it. */

const strip = (): Action => ({ label: words().stripKey, line: makeLine("print strip", {}) });
const contact = (): Action => ({ label: words().contactKey, line: makeLine("contact sheet", {}) });
const grade = (): Action => ({ label: words().gradeKey, line: makeLine("print grade", {}) });
const trays = (): Action => ({ label: words().traysKey, line: makeLine("tray plan", {}) });
const again = (): Action => ({ label: words().againKey, line: makeLine("print again", {}) });
const whoInTrays = (): Action => ({ label: words().whoInTrays, line: makeLine("tray lines", {}) });

/** White light comes before all else: it can cost the paper of others. */
export const printingAnswer: Answerer = (reading, facts) => {
  const { signs } = reading;
  const has = (...any: readonly Sign[]): boolean => any.some((sign) => signs.has(sign));
  if (has("WHITELIGHT")) return says(words().whiteLight, whoInTrays());
  if (has("SAFELIGHT", "RED")) {
    const lamps = safelightText(facts);
    const isOfPaper = has("PAPER", "PRINTS", "TRAY") || (has("SAFELIGHT") && !has("FILM", "RED"));
    return says((isOfPaper ? [lamps, words().lampAndFilm] : [basicsWords().redAndFilm, lamps]).join("\n"));
  }
  if (has("STRIP")) return says(words().makeStrip, strip());
  if (has("CONTACT")) return says(words().layContact, contact());
  if (has("GRADE")) return says(words().whichGrade, grade(), strip());
  if (has("AGAIN")) return againAnswer(reading, facts);
  if (has("TRAY", "LONG", "TIME", "RC", "FIBRE")) return traysAnswer(reading, facts);
  const repeat = facts.prints.length > 0 ? [again()] : [];
  return says(words().printing, strip(), contact(), trays(), ...repeat);
};

/** The print that is named, by its number or its frame; else the newest. */
function printMeant({ things }: Reading, { prints }: Facts): Print | undefined {
  const { print, frame, roll } = things;
  return prints.find(
    (each) =>
      (print === null || each.number === print) &&
      (frame === null || Number.parseInt(each.frame, 10) === frame) &&
      (roll === null || each.roll === roll),
  );
}

function againAnswer(reading: Reading, facts: Facts): Answer {
  const print = printMeant(reading, facts);
  if (print) return shows("print again", { print: makeNumber("print", print.number) });
  return facts.prints.length === 0
    ? says(words().noPrintToRepeat, strip())
    : says(words().noSuchPrint, { label: words().allPrints, line: makeLine("print find", {}) });
}

const LOOKS: readonly (readonly [Sign, PrintLook])[] = [
  ["UNSHARP", "unsharp"],
  ["STAIN", "stained"],
  ["DARK", "dark"],
  ["BLACK", "dark"],
  ["FLAT", "flat"],
  ["HARD", "hard"],
  ["GREY", "grey"],
  ["LIGHT", "pale"],
  ["THIN", "pale"],
];

function lookIn({ signs }: Reading): PrintLook | undefined {
  const look = LOOKS.find(([sign]) => signs.has(sign))?.[1];
  // Not enough of it.
  return look === "hard" && (signs.has("NOT") || signs.has("LITTLE")) ? "flat" : look;
}

/** Weighed by the print's own record; where there is none, what it comes to nearly always. */
export const printLookAnswer: Answerer = (reading, facts) => {
  const look = lookIn(reading);
  const print = printMeant(reading, facts);
  if (print && look) return shows("print fault", { print: makeNumber("print", print.number), look });
  if (print)
    return says(words().printLooks, { label: words().printFault, line: makeLine("print fault", {}) });
  if (look === "dark") return says(words().printDark, strip());
  if (look === "pale") return says(words().printPale, strip());
  if (look === "hard") return says(words().printHard, strip());
  if (look === "flat" || look === "grey") return says(words().printFlat, strip());
  return says(words().printUnlogged, strip());
};

const BATHS: readonly (readonly [Sign, StepKind])[] = [
  ["FIXER", "fix"],
  ["STOPBATH", "stop"],
  ["WASH", "wash"],
  ["DEVELOPER", "develop"],
];

/** The times in the class's own trays: of the bath that is asked for first, then of all. */
function traysAnswer({ signs }: Reading, { habits }: Facts): Answer {
  const [line] = habits.trayLines;
  if (!line) return says(words().inTrays, trays());
  const asked = (["resin-coated", "fibre"] as const).filter((kind) =>
    signs.has(kind === "fibre" ? "FIBRE" : "RC"),
  );
  const kinds: readonly PaperKind[] = asked.length > 0 ? asked : ["resin-coated", "fibre"];
  const bath = BATHS.find(([sign]) => signs.has(sign))?.[1] ?? null;
  return says(kinds.map((kind) => timesIn(line, kind, bath)).join("\n"), trays());
}

function timesIn(line: TrayLine, paper: PaperKind, asked: StepKind | null): string {
  const made = makeTrayPlan({
    line,
    paper,
    box: null,
    size: USUAL_SIZE,
    prints: 1,
    tenthsC: line.atTenthsC,
    fixTenthsC: null,
    waterTenthsC: null,
    fixer: "usual",
    baths: line.baths,
    washAid: true,
    clearSeconds: null,
    factor: null,
  });
  if (!made.ok) return words().inTrays;
  const steps = made.value.steps.flatMap(({ kind, ordinal, seconds }) =>
    seconds === null ? [] : [{ kind, says: `${titleOf({ kind, ordinal })}: ${formatSeconds(seconds)}` }],
  );
  const first = steps.filter(({ kind }) => kind === asked).map((each) => each.says);
  return words().trayTimes(
    first.join(", "),
    paperWord(paper),
    plain(line.developer),
    formatBothScales(line.atTenthsC),
    steps.map((each) => each.says).join(", "),
  );
}

function safelightText({ habits }: Facts): string {
  const lamps = habits.lamps.map(({ name, safeSeconds }) =>
    safeSeconds === null
      ? words().lampUnsafe(plain(name))
      : words().lampSafe(plain(name), formatSeconds(safeSeconds)),
  );
  return (lamps.length > 0 ? lamps : [words().noLamp]).join("\n");
}
