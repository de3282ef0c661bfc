import type { Edge, Look, Margin, Place } from "./looks.ts";

/*
 * Causes of faults. `looks` says how well a cause explains a look, from 1 (may come from it) to 4 (the usual reason).
 * The links have the source named; the weights are our own judgement, no source.
 */

export interface Cause {
  readonly code: string;
  readonly title: string;
  readonly looks: Partial<Record<Look, 1 | 2 | 3 | 4>>;
  /** How an answer changes its standing: above 1 speaks for it, below 1 against. */
  readonly edge?: Partial<Record<Edge, number>>;
  readonly margin?: Partial<Record<Margin, number>>;
  readonly place?: Partial<Record<Place, number>>;
  /** What can be done for this film now. */
  readonly now: string;
  /** What to do otherwise next time. */
  readonly next: string;
  readonly source: string;
}

const ARMY_84 = "US Army SS0509-8, p. 84";
const ARMY_85 = "US Army SS0509-8, p. 85";
const NAVY_TABLE = "US Navy NAVEDTRA 14209, table 10-1";
const NO_SOURCE = "common practice, no source";

const LOST = "Nothing brings back what was never there. Keep the film: it teaches.";
const REFIX =
  "Fix again now, in fresh fixer, for at least twice its clearing time. Then wash again in full. It does no harm, even weeks later.";

