import { HOUSE_SOURCES, OWN_FIRST, type HouseSource } from "../presets.ts";

/* Where a batch's limits come from, where it is the house that says so. */

export const en = {
  ownFirst: (rest: string) => `${OWN_FIRST}${rest}`,
  house: HOUSE_SOURCES as Record<HouseSource, string>,
};
export type SourceWords = typeof en;
