import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { formatSeconds } from "../../../commands/speech/wording.ts";
import type { Call } from "./calls.ts";
import { useDialogKeys, useFocusHere } from "./focus.ts";
import { holdKeys, isTextField } from "./hold.ts";
import { doFirst, sayLateness } from "./lateness.ts";
import { useRoom, useRoomPart } from "./room-context.ts";
import { Said } from "./said.tsx";
import { SoundBar } from "./sound-bar.tsx";
import { secondsTo, useToldTime } from "./ticking.ts";
import { useWords } from "./words.ts";

/** After it is gone, so that a second tap of the same thumb, or one that came too late, meets nothing. */
const AFTER_PRESS_MS = 500;
const AFTER_ITSELF_MS = 700;
/** From here on a word to read is set smaller: what a run is told of fits a phone with its keys. */
const LONG_WORD = 120;

/** The call that wants something now, over everything else, until it is answered or over. */
export function CallScreen() {
  const room = useRoom();
  useRoomPart((state) => state.events);
  useRoomPart((state) => state.views);
  useRoomPart((state) => state.answered);
  useToldTime(
    () =>
      room
        .calls()
        .map(({ id }) => id)
        .join(),
    100,
  );
  const [first, ...others] = room.calls();
  return first ? <OneCall key={first.id} call={first} others={others} /> : null;
}

interface OneCallProps {
  readonly call: Call;
  readonly others: readonly Call[];
}

function OneCall({ call, others }: OneCallProps) {
  const room = useRoom();
  const words = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const isPressed = useRef(false);
  const [afterMs] = useState(() => room.clock.now() - call.at);
  // Held to the call, it moves with it where the room's clock is set.
  const shownAt = call.at + afterMs;
  const isLost = useRoomPart((state) => state.link === "lost");
  const isInTrouble = useRoomPart((state) => state.troubleSince !== null);
  const { does, how, actions, seconds } = call.words;
  const isChange = actions.length > 0 && call.kind !== "word";
  // Nobody's keyboard is taken to a key that moves a film's clock, and who types goes on typing.
  useFocusHere(dialog, false);
  useDialogKeys(dialog, null);
  // Held before it is seen: a thumb may come down in the very moment.
  useLayoutEffect(() => {
    holdKeys();
    return () => holdKeys(isPressed.current ? AFTER_PRESS_MS : AFTER_ITSELF_MS);
  }, []);
  useEffect(() => room.shown(call), []);

  const answer = (line?: string, label?: string): void => {
    isPressed.current = true;
    room.answer(call);
    if (line !== undefined) room.say(line, label);
  };
  return (
    <dialog
      ref={dialog}
      open
      class={`cue is-${call.kind} ${isChange ? "tone-change" : ""}`}
      role="alertdialog"
      tabIndex={-1}
      aria-modal="true"
      aria-labelledby="cue-words"
    >
      <header class="cue-head">
        <Name call={call} />
        {others.length > 0 && <span>{words.cue.many(others.length)}</span>}
      </header>
      <TrialMark run={call.run} />
      {(isLost || isInTrouble) && (
        <p class="cue-local">{isInTrouble ? words.trouble.localCall : words.link.localCall}</p>
      )}
      <SoundBar />
      <div class="cue-body">
        <div id="cue-words" class="cue-words" role="alert">
          {does !== "" && <p class="cue-does">{does}</p>}
          <Lateness call={call} shownAt={shownAt} />
        </div>
        {seconds !== null && <Burst call={call} />}
        <div class={`cue-how ${how.length > LONG_WORD ? "is-long" : ""}`}>
          <Said text={[doFirst(call, shownAt), how].filter(Boolean).join(" ")} />
        </div>
        <Left call={call} />
      </div>
      {others.length > 0 && (
        <ul class="cue-others">
          {others.map((other) => (
            <Other key={other.id} call={other} />
          ))}
        </ul>
      )}
      <Typing />
      {/* A mouse takes the keyboard from nobody who types. */}
      <div class="cue-keys" onMouseDown={(event) => event.preventDefault()}>
        {actions.map(({ label, line, weight }, index) => (
          <button
            key={line}
            type="button"
            class={`key huge ${index === 0 && isChange ? "main" : (weight ?? "plain")}`}
            onClick={() => answer(line, label)}
          >
            {label}
            {call.run && others.length > 0 && <small class="key-run">{words.runs.name(call.run)}</small>}
          </button>
        ))}
        <button type="button" class={isChange ? "quiet" : "key main huge"} onClick={() => answer()}>
          {isChange ? words.cue.notYet : words.cue.gotIt}
        </button>
      </div>
    </dialog>
  );
}

