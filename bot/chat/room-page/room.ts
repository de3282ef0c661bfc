import type { Suggestion } from "../../../commands/define.ts";
import type { Language } from "../../../store/shapes/language.ts";
import type { DoorState, ToPage, WatchedFrom } from "../room/wire.ts";
import { createAlarm, type Alarm } from "./alarm.ts";
import { api } from "./api.ts";
import { createBegun, viewsIn } from "./begun.ts";
import { wordRefusal } from "./check.ts";
import { createRoomClock, type RoomClock } from "./clock.ts";
import { createCalling } from "./calling.ts";
import type { Call } from "./calls.ts";
import { askMe } from "./early.ts";
import { createEarlier } from "./earlier.ts";
import { joinFeed, joinWall } from "./feed.ts";
import { firstState } from "./first-state.ts";
import { answeredBy, forgetAnswered, forgetPerson, rememberHere, readKept } from "./kept.ts";
import { createLines } from "./lines.ts";
import { createLink } from "./link.ts";
import { createPageSound } from "./page-sound.ts";
import { SILENT, type Sounder } from "./sounder.ts";
import { createStore, NOTHING_OF_ANYBODY, OUT, type Store } from "./state.ts";
import type { Tone } from "./tones.ts";
import { createWake, type Wake } from "./wake.ts";
import { fetchWords, wordsIn } from "./word-books.ts";

/* The page's own part of the room: what it knows and what it can do. One for a page. */

export interface PageRoom {
  readonly store: Store;
  readonly clock: RoomClock;
  readonly alarm: Alarm;
  readonly sounder: Sounder;
  readonly wake: Wake;
  /** Looks who we are: opens the link if we are in, shows the door if not. */
  enter(): Promise<void>;
  /** Sends a typed line, or that of a button with this label. */
  say(text: string, label?: string): void;
  sendStale(id: string): void;
  dropStale(id: string): void;
  complete(
    name: string,
    option: string,
    typed: string,
    others: Record<string, string>,
  ): Promise<readonly Suggestion[]>;
  /** null: no more. */
  watchTanks(from: WatchedFrom | null): void;
  /** What wants something now, the most pressing first. */
  calls(): Call[];
  /** Every tone of the runs and words it knows of. */
  tones(): readonly Tone[];
  answer(call: Call): void;
  /** This call is before its person's eyes. */
  shown(call: Call): void;
  /** From now on the page and what is said to this person are in this language. */
  speak(language: Language): void;
  clearFault(): void;
  /** Says and hears nothing more. */
  close(): void;
}

