import { useEffect, useState } from "preact/hooks";
import type { SinkSheet } from "../room/door-wire.ts";
import type { Call } from "./calls.ts";
import { sayLateness } from "./lateness.ts";
import type { PageRoom } from "./room.ts";
import { RoomContext } from "./room-context.ts";
import { Said } from "./said.tsx";
import { useWords } from "./words.ts";

/*
 * A word to many at a device that is everybody's: once, over the tanks, with a key for each person whom it is for. Who
 * presses theirs has seen it; a device that stands alone has shown it to nobody.
 */

const LOOK_MS = 250;
/** A hand that was on its way to something else has come down by then. */
const DEAF_MS = 1000;

interface Reader {
  readonly name: string;
  readonly room: PageRoom;
  readonly call: Call;
}

interface SinkWordProps {
  readonly people: SinkSheet["people"];
  roomOf(personId: string): PageRoom | undefined;
}

export function SinkWord({ people, roomOf }: SinkWordProps) {
  const [, look] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => look((count) => count + 1), LOOK_MS);
    return () => clearInterval(timer);
  }, []);
  const readers = people.flatMap(({ id, name }): Reader[] => {
    const room = roomOf(id);
    const call = room?.calls().find(({ kind }) => kind === "word");
    return room && call ? [{ name, room, call }] : [];
  });
  // The one said first, to whoever has not answered it yet.
  const [first] = [...readers].sort((a, b) => a.call.mark - b.call.mark);
  if (!first) return null;
  const { id } = first.call;
  return <OneWord key={id} readers={readers.filter(({ call }) => call.id === id)} first={first} />;
}

function OneWord({ readers, first }: { readers: readonly Reader[]; first: Reader }) {
  const { cue, sink } = useWords();
  const age = sayLateness(first.call, first.room.clock.now(), cue);
  const [isDeaf, setDeaf] = useState(true);
  useEffect(() => {
    const timer = setTimeout(() => setDeaf(false), DEAF_MS);
    return () => clearTimeout(timer);
  }, []);
  return (
    <section class="sink-word" aria-label={cue.word}>
      <div class="sink-word-text" role="alert">
        <RoomContext.Provider value={first.room}>
          {age !== "" && <p>{age}</p>}
          <Said text={first.call.words.how} />
        </RoomContext.Provider>
      </div>
      <div class="tile-keys">
        {readers.map(({ name, room, call }) => (
          <button
            key={name}
            type="button"
            class="key main"
            disabled={isDeaf}
            onClick={() => {
              room.shown(call);
              room.answer(call);
            }}
          >
            {sink.gotItBy(name)}
          </button>
        ))}
      </div>
    </section>
  );
}
