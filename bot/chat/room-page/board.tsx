import { useEffect } from "preact/hooks";
import { useRoom, useRoomPart } from "./room-context.ts";
import { LinkState, LostBanner } from "./link-state.tsx";
import { RunCard } from "./run-card.tsx";
import { sayMinute } from "./said.tsx";
import { useRoomTime } from "./ticking.ts";
import { useWords } from "./words.ts";

/** The wall: every tank of the class, the most urgent first. */
export function BoardPage() {
  const room = useRoom();
  const { board, menu } = useWords();
  const facts = useRoomPart((state) => state.facts);
  const rows = useRoomPart((state) => state.wall);
  const now = useRoomTime(1000);
  useEffect(() => {
    room.watchWall(true);
    room.wake.want(true);
    return () => room.watchWall(false);
  }, []);
  if (facts?.you.role === "student") return <main class="opening">{board.staffOnly}</main>;
  const ordered = [...rows].sort((a, b) => urgency(a) - urgency(b));
  return (
    <div class="board">
      <header class="top">
        <h1>{facts?.class.name}</h1>
        <p class="wall-clock">{sayMinute(now, facts?.class.zone)}</p>
        <LinkState />
        <a class="key" href="/">
          {menu.room}
        </a>
      </header>
      <LostBanner />
      <main class="wall" aria-label={board.title}>
        {ordered.length === 0 && <p class="wall-none">{board.none}</p>}
        {ordered.map((row) => (
          <RunCard key={`${row.owner} ${row.run}`} view={row} owner={row.owner} />
        ))}
      </main>
    </div>
  );
}

/** A film that waits comes first, then whichever bath ends soonest. */
function urgency({ phase, endsAt }: { phase: string; endsAt: number | null }): number {
  return phase === "waiting" ? 0 : (endsAt ?? Number.MAX_SAFE_INTEGER);
}
