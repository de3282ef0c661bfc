/* How well a spread that is told holds what is published: the one measure for all of them. */

export interface Checked {
  /** Which published value, for whoever reads the list of those outside. */
  readonly name: string;
  readonly published: number;
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
}

export interface Calibration {
  readonly points: number;
  readonly inside: number;
  readonly medianError: number;
  /** Half of the whole spread. */
  readonly medianWidth: number;
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? Number.NaN) + (sorted[Math.floor(half)] ?? Number.NaN)) / 2;
}

/** Prints the figures and what lies outside. */
export function calibrate(title: string, checked: readonly Checked[]): Calibration {
  const isInside = ({ published, low, high }: Checked): boolean =>
    published >= low - 0.5 && published <= high + 0.5;
  const inside = checked.filter(isInside).length / checked.length;
  const medianError = median(checked.map(({ seconds, published }) => Math.abs(seconds - published)));
  const medianWidth = median(checked.map(({ low, high }) => (high - low) / 2));
  const outside = checked
    .filter((each) => !isInside(each))
    .map(
      ({ name, published, low, high }) =>
        `  outside: ${name} -> published ${Math.round(published)} s, spread ${Math.round(low)}-${Math.round(high)}`,
    );
  console.log(
    [
      `${title}: ${checked.length} points, ${(inside * 100).toFixed(0)} % inside, median error ${medianError.toFixed(1)} s, median half of the spread ${medianWidth.toFixed(1)} s (${(medianWidth / medianError).toFixed(2)} times)`,
      ...outside,
    ].join("\n"),
  );
  return { points: checked.length, inside, medianError, medianWidth };
}
