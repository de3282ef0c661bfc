import { z } from "zod";
import { ROOM_TENTHS_C } from "./limits.ts";
import { DEFAULT_LANGUAGE, LANGUAGES } from "./language.ts";
import { lampSchema } from "./lamp.ts";
import { agitationSchema } from "./sheet.ts";
import { trayLineSchema } from "./tray-line.ts";

/** A stretch of the week in which the class works; its end is the bell. */
export const periodSchema = z.object({
  /** ISO: 1 is Monday. */
  weekday: z.int().min(1).max(7),
  /** Minutes of the day, on the class's own wall clock. */
  startMinute: z.int().min(0).max(1439),
  endMinute: z.int().min(1).max(1440),
  name: z.string().max(60),
});
export type Period = z.output<typeof periodSchema>;

/**
 * The third rotation renews both (Anchell, The Darkroom Cookbook, 3rd ed., p. 107); a practitioner's page has three changes
 * after the first swap. The stricter one stands until the class says otherwise.
 */
const FIX_ROTATIONS = 2;

/** Two bottles of fixer, one after the other. */
export const fixPairSchema = z.object({
  first: z.int().min(1),
  second: z.int().min(1),
  rotations: z.int().min(0),
});
export type FixPair = z.output<typeof fixPairSchema>;

/** What a new class does before its first film, in this order. */
export const FIRST_STEPS = ["name", "tanks", "times", "bottles", "code", "trial"] as const;
export type FirstStep = (typeof FIRST_STEPS)[number];

/** How one class works: what the plan and the cues take for granted. Every value can be set by the teacher. */
export const habitsSchema = z.object({
  /** Pour-out begins this long before the developing time ends, so that the tank is empty at its end (US Navy NAVEDTRA 14209). */
  pourOutSeconds: z.int().min(0).max(60).default(10),
  /** In which the whole class is spoken to: its channel, its board. */
  language: z.enum(LANGUAGES).default(DEFAULT_LANGUAGE),
  /** A call to get the next bath ready, this long before pour-out begins. */
  warnSeconds: z.int().min(0).max(120).default(15),
  /** `full`: the time starts when the tank is full (NAVEDTRA 14209); `pour`: when pouring in begins. */
  timing: z.enum(["full", "pour"]).default("full"),
  /** How long pouring in takes, used where `timing` is `pour`. NAVEDTRA 14209: 10-20 s. */
  pourInSeconds: z.int().min(0).max(60).default(15),
  stop: z.enum(["water", "acid"]).default("water"),
  /** The house minimum of fixing. */
  fixMinSeconds: z.int().min(60).max(1800).default(300),
  /** The house minimum of a running wash; null: the class has set none, and the handbooks' least holds. */
  washMinSeconds: z.int().min(60).max(3600).nullable().default(null),
  washMethod: z.enum(["running", "fill-dump"]).default("running"),
  washAid: z.boolean().default(false),
  wettingSeconds: z.int().min(15).max(600).default(60),
  drySeconds: z.int().min(60).max(86_400).default(1200),
  /** Frames in one strip of the class's sleeves. Five: common practice, no source. */
  stripFrames: z.int().min(2).max(12).default(5),
  /** 6x6 frames in one strip of the class's sleeves for 120; null: by each frame's usual sleeve. */
  stripFrames120: z.int().min(2).max(6).nullable().default(null),
  /** ml of bath that a roll (80 sq in) carries from one bath into the next; null: the class has not said, and none is reckoned. */
  carryMlPerRoll: z.number().min(0).max(100).nullable().default(null),
  /** Two: each film goes through two fixing baths, half its time in each. */
  fixBaths: z.int().min(1).max(2).default(1),
  /** ml of the finest step that the class's measures and syringes show; null: not stated. */
  measureStepMl: z.number().min(0.1).max(50).nullable().default(null),
  /** How often the second bath moves up to first before both are mixed new. */
  fixRotations: z.int().min(1).max(10).default(FIX_ROTATIONS),
  /** Bottles that stand as first and second fixing bath, by their labels, and how often the second has moved up. */
  fixPairs: z.array(fixPairSchema).max(12).default([]),
  /** Room temperature, for drift and tempering. */
  roomTenthsC: z.int().min(ROOM_TENTHS_C.least).max(ROOM_TENTHS_C.most).default(200),
  /** The class's periods, on its own wall clock. */
  periods: z.array(periodSchema).max(60).default([]),
  /** How many can stand at the sinks with a tank at once: two sinks with six round each, our estimate, no source. */
  sinks: z.int().min(1).max(60).default(12),
  /** Tanks that can wash at once. */
  washPlaces: z.int().min(1).max(60).default(6),
  /** Films that can hang to dry at once. */
  drySlots: z.int().min(1).max(300).default(12),
  /** The class's own agitation, where it does not follow the sheet. */
  agitation: agitationSchema.nullable().default(null),
  /** Names or numbers of the chat's own roles that make an aide and a teacher. */
  aideRole: z.string().max(100).nullable().default(null),
  teacherRole: z.string().max(100).nullable().default(null),
  /** Which parts of the set-up somebody has answered; the others stand at their defaults. */
  answered: z.array(z.string().max(30)).max(40).default([]),
  /** What of its first day its teacher has put off. */
  later: z.array(z.enum(FIRST_STEPS)).max(10).default([]),
  /** Warnings that can wait are not said between these minutes of the day; equal: never silent. */
  silenceFrom: z.int().min(0).max(1439).default(1320),
  silenceTo: z.int().min(0).max(1439).default(420),
  /** How long before a period the class is told what is ready and what to mix. */
  digestLeadMinutes: z.int().min(0).max(720).default(60),
  /** The week's figures: ISO weekday and minute of the day. */
  weekDigestWeekday: z.int().min(1).max(7).default(1),
  /** Calls may go to phones whose page is closed, by way of their makers' services. */
  push: z.boolean().default(false),
  /** A run that is started in the class's channel is called in a thread of its own. */
  threads: z.boolean().default(false),
  weekDigestMinute: z.int().min(0).max(1439).default(480),
  /** The class's lines of trays, by number. */
  trayLines: z.array(trayLineSchema).max(20).default([]),
  /** Its safelights, each with its latest test. */
  lamps: z.array(lampSchema).max(20).default([]),
});
export type Habits = z.output<typeof habitsSchema>;

/** A class as the rest of the program sees it. */
export interface SchoolClass {
  readonly id: number;
  /** Its place in a chat: `room:1`, `discord:<guild id>`. */
  readonly key: string;
  readonly name: string;
  /** IANA time zone, for wall-clock words and digests. */
  readonly zone: string;
  /** True for the invented class that a fresh install shows. */
  readonly demo: boolean;
  readonly habits: Habits;
}

export type PeriodFault =
  | { readonly code: "ERR_NO_DAYS"; readonly typed: string }
  | { readonly code: "ERR_NO_CLOCK"; readonly typed: string }
  | { readonly code: "ERR_BELL_BEFORE_START"; readonly from: number; readonly to: number }
  | { readonly code: "ERR_OVERLAP"; readonly other: Period }
  | { readonly code: "ERR_TOO_MANY_PERIODS"; readonly most: number };
