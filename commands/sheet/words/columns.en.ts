/** How to write each column of a file of data sheets, by its name. */
export const en = {
  temperature: "20C or 68F, from 5C to 45C",
  exposure_index: "400; empty for the film's own speed",
  time: "9:00 or 540 s, from 0:15 to 3:00:00",
  source: "where the time comes from, up to 200 characters",
  film: "its name, up to 60 characters",
  developer: "its name, up to 60 characters",
  dilution: "1+9 or stock",
  film_speed: "400, in one line of the data sheet at least",
  agitation: "30/5/60 (first/each/every, in seconds) or continuous",
  factor_per_10c: "2.3, from 1 to 6",
  coldest: "18C, from 5C to 45C",
  hottest: "24C, from 5C to 45C",
  min_concentrate_ml: "100",
  tabular_grain: "yes or no",
  reuse: "1/10%/10 (films in a litre/what they add/most films)",
  sheet_source: "where the data sheet comes from, up to 200 characters",
};
export type ColumnWords = typeof en;
export type ColumnName = keyof ColumnWords;