/** `as`: at a device that is everybody's, for this one of the people who stand there. */
export function createPageRoom(as: string | null = null): PageRoom {
  const answeredKey = answeredBy(as);
  const store = createStore({ ...firstState(), answered: readKept(answeredKey, {}) });
  const clock = createRoomClock();
  const begun = createBegun(clock);
  const alarm = createAlarm();
  const calling = createCalling(store, () => clock.now());
  // Where many stand at one device, it sounds for all of them as one.
  const sounder = as === null ? createPageSound(store, clock, alarm, calling) : SILENT;
  const wake = createWake();
  const asked = new Map<number, (choices: readonly Suggestion[]) => void>();
  let seq = 0;
  let watchesFrom: WatchedFrom | null = null;
  let lastId: number | null = null;
  /** Chosen while nobody could be told. */
  let untold: Language | null = null;
  /** The language that was chosen last: its words may still be on their way. */
  let chosen: Language | null = null;
  /** Words to many that were shown here while nobody could be told. */
  const seen = new Set<number>();

  const link = createLink(as === null ? "/live" : `/live?as=${as}`, {
    onOpen() {
      link.send({ type: "hello", after: lastId, language: store.get().language });
      if (untold && link.send({ type: "language", language: untold })) untold = null;
      for (const id of seen) if (link.send({ type: "shown", id })) seen.delete(id);
    },
    onMessage: take,
    onLost() {
      store.set({ link: "lost" });
      for (const give of asked.values()) give([]);
      asked.clear();
      void lookWhetherStillIn();
    },
  });

  const lines = createLines(store, link);
  const earlier = createEarlier(store, link);

  async function loadCards(): Promise<void> {
    const { language } = store.get();
    const cards = await api.commands(language);
    // Who changes their mind while these are under way gets those of the later choice.
    if (cards.ok && store.get().language === language) store.set({ cards: cards.value });
  }

  /** Its words may come late, or not at all while the link is lost: then with the next opening of the page. */
  async function show(language: Language): Promise<void> {
    chosen = language;
    if (as === null) rememberHere("language", language);
    const words = await fetchWords(language).catch(() => null);
    if (words === null || chosen !== language) return;
    store.set({ language });
    await loadCards();
  }

  /** A refused socket tells no reason, so the door is asked. */
  async function lookWhetherStillIn(): Promise<void> {
    const me = await api.me();
    if (me.ok && me.value.state === "out") goOut(me.value);
  }

  function goOut(door: DoorState): void {
    link.close();
    lastId = null;
    untold = null;
    begun.forget();
    if (as === null && door.state === "out") forgetAnswered();
    store.set({ door, ...NOTHING_OF_ANYBODY });
  }

  function take(message: ToPage): void {
    begun.hear(viewsIn(message));
    switch (message.type) {
      case "welcome": {
        const { facts, views, plan, now } = message;
        clock.setSpeed(facts.speed);
        clock.guess(now);
        store.set({ facts, views, plan, link: "open", troubleSince: null });
        if (watchesFrom) link.send({ type: "watch", on: true, from: watchesFrom });
        if (store.get().cards.length === 0) void loadCards();
        earlier.resume();
        return lines.resend();
      }
      case "facts":
        store.set({ facts: message.facts });
        return void loadCards();
      case "events":
        return takeEvents(message);
      case "earlier":
        return earlier.take(message.events, message.earlier);
      case "language":
        return void show(message.language);
      case "views":
        return store.set({ views: message.views, plan: message.plan });
      case "first-day":
        return store.set({ firstDay: message.firstDay });
      case "wall":
        return store.set(({ wall }) => ({ wall: joinWall(wall, message) }));
      case "choices":
        asked.get(message.seq)?.(message.choices);
        asked.delete(message.seq);
        return undefined;
      case "taken":
        return lines.settle(message.id);
      case "refused": {
        const { language } = store.get();
        if (message.id !== null) lines.settle(message.id);
        return store.set({ fault: wordRefusal(message.refusal, wordsIn(language)) });
      }
      case "pong":
        return clock.take({ sentAt: message.sentAt, cameAt: Date.now(), roomNow: message.now });
      case "trouble":
        // From where the room has called last on, this page calls.
        return store.set({ troubleSince: message.since });
      case "present":
        return store.set({ present: { count: message.count, names: message.names } });
      case "gone":
        // Who is erased leaves nothing on their phone either.
        if (message.farewell !== null) forgetPerson();
        store.set({ farewell: message.farewell });
        void api.me().then((me) => goOut(me.ok ? me.value : OUT));
        return link.close();
    }
  }

  function takeEvents({ events: fresh, isReset, earlier: from }: Extract<ToPage, { type: "events" }>): void {
    lastId = Math.max(isReset ? 0 : (lastId ?? 0), ...fresh.map(({ id }) => id));
    store.set(({ events }) => ({ events: joinFeed(isReset ? [] : events, fresh) }));
    if (isReset) earlier.begin(from);
  }

  function tellShown(id: number): void {
    if (document.visibilityState !== "visible")
      return document.addEventListener("visibilitychange", () => tellShown(id), { once: true });
    if (!link.send({ type: "shown", id })) seen.add(id);
  }

  return {
    store,
    clock,
    alarm,
    sounder,
    wake,
    async enter() {
      if (as !== null) return link.open();
      const me = await askMe();
      if (!me.ok) return store.set({ isUnreachable: true });
      store.set({ door: me.value, isUnreachable: false });
      if (me.value.state !== "in") return goOut(me.value);
      store.set({ facts: me.value.facts, farewell: null });
      return link.open();
    },
    say: lines.say,
    sendStale: lines.sendStale,
    dropStale: lines.settle,
    complete(name, option, typed, others) {
      seq += 1;
      const mine = seq;
      return new Promise((resolve) => {
        asked.set(mine, resolve);
        if (!link.send({ type: "complete", seq: mine, name, option, typed, others })) {
          asked.delete(mine);
          resolve([]);
        }
      });
    },
    watchTanks(from) {
      watchesFrom = from;
      link.send({ type: "watch", on: from !== null, from: from ?? "wall" });
    },
    calls: calling.calls,
    tones: calling.tones,
    answer(call) {
      calling.answer(call);
      rememberHere(answeredKey, { ...readKept(answeredKey, {}), ...store.get().answered });
    },
    shown(call) {
      if (call.kind === "word") tellShown(call.mark);
    },
    speak(language) {
      void show(language);
      untold = link.send({ type: "language", language }) ? null : language;
    },
    clearFault: () => store.set({ fault: null }),
    close: () => link.close(),
  };
}