/** `R7 · Tank 3`, `R9 · Trays 1`; of a word, that it is one. */
function Name({ call: { run } }: { call: Call }) {
  const words = useWords();
  if (run === null) return <strong>{words.cue.word}</strong>;
  return <strong>{words.runs.name(run)}</strong>;
}

/** How late it was when it came to be seen; of what grows older while it is looked at, how late it is now. */
function Lateness({ call, shownAt }: { call: Call; shownAt: number }) {
  const { cue } = useWords();
  const isStill = call.kind === "agitate" || call.kind === "agitate-first" || call.kind === "pour-out";
  const late = useToldTime((now) => sayLateness(call, isStill ? shownAt : now, cue), 500);
  return late === "" ? null : <p class="cue-late">{late}</p>;
}

/** The doing counted down: `30` to `0`. */
function Burst({ call: { at, run, words } }: { call: Call }) {
  const speed = useSpeed(run);
  const endsAt = at + ((words.seconds ?? 0) * 1000) / speed;
  const left = useToldTime((now) => Math.max(0, secondsTo(endsAt, now, speed)), 100);
  return (
    <p class="cue-burst digits" role="timer" aria-live="off">
      {left >= 60 ? formatSeconds(left) : left}
    </p>
  );
}

function TrialMark({ run }: Pick<Call, "run">) {
  const { runs } = useWords();
  const speed = useSpeed(run);
  return run?.isTrial ? <p class="trial-mark">{runs.trialMark(speed)}</p> : null;
}

/** How many of the run's seconds pass in one of the room's. */
function useSpeed(run: Call["run"]): number {
  return useRoomPart((state) => state.views).find((view) => view.run === run?.number)?.speed ?? 1;
}

/** What is left of the step its run is in. */
function Left({ call: { run } }: { call: Call }) {
  const { cue } = useWords();
  const endsAt = useRoomPart((state) => state.views).find((view) => view.run === run?.number)?.endsAt ?? null;
  const speed = useSpeed(run);
  const left = useToldTime((now) => (endsAt === null ? -1 : secondsTo(endsAt, now, speed)));
  if (left < 0) return null;
  return (
    <p class="cue-left" role="timer" aria-live="off">
      <span class="digits">{formatSeconds(left)}</span> {cue.left}
    </p>
  );
}

/** Who has several tanks sees at once what each of them wants; it is answered when its turn comes. */
function Other({ call }: { call: Call }) {
  const { cue } = useWords();
  const left = useToldTime((now) => Math.max(0, secondsTo(call.until, now)));
  const waits = call.kind === "next-bath" || call.kind === "nudge";
  const late = useToldTime((now) => (waits ? sayLateness(call, now, cue) : ""), 500);
  return (
    <li>
      <Name call={call} />
      {call.kind === "word" ? (
        <div class="cue-other-word">
          <Said text={call.words.how} />
        </div>
      ) : (
        <>
          <span>{call.words.does}</span>
          {call.words.seconds !== null && <span class="digits">{left}</span>}
          {late !== "" && <span class="cue-other-late">{late}</span>}
          <Left call={call} />
        </>
      )}
    </li>
  );
}

/** What is being typed underneath goes on, and is seen here. */
function Typing() {
  const { cue } = useWords();
  const [text, setText] = useState<string | null>(null);
  useEffect(() => {
    const look = (): void => {
      const at = document.activeElement;
      const isTyped = isTextField(at) && !(at instanceof HTMLSelectElement);
      setText(isTyped ? (at as HTMLInputElement | HTMLTextAreaElement).value : null);
    };
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== "Escape" || !isTextField(document.activeElement)) return;
      event.preventDefault();
      event.stopPropagation();
      document.querySelector<HTMLElement>("dialog.cue")?.focus();
    };
    look();
    document.addEventListener("input", look);
    document.addEventListener("focusin", look);
    document.addEventListener("keydown", onKey, { capture: true });
    return () => {
      document.removeEventListener("input", look);
      document.removeEventListener("focusin", look);
      document.removeEventListener("keydown", onKey, { capture: true });
    };
  }, []);
  if (text === null || text === "") return null;
  return (
    <p class="cue-typing">
      {cue.typing} <span class="typed">{text}</span>
    </p>
  );
}
