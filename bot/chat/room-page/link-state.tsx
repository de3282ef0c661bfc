import { saySeconds } from "../../../commands/speech/wording.ts";
import { useRoom, useRoomPart } from "./room-context.ts";
import { useRoomTime } from "./ticking.ts";
import { useWords } from "./words.ts";

export function LinkState() {
  const { link, menu } = useWords();
  const state = useRoomPart((all) => all.link);
  const present = useRoomPart((all) => all.present);
  return (
    <p class={`link is-${state}`} role="status">
      {state === "open" ? (present.count > 0 ? menu.here(present.count) : link.open) : link[state]}
    </p>
  );
}

export function LostBanner() {
  const { link, trouble } = useWords();
  const state = useRoomPart((all) => all.link);
  const isInTrouble = useRoomPart((all) => all.troubleSince !== null);
  const isStaff = useRoomPart((all) => all.facts !== null && all.facts.you.role !== "student");
  if (state !== "lost" && !isInTrouble) return null;
  const inTrouble = isStaff ? trouble.forStaff : trouble.forStudents;
  return (
    <p class="lost" role="alert">
      {state === "lost" ? link.lostLong : inTrouble}
    </p>
  );
}

/** Lines that could not be sent while they were fresh: their moment may be over, so their sender decides. */
export function StaleLines() {
  const room = useRoom();
  const { link } = useWords();
  const pending = useRoomPart((all) => all.pending);
  useRoomTime(1000);
  const stale = pending.filter(({ state }) => state === "stale");
  return (
    <>
      {stale.map(({ id, text, label, at }) => (
        <div key={id} class="stale" role="alert">
          <p>{link.staleLine(label ?? text, saySeconds((Date.now() - at) / 1000))}</p>
          <button type="button" class="key main" onClick={() => room.sendStale(id)}>
            {link.sendNow}
          </button>
          <button type="button" class="key" onClick={() => room.dropStale(id)}>
            {link.drop}
          </button>
        </div>
      ))}
    </>
  );
}
