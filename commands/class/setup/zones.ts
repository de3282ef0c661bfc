import { distance } from "fastest-levenshtein";

/* Time zones as people name them: `Europe/Lisbon`, `lisbon`, `new york`. */

let listed: readonly string[] | undefined;
const zones = (): readonly string[] => (listed ??= [...Intl.supportedValuesOf("timeZone"), "UTC"]);

/** The zone of that name; any case, spaces for underscores, the city alone where it is clear. */
export function findZone(text: string): string | undefined {
  const wanted = fold(text);
  const exact = zones().find((zone) => fold(zone) === wanted);
  if (exact !== undefined) return exact;
  const cities = zones().filter((zone) => cityOf(zone) === wanted);
  return cities.length === 1 ? cities[0] : undefined;
}

/** Zones that contain what was typed, then those a slip away; the likeliest first. */
export function suggestZones(typed: string, limit: number): string[] {
  const wanted = fold(typed);
  if (wanted === "") return zones().slice(0, limit);
  const begun = zones().filter((zone) => cityOf(zone).startsWith(wanted));
  const inside = zones().filter((zone) => !begun.includes(zone) && fold(zone).includes(wanted));
  const near = zones().filter((zone) => distance(cityOf(zone), wanted) <= 2);
  return [...new Set([...begun, ...inside, ...near])].slice(0, limit);
}

function fold(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, "_");
}

function cityOf(zone: string): string {
  return fold(zone.split("/").at(-1) ?? zone);
}
