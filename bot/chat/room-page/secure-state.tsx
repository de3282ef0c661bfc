import type { DoorSheet } from "../room/wire.ts";
import { useRoomPart } from "./room-context.ts";
import { sayInstant } from "./instant.ts";
import { useWords } from "./words.ts";

/** From so many days before its end on, the certificate is the teacher's business. */
const SOON_DAYS = 14;

/** Whether phones come over https, how long the certificate holds, and what is lost without. */
export function SecureState({ sheet: { certificate, isSecure } }: { sheet: DoorSheet }) {
  const { secure } = useWords();
  const zone = useRoomPart((state) => state.facts?.class.zone);
  if (!certificate) return <p class="hint">{isSecure ? secure.byProxy : secure.none}</p>;
  const { until, daysLeft } = certificate;
  const day = sayInstant(until, "date", zone);
  if (daysLeft < 0) return <p class="fault">{secure.over(day)}</p>;
  return (
    <p class={daysLeft <= SOON_DAYS ? "fault" : "hint"}>
      {secure.holds(day, daysLeft)} {daysLeft <= SOON_DAYS && secure.renew}
    </p>
  );
}
