import "./styles/board.css";
import { useEffect, useRef, useState } from "preact/hooks";
import { nameOfView } from "../../../commands/run/run-view.ts";
import { formatSeconds } from "../../../commands/speech/wording.ts";
import type { DoorSheet } from "../room/wire.ts";
import { api } from "./api.ts";
import { LinkState, LostBanner } from "./link-state.tsx";
import { useRoom, useRoomPart } from "./room-context.ts";
import { sayMinute } from "./instant.ts";
import { secondsTo, useRoomTime, useToldTime } from "./ticking.ts";
import { arrangeWall, layOutWall, orderOf, wallWords, type WallTank } from "./wall.ts";
import { useWords } from "./words.ts";

/** Thirty clocks, each with seconds of its own, on the weakest computer of the school. */
const BEAT_MS = 500;

/** The wall: every tank of the class on one screen, what is due next first, and how to come in. */
export function BoardPage() {
  const room = useRoom();
  const { board, classCalled, menu } = useWords();
  const facts = useRoomPart((state) => state.facts);
  useEffect(() => {
    room.watchTanks("wall");
    room.wake.want(true);
    return () => room.watchTanks(null);
  }, []);
  if (facts?.you.role === "student") return <main class="opening">{board.staffOnly}</main>;
  return (
    <div class="board">
      <header class="wall-top">
        <div class="wall-class">
          <h1>{facts && classCalled(facts.class.name)}</h1>
          <WallClock />
        </div>
        <div class="wall-tools">
          <LinkState />
          <a class="key" href="/">
            {menu.room}
          </a>
          <StayOn />
        </div>
        <HowToJoin />
      </header>
      <div class="bars">
        <LostBanner />
      </div>
      <Tanks />
    </div>
  );
}

function WallClock() {
  const zone = useRoomPart((state) => state.facts?.class.zone);
  return <p class="wall-clock digits">{useToldTime((now) => sayMinute(now, zone), 1000)}</p>;
}

function Tanks() {
  const { board } = useWords();
  const { clock } = useRoom();
  const rows = useRoomPart((state) => state.wall);
  const wall = useRef<HTMLElement>(null);
  const { width, height } = useSizeOf(wall);
  useToldTime((now) => orderOf(arrangeWall(rows, now)), BEAT_MS);
  const { large, small } = arrangeWall(rows, clock.now());
  const { largeColumns, largePx, smallColumns, smallPx } = layOutWall(
    large.length,
    small.length,
    width,
    height,
  );
  return (
    <main
      ref={wall}
      class="wall"
      aria-label={board.title}
      // Scrolled by keys where a window is too small for any board.
      tabIndex={0}
      style={{
        "--large": `${largePx}px`,
        "--large-columns": String(largeColumns),
        "--small": `${smallPx}px`,
        "--small-columns": String(smallColumns),
      }}
    >
      {rows.length === 0 && <p class="wall-none">{board.none}</p>}
      <div class="wall-large">
        {large.map((tank) => (
          <Large key={keyOf(tank)} tank={tank} />
        ))}
      </div>
      <div class="wall-small">
        {small.map((tank) => (
          <Small key={keyOf(tank)} tank={tank} />
        ))}
      </div>
    </main>
  );
}

const keyOf = ({ row }: WallTank): string => `${row.ownerId} ${row.run}`;

interface TankProps {
  readonly tank: WallTank;
}

function Large({ tank }: TankProps) {
  const { runs, board } = useWords();
  const { row, state } = tank;
  const doing = useToldTime((now) => wallWords(tank, now, board.toCome), BEAT_MS);
  return (
    <article class={`wall-tank is-${state}`}>
      <h2>
        <TankName tank={tank} /> {row.owner}
      </h2>
      <p class="wall-digits digits">
        <Counted tank={tank} />
        <span class="unit">{state === "late" ? board.late : runs.left}</span>
      </p>
      <p class="wall-doing">{doing}</p>
    </article>
  );
}

function Small({ tank }: TankProps) {
  const { board } = useWords();
  return (
    <article class={`wall-tank is-${tank.state}`}>
      <h2>
        <TankName tank={tank} /> {tank.row.owner}
      </h2>
      {tank.at === null ? (
        <p class="wall-doing">{board.toCome(tank.row.title)}</p>
      ) : (
        <p class="wall-digits digits">
          <Counted tank={tank} />
        </p>
      )}
    </article>
  );
}

/** The number that stands on the tank. */
function TankName({ tank: { row } }: TankProps) {
  const { runs } = useWords();
  return <strong aria-label={runs.name(nameOfView(row))}>{row.tank ?? `R${row.run}`}</strong>;
}

function Counted({ tank: { at, state } }: TankProps) {
  const seconds = useToldTime((now) => {
    if (at === null) return null;
    return state === "late" ? Math.floor((now - at) / 1000) : secondsTo(at, now);
  }, BEAT_MS);
  return seconds === null ? null : <span>{formatSeconds(seconds)}</span>;
}

function HowToJoin() {
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
    <div class="wall-join">
      <p>
        <span>
          {board.join}: {sheet.joinUrls[0]}
        </span>
        <span>
          {keys.code} <strong class="code">{sheet.joinCode}</strong>
        </span>
      </p>
      <span class="qr">
        <img src={`/api/door/qr.svg?${sheet.joinCode}`} alt={keys.scan} />
      </span>
    </div>
  );
}

/** Where only a touch keeps a screen on, whoever hangs the board up touches it once. */
function StayOn() {
  const { board, runs } = useWords();
  const room = useRoom();
  useRoomTime(1000);
  if (room.wake.isHolding) return null;
  if (room.wake.by === "none") return <p class="hint">{runs.mayGoDark}</p>;
  return (
    <button type="button" class="key" onClick={() => room.wake.touch()}>
      {board.stayOn}
    </button>
  );
}

function useSizeOf(part: { readonly current: HTMLElement | null }): { width: number; height: number } {
  const [size, setSize] = useState({ width: innerWidth, height: innerHeight * 0.8 });
  useEffect(() => {
    const { current } = part;
    if (!current) return undefined;
    const observer = new ResizeObserver(() =>
      setSize({ width: current.clientWidth - 2 * PADDING_PX, height: current.clientHeight - 3 * PADDING_PX }),
    );
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return size;
}

/** Around the tanks, and between large and small ones. */
const PADDING_PX = 8;
