import { useEffect, useRef } from "preact/hooks";
import { formatSeconds } from "../../../commands/speech/wording.ts";
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
  return first ? <OneCue key={first.event.id} cue={first} others={cues.length - 1} /> : null;
}

function OneCue({ cue, others }: { cue: OpenCue; others: number }) {
  const room = useRoom();
  const words = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const isSoundOn = useRoomPart((state) => state.isSoundOn);
  const view = useRoomPart((state) => state.views).find(({ run }) => run === cue.run);
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
          {cue.run}
          {view?.tank ? ` · ${words.runs.tank(view.tank)}` : ""}
        </span>
        {others > 0 && <span>{words.cue.many(others)}</span>}
      </header>
      {cue.isLocal && <p class="cue-local">{words.link.localCall}</p>}
      <div id="cue-words" class="cue-words" role="alert">
        {lines.map((block, index) =>
          block.kind === "line" ? (
            <p key={index} class={isLate && index === 0 ? "cue-late" : "cue-line"}>
              <Marks marks={block.parts} />
            </p>
          ) : null,
        )}
      </div>
      {view?.endsAt != null && <Left endsAt={view.endsAt} />}
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

function Left({ endsAt }: { endsAt: number }) {
  const { cue } = useWords();
  const left = secondsTo(endsAt, useRoomTime());
  if (left < 0) return null;
  return (
    <p class="cue-left" role="timer" aria-live="off">
      <span class="digits">{formatSeconds(left)}</span> {cue.left}
    </p>
  );
}
