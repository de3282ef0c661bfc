import { DEMO_NAME } from "../../demo/name.ts";
import type { Action, Reply } from "../../../commands/define.ts";
import { speaking } from "../../../commands/speech/language.ts";
import type { FeedEvent } from "../room/wire.ts";
import { createCalling } from "./calling.ts";
import { createSounder } from "./sounder.ts";
import { createGuideBot, type GuideBot } from "./guide-bot.ts";
import type { PageRoom } from "./room.ts";
import { createStore } from "./state.ts";

/* The tour's room: looks to the page like the real one, and holds its own clock. */

export const GUIDE_SPEED = 60;
/** The clock waits while one of so many agitations is read; later ones answer themselves after a moment. */
const READ_AGITATIONS = 2;
const SHOWN_MS = 900;
const BEAT_MS = 50;
const LONG_WAIT_MS = 3 * 60_000;
const HURRY = 4;

export interface GuideRoom extends PageRoom {
  readonly bot: GuideBot;
  stop(): void;
}

export function createGuideRoom(real: PageRoom): GuideRoom {
  const bot = createGuideBot();
  const store = createStore({
    ...real.store.get(),
    facts: {
      you: { id: "guide", name: "", role: "student" },
      class: { name: DEMO_NAME, zone: Intl.DateTimeFormat().resolvedOptions().timeZone, isDemo: true },
      speed: GUIDE_SPEED,
    },
    link: "open" as const,
    troubleSince: null,
    events: [],
    views: [],
    plan: null,
    firstDay: null,
    wall: [],
    pending: [],
    fault: null,
    answered: {},
  });
  let now = Date.now();
  let before = performance.now();
  let eventId = 0;
  let agitations = 0;

  const inOwnWords = <T>(work: () => T): T => speaking(store.get().language, work);

  function log(kind: FeedEvent["kind"], text: string, rest: Partial<FeedEvent> = {}): void {
    eventId += 1;
    const event: FeedEvent = {
      id: eventId,
      at: Math.round(now),
      kind,
      isPrivate: true,
      author: null,
      callsYou: false,
      text,
      runs: [],
      actions: [],
      pictures: [],
      files: [],
      dueAt: null,
      isWord: false,
      ...rest,
    };
    store.set((state) => ({ events: [...state.events, event] }));
  }

  const calling = createCalling(store, () => now);
  const sounder = createSounder({
    alarm: real.alarm,
    // Its clock runs otherwise than any file that could be played.
    track: null,
    tones: calling.tones,
    now: () => now,
    isOn: () => store.get().isSoundOn,
    speak: () => undefined,
  });

  function answer(reply: Reply): void {
    log("reply", reply.text, { actions: (reply.actions ?? []).filter(isOfTheTour) });
  }

  function beat(): void {
    const at = performance.now();
    const passedMs = at - before;
    before = at;
    // Time stands still while a call is read: the tour is no race.
    sounder.beat();
    if (calling.calls().length > 0 || bot.stage !== "running") return;
    const next = bot.nextCallAt() ?? Infinity;
    // Nobody wants to watch a film dry.
    const hurry = next - now > LONG_WAIT_MS ? HURRY : 1;
    now = Math.min(now + passedMs * GUIDE_SPEED * hurry, next);
    for (const call of inOwnWords(() => bot.callsUntil(now))) {
      const actions = (call.actions ?? []).filter(isOfTheTour);
      log("cue", call.text, { runs: call.runs, actions, dueAt: call.atMs });
      if ((call.actions ?? []).length === 0) passLaterAgitations();
    }
    store.set({ views: inOwnWords(() => bot.views()) });
  }

  function passLaterAgitations(): void {
    agitations += 1;
    if (agitations <= READ_AGITATIONS) return;
    setTimeout(() => {
      const [first] = calling.calls();
      if (first && first.words.actions.length === 0) room.answer(first);
    }, SHOWN_MS);
  }

  const timer = setInterval(beat, BEAT_MS);
  const room: GuideRoom = {
    ...real,
    store,
    bot,
    clock: { ...real.clock, now: () => now },
    enter: async () => undefined,
    say(text, label) {
      log("line", label ?? text, { author: { name: "", isYou: true } });
      const reply = inOwnWords(() => bot.say(text, now));
      if (reply) answer(reply);
      store.set({ views: inOwnWords(() => bot.views()) });
    },
    sendStale: () => undefined,
    dropStale: () => undefined,
    complete: async () => [],
    watchTanks: () => undefined,
    sounder,
    calls: calling.calls,
    answer(call) {
      before = performance.now();
      calling.answer(call);
    },
    shown: () => undefined,
    clearFault: () => undefined,
    stop: () => clearInterval(timer),
  };
  return room;
}

/** Buttons that lead to parts of the bot the tour has not with it are left out. */
function isOfTheTour({ line }: Action): boolean {
  return /^run (start|next|status|correct)\b/.test(line);
}
