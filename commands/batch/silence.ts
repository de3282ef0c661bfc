import type { Habits } from "../../store/shapes/school.ts";

/*
 * Hours in which a warning that can wait is not said. Reckoned with the clock of the runtime alone: a run's calls need it, and a
 * calendar takes longer to load than all else that a first call waits for.
 */

const MINUTE_MS = 60_000;
const DAY_MINUTES = 1440;

/** `atMs`, or the end of the silence it falls into, on the class's own wall clock. */
export function afterSilence(
  atMs: number,
  zone: string,
  { silenceFrom, silenceTo }: Pick<Habits, "silenceFrom" | "silenceTo">,
): number {
  if (silenceFrom === silenceTo) return atMs;
  const minuteAt = createMinuteReader(zone);
  const minute = minuteAt(atMs);
  const isSilent =
    silenceFrom > silenceTo
      ? minute >= silenceFrom || minute < silenceTo
      : minute >= silenceFrom && minute < silenceTo;
  if (!isSilent) return atMs;
  const beganMs = atMs - (((atMs % MINUTE_MS) + MINUTE_MS) % MINUTE_MS);
  const endMs = beganMs + ((silenceTo - minute + DAY_MINUTES) % DAY_MINUTES) * MINUTE_MS;
  // Clocks may be put forward or back in between.
  const shift = minuteAt(endMs) - silenceTo;
  const shiftMs = (((shift + DAY_MINUTES * 1.5) % DAY_MINUTES) - DAY_MINUTES / 2) * MINUTE_MS;
  // A time that was left out of a night is the one as long after it.
  return minuteAt(endMs - shiftMs) === silenceTo ? endMs - shiftMs : endMs;
}

/** The minute of the day at an instant. */
function createMinuteReader(zone: string): (atMs: number) => number {
  const clock = new Intl.DateTimeFormat("en", {
    timeZone: zone,
    hour: "numeric",
    minute: "numeric",
    hourCycle: "h23",
  });
  return (atMs) => {
    const parts = clock.formatToParts(atMs);
    const read = (type: "hour" | "minute"): number => Number(parts.find((part) => part.type === type)?.value);
    return read("hour") * 60 + read("minute");
  };
}
