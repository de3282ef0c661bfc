import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Call } from "../../../../../bot/chat/room-page/calls.ts";
import { createSounder, type Sounder } from "../../../../../bot/chat/room-page/sounder.ts";
import { inTurn, lengthMs, tonesOf, type Tone } from "../../../../../bot/chat/room-page/tones.ts";
import { createTrackPlayer } from "../../../../../bot/chat/room-page/track-player.ts";
import { advance, type RunEvent } from "../../../../../commands/run/machine.ts";
import { viewOf } from "../../../../../commands/run/view.ts";
import { isOver, type Run } from "../../../../../store/shapes/run.ts";
import { openEar, type Device, type Ear } from "./ear.ts";
import { aPlan, aRun, aStep, START } from "../../../../support/make.ts";

/*
 * Each call is heard once, from the page or from its track, at its moment, whatever else happens. What is in a track's file
 * is looked at elsewhere; here it is taken at the word of whoever made it.
 */

let ear: Ear;
vi.mock("../../../../../bot/chat/room-page/track.ts", async (load) => ({
  ...(await load<object>()),
  makeSegment(tones: readonly Tone[], fromMs: number, toMs: number) {
    ear.made(tones, fromMs, toMs);
    return new Uint8Array(0);
  },
}));
beforeEach(() => {
  vi.spyOn(URL, "createObjectURL").mockImplementation(() => "blob:");
  vi.spyOn(URL, "revokeObjectURL").mockImplementation(() => undefined);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

interface PageOptions extends Device {
  /** A device that is everybody's: no two tones at once. */
  readonly isSink?: boolean;
  readonly beatMs?: number;
  readonly runs: readonly Run[];
}

/** A tone from when on and until when it was wanted, by the room's clock. */
interface Wanted {
  readonly tone: Tone;
  readonly from: number;
  readonly to: number;
}

/** A page with these runs, whose clock the test moves. */
class Page {
  runs: readonly Run[];
  words: readonly Call[] = [];
  answered: Record<string, number> = {};
  isOn = true;
  offsetMs = 0;
  /** The browser holds its timers back until then. */
  idleUntil = -Infinity;
  tones: readonly Tone[] = [];
  readonly wanted = new Map<string, Wanted>();
  readonly sounder: Sounder;
  #beatIn = 0;
  #changedAt: number | undefined = START;

  readonly options: PageOptions;

  constructor(options: PageOptions) {
    this.options = options;
    ear = openEar(START, options);
    this.runs = options.runs;
    this.sounder = createSounder({
      alarm: { ...ear.alarm, look: () => "on", unlock: () => undefined, buzz: () => undefined },
      track: createTrackPlayer(() => this.now()),
      tones: () => this.#look(),
      now: () => this.now(),
      isOn: () => this.isOn,
      speak: () => undefined,
    });
    this.#look();
  }

  now = (): number => ear.now() + this.offsetMs;

  /** What is to be heard, made anew where something has changed since: at each beat, as a page does. */
  #look(): readonly Tone[] {
    const changedAt = this.#changedAt;
    this.#changedAt = undefined;
    if (changedAt === undefined) return this.tones;
    const views = this.runs.filter((run) => !isOver(run)).map((run) => viewOf(run, ""));
    const all = tonesOf(views, this.words, this.answered);
    this.tones = this.options.isSink ? inTurn(all, this.tones, this.now()) : all;
    const ids = new Map(this.tones.map((tone) => [tone.id, tone]));
    for (const [id, each] of this.wanted)
      if (!ids.has(id) && each.to === Infinity) this.wanted.set(id, { ...each, to: changedAt });
    for (const [id, tone] of ids) {
      const known = this.wanted.get(id);
      if (!known || known.to < Infinity) this.wanted.set(id, { tone, from: changedAt, to: Infinity });
      else if (known.tone.at > this.now()) {
        // Whose turn comes at once, since another one's was given up, is due now.
        const isDueAtOnce = tone.at <= changedAt;
        this.wanted.set(id, { ...known, tone, from: isDueAtOnce ? changedAt : known.from });
      }
    }
    return this.tones;
  }

  pass(ms: number): void {
    for (let left = ms; left > 0; left -= 10) {
      ear.pass(10);
      this.#beatIn -= 10;
      if (this.#beatIn > 0) continue;
      this.#beatIn = this.options.beatMs ?? BEAT_MS;
      if (ear.now() >= this.idleUntil) this.sounder.beat();
    }
  }

  act(run: Run, event: RunEvent): void {
    const result = advance(run, event);
    if (result.ok) this.runs = this.runs.map((each) => (each === run ? result.value : each));
    this.#changedAt ??= this.now();
  }

  begins(run: Run): void {
    this.runs = [...this.runs, run];
    this.#changedAt ??= this.now();
  }

  says(at: number): void {
    const mark = this.words.length + 1;
    const after = (this.words.at(-1)?.at ?? -Infinity) + 1;
    this.words = [...this.words, aWord(Math.max(at, after), mark)];
    this.#changedAt ??= this.now();
  }

  /** Of one run, or the newest word. */
  answers(of: string): void {
    const last = this.tones.filter(({ call, at }) => call.of === of && at <= this.now()).at(-1);
    if (last) this.answered = { ...this.answered, [of]: last.call.mark };
    this.#changedAt ??= this.now();
  }
}

const BEAT_MS = 100;
/** By so much the page's clock is put right in passing, and a little more. */
const CLOCK_MS = 60;

function begin(number: number, cycleSeconds: number, atMs: number, seconds = 60): Run {
  const steps = [
    aStep({
      kind: "develop",
      seconds,
      agitation: { initialSeconds: 5, cycleSeconds, burstSeconds: 2, manner: "inversion", taps: 1 },
      pourOutSeconds: 10,
    }),
    aStep({ kind: "rinse", ordinal: 1 }),
    aStep({ kind: "cut", seconds: null }),
  ];
  const run = aRun({ id: number, number, plan: aPlan({ steps, tank: number }), startedAtMs: atMs });
  const begun = advance(run, { kind: "next", step: 0, sure: true, atMs });
  if (!begun.ok) throw new Error(begun.fault.code);
  return begun.value;
}

function aWord(at: number, mark: number): Call {
  const words = { does: "", how: "", spoken: "", brief: "", seconds: null, actions: [] };
  const of = { id: `word ${mark}`, kind: "word", of: "words", mark } as const;
  return { ...of, at, until: at + 600_000, lateFrom: at, isDeveloping: false, run: null, words };
}

type Span = readonly [from: number, to: number];

/** What was not heard once, in words. In `cut`, it may be less or more. In `idle`, the page looks at nothing. */
function faultsOf(page: Page, cut: readonly Span[] = [], idle: readonly Span[] = []): string[] {
  const beatMs = page.options.beatMs ?? BEAT_MS;
  // A file that is only just loaded, or put forward, runs behind by what that took.
  const lagMs = beatMs + Math.min(250, Math.max(page.options.loadMs, page.options.seekMs)) + CLOCK_MS;
  return [...page.wanted.values()].flatMap(({ tone, from, to }): string[] => {
    const due = Math.max(tone.at, from);
    const busy = idle.find(([a, b]) => a <= due + beatMs && due < b);
    const by = (busy?.[1] ?? due) + beatMs;
    if (cut.some(([a, b]) => a <= by && due < b)) return [];
    const sounds = ear.heard.filter(({ id }) => id === tone.id);
    const name = `${tone.id} due ${due - START}: ${sounds.map((each) => `${each.from} ${each.at - START}`).join(", ")}`;
    if (sounds.length > 1) return [`twice ${name}`];
    const [sound] = sounds;
    const isPastAtOnce = from > tone.at && tone.call.kind !== "word";
    if (sound) {
      const isOnTime = sound.at - due <= (busy ? by + lagMs - due : lagMs) && sound.at - due >= -CLOCK_MS;
      return isOnTime || isPastAtOnce ? [] : [`not in time ${name}`];
    }
    // What is answered, over, or followed by a newer one of the same run before anybody could look, is not missed.
    const isSuperseded = [...page.wanted.values()].some(
      (other) =>
        other.tone !== tone &&
        other.tone.call.of === tone.call.of &&
        other.tone.at >= tone.at &&
        Math.max(other.tone.at, other.from) <= by + beatMs,
    );
    const isOfUse = to > by + lengthMs(tone.sound) + 300 && by < tone.until && page.now() > by + 1500;
    return isOfUse && !isPastAtOnce && !isSuperseded ? [`never ${name}`] : [];
  });
}

const HAPPENINGS = ["answer", "word", "correct", "stop", "off", "pause", "clock", "busy"] as const;
interface Happening {
  readonly afterMs: number;
  readonly kind: (typeof HAPPENINGS)[number];
  readonly tank: number;
  readonly by: number;
}
const aHappening: fc.Arbitrary<Happening> = fc.record({
  afterMs: fc.integer({ min: 50, max: 9000 }),
  kind: fc.constantFrom(...HAPPENINGS, "answer", "answer", "word"),
  tank: fc.nat({ max: 2 }),
  by: fc.integer({ min: -20, max: 20 }),
});

/** Does it; where it may itself cut a tone short or hold the page up, says from when to when. */
function happen(page: Page, { kind, tank, by }: Happening): { cut?: Span; idle?: Span } {
  const run = page.runs[tank % page.runs.length];
  const now = page.now();
  if (!run) return {};
  switch (kind) {
    case "answer":
      page.answers(by > 10 ? "words" : String(run.number));
      return {};
    case "word":
      // Just said, or while the link was lost; or by a clock that is a little ahead of the page's.
      page.says(now + (by > 15 ? -20_000 : by < -15 ? 40 : -40));
      return {};
    case "stop":
      page.act(run, { kind: "stop", reason: "", atMs: now });
      return {};
    case "correct": {
      const startedAt = run.phase.kind === "running" ? run.phase.startedAtMs : now;
      const agoSeconds = Math.max(0, Math.round((now - startedAt) / 1000) + by);
      page.act(run, { kind: "poured", agoSeconds, atMs: now });
      return {};
    }
    case "off":
      page.isOn = !page.isOn;
      return { cut: page.isOn ? [now - 500, now + 300] : [now - 500, Infinity] };
    case "pause":
      if (!ear.isPaused) ear.pause();
      else if (by > 0) page.sounder.touch();
      else ear.resume();
      return { cut: [now - 500, now + 1700] };
    case "clock":
      page.offsetMs = by * 2;
      return { cut: [now - 500, now + 1700] };
    case "busy":
      page.idleUntil = ear.now() + Math.abs(by) * 100;
      return { idle: [now, now + Math.abs(by) * 100] };
  }
}

describe("each call is heard once", () => {
  test("by a person with one to three tanks and at a sink, whatever happens meanwhile", () => {
    const kinds = new Set<string>();
    const aTrial = fc.record({
      loadMs: fc.constantFrom(0, 30, 60, 120, 180, 240),
      seekMs: fc.constantFrom(0, 20, 80, 200),
      refuses: fc.constantFrom(0, 0, 0, 1, 2),
      // A hidden page looks once a second; what stands at a sink is never hidden.
      as: fc.constantFrom({ isSink: true }, { beatMs: BEAT_MS }, { beatMs: 1000 }),
      cycles: fc.array(fc.constantFrom(5, 10, 15, 30), { minLength: 1, maxLength: 3 }),
      offsets: fc.tuple(...[0, 1, 2].map(() => fc.oneof(fc.constant(0), fc.nat({ max: 3000 })))),
      happenings: fc.array(aHappening, { maxLength: 14 }),
    });
    fc.assert(
      fc.property(aTrial, ({ cycles, offsets, happenings, as, ...device }) => {
        const runs = cycles.map((cycle, at) => begin(at + 1, cycle, START + 500 + (offsets[at] ?? 0)));
        const page = new Page({ ...device, ...as, runs });
        const cut: Span[] = [];
        const idle: Span[] = [];
        for (const happening of happenings) {
          page.pass(happening.afterMs);
          const did = happen(page, happening);
          // Sound that is on again ends what its being off began.
          if (happening.kind === "off" && page.isOn) cut.splice(0, cut.length, ...cut.map(endAt(page.now())));
          if (did.cut) cut.push(did.cut);
          if (did.idle) idle.push(did.idle);
        }
        page.pass(Math.max(3000, START + 75_000 - page.now()));
        for (const { from } of ear.heard) kinds.add(from);
        expect(faultsOf(page, cut, idle)).toEqual([]);
        expect(ear.disturbed).toBe(0);
      }),
      { numRuns: 150 },
    );
    expect([...kinds].sort()).toEqual(["page", "track"]);
  });

  test("over the ends of its files, ten minutes each", () => {
    const runs = [begin(1, 30, START + 500, 1500), begin(2, 60, START + 9000, 1500)];
    const page = new Page({ loadMs: 80, seekMs: 20, runs });
    page.pass(1_600_000);
    expect(ear.files).toBeGreaterThanOrEqual(3);
    expect(faultsOf(page)).toEqual([]);
  });

  const soundsOf = (of: string): string[] =>
    ear.heard.filter(({ id }) => id.startsWith(of)).map(({ from }) => from);

  test("where its file comes late to what the page has sounded already, also what comes just after", () => {
    const late = new Page({ loadMs: 400, seekMs: 20, runs: [begin(1, 30, START + 300)] });
    late.pass(3000);
    expect(soundsOf("1 ")).toEqual(["page"]);
    const runs = [begin(1, 30, START + 900), begin(2, 30, START + 1300)];
    const hidden = new Page({ loadMs: 400, seekMs: 20, beatMs: 1000, runs });
    hidden.pass(4000);
    expect([soundsOf("1 "), soundsOf("2 ")]).toEqual([["page"], ["page"]]);
  });

  test("at a sink, though words come late between tanks that wait for each other", () => {
    const runs = [begin(1, 30, START + 500), begin(2, 30, START + 500)];
    const page = new Page({ loadMs: 30, seekMs: 20, isSink: true, runs });
    page.pass(1900);
    for (let word = 0; word < 3; word += 1) page.says(START + 490);
    page.pass(5000);
    expect([soundsOf("1 "), soundsOf("2 ")]).toEqual([["track"], ["track"]]);
  });

  test("and not at all once its run is stopped, though others sound before and after it", () => {
    const runs = [500, 800, 1150].map((at, index) => begin(index + 1, 30, START + at));
    const page = new Page({ loadMs: 30, seekMs: 20, runs });
    page.pass(650);
    page.act(page.runs[2]!, { kind: "stop", reason: "", atMs: page.now() });
    page.pass(3000);
    expect([soundsOf("1 "), soundsOf("2 "), soundsOf("3 ")]).toEqual([["track"], ["track"], []]);
  });

  test("though the page's clock was a minute ahead for a while", () => {
    const page = new Page({ loadMs: 80, seekMs: 20, runs: [begin(1, 10, START + 500, 180)] });
    page.pass(22_000);
    page.offsetMs = 60_000;
    page.pass(4000);
    page.offsetMs = 0;
    const rightFrom = page.now();
    ear.heard.length = 0;
    page.pass(100_000);
    expect(faultsOf(page, [[-Infinity, rightFrom + 1000]])).toEqual([]);
  });

  test("when the lock screen lets go what it has stopped, where it is and not where it was", () => {
    const page = new Page({ loadMs: 80, seekMs: 20, runs: [begin(1, 10, START + 500)] });
    page.pass(14_000);
    ear.pause();
    page.pass(8000);
    expect(page.sounder.hearing()).toBe("paused");
    ear.resume();
    page.pass(30_000);
    expect([page.sounder.hearing(), ...faultsOf(page)]).toEqual(["on"]);
    expect(ear.heard.filter(({ at }) => at > START + 23_000).map(({ from }) => from)).not.toContain("page");
  });

  test("from the page where the browser does not take a file, and from the next file on", () => {
    const page = new Page({ loadMs: 80, seekMs: 20, refuses: 2, runs: [begin(1, 5, START + 500)] });
    page.pass(40_000);
    expect(faultsOf(page)).toEqual([]);
    const [first, ...others] = soundsOf("1 ");
    expect([first, ear.files]).toEqual(["page", 3]);
    expect(others).toContain("track");
  });

  test("after touches of which the first alone plays nothing at all", () => {
    const page = new Page({ loadMs: 80, seekMs: 20, runs: [] });
    for (const passMs of [500, 500, 500]) {
      page.sounder.touch();
      page.pass(passMs);
    }
    expect(ear.files).toBe(1);
    page.begins(begin(1, 30, page.now() + 500));
    page.pass(3000);
    expect([...soundsOf("1 "), ear.files]).toEqual(["track", 2]);
  });

  test("as soon as a touch lets the page sound, where the browser held it back", () => {
    const page = new Page({ loadMs: 80, seekMs: 20, runs: [begin(1, 30, START - 50)] });
    ear.letPage(false);
    page.pass(700);
    expect(ear.heard).toEqual([]);
    ear.letPage(true);
    page.pass(1000);
    expect(ear.heard.map(({ from }) => from)).toEqual(["page"]);
  });
});

const endAt =
  (at: number) =>
  ([from, to]: Span): Span =>
    to === Infinity ? [from, at] : [from, to];
