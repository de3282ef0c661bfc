/*
 * Light on the paper, in stops: one stop more is twice the light. Every figure has its source; where sources differ, both are
 * told by whoever says it. Times are seconds here and may have fractions; what a timer can be set to is whole tenths.
 */

export const stopsOf = (factor: number): number => Math.log2(factor);
export const factorOf = (stops: number): number => 2 ** stops;

/** Stops from one time to another: 25 to 30 s is 0.26 (a published page on test strips has "about 1/4"). */
export const stopsBetween = (from: number, to: number): number => Math.log2(to / from);

/** What a timer of this step can be set to, tenths of a second: the nearest, and never nothing. */
export function onTimer(seconds: number, timerTenths: number): number {
  return Math.max(1, Math.round((seconds * 10) / timerTenths)) * timerTenths;
}

/** What that costs, in stops: above 0 too much light. */
export const timerCost = (seconds: number, setTenths: number): number =>
  stopsBetween(seconds * 10, setTenths);

/**
 * An f-number as its place in the series of stops, to a sixth: 5.6, 11 and 22 are rounded names of whole stops. f/1 is 0, and
 * a higher place lets less light through.
 */
export const stopsOfAperture = (fNumber: number): number => Math.round(12 * Math.log2(fNumber)) / 6;

/** Light wanted at another f-number: f/8 to f/11 wants 1 stop more. */
export const byAperture = (from: number, to: number): number => stopsOfAperture(to) - stopsOfAperture(from);

/** Light falls as the square of the distance from lens to paper (published: 45 s at 12 in are 180 s at 24). */
export const byDistance = (from: number, to: number): number => 2 * stopsBetween(from, to);

/**
 * The exposure follows (m + 1) squared, m being how often the picture is enlarged, for scattered light at a fixed f-number
 * (Clerc, section 770: 9, 16, 25, 36 for 2, 3, 4, 5). With a condenser the law does not hold (there).
 */
export const byEnlargement = (from: number, to: number): number => 2 * stopsBetween(from + 1, to + 1);

/** The rule that counts only the areas of the prints; it gives somewhat more, most of all with small enlargements. */
export const byArea = (from: number, to: number): number => 2 * stopsBetween(from, to);

/** By a light meter on the paper, which asks for so many seconds (Wellington handbook, p. 105: 15 to 12 s makes 40 s 32). */
export const byMeter = (from: number, to: number): number => stopsBetween(from, to);

/** A place of the negative so much denser lets through less: 10 to the difference (Clerc, section 511). */
export const byDensity = (from: number, to: number): number => (to - from) * Math.log2(10);

/** A paper of twice the speed wants half the light (ISO 6846). */
export const byPaperSpeed = (from: number, to: number): number => stopsBetween(to, from);

/** A print judged wet dries darker: so much per cent less light. */
export const byDryDown = (percent: number): number => stopsOf(1 - percent / 100);

/** Published trials of dry-down cut the exposure by 8 to 12 per cent; another maker of prints goes to 15. */
export const DRY_DOWN_PERCENT = { least: 8, most: 12, furthest: 15 } as const;

/**
 * How often the picture is enlarged with the negative so far above the paper, mm: a thin lens, so that the distance is
 * f (m + 1)^2 / m. undefined: nearer than any lens of this length draws sharp.
 */
export function enlargementAt(headMm: number, lensMm: number): number | undefined {
  const reach = headMm / lensMm - 2;
  return reach < 2 ? undefined : (reach + Math.sqrt(reach ** 2 - 4)) / 2;
}

/** From the lens to the paper, mm. */
export const lensToPaperMm = (enlargement: number, lensMm: number): number => lensMm * (enlargement + 1);
