import "./styles/sink.css";
import { useEffect, useRef, useState } from "preact/hooks";
import type { SinkSheet } from "../room/door-wire.ts";
import { api, type Answer, type DoorFault } from "./api.ts";
import { rememberHere } from "./kept.ts";
import { createPageRoom, type PageRoom } from "./room.ts";
import { RoomContext, useRoom, useRoomPart } from "./room-context.ts";
import { Chooser, Desk } from "./sink-desk.tsx";
import { PersonTiles } from "./sink-tile.tsx";
import { createSinkSound, type SinkSound } from "./sink-sound.ts";
import { SinkWord } from "./sink-word.tsx";
import type { Hearing } from "./sounder.ts";
import { usePart } from "./state.ts";
import type { Language } from "../../../store/shapes/language.ts";
import { LANGUAGE_NAMES } from "./word-books.ts";
import { useWords } from "./words.ts";

/* A device at the sink, for everybody who stands there: all tanks that were begun at it, side by side. */

/** So soon a lock, or somebody chosen away, is seen here. */
const LOOK_MS = 4000;

export function SinkPage() {
  const words = useWords();
  const { sink } = words;
  const main = useRoom();
  const [sheet, setSheet] = useState<SinkSheet | null>(null);
  const [fault, setFault] = useState<DoorFault | null>(null);
  const [desk, setDesk] = useState<{ kind: "choose" } | { kind: "person"; id: string } | null>(null);
  const rooms = useRef(new Map<string, PageRoom>()).current;
  const sound = useRef<SinkSound | null>(null);
  const [hearing, setHearing] = useState<Hearing>("held");

  async function take(asking: Promise<Answer<SinkSheet>>): Promise<SinkSheet | null> {
    const answer = await asking;
    if (!answer.ok) {
      if (answer.code === "ERR_SIGNED_OUT") await main.enter();
      else setFault(answer.code);
      return null;
    }
    setFault(null);
    const here = new Set(answer.value.people.map(({ id }) => id));
    for (const [id, room] of rooms) {
      if (here.has(id)) continue;
      room.close();
      rooms.delete(id);
    }
    for (const id of here) {
      if (rooms.has(id)) continue;
      const room = createPageRoom(id);
      rooms.set(id, room);
      void room.enter();
    }
    setSheet(answer.value);
    return answer.value;
  }

  useEffect(() => {
    void take(api.sink());
    main.wake.want(true);
    const looking = setInterval(() => void take(api.sink()), LOOK_MS);
    const sounding = createSinkSound(main, () => [...rooms.values()]);
    sound.current = sounding;
    const touched = (): void => sounding.touch();
    for (const touch of ["pointerdown", "touchend", "keydown"]) addEventListener(touch, touched);
    const listening = setInterval(() => setHearing(sounding.hearing()), 500);
    return () => {
      clearInterval(looking);
      clearInterval(listening);
      sounding.stop();
      for (const touch of ["pointerdown", "touchend", "keydown"]) removeEventListener(touch, touched);
      for (const room of rooms.values()) room.close();
    };
  }, []);

  if (!sheet)
    return (
      <main class="opening">
        <p role="status">{fault ? words.doorFaults[fault] : words.loading}</p>
      </main>
    );
  const { people, isLocked } = sheet;
  const roomOf = (id: string): PageRoom | undefined => rooms.get(id);
  const chosen = desk?.kind === "person" ? people.find(({ id }) => id === desk.id) : undefined;
  const deskRoom = chosen && roomOf(chosen.id);
  const isDeskOpen = desk !== null && (desk.kind === "choose" || deskRoom !== undefined);
  return (
    <div class={`sink ${isDeskOpen ? "has-desk" : ""}`}>
      <header class="sink-top">
        <h1>{words.classCalled(sheet.className)}</h1>
        <Languages />
        {!isLocked && (
          <button type="button" class="key main" onClick={() => setDesk({ kind: "choose" })}>
            {sink.next}
          </button>
        )}
      </header>
      <div class="sink-notes">
        {isLocked && <p class="fault">{sink.locked}</p>}
        {fault && (
          <p class="fault" role="alert">
            {words.doorFaults[fault]}
          </p>
        )}
        {[...rooms.values()].slice(0, 1).map((room) => (
          <Lost key="lost" room={room} />
        ))}
        {people.length > 0 && hearing !== "on" && (
          <SinkHearing hearing={hearing} onTouch={() => sound.current?.touch()} />
        )}
        <SinkWord people={people} roomOf={roomOf} />
      </div>
      <main class="sink-tiles">
        {people.length === 0 && <p class="sink-none">{sink.none}</p>}
        {people.map(({ id, name }) => {
          const room = roomOf(id);
          return (
            room && (
              <RoomContext.Provider key={id} value={room}>
                <PersonTiles name={name} onMore={() => setDesk({ kind: "person", id })} />
              </RoomContext.Provider>
            )
          );
        })}
      </main>
      {isDeskOpen && (
        <aside class="sink-desk">
          <button type="button" class="key" onClick={() => setDesk(null)}>
            {sink.close}
          </button>
          {desk.kind === "choose" && (
            <Chooser sheet={sheet} take={take} onChosen={(id) => setDesk({ kind: "person", id })} />
          )}
          {chosen && deskRoom && (
            <RoomContext.Provider key={chosen.id} value={deskRoom}>
              <Desk
                name={chosen.name}
                onDone={() => void take(api.sinkDone(chosen.id)).then((next) => next && setDesk(null))}
              />
            </RoomContext.Provider>
          )}
        </aside>
      )}
    </div>
  );
}

/** The touch itself lets the sound go. */
function SinkHearing({ hearing, onTouch }: { hearing: Exclude<Hearing, "on">; onTouch: () => void }) {
  const words = useWords();
  if (hearing === "none") return <p class="sound-bar">{words.hearing.none}</p>;
  return (
    <button type="button" class="key sink-sound" onClick={onTouch}>
      {words.hearing[hearing]}
    </button>
  );
}

function Lost({ room }: { room: PageRoom }) {
  const { link } = useWords();
  const state = usePart(room.store, (all) => all.link);
  return state === "lost" ? (
    <p class="lost" role="alert">
      {link.lostLong}
    </p>
  ) : null;
}

/** Of the device: new names read it, and whoever chose another for themselves keeps that. */
function Languages() {
  const language = useRoomPart((state) => state.language);
  return (
    <>
      {(Object.keys(LANGUAGE_NAMES) as Language[])
        .filter((each) => each !== language)
        .map((each) => (
          <button
            key={each}
            type="button"
            lang={each}
            class="key"
            onClick={() => {
              rememberHere("language", each);
              location.reload();
            }}
          >
            {LANGUAGE_NAMES[each]}
          </button>
        ))}
    </>
  );
}
