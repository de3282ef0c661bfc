import { isFilmPlan } from "../../store/shapes/tray.ts";
import type { Action } from "../define.ts";
import { dilute } from "../mix/dilute.ts";
import { makeLine } from "../speech/line.ts";
import { formatDilution, formatMl, instant, makeNumber, plain } from "../speech/wording.ts";
import { minusMl } from "../speech/tenths.ts";
import type { Batch, BatchKind } from "../../store/shapes/batch.ts";
import type { Dilution } from "../../store/shapes/sheet.ts";
import type { Term } from "./terms.ts";
import { lookGroupOf, lookOf } from "./looks.ts";
import { printLookAnswer } from "./print-answers.ts";
import type { Reading } from "./read.ts";
import type { Sign } from "./rules.ts";
import { says, shows, type Answer, type Answerer } from "./shape.ts";
import { aidWords, askWords as words, termText } from "./words.ts";

/* Answers about what the class shares, what a word means, and first aid. */

/** The kind of bath a sentence names. */
function kindMeant({ signs, things }: Reading): BatchKind | null {
  // Fixer and developer of films and of prints are never taken for each other.
  const isOfPaper = ["PAPER", "PRINTS", "TRAY"].some((sign) => signs.has(sign as Sign));
  if (signs.has("FIXER")) return isOfPaper ? "paper-fixer" : "fixer";
  if (signs.has("STOPBATH")) return "stop";
  if (isOfPaper && signs.has("DEVELOPER")) return "paper-developer";
  return signs.has("DEVELOPER") || things.developer !== null ? "developer" : null;
}

export const bottleAnswer: Answerer = (reading, { bottles }) => {
  const kind = kindMeant(reading);
  const { bottle } = reading.things;
  if (bottle === null && kind === null) return shows("batch status");
  const meant = bottles.filter((each) => (bottle === null ? each.kind === kind : each.number === bottle));
  const all: Action = { label: words().otherBottles, line: "batch status" };
  // For how many films at once the ledger can't tell: that is worked out from what a film needs.
  const mix: readonly Action[] = ["ENOUGH", "FILM"].every((sign) => reading.signs.has(sign as Sign))
    ? [{ label: words().toMix, line: "mix class" }]
    : [];
  const [first, ...others] = meant;
  if (!first) return says(words().noBottle, ...mix, all);
  const keys = others.slice(0, 3).map(bottleKey);
  return shows("batch status", { batch: makeNumber("batch", first.number) }, "", [...mix, ...keys, all]);
};

const bottleKey = ({ number }: Batch): Action => ({
  label: makeNumber("batch", number),
  line: makeLine("batch status", { batch: makeNumber("batch", number) }),
});

export const whoAnswer: Answerer = (reading, { board, tanks }) => {
  const wanted = reading.things.tank;
  const free = tanks.filter(
    ({ number, condition }) => condition === null && !board.some(({ tank }) => tank === number),
  );
  const sayFree =
    free.length === 0
      ? words().noFreeTank
      : words().freeTanks(free.map(({ number }) => makeNumber("tank", number)).join(", "));
  if (wanted === null) {
    return reading.signs.has("FREE") ? says(sayFree) : shows("class board", {}, sayFree);
  }
  const row = board.find(({ tank }) => tank === wanted);
  if (row) {
    const until = row.endsAtMs === null ? null : instant(row.endsAtMs, "time");
    return says(words().tankOf(wanted, plain(row.person), row.step, until));
  }
  const tank = tanks.find(({ number }) => number === wanted);
  if (!tank) return says([words().tankUnknown(wanted), sayFree].join(" "));
  return says(
    tank.condition === null ? words().tankFree(wanted) : words().tankReported(wanted, plain(tank.condition)),
  );
};

export const lookAnswer: Answerer = (reading, facts) => {
  const { signs } = reading;
  const { roll } = facts;
  if (signs.has("PRINTS")) return printLookAnswer(reading, facts);
  if (roll === null) return says(words().noRoll);
  const look = lookOf(signs);
  const kind = look === null ? lookGroupOf(signs) : null;
  return shows("roll fault", {
    roll,
    ...(look === null ? {} : { look }),
    ...(kind === null ? {} : { kind }),
  });
};

export const wordAnswer: Answerer = ({ terms, things }) => {
  const named = things.dilution !== null && terms.length === 0 ? (["dilution"] as const) : terms;
  const textOf = (term: Term): string =>
    term === "dilution" && things.dilution ? dilutionText(things.dilution) : termText(term);
  return says(named.length === 0 ? words().noTerm : named.slice(0, 3).map(textOf).join("\n"));
};

/** Enough for one film in most tanks: common practice, no source. */
const EXAMPLE_ML = 300;

/** By the very dilution that is asked for, where so much of it can be measured. */
function dilutionText(dilution: Dilution): string {
  if (dilution.waterParts === 0) return termText("stock");
  const mixed = dilute({ dilution, totalMl: EXAMPLE_ML, concentrateMl: null, waterMl: null });
  const means = words().partsOf(formatDilution(dilution), dilution.concentrateParts, dilution.waterParts);
  if (!mixed.ok) return means;
  const { concentrateMl, waterMl, totalMl } = mixed.value;
  return `${means} ${words().ofIt(formatMl(totalMl), formatMl(concentrateMl), formatMl(waterMl))}`;
}

export const amountAnswer: Answerer = ({ signs }, { plan, runs }) => {
  if (!plan || !isFilmPlan(plan.plan))
    return says(words().mixTotal, { label: words().makePlan, line: "plan", weight: "main" });
  const { volumeMl, steps } = plan.plan;
  // Beside a film in its tank water is for rinsing; before that, for mixing.
  if (signs.has("STOPBATH") || signs.has("FIXER") || (signs.has("WASH") && runs.length > 0))
    return says(words().asMuch(makeNumber("plan", plan.number), formatMl(volumeMl)));
  const concentrateMl = steps.find(({ kind }) => kind === "develop")?.concentrateMl ?? volumeMl;
  const waterMl = minusMl(volumeMl, concentrateMl);
  const parts = waterMl === 0 ? words().stockOnly : words().parts(formatMl(concentrateMl), formatMl(waterMl));
  return says(words().amountOf(makeNumber("plan", plan.number), formatMl(volumeMl), parts));
};

/** All that fits is said, the eye first. */
export const harmAnswer = ({ signs }: Pick<Reading, "signs">): Answer => {
  const has = (...wanted: Parameters<typeof signs.has>[0][]): boolean =>
    wanted.some((sign) => signs.has(sign));
  const { eye, swallowed, breathed, skin, spilt, hurt, call } = aidWords();
  const parts = [
    ...(has("EYE", "FACE") ? [eye] : []),
    ...(has("SWALLOW", "MOUTH") ? [swallowed] : []),
    ...(has("BREATHE") ? [breathed] : []),
    ...(has("SKIN", "FACE", "BURNS", "ITCH") && !has("EYE") ? [skin] : []),
    ...(has("HURT") ? [hurt] : []),
    ...(has("SPILL", "FLOOR", "FELL") && !has("EYE", "SKIN", "FACE", "SWALLOW", "MOUTH") ? [spilt] : []),
  ];
  return says([...(parts.length > 0 ? parts : [hurt]), call].join("\n"), {
    label: words().cautions,
    line: makeLine("caution", {}),
  });
};
