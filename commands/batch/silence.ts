import { Temporal } from "temporal-polyfill";
import type { Habits } from "../../store/shapes/school.ts";

/* Hours in which a warning that can wait is not said. */

/** `atMs`, or the end of the silence it falls into, on the class's own wall clock. */
export function afterSilence(
  atMs: number,
  zone: string,
  { silenceFrom, silenceTo }: Pick<Habits, "silenceFrom" | "silenceTo">,
): number {
  if (silenceFrom === silenceTo) return atMs;
  const local = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone);
  const minute = local.hour * 60 + local.minute;
  const isOverMidnight = silenceFrom > silenceTo;
  const isSilent = isOverMidnight
    ? minute >= silenceFrom || minute < silenceTo
    : minute >= silenceFrom && minute < silenceTo;
  if (!isSilent) return atMs;
  const day = local.toPlainDate().add({ days: isOverMidnight && minute >= silenceFrom ? 1 : 0 });
  const plainTime = Temporal.PlainTime.from({ hour: Math.floor(silenceTo / 60), minute: silenceTo % 60 });
  return Math.max(atMs, day.toZonedDateTime({ timeZone: zone, plainTime }).epochMilliseconds);
}
