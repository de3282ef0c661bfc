import { useEffect, useState } from "preact/hooks";
import { useRoom, useRoomPart } from "./room-context.ts";
import { useWords } from "./words.ts";

const LOOK_MS = 300;

/** Says plainly where calls can't be heard while a run is on, and takes the tap that browsers want first. */
export function SoundBar() {
  const { hearing: words } = useWords();
  const room = useRoom();
  const isSoundOn = useRoomPart((state) => state.isSoundOn);
  const isGoing = useRoomPart((state) => state.views).some(
    ({ phase }) => phase === "running" || phase === "waiting",
  );
  const [hearing, setHearing] = useState(room.sounder.hearing());
  useEffect(() => {
    const timer = setInterval(() => setHearing(room.sounder.hearing()), LOOK_MS);
    return () => clearInterval(timer);
  }, [room]);
  if (!isGoing || !isSoundOn || hearing === "on") return null;
  if (hearing === "none")
    return (
      <p class="sound-bar" role="status">
        {words.none}
      </p>
    );
  return (
    // The touch itself lets the sound go: the page listens for any.
    <button type="button" class="sound-bar" onClick={() => setHearing(room.sounder.hearing())}>
      {words[hearing]}
    </button>
  );
}
