import { useEffect, useState } from "preact/hooks";
import type { DoorSheet } from "../room/wire.ts";
import { api } from "./api.ts";
import { LinkState, LostBanner } from "./link-state.tsx";
import { useRoom, useRoomPart } from "./room-context.ts";
import { RunCard } from "./run-card.tsx";
import { sayMinute } from "./said.tsx";
import { useRoomTime } from "./ticking.ts";
import { columnsFor, MANY, orderForWall } from "./wall.ts";
import { useWords } from "./words.ts";

/** The wall: every tank of the class, the most urgent first, and how to come in. */
export function BoardPage() {
  const room = useRoom();
  const { board, menu } = useWords();
  const facts = useRoomPart((state) => state.facts);
  const rows = useRoomPart((state) => state.wall);
  const { width, height } = useWindow();
  const now = useRoomTime(1000);
  useEffect(() => {
    room.watchWall(true);
    room.wake.want(true);
    return () => room.watchWall(false);
  }, []);
  if (facts?.you.role === "student") return <main class="opening">{board.staffOnly}</main>;
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
      <main
        class={`wall ${rows.length > MANY ? "is-many" : ""}`}
        aria-label={board.title}
        // Scrolled by keys where there are more tanks than fit.
        tabIndex={0}
        style={{ "--columns": String(columnsFor(rows.length, width, height)) }}
      >
        {rows.length === 0 && <p class="wall-none">{board.none}</p>}
        {orderForWall(rows).map((row) => (
          <div class="wall-card" key={`${row.owner} ${row.run}`}>
            <RunCard view={row} owner={row.owner} />
          </div>
        ))}
      </main>
      <HowToJoin isLarge={rows.length === 0} />
    </div>
  );
}

function HowToJoin({ isLarge }: { isLarge: boolean }) {
  const { board, keys } = useWords();
  const [sheet, setSheet] = useState<DoorSheet | null>(null);
  useEffect(() => {
    const look = async (): Promise<void> => {
      const answer = await api.door();
      if (answer.ok) setSheet(answer.value);
    };
    void look();
    // The code may be changed meanwhile.
    const again = setInterval(() => void look(), 30_000);
    return () => clearInterval(again);
  }, []);
  if (!sheet) return null;
  return (
    <footer class="wall-join">
      {isLarge && (
        <span class="qr">
          <img src={`/api/door/qr.svg?${sheet.joinCode}`} alt={keys.scan} />
        </span>
      )}
      <span>
        {board.join}: {sheet.joinUrls[0]}
      </span>
      <span>
        {keys.code} <strong class="code">{sheet.joinCode}</strong>
      </span>
    </footer>
  );
}

/** What the header and the foot leave of the window. */
const BARS_PX = 150;

function useWindow(): { width: number; height: number } {
  const read = () => ({ width: innerWidth, height: innerHeight - BARS_PX });
  const [size, setSize] = useState(read());
  useEffect(() => {
    const look = (): void => setSize(read());
    addEventListener("resize", look);
    return () => removeEventListener("resize", look);
  }, []);
  return size;
}
