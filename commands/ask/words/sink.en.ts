import { countOf } from "../../speech/wording.ts";

export const en = {
  /** How a film goes on a reel: common practice, no source. */
  reel: "**Reel and hands bone dry, and total darkness.** Cut the film's beginning straight and round its corners off, push it in under the guides, and wind without force. Stuck? Take it off, dry the reel, and begin again; in between put the film into the closed tank. A spoilt film in daylight is good to practise with.",
  /** One agitation left out: common practice, no source. */
  missed:
    "**Agitate once now, then go on with the calls.** One time missed hardly shows. Don't make up for it with more.",
  missedCall:
    "**Do now what stands below.** One agitation missed hardly shows: don't make up for it with more.",
  silent:
    "**Turn up the volume, leave this page open and tap it once:** a phone sounds only after a touch. What is called when the page is closed: `/mine phone`. In another chat: allow its notifications.",
  lights:
    "**Ask aloud first.** Light spoils open film and uncovered paper in a moment, a phone's as well. A film in the closed tank bears it.",
  lidShut:
    "**Leave the lid on until the fixing time is over:** before that, light spoils the film. Only a cap over its pouring hole comes off. Is the tank open? Close it at once, go on by the clock, and tell the teacher: some of the film may be lost.",
  lidSafe:
    "**The lid may come off: the film is fixed, light does it no harm.** Touch only its edges, and go on with the wash.",
  leak: "**Gloves on, hold it over the sink, and go on by the clock.** Press the lid on firmly; turn it gently. Wipe up what is on the floor. Then report the tank, so that nobody takes it next.",
  leaks: "leaks",
  reportLeak: (tank: number) => `Report tank ${tank}: leaks`,
  warmth:
    "**20 °C (68 °F) is usual for the developer;** all other baths and the wash nearly as warm as that. Measure, then say how warm it is: the time follows.",
  range: (low: string, high: string) => `The data sheet has times from ${low} to ${high}.`,
  /** `times`: `Rinse 1 0:30, Rinse 2 0:30`; `of`: `R7`, `P7`. */
  baths: (times: string, of: string) => `**${times}** (${of}). I call you when it is over.`,
  bathsAtLeast: (fix: string, wash: string) =>
    `**At least ${fix} in the fixer and ${wash} in the wash,** as this class has it. A plan says it for your film.`,
  agitate: {
    often: (bath: string, how: string) => `**${bath}: ${how}.** I call you each time.`,
    always: (bath: string) => `**${bath}: keep the tank moving until its time is up.**`,
    /** Common practice, no source. */
    refills: (bath: string, changes: number) =>
      `**${bath}: fill the tank and empty it, ${countOf(changes, "time")}.** Turn it over a few times with each fill.`,
    never: (bath: string) => `**${bath}: no agitating.**`,
  },
  hang: (time: string) =>
    `**Hang it where no dust flies, a clip at each end: the lower one keeps it straight.** Touch only its edges. It needs about ${time}. No hair dryer: it blows dust on.`,
  /** The teacher is asked, since what can be saved hangs on the bath. */
  mishap: {
    early:
      "**Poured out too early? Pour the same bath back in at once,** if you have it still. If not, go on with the next bath; a film that had too little developer comes out thin. Tell the teacher.",
    instead:
      "**The wrong bath? Tell the teacher at once which one, and for how long.** Water in between does no harm: pour it out, and pour in the right one. Fixer before the developer takes the picture away.",
    fell: "**Is the lid still on? Then go on by the clock.** If it came off, close it at once and tell the teacher. Gloves on, wipe up what was spilt.",
    foam: "**Foam does no harm; turn the tank more gently.** It comes from wetting agent: use less of it, and rinse tank and reel well afterwards.",
  },
};
export type SinkWords = typeof en;
