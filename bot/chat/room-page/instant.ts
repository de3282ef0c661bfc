/** Clock time with seconds, in the class's zone: what the clock on the wall shows. */
export function sayInstant(atMs: number, style: "time" | "date", zone: string | undefined): string {
  const options = zone === undefined ? {} : { timeZone: zone };
  return style === "time"
    ? new Date(atMs).toLocaleTimeString("en-GB", options)
    : new Date(atMs).toLocaleDateString(document.documentElement.lang, { ...options, dateStyle: "medium" });
}
