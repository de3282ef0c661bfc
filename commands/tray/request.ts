import type { PaperKind, PaperSize } from "../../store/shapes/paper.ts";
import type { TrayLine } from "../../store/shapes/tray-line.ts";

/** How strong the fixer is: an ordinary acid one, or rapid fixer as strong as film's. */
export const FIXERS = ["usual", "strong"] as const;
export type FixerStrength = (typeof FIXERS)[number];

/** What is asked for the prints that go along a line of trays together. */
export interface TrayRequest {
  readonly line: TrayLine;
  readonly paper: PaperKind;
  /** Number of the class's box; null: nobody said. */
  readonly box: number | null;
  readonly size: PaperSize;
  readonly prints: number;
  /** The developer in its tray. */
  readonly tenthsC: number;
  /** Where they were measured and differ. */
  readonly fixTenthsC: number | null;
  readonly waterTenthsC: number | null;
  readonly fixer: FixerStrength;
  readonly baths: number;
  readonly washAid: boolean;
  /** The first clear patch of the class's own strip in this fixer; null: not tried. */
  readonly clearSeconds: number | null;
  /** Of first appearance; null: by time. */
  readonly factor: number | null;
}

export type TrayFault = {
  readonly code: "ERR_TRAY_TIME";
  readonly seconds: number;
  readonly tenthsC: number;
  readonly atTenthsC: number;
};
