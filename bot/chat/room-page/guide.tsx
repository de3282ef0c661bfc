import { useEffect, useState } from "preact/hooks";
import { CallScreen } from "./call-screen.tsx";
import { createGuideRoom, type GuideRoom } from "./guide-room.ts";
import { Log } from "./log.tsx";
import { RoomContext, useRoom, useRoomPart } from "./room-context.ts";
import { RunCard } from "./run-card.tsx";
import { SoundBar } from "./sound-bar.tsx";
import { useWords } from "./words.ts";

/** A run from the plan to the log at sixty times the speed; it can be left at any time and leaves nothing behind. */
export function Guide({ onLeave }: { onLeave: () => void }) {
  const real = useRoom();
  const [room, setRoom] = useState<GuideRoom | null>(null);
  useEffect(() => {
    const made = createGuideRoom(real);
    setRoom(made);
    return () => made.stop();
  }, []);
  if (!room) return null;
  return (
    <RoomContext.Provider value={room}>
      <Tour room={room} onLeave={onLeave} />
    </RoomContext.Provider>
  );
}

function Tour({ room, onLeave }: { room: GuideRoom; onLeave: () => void }) {
  const { guide } = useWords();
  const views = useRoomPart((state) => state.views);
  useRoomPart((state) => state.events);
  return (
    <div class="bench guide">
      <header class="top">
        <h1>{guide.title}</h1>
        <button type="button" class="key" onClick={onLeave}>
          {guide.leave}
        </button>
      </header>
      <div class="bars">
        <SoundBar />
      </div>
      <main class="bench-main">
        <section class="my-runs" aria-label={guide.title}>
          <Step room={room} onLeave={onLeave} />
          {views.map((view) => (
            <RunCard key={view.run} view={view} />
          ))}
        </section>
        <Log />
      </main>
      <CallScreen />
    </div>
  );
}

/** What to do now, in the order in which a film is developed. */
function Step({ room, onLeave }: { room: GuideRoom; onLeave: () => void }) {
  const { guide } = useWords();
  const { stage } = room.bot;
  const [view] = room.store.get().views;
  const isFirstBath = view?.stepNumber === 1;
  const number = stage === "start" ? 0 : stage === "planned" ? 1 : stage === "over" ? 4 : isFirstBath ? 2 : 3;
  const step = guide.steps[number];
  return (
    <div class="guide-step" role="status">
      <p class="guide-count">
        {number + 1} / {guide.steps.length}
      </p>
      <h2>{step?.title}</h2>
      <p>{step?.text}</p>
      {stage === "start" && (
        <button type="button" class="key main" onClick={() => room.say(guide.planLine)}>
          {guide.askForTime}
        </button>
      )}
      {stage === "planned" && (
        <button type="button" class="key main" onClick={() => room.say("/run start")}>
          {guide.start}
        </button>
      )}
      {stage === "running" && number === 3 && (
        <button
          type="button"
          class="key"
          onClick={() =>
            room.say(`/run correct ago:${secondsSince(view?.startedAt, room) + 20} s`, guide.correct)
          }
        >
          {guide.correct}
        </button>
      )}
      {stage === "over" && (
        <button type="button" class="key main" onClick={onLeave}>
          {guide.done}
        </button>
      )}
    </div>
  );
}

function secondsSince(startedAt: number | null | undefined, room: GuideRoom): number {
  return startedAt == null ? 0 : Math.round((room.clock.now() - startedAt) / 1000);
}
