import type { Enlarger } from "../../store/shapes/enlarger.ts";
import type { Paper, PaperSize } from "../../store/shapes/paper.ts";
import { fail, ok, type Result } from "../result.ts";
import type { Change } from "./change.ts";
import { byGrade } from "./grade.ts";
import {
  byAperture,
  byArea,
  byDensity,
  byDistance,
  byDryDown,
  byEnlargement,
  byMeter,
  byPaperSpeed,
  enlargementAt,
} from "./light.ts";
import { enlargementTo } from "./sizes.ts";

/* What a change does to the exposure, part by part, each with what it rests on. */

export type BoxOfPaper = Omit<Paper, "filters"> & Partial<Pick<Paper, "filters">>;

/** What may change. Where `from` is null, `start` knows it or nobody does. */
export interface Changes {
  readonly aperture?: Change<number> | undefined;
  readonly grade?: Change<number> | undefined;
  readonly paper?: Change<BoxOfPaper> | undefined;
  /** From the negative to the paper, mm. */
  readonly height?: Change<number> | undefined;
  /** From the lens to the paper, mm. */
  readonly lens?: Change<number> | undefined;
  readonly size?: Change<PaperSize> | undefined;
  /** How many times enlarged. */
  readonly times?: Change<number> | undefined;
  /** Seconds that a light meter on the paper asks for. */
  readonly meter?: Change<number> | undefined;
  /** Density of the place that matters. */
  readonly density?: Change<number> | undefined;
  /** Per cent by which it dries darker. */
  readonly dry?: number | undefined;
}

/** As the exposure to go on from was made. */
export interface Start {
  readonly apertureTenths: number | null;
  readonly gradeTenths: number | null;
  readonly paper: BoxOfPaper | null;
  readonly headMm: number | null;
  readonly size: PaperSize | null;
}

export const NOTHING_KNOWN: Start = {
  apertureTenths: null,
  gradeTenths: null,
  paper: null,
  headMm: null,
  size: null,
};

export interface Around {
  readonly enlarger: Enlarger | null;
  /** The picture on the negative, mm. */
  readonly negative: PaperSize | null;
}

export type PartKind = keyof Changes;
/** Whence a part's figure comes. `unknown`: nobody has measured it, nothing is allowed for. */
export type Basis =
  | "series"
  | "square"
  | "law"
  | "area"
  | "measured"
  | "rule"
  | "speed"
  | "unknown"
  | "meter"
  | "density"
  | "dry";

export interface Part {
  readonly kind: PartKind;
  readonly stops: number;
  readonly basis: Basis;
  readonly from: number | PaperSize | BoxOfPaper | null;
  readonly to: number | PaperSize | BoxOfPaper;
  /** What the rival rule gives, in stops; null: there is none. */
  readonly rival: number | null;
}

export type AdjustFault =
  | { readonly code: "ERR_FROM_WHAT"; readonly option: PartKind }
  | { readonly code: "ERR_ONE_ENLARGEMENT"; readonly options: readonly PartKind[] }
  | { readonly code: "ERR_HEAD_LOW"; readonly lensMm: number };

/** Ways to say how large the picture is: one of them is enough. */
const WAYS = ["height", "lens", "size", "times"] as const satisfies readonly PartKind[];

/** The parts in the order of the options; none where nothing changes. */
export function adjust(changes: Changes, start: Start, around: Around): Result<Part[], AdjustFault> {
  const ways = WAYS.filter((way) => changes[way] !== undefined);
  if (ways.length > 1) return fail({ code: "ERR_ONE_ENLARGEMENT", options: ways });
  const parts: Part[] = [];
  for (const read of READERS) {
    const part = read(changes, start, around);
    if (part === undefined) continue;
    if ("code" in part) return fail(part);
    parts.push(part);
  }
  return ok(parts);
}

/** All parts together, in stops. */
export const sumOf = (parts: readonly Part[]): number => parts.reduce((sum, { stops }) => sum + stops, 0);

type Reader = (changes: Changes, start: Start, around: Around) => Part | AdjustFault | undefined;

/** A reader of one option, which is asked only where both ends are known. */
function between<K extends Exclude<PartKind, "dry">, T>(
  kind: K,
  known: (start: Start) => T | null,
  judge: (
    from: T,
    to: T,
    around: Around,
    changes: Changes,
    start: Start,
  ) => (Pick<Part, "stops" | "basis"> & Partial<Part>) | AdjustFault,
): Reader {
  return (changes, start, around) => {
    const change = changes[kind] as Change<T> | undefined;
    if (change === undefined) return undefined;
    const from = change.from ?? known(start);
    if (from === null) return { code: "ERR_FROM_WHAT", option: kind };
    const judged = judge(from, change.to, around, changes, start);
    if ("code" in judged) return judged;
    return { kind, from, to: change.to, rival: null, ...judged } as Part;
  };
}

const nothing = (): null => null;

const READERS: readonly Reader[] = [
  between(
    "aperture",
    (start) => start.apertureTenths,
    (from: number, to) => ({
      stops: byAperture(from / 10, to / 10),
      basis: "series",
    }),
  ),
  between(
    "grade",
    (start) => start.gradeTenths,
    (from: number, to, { enlarger }, { paper }, start) => {
      const on = paper?.to ?? start.paper;
      return byGrade(from, to, on ? { filters: [], ...on } : null, enlarger?.number ?? null);
    },
  ),
  between(
    "paper",
    (start) => start.paper,
    (from: BoxOfPaper, to) =>
      from.speed === null || to.speed === null
        ? { stops: 0, basis: "unknown" }
        : { stops: byPaperSpeed(from.speed.tenths, to.speed.tenths), basis: "speed" },
  ),
  between(
    "height",
    (start) => start.headMm,
    (from: number, to, { enlarger }) => {
      if (enlarger === null) return { stops: byDistance(from, to), basis: "square" };
      const [before, after] = [enlargementAt(from, enlarger.lensMm), enlargementAt(to, enlarger.lensMm)];
      return before === undefined || after === undefined
        ? { code: "ERR_HEAD_LOW", lensMm: enlarger.lensMm }
        : { stops: byEnlargement(before, after), basis: "law" };
    },
  ),
  between("lens", nothing, (from: number, to) => ({ stops: byDistance(from, to), basis: "square" })),
  between(
    "size",
    (start) => start.size,
    (from: PaperSize, to, { negative }) => {
      const area = byArea(Math.sqrt(from.shortMm * from.longMm), Math.sqrt(to.shortMm * to.longMm));
      if (negative === null) return { stops: area, basis: "area" };
      const [before, after] = [enlargementTo(from, negative), enlargementTo(to, negative)];
      return { stops: byEnlargement(before, after), basis: "law", rival: area };
    },
  ),
  between("times", nothing, (from: number, to) => ({
    stops: byEnlargement(from, to),
    basis: "law",
    rival: byArea(from, to),
  })),
  between("meter", nothing, (from: number, to) => ({ stops: byMeter(from, to), basis: "meter" })),
  between("density", nothing, (from: number, to) => ({ stops: byDensity(from, to), basis: "density" })),
  ({ dry }) =>
    dry === undefined || dry === 0
      ? undefined
      : { kind: "dry", from: null, to: dry, stops: byDryDown(dry), basis: "dry", rival: null },
];
