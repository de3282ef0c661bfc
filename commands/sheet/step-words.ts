import { inEach } from "../speech/language.ts";
import { formatMl, plain } from "../speech/wording.ts";
import type { Agitation } from "../../store/shapes/sheet.ts";
import {
  LAMP_STEP_KINDS,
  type LampStepKind,
  type Step,
  STRIP_STEP_KINDS,
  type StripStepKind,
} from "../../store/shapes/plan.ts";
import { de } from "./words/step.de.ts";
import { en } from "./words/step.en.ts";
import { de as lampDe } from "./words/lamp-step.de.ts";
import { en as lampEn } from "./words/lamp-step.en.ts";
import { de as stripDe } from "./words/strip-step.de.ts";
import { en as stripEn, type StripStepWords } from "./words/strip-step.en.ts";
import { de as trayDe } from "./words/tray-step.de.ts";
import { en as trayEn, type TrayStepKind } from "./words/tray-step.en.ts";

/* The words for steps and baths, shared by the plan, the run and the log. */

const words = inEach({ en, de });
const trayWords = inEach({ en: trayEn, de: trayDe });
const lampWords = inEach({ en: lampEn, de: lampDe });
const stripWords = inEach({ en: stripEn, de: stripDe });

const NOT_IN_TRAYS: readonly Step["kind"][] = [
  "wetting-agent",
  "cut",
  ...LAMP_STEP_KINDS,
  ...STRIP_STEP_KINDS,
];

type Spoken = Pick<Step, "kind" | "ordinal" | "medium" | "batch" | "lamp" | "bars" | "seconds"> &
  Pick<Step, "concentrateMl" | "waterMl">;

const isOfLamp = (kind: Step["kind"]): kind is LampStepKind => LAMP_STEP_KINDS.some((each) => each === kind);

const isOfStrip = (kind: Step["kind"]): kind is StripStepKind =>
  STRIP_STEP_KINDS.some((each) => each === kind);

/** Every step of a strip has its bars. */
const ALL_BARS = { way: "cover", from: 1, to: 1 } as const;

/** What is done with the card before an exposure of a test strip: `Cover bar 3`. */
export const cardMove = ({ bars }: Pick<Step, "bars">): string => stripWords().moveCard(bars ?? ALL_BARS);
export const stripCalls = (): Pick<StripStepWords, "lampOff" | "lampOffIn" | "thenMove"> => stripWords();

/** A print in a tray, for which other words hold than for a film in a tank. */
function isInTray<Of extends Pick<Step, "kind" | "medium">>(
  step: Of,
): step is Of & { readonly kind: TrayStepKind } {
  return step.medium === "paper" && !NOT_IN_TRAYS.includes(step.kind);
}

/** `Developer`, `Rinse 2`; in German `Entwickler`, `Zwischenwässerung 2`. */
export function titleOf(step: Pick<Step, "kind" | "ordinal">): string {
  const title = words().titles[step.kind];
  return step.ordinal > 0 ? `${title} ${step.ordinal}` : title;
}

/** The title in the middle of a sentence: `developer`, `rinse 2`; a German noun keeps its capital. */
export function titleInText(step: Pick<Step, "kind" | "ordinal">): string {
  return words().titleInText(titleOf(step));
}

/** What a person does to begin this step, and from which bottle. */
export function doingOf(step: Spoken): string {
  const { kind } = step;
  if (isOfLamp(kind)) return lampWords().doing[kind](step.lamp);
  if (isOfStrip(kind)) return stripWords().doing[kind](step.bars ?? ALL_BARS, step.seconds ?? 0);
  if (isInTray(step)) return trayWords().doing[step.kind](bottleOf(step), step.ordinal);
  if (isOneOfTwo(step)) return words().oneOfTwo.doing(step.ordinal, bottleOf(step));
  const { concentrateMl, waterMl } = step;
  if (waterMl !== undefined && concentrateMl !== null)
    return words().pourMixed(formatMl(concentrateMl), bottleOf(step), formatMl(waterMl));
  return words().doing[kind](bottleOf(step));
}

/** The button that begins this step. */
export function labelOf(step: Pick<Step, "kind" | "ordinal" | "medium" | "lamp">): string {
  const { kind } = step;
  if (isOfLamp(kind)) return kind === "lamp" ? lampWords().labels.lamp(step.lamp) : lampWords().labels[kind];
  if (isOfStrip(kind)) return stripWords().labels[kind];
  if (isInTray(step)) return trayWords().labels[step.kind](step.ordinal);
  if (isOneOfTwo(step)) return words().oneOfTwo.label(step.ordinal);
  return words().labels[kind];
}

/** What a person does when this step's time is up, and where its bath goes. */
export function leavingOf(step: Spoken & Pick<Step, "isPouredBack" | "replenishMl">): string {
  const { kind } = step;
  if (isOfLamp(kind)) return lampWords().leaving[kind];
  if (isOfStrip(kind)) return stripWords().lampOff;
  if (isInTray(step)) return trayWords().leaving[step.kind];
  const { back, leaving, replenish, oneOfTwo } = words();
  const bottle = bottleOf(step);
  if (isOneOfTwo(step)) return oneOfTwo.leaving(step.ordinal, bottle);
  const again = bottle !== null && step.isPouredBack ? back[step.kind] : undefined;
  if (!again || bottle === null) return leaving[kind](bottle);
  return step.replenishMl === undefined
    ? again(bottle)
    : `${again(bottle)} ${replenish(formatMl(step.replenishMl))}`;
}

/** One of two fixing baths: which of them is said each time, since they must not be mixed up. */
function isOneOfTwo({ kind, ordinal }: Pick<Step, "kind" | "ordinal">): boolean {
  return kind === "fix" && ordinal > 0;
}

function bottleOf({ batch }: Pick<Step, "batch">): string | null {
  return batch === null ? null : plain(batch);
}

/** `first 30 s, then 5 s each minute: turn the tank over and back; then tap it firmly on the bench 2 times`. */
export function describeAgitation(agitation: Agitation, medium?: Step["medium"]): string {
  if (medium === "paper")
    return agitation.manner === "continuous"
      ? trayWords().rock
      : trayWords().rhythm(agitation.initialSeconds, agitation.burstSeconds);
  const { initialSeconds, burstSeconds, cycleSeconds, taps } = agitation;
  const { manners, rhythm, firstOnly, taps: sayTaps } = words();
  const manner = manners[agitation.manner];
  if (agitation.manner === "continuous") return manner;
  const when =
    cycleSeconds > 0 && burstSeconds > 0
      ? rhythm(initialSeconds, burstSeconds, cycleSeconds)
      : firstOnly(initialSeconds);
  return `${when}: ${manner}${taps > 0 ? `; ${sayTaps(taps)}` : ""}`;
}
