import { useEffect, useState } from "preact/hooks";
import type { Action } from "../../../commands/define.ts";
import { doingNow } from "../../../commands/run/doing.ts";
import { formatSeconds } from "../../../commands/speech/wording.ts";
import type { PersonView } from "../room/view.ts";
import type { Call } from "./calls.ts";
import { doFirst, sayLateness } from "./lateness.ts";
import { useRoom, useRoomPart } from "./room-context.ts";
import { secondsTo, useRoomTime } from "./ticking.ts";
import { useWords } from "./words.ts";

/* One tank on a device that is everybody's: its number, whose it is, what the clock says, and one key. */

/** The next bath's key comes when its moment is near: too early it would be an invitation. */
const NEAR_END_SECONDS = 20;
/** A hand that was on its way to something else has come down by then. */
const DEAF_MS = 1000;

interface TileProps {
  readonly name: string;
  /** Everything else about this person's film. */
  onMore(): void;
}

/** What a person has here: a tile for each film in a tank, one for a plan that waits, one for their name alone. */
export function PersonTiles(props: TileProps) {
  const room = useRoom();
  const { sink, runs } = useWords();
  const views = useRoomPart((state) => state.views);
  const plan = useRoomPart((state) => state.plan);
  const pending = useRoomPart((state) => state.pending);
  // Before the room has said so, nobody knows whether they have a film in a tank.
  const isKnown = useRoomPart((state) => state.facts !== null);
  useRoomPart((state) => state.events);
  useRoomPart((state) => state.answered);
  useRoomTime(250);
  const calls = room.calls();
  return (
    <>
      {views.map((view) => (
        <RunTile
          key={view.run}
          view={view}
          call={calls.find(({ run }) => run?.number === view.run)}
          {...props}
        />
      ))}
      {plan && (
        <article class="tile">
          <TileHead where={plan.tank === null ? "" : runs.tank(plan.tank)} name={props.name} />
          <p class="tile-now">
            {plan.time} {runs.planned(plan.bath, plan.temperature)}
          </p>
          <div class="tile-keys">
            <button
              type="button"
              class="key main"
              disabled={pending.some(({ text }) => text === plan.line)}
              onClick={() => room.say(plan.line, runs.start)}
            >
              {runs.start}
            </button>
            <MoreKey {...props} />
          </div>
        </article>
      )}
      {isKnown && views.length === 0 && !plan && (
        <article class="tile">
          <TileHead where="" name={props.name} />
          <p class="tile-now">{sink.ready}</p>
          <div class="tile-keys">
            <button type="button" class="key main" onClick={props.onMore}>
              {sink.plan}
            </button>
          </div>
        </article>
      )}
    </>
  );
}

function TileHead({ where, name }: { where: string; name: string }) {
  return (
    <header class="tile-head">
      {where !== "" && <strong>{where}</strong>}
      <span>{name}</span>
    </header>
  );
}

function MoreKey({ name, onMore }: TileProps) {
  const { sink } = useWords();
  return (
    <button type="button" class="key" aria-label={sink.moreOf(name)} onClick={onMore}>
      {sink.more}
    </button>
  );
}

function RunTile({ view, call, ...props }: TileProps & { view: PersonView; call: Call | undefined }) {
  const { runs } = useWords();
  const now = Math.max(useRoomTime(), view.startedAt ?? -Infinity);
  const left =
    view.phase === "running" && view.endsAt !== null ? secondsTo(view.endsAt, now, view.speed) : null;
  const isDue = view.phase === "waiting" || (left !== null && left <= NEAR_END_SECONDS);
  const main = view.actions.find(({ weight }) => weight === "main");
  return (
    <article class={`tile is-${view.phase} ${call ? "is-called" : ""}`} aria-label={props.name}>
      <TileHead where={runs.where(view)} name={props.name} />
      {left !== null && (
        <p class={`tile-count ${left < 0 ? "is-over" : ""}`} role="timer" aria-live="off">
          <span class="digits">{formatSeconds(Math.abs(left))}</span>{" "}
          <span class="unit">{left >= 0 ? view.title : runs.over}</span>
        </p>
      )}
      {call ? <CallWords call={call} /> : <p class="tile-now">{doingNow(view, now)}</p>}
      <div class="tile-keys">
        {call ? (
          <CallKey key={call.id} call={call} />
        ) : (
          main && isDue && <PressKey action={main} onPress={() => undefined} />
        )}
        <MoreKey {...props} />
      </div>
    </article>
  );
}

function CallWords({ call }: { call: Call }) {
  const { cue } = useWords();
  const now = useRoomTime();
  const { does, how, seconds } = call.words;
  const late = call.until === Infinity ? sayLateness(call, now, cue) : "";
  return (
    <div class="tile-call" role="alert">
      <p>
        {seconds !== null && (
          <span class="tile-burst digits" role="timer" aria-live="off">
            {Math.max(0, secondsTo(call.until, now))}
          </span>
        )}
        <strong>{does}</strong> {[doFirst(call, call.at), how].filter(Boolean).join(" ")}
      </p>
      {late !== "" && <p aria-live="off">{late}</p>}
    </div>
  );
}

function CallKey({ call }: { call: Call }) {
  const room = useRoom();
  const { sink } = useWords();
  const [isDeaf, setDeaf] = useState(true);
  useEffect(() => {
    const timer = setTimeout(() => setDeaf(false), DEAF_MS);
    return () => clearTimeout(timer);
  }, []);
  const [action] = call.words.actions;
  const answer = (): void => room.answer(call);
  if (action) return <PressKey action={action} isDeaf={isDeaf} onPress={answer} />;
  return (
    <button type="button" class="key main" disabled={isDeaf} onClick={answer}>
      {sink.gotIt}
    </button>
  );
}

function PressKey({
  action: { label, line },
  isDeaf = false,
  onPress,
}: {
  action: Action;
  isDeaf?: boolean;
  onPress: () => void;
}) {
  const room = useRoom();
  const pending = useRoomPart((state) => state.pending);
  return (
    <button
      type="button"
      class="key main"
      // Pressed twice, it would be two steps.
      disabled={isDeaf || pending.some(({ text }) => text === line)}
      onClick={() => {
        onPress();
        room.say(line, label);
      }}
    >
      {label}
    </button>
  );
}
