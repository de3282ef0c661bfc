import { useEffect, useRef } from "preact/hooks";
import { formatSeconds, makeNumber } from "../../../commands/speech/wording.ts";
import type { RunName } from "../../../store/shapes/run.ts";
import { LATE_FROM_MS, type OpenCue } from "./cues.ts";
import { readBlocks } from "./marks.ts";
import { openModal } from "./modal.ts";
import { useRoom, useRoomPart } from "./room-context.ts";
import { Marks } from "./said.tsx";
import { secondsTo, useRoomTime } from "./ticking.ts";
import { useWords } from "./words.ts";

/** Repeated so often while a change of bath stays unanswered, and then no more: thirty phones share the room. */
const REPEATS = 4;
const REPEAT_MS = 5000;

/** The call that wants an answer now, over everything else, until it is answered. */
export function CueScreen() {
  const room = useRoom();
  useRoomPart((state) => state.events);
  useRoomPart((state) => state.views);
  useRoomPart((state) => state.answered);
  useRoomTime(100);
  const cues = room.cues();
  const first = cues[0];
  return first ? <OneCue key={first.event.id} cue={first} others={cues.slice(1)} /> : null;
}

function OneCue({ cue, others }: { cue: OpenCue; others: readonly OpenCue[] }) {
  const room = useRoom();
  const words = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const isSoundOn = useRoomPart((state) => state.isSoundOn);
  const isInTrouble = useRoomPart((state) => state.troubleSince !== null);
  const { event } = cue;
  const isLate = event.dueAt !== null && event.at - event.dueAt >= LATE_FROM_MS;
  const actions = event.actions.length > 0 ? event.actions : [];
  const tone = actions.length > 0 ? "change" : "agitate";

  useEffect(() => {
    openModal(dialog.current);
    room.alarm.call(tone, isSoundOn);
    if (tone === "agitate") return undefined;
    let left = REPEATS;
    const again = setInterval(() => {
      left -= 1;
      if (left < 0) clearInterval(again);
      else room.alarm.call(tone, room.store.get().isSoundOn);
    }, REPEAT_MS);
    return () => clearInterval(again);
  }, []);

  const lines = readBlocks(event.text);
  return (
    <dialog
      ref={dialog}
      class={`cue tone-${tone}`}
      aria-labelledby="cue-words"
      onCancel={(cancelled) => cancelled.preventDefault()}
    >
      <header class="cue-head">
        <span>{words.cue.title}</span>
        <span>
          <Names runs={cue.runs} />
        </span>
        {others.length > 0 && <span>{words.cue.many(others.length)}</span>}
      </header>
      {cue.isLocal && <p class="cue-local">{isInTrouble ? words.trouble.localCall : words.link.localCall}</p>}
      <div id="cue-words" class="cue-words" role="alert">
        {lines.map((block, index) =>
          block.kind === "line" ? (
            <p key={index} class={isLate && index === 0 ? "cue-late" : "cue-line"}>
              <Marks marks={block.parts} />
            </p>
          ) : null,
        )}
      </div>
      <Left runs={cue.runs} />
      {others.length > 0 && (
        <ul class="cue-others">
          {others.map((other) => (
            <Other key={other.event.id} cue={other} />
          ))}
        </ul>
      )}
      <div class="cue-keys">
        {actions.length === 0 && (
          <button type="button" class="key main huge" onClick={() => room.answerCue(cue)}>
            {words.cue.gotIt}
          </button>
        )}
        {actions.map(({ label, line, weight }, index) => (
          <button
            key={line}
            type="button"
            class={`key huge ${index === 0 ? "main" : (weight ?? "plain")}`}
            onClick={() => {
              room.answerCue(cue);
              room.say(line, label);
            }}
          >
            {label}
          </button>
        ))}
        {actions.length > 0 && (
          <button type="button" class="quiet" onClick={() => room.answerCue(cue)}>
            {words.cue.notYet}
          </button>
        )}
      </div>
    </dialog>
  );
}

/** Who has several tanks sees at once what each of them wants; it is answered when its turn comes. */
function Other({ cue }: { cue: OpenCue }) {
  const first = readBlocks(cue.event.text).find((block) => block.kind === "line");
  return (
    <li>
      <strong>
        <Names runs={cue.runs} />
      </strong>
      {first && (
        <span>
          <Marks marks={first.parts} />
        </span>
      )}
      <Left runs={cue.runs} />
    </li>
  );
}

/** `R7 · Tank 3`. */
function Names({ runs }: { runs: readonly RunName[] }) {
  const words = useWords();
  const names = runs.map(({ number, tank }) =>
    [makeNumber("run", number), ...(tank === null ? [] : [words.runs.tank(tank)])].join(" · "),
  );
  return <>{names.join(", ")}</>;
}

/** What is left of the step each of these runs is in. */
function Left({ runs }: { runs: readonly RunName[] }) {
  const { cue } = useWords();
  const views = useRoomPart((state) => state.views);
  const now = useRoomTime();
  const lefts = views.flatMap(({ run, endsAt }) => {
    const left = endsAt === null ? -1 : secondsTo(endsAt, now);
    return left >= 0 && runs.some(({ number }) => number === run) ? [{ run, left }] : [];
  });
  return (
    <>
      {lefts.map(({ run, left }) => (
        <p key={run} class="cue-left" role="timer" aria-live="off">
          <span class="digits">{formatSeconds(left)}</span> {cue.left}
        </p>
      ))}
    </>
  );
}
