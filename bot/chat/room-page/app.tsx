import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Bench } from "./bench.tsx";
import { DoorPage } from "./door.tsx";
import { Lazy } from "./lazy.tsx";
import { isOnWall } from "./place.ts";
import type { PageRoom } from "./room.ts";
import { RoomContext } from "./room-context.ts";
import { usePart, type State } from "./state.ts";
import { applyTheme } from "./theme.ts";
import { wordsIn } from "./word-books.ts";
import { useWords, WordsContext } from "./words.ts";

export function App({ room }: { room: PageRoom }) {
  const language = usePart(room.store, (state) => state.language);
  const theme = usePart(room.store, (state) => state.theme);
  const isOpen = usePart(room.store, isSomethingToRead);
  useEffect(() => applyTheme(theme), [theme]);
  // At once: dates are worded by the language as they are drawn, and other letters would have all be laid out anew.
  document.documentElement.lang = language;
  if (isOpen) document.documentElement.dataset.open = "";
  return (
    <WordsContext.Provider value={wordsIn(language)}>
      <RoomContext.Provider value={room}>
        <Place room={room} />
      </RoomContext.Provider>
    </WordsContext.Provider>
  );
}

const isSomethingToRead = ({ door, link }: State): boolean =>
  link === "open" || (door !== null && door.state !== "in");

const loadBoard = () => import("./board.tsx").then(({ BoardPage }) => BoardPage);
const loadSink = () => import("./sink.tsx").then(({ SinkPage }) => SinkPage);

function Place({ room }: { room: PageRoom }) {
  const words = useWords();
  const door = usePart(room.store, (state) => state.door);
  const facts = usePart(room.store, (state) => state.facts);
  const isUnreachable = usePart(room.store, (state) => state.isUnreachable);
  useEffect(() => {
    if (!isUnreachable) return undefined;
    const again = setTimeout(() => void room.enter(), 2000);
    return () => clearTimeout(again);
  }, [isUnreachable]);
  const [Guide, setGuide] = useState<ComponentType<{ onLeave: () => void }> | null>(null);
  // Loaded only when it is wanted: it brings the run machine with it.
  const guide = (): void => void import("./guide.tsx").then((loaded) => setGuide(() => loaded.Guide));
  if (Guide) return <Guide onLeave={() => setGuide(null)} />;
  if (door?.state === "sink") return <Lazy load={loadSink} />;
  if (door?.state === "out") return <DoorPage demo={door.demo} onGuide={guide} />;
  if (!facts)
    return (
      <main class="opening">
        <p role="status">{isUnreachable ? words.doorFaults.ERR_UNREACHABLE : words.loading}</p>
      </main>
    );
  return isOnWall() ? <Lazy load={loadBoard} /> : <Bench onGuide={guide} />;
}
