/*
 * What makes sense of a quantity, where no shape of its own holds it: a call outside is refused with these ends. They are
 * wide, since they only keep out slips of the pen; what is unusual within them is warned of where it matters.
 */

export interface Limits {
  readonly least: number;
  readonly most: number;
}

/** A bath with film in it, tenths of a degree Celsius: as a sheet's times. */
export const BATH_TENTHS_C: Limits = { least: 50, most: 450 };
/** Water to rinse and wash with: a winter's tap may be colder than any bath (US Army TM 11-2323 has 35 °F, 1.7 °C). */
export const WATER_TENTHS_C: Limits = { least: 0, most: 450 };
/** A paper developer in its tray: a step rule speaks of 55 °F (12.8 °C) and less (Clerc, 573). */
export const PAPER_TENTHS_C: Limits = { least: 100, most: 320 };
export const ROOM_TENTHS_C: Limits = { least: 0, most: 450 };
/** A tap; past this it is no tap but a kettle. */
export const TAP_TENTHS_C: Limits = { least: 0, most: 950 };
/** What is tempered: baths, and the warm water powders are dissolved in (crystal hypo 32 °C and more: Anchell p. 268). */
export const TEMPERED_TENTHS_C: Limits = { least: 0, most: 600 };
/** Until a scrap of film is clear. Fresh 1 to 3 min are usual; a worn or cold bath may need several times that. */
export const CLEARING_SECONDS: Limits = { least: 5, most: 1800 };
/** Film a litre takes, sq in: a sheet of 4x5 to 100 rolls. Published: 5 to 25 rolls of film, 53 sheets of paper (NAVEDTRA 14209). */
export const CAPACITY_SQ_IN_PER_LITRE: Limits = { least: 20, most: 8000 };
/** Working-strength bath in one tank, ml: as a tank's own volume. */
export const TANK_ML: Limits = { least: 50, most: 20_000 };
