const made = new Map<string, Intl.DateTimeFormat>();

/** Kept: making one takes longer than all that it is used for in a log's entry. */
function formatter(language: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${language} ${JSON.stringify(options)}`;
  const known = made.get(key) ?? new Intl.DateTimeFormat(language, options);
  made.set(key, known);
  return known;
}

const inZone = (zone: string | undefined): Intl.DateTimeFormatOptions =>
  zone === undefined ? {} : { timeZone: zone };
const TIME = { hour: "2-digit", minute: "2-digit", second: "2-digit" } as const;
const MINUTE = { hour: "2-digit", minute: "2-digit" } as const;

/** Clock time with seconds, in the class's zone: what the clock on the wall shows. */
export function sayInstant(atMs: number, style: "time" | "date", zone: string | undefined): string {
  return style === "time"
    ? formatter("en-GB", { ...inZone(zone), ...TIME }).format(atMs)
    : formatter(document.documentElement.lang, { ...inZone(zone), dateStyle: "medium" }).format(atMs);
}

/** `18:04`. */
export function sayMinute(atMs: number, zone: string | undefined): string {
  return formatter("en-GB", { ...inZone(zone), ...MINUTE }).format(atMs);
}
