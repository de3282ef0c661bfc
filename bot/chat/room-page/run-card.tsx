import { useState } from "preact/hooks";
import { formatSeconds, makeNumber, saySeconds } from "../../../commands/speech/wording.ts";
import { actionsAt, comingCall, doingNow } from "../../../commands/run/doing.ts";
import { nameOfView } from "../../../commands/run/run-view.ts";
import type { PersonView } from "../room/view.ts";
import { Actions } from "./actions.tsx";
import { useRoom } from "./room-context.ts";
import { secondsTo, useRoomTime, useToldTime } from "./ticking.ts";
import { useWords } from "./words.ts";

/** One film in a tank, or prints along trays: where it is, what the clock counts to, the one next thing to do. */
export function RunCard({ view, owner }: { view: PersonView; owner?: string }) {
  const { runs } = useWords();
  const name = runs.name(nameOfView(view));
  const [isFar, setFar] = useState(false);
  // Spread, since the types of the elements don't know it.
  const atSight = {
    oncontentvisibilityautostatechange: (event: ContentVisibilityAutoStateChangeEvent) =>
      setFar(event.skipped),
  };
  const everyMs = beatOf(view, owner !== undefined, isFar);
  const whereAndOwner = `${runs.where(view) || makeNumber("run", view.run)} · ${owner}`;
  return (
    <article
      class={`run is-${view.phase}`}
      tabIndex={-1}
      aria-label={`${owner ? `${owner}, ` : ""}${name}`}
      {...atSight}
    >
      {/* One's own run is known by its step, another's by its tank or trays. */}
      <header class="run-head">
        <h3>{owner ? whereAndOwner : view.title}</h3>
        <span class="run-name">{owner ? view.title : name}</span>
      </header>
      {view.speed !== undefined && <p class="trial-mark">{runs.trialMark(view.speed)}</p>}
      <Strip view={view} everyMs={Math.max(everyMs, 500)} />
      <Counting view={view} everyMs={everyMs} />
      {!owner && <RunKeys view={view} />}
    </article>
  );
}

function RunKeys({ view }: { view: PersonView }) {
  const now = useRoomTime(1000);
  return (
    <>
      <PouredEarlier view={view} now={now} />
      <Actions actions={actionsAt(view, now)} />
    </>
  );
}

/** So long after a press its lateness is put right with one more. */
const PUT_RIGHT_MS = 60_000;
const EARLIER_SECONDS = [10, 20, 30] as const;

function PouredEarlier({ view, now }: { view: PersonView; now: number }) {
  const { runs } = useWords();
  const room = useRoom();
  const { startedAt, isPoured, run, speed } = view;
  // A trial has gone on too far by then.
  if (startedAt === null || !isPoured || speed !== undefined || now - startedAt >= PUT_RIGHT_MS) return null;
  const put = (by: number): void => {
    const ago = Math.round((room.clock.now() - startedAt) / 1000) + by;
    room.say(`/run correct run:${makeNumber("run", run)} ago:${ago}`, runs.earlierBy(by));
  };
  return (
    <div class="poured" role="group" aria-label={runs.pouredEarlier}>
      <span>{runs.pouredEarlier}</span>
      {EARLIER_SECONDS.map((by) => (
        <button key={by} type="button" class="key" aria-label={runs.earlierBy(by)} onClick={() => put(by)}>
          {saySeconds(by)}
        </button>
      ))}
    </div>
  );
}

/** The steps as frames of a strip: done ones are exposed, the present one fills. */
export function Strip({ view, everyMs }: CountingProps) {
  const { runs } = useWords();
  const { stepNumber, stepCount } = view;
  const percent = useToldTime((now) => Math.round(shareOf(view, now) * 100), everyMs);
  return (
    <div class="strip" role="img" aria-label={runs.step(stepNumber, stepCount)}>
      {Array.from({ length: stepCount }, (_, index) => {
        const isDone = index + 1 < stepNumber || view.phase === "finished";
        const isNow = index + 1 === stepNumber && !isDone;
        return (
          <span key={index} class={`frame ${isDone ? "done" : isNow ? "now" : ""}`}>
            {isNow && <span class="fill" style={{ transform: `scaleX(${percent / 100})` }} />}
          </span>
        );
      })}
    </div>
  );
}

/** How much of its step is over, 0 to 1. */
function shareOf({ startedAt, endsAt }: PersonView, now: number): number {
  if (startedAt === null || endsAt === null) return 0;
  return Math.min(1, Math.max(0, (now - startedAt) / Math.max(1, endsAt - startedAt)));
}

interface CountingProps {
  readonly view: PersonView;
  readonly everyMs: number;
}

/** One's own seconds are kept to; those of thirty others are drawn all at once, and seldom of a card far out of sight. */
function beatOf({ speed }: PersonView, isOthers: boolean, isFar: boolean): number {
  if (isOthers) return isFar ? 5000 : 1000;
  return speed === undefined ? 250 : 100;
}

/** What the clock counts, what is done now, and what comes. */
function Counting(props: CountingProps) {
  const isRunning = props.view.phase === "running" && props.view.endsAt !== null;
  return (
    <>
      {isRunning && <Countdown {...props} />}
      <DoneNow {...props} />
      {isRunning && <Coming {...props} />}
    </>
  );
}

/** The room's time is known to a few ms only, and no step has more left than it lasts. */
function useOf<T extends string | number | null>(
  { view, everyMs }: CountingProps,
  read: (now: number) => T,
): T {
  const from = view.startedAt ?? -Infinity;
  return useToldTime((now) => read(Math.max(now, from)), everyMs);
}

function Countdown(props: CountingProps) {
  const { runs } = useWords();
  const { endsAt, speed } = props.view;
  const left = useOf(props, (now) => secondsTo(endsAt ?? now, now, speed));
  return (
    <p class={`countdown ${left < 0 ? "is-over" : ""}`} role="timer" aria-live="off">
      <span class="digits">{formatSeconds(Math.abs(left))}</span>
      <span class="unit">{left >= 0 ? runs.left : runs.over}</span>
    </p>
  );
}

function DoneNow(props: CountingProps) {
  return <p class="run-now">{useOf(props, (now) => doingNow(props.view, now))}</p>;
}

function Coming(props: CountingProps) {
  const { runs } = useWords();
  const { view } = props;
  const brief = useOf(props, (now) => comingCall(view, now)?.words.brief ?? null);
  const left = useOf(props, (now) => {
    const call = comingCall(view, now);
    return call ? secondsTo(call.at, now, view.speed) : null;
  });
  if (brief === null || left === null) return null;
  return (
    <p class="run-next">
      {runs.next}: {brief}, <span class="digits">{runs.inTime(formatSeconds(left))}</span>
    </p>
  );
}