export const CAUSES: readonly Cause[] = [
  {
    code: "short-development",
    title: "Too little development (too short, or too cold)",
    looks: { thin: 4, flat: 4 },
    edge: { faint: 3, dark: 0.2, none: 0.5 },
    now: "The film can't be developed further once it is fixed. Print it on a harder grade.",
    next: "Measure the developer in the tank, take the time for that temperature, and pour out at the call.",
    source: "Studio Light, 1917; a society's darkroom page (phsc.ca)",
  },
  {
    code: "weak-developer",
    title: "Developer worn out, too old or too dilute",
    looks: { thin: 3, flat: 3, blank: 2, patchy: 1 },
    edge: { faint: 2.5, dark: 0.2, none: 2 },
    now: "The film can't be developed further once it is fixed. Set the bottle aside so that nobody else uses it.",
    next: "Mix fresh, and measure the concentrate. Look at the batch before you pour: `/batch status`.",
    source: NO_SOURCE,
  },
  {
    code: "under-exposure",
    title: "Too little exposure in the camera",
    looks: { thin: 3, flat: 1 },
    edge: { dark: 4, faint: 0.3, none: 0.1 },
    now: "Shadows that were not exposed are empty. Print for the middle tones.",
    next: "Check the meter, the film speed that is set, and the shutter. Meter for the shadows.",
    source: NO_SOURCE,
  },
  {
    code: "over-development",
    title: "Too much development (too long, too warm, or moved too much)",
    looks: { dense: 3, contrasty: 4 },
    edge: { dark: 1.5, faint: 0.2 },
    now: "Print on a softer grade, with longer exposures.",
    next: "Measure the temperature again in mid-step, and pour out at the call.",
    source: "Studio Light, 1917; a society's darkroom page (phsc.ca)",
  },
  {
    code: "over-exposure",
    title: "Too much exposure in the camera",
    looks: { dense: 4 },
    edge: { dark: 1, faint: 1.5 },
    now: "Print with longer exposures. Highlights that have run together are gone.",
    next: "Check the film speed that is set, the aperture and the shutter.",
    source: "US Navy NAVEDTRA 14209, tone tables",
  },
  {
    code: "not-exposed",
    title: "The film was never exposed",
    looks: { blank: 4 },
    edge: { dark: 6, faint: 1, none: 0.05 },
    now: LOST,
    next: "See that the rewind knob turns as you wind on: then the film does too. Cap off, shutter working.",
    source: NO_SOURCE,
  },
  {
    code: "not-developed",
    title: "The film was not developed: fixer or water went in first, or a dead developer",
    looks: { blank: 3 },
    edge: { dark: 0.05, faint: 1, none: 8 },
    now: LOST,
    next: "Read the label aloud before you pour. Developer first.",
    source: NO_SOURCE,
  },
  {
    code: "short-fixing",
    title: "Fixed too short",
    looks: { milky: 4, coloured: 4, stained: 3 },
    place: { everywhere: 1.5, patches: 0.6 },
    now: REFIX,
    next: "Fix for at least twice the clearing time, three times with tabular-grain film, and agitate.",
    source: `${ARMY_85} (stain); a handbook on chestofbooks.com, p. 234 (creamy film); the dye: ${NO_SOURCE}`,
  },
  {
    code: "worn-fixer",
    title: "Fixer worn out",
    looks: { milky: 4, coloured: 2, stained: 4 },
    place: { everywhere: 1.5, patches: 0.5 },
    now: `${REFIX} Everybody who used this bottle since should look at their film.`,
    next: "Test the fixer with a scrap of film before class: `/batch test`.",
    source: ARMY_85,
  },
  {
    code: "short-wash",
    title: "Washed too short",
    looks: { stained: 2, coloured: 2 },
    now: "Wash again in full, with a wash aid if you have one.",
    next: "Handbooks ask for 20 to 30 minutes of running water, or 5 after a wash aid.",
    source: "US Navy NAVEDTRA 14209; US Army SS0509-8, p. 24; the dye: common practice, no source",
  },
  {
    code: "film-touched",
    title: "The film lay against itself on the reel",
    looks: { "blank-patches": 4, milky: 2, coloured: 1, stained: 1 },
    place: { patches: 4, everywhere: 0.1 },
    now: "Milky patches: fix again, then wash. Patches without any picture can't be saved.",
    next: "Practise loading with a spoilt film in daylight. Never force it: start again.",
    source: `a handbook on chestofbooks.com, p. 234; ${NO_SOURCE}`,
  },
  {
    code: "surge",
    title: "Moved too hard: developer shot through the perforations",
    looks: { "hole-streaks": 4 },
    now: LOST,
    next: "Turn the tank over slowly, about one turn in two seconds, and differently each time.",
    source: "from memory, no source seen",
  },
  {
    code: "little-agitation",
    title: "Moved too little: developer stood still in places",
    looks: { "run-streaks": 4, patchy: 3, "hole-streaks": 1, flat: 1 },
    now: LOST,
    next: "Agitate at every call, from the first second on.",
    source: "US Navy NAVEDTRA 14209, p. 258 and table 10-1",
  },
  {
    code: "splash",
    title: "A dirty tank, splashes, or a bath that did not cover the film",
    looks: { patchy: 3, "run-streaks": 1, "blank-patches": 2 },
    now: LOST,
    next: "Rinse tank and reels with hot water. Fill to the volume that covers all reels.",
    source: NAVY_TABLE,
  },
  {
    code: "camera-leak",
    title: "Light got in at the camera",
    looks: { "edge-streaks": 3, fogged: 2 },
    margin: { clear: 4, grey: 0.3 },
    now: LOST,
    next: "Look at the camera's back and seals. Load in the shade.",
    source: NAVY_TABLE,
  },
  {
    code: "tank-leak",
    title: "Light got in at the tank, or while loading",
    looks: { "edge-streaks": 3, fogged: 4 },
    margin: { clear: 0.2, grey: 4 },
    now: "Set the tank aside and say so: `/tank report`.",
    next: "Sit five minutes in the dark: no light must be seen anywhere. Check the lid and its funnel.",
    source: NAVY_TABLE,
  },
  {
    code: "old-film",
    title: "Film too old, or kept too warm",
    looks: { fogged: 2, flat: 1, specks: 1 },
    margin: { grey: 2, clear: 0.2 },
    now: "Print with longer exposures, on a harder grade.",
    next: "Keep film cool, and use it before its date.",
    source: NO_SOURCE,
  },
  {
    code: "light-in-developer",
    title: "White light during development, or fixer in the developer",
    looks: { reversed: 4, fogged: 2 },
    margin: { grey: 2, clear: 0.4 },
    now: LOST,
    next: "Keep the lid on until the fixer has been in. Rinse every measure between baths.",
    source: ARMY_85,
  },
  {
    code: "air-bells",
    title: "Air bells clung to the film",
    looks: { "round-spots": 4 },
    now: LOST,
    next: "Rap the tank on the bench after every agitation.",
    source: `${ARMY_84}; ${NAVY_TABLE}`,
  },
  {
    code: "dust",
    title: "Dust on the film in the camera",
    looks: { specks: 4 },
    now: "Spots on the print can be retouched.",
    next: "Blow the camera out before loading.",
    source: ARMY_84,
  },
  {
    code: "kinks",
    title: "The film was kinked while loading",
    looks: { crescents: 4 },
    now: LOST,
    next: "Hold the film by its edges and let it curve; never bend it sharply.",
    source: "from memory, no source seen",
  },
  {
    code: "drying",
    title: "Drops dried on the film, or it dried unevenly",
    looks: { "drying-marks": 4, patchy: 1 },
    now: "Soak again for some minutes, wetting agent, and hang up anew. Marks in the gelatin may stay.",
    next: "Wetting agent, mixed as its label says; let it drip, no dust, no draught.",
    source: `${NAVY_TABLE}; ${ARMY_84}`,
  },
  {
    code: "scratches",
    title: "Grit or friction: in the camera, the cassette, or when the film was wiped",
    looks: { lines: 4 },
    now: "Fine scratches on the back may be hidden by the printing light; deep ones stay.",
    next: "Don't pull the film tight on its spool, and don't wipe it wet.",
    source: NAVY_TABLE,
  },
  {
    code: "reticulation",
    title: "Baths too far apart in temperature: the gelatin wrinkled",
    looks: { wrinkled: 4 },
    now: LOST,
    next: "Keep every bath and the wash within 2.8 °C of the one before.",
    source: ARMY_84,
  },
  {
    code: "soft-gelatin",
    title: "The gelatin got too soft: a warm bath, a bad fixer, or a long warm wash",
    looks: { frilled: 4, wrinkled: 1 },
    now: "Let it dry without touching it.",
    next: "Keep the baths near 20 °C, and the wash as short as is needed.",
    source: ARMY_84,
  },
];
