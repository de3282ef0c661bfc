import type { VNode } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { LATE_FROM_MS } from "../../../commands/run/doing.ts";
import { saySeconds } from "../../../commands/speech/wording.ts";
import type { FeedEvent } from "../room/wire.ts";
import { Actions } from "./actions.tsx";
import { fillOf } from "./fill.ts";
import { Photo } from "./photo.tsx";
import { Pictures } from "./picture.tsx";
import { useRoomPart } from "./room-context.ts";
import { sayInstant, sayMinute } from "./instant.ts";
import { Said } from "./said.tsx";
import { useFormDesk } from "./use-forms.ts";
import { useWords } from "./words.ts";

const NEAR_END_PX = 120;
const OWN_SCROLL_MS = 200;
/** About a line: of an entry that has begun. */
const LINE_PX = 24;

/** What was said here, as a log: the time in the margin, one entry under the other. */
export function Log() {
  const { feed } = useWords();
  const events = useRoomPart((state) => state.events);
  const isCut = useRoomPart((state) => state.isFeedCut);
  const list = useRef<HTMLDivElement>(null);
  /** An entry that is as it was is not looked at again with each that comes before or after: an evening's log is long. */
  const drawn = useRef(new WeakMap<FeedEvent, VNode<EntryProps>>());
  const [isNewestSeen, setNewestSeen] = useState(true);

  // Someone who reads further up is not pulled away; what we scroll ourselves does not count as that.
  const isFollowing = useRef(true);
  const scrolledAt = useRef(0);

  function goToEnd(): void {
    const element = list.current;
    if (!element) return;
    isFollowing.current = true;
    scrolledAt.current = performance.now();
    element.scrollTop = element.scrollHeight;
    // Of an entry higher than the window the beginning matters: the number stands first.
    const last = element.querySelector(".entry:last-child");
    if (last && last.clientHeight > element.clientHeight)
      element.scrollTop += last.getBoundingClientRect().top - element.getBoundingClientRect().top;
  }

  function onScroll({ currentTarget: at }: { currentTarget: HTMLDivElement }): void {
    const isNear = at.scrollHeight - at.scrollTop - at.clientHeight < NEAR_END_PX;
    if (performance.now() - scrolledAt.current > OWN_SCROLL_MS) isFollowing.current = isNear;
    setNewestSeen(isNear || hasBegun(at));
  }

  function entryOf(event: FeedEvent, before: FeedEvent | undefined): VNode<EntryProps> {
    const known = drawn.current.get(event);
    if (known && known.props.before === before) return known;
    const entry = <Entry key={event.id} event={event} before={before} />;
    drawn.current.set(event, entry);
    return entry;
  }

  const newest = events[events.length - 1];
  useEffect(() => {
    if (isFollowing.current || newest?.author?.isYou) goToEnd();
  }, [newest]);
  useEffect(() => {
    const element = list.current;
    if (!element) return undefined;
    // The keyboard of a phone takes half the height away; and a picture that has come, or earlier entries, push the end down.
    const observer = new ResizeObserver(() => isFollowing.current && goToEnd());
    for (const each of [element, ...element.children]) observer.observe(each);
    return () => observer.disconnect();
  }, []);

  return (
    <section class="log" aria-label={feed.title}>
      <div ref={list} class="entries" role="log" tabIndex={0} onScroll={onScroll}>
        <ol>
          {isCut && <li class="entry-note">{feed.earlierCut}</li>}
          {events.length === 0 && <li class="entry-note">{feed.empty}</li>}
          {events.map((event, index) => entryOf(event, events[index - 1]))}
        </ol>
      </div>
      {!isNewestSeen && (
        <button type="button" class="key to-newest" onClick={goToEnd}>
          {feed.newest}
        </button>
      )}
    </section>
  );
}

/** Of the newest entry, higher than the window or not, the beginning has come into view: a key to it would lie over its words. */
function hasBegun(list: HTMLDivElement): boolean {
  const newest = list.querySelector(".entry:last-child");
  return (
    newest !== null && newest.getBoundingClientRect().top < list.getBoundingClientRect().bottom - LINE_PX
  );
}

interface EntryProps {
  readonly event: FeedEvent;
  readonly before: FeedEvent | undefined;
}

function Entry({ event, before }: EntryProps) {
  const { feed } = useWords();
  const zone = useRoomPart((state) => state.facts?.class.zone);
  const day = sayInstant(event.at, "date", zone);
  const isNewDay = before !== undefined && sayInstant(before.at, "date", zone) !== day;
  return (
    <>
      {isNewDay && <li class="entry-note">{day}</li>}
      <li class={`entry is-${event.kind} ${event.callsYou ? "calls-you" : ""}`}>
        <time class="entry-time" dateTime={new Date(event.at).toISOString()}>
          {sayMinute(event.at, zone)}
        </time>
        <div class="entry-body">
          <EntryHead event={event} />
          {event.kind === "line" ? <p class="typed">{event.text}</p> : <Said text={event.text} />}
          <Pictures pictures={event.pictures} />
          {event.photo && <Photo place={event.photo} />}
          {event.files.map(({ name, href }) => (
            <a key={href} class="key file" href={href} download={name}>
              {feed.download(name)}
            </a>
          ))}
          <Actions actions={event.actions} />
          {event.again && <FormKey event={event} />}
        </div>
      </li>
    </>
  );
}

/** A refused call in its form again, as it was. */
function FormKey({ event }: { event: FeedEvent }) {
  const { forms } = useWords();
  const desk = useFormDesk();
  const cards = useRoomPart((state) => state.cards);
  const { again } = event;
  const fill = again && fillOf(again.line, cards, event.text, again.option);
  if (!fill) return null;
  return (
    <button type="button" class="key" onClick={() => desk.open(fill)}>
      {forms.again}
    </button>
  );
}

function EntryHead({ event }: { event: FeedEvent }) {
  const { feed } = useWords();
  if (event.kind === "line") return null;
  const lateMs = event.dueAt === null ? 0 : event.at - event.dueAt;
  const tags = [
    event.kind === "cue" ? feed.call : "",
    event.isPrivate ? "" : feed.toClass,
    !event.isPrivate && event.author ? feed.askedBy(event.author.name) : "",
    lateMs >= LATE_FROM_MS ? feed.late(saySeconds(Math.round(lateMs / 1000))) : "",
  ].filter(Boolean);
  return tags.length > 0 ? <p class="entry-tags">{tags.join(" · ")}</p> : null;
}
