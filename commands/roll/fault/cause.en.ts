const ARMY_84 = "US Army SS0509-8, p. 84";
const ARMY_85 = "US Army SS0509-8, p. 85";
const NAVY_TABLE = "US Navy NAVEDTRA 14209, table 10-1";
const NO_SOURCE = "common practice, no source";

const LOST = "Nothing brings back what was never there. Keep the film: it teaches.";
const REFIX =
  "Fix again now, in fresh fixer, for at least twice its clearing time. Then wash again in full. It does no harm, even weeks later.";

/** By the cause's code. `now`: what can be done for this film; `next`: what to do otherwise next time. */
export const en = {
  "short-development": {
    title: "Too little development (too short, or too cold)",
    now: "The film can't be developed further once it is fixed. Print it on a harder grade.",
    next: "Measure the developer in the tank, take the time for that temperature, and pour out at the call.",
    source: "Studio Light, 1917; a society's darkroom page (phsc.ca)",
  },
  "weak-developer": {
    title: "Developer exhausted, too old or too dilute",
    now: "The film can't be developed further once it is fixed. Set the bottle aside so that nobody else uses it.",
    next: "Mix fresh, and measure the concentrate. Look at the batch before you pour: `/batch status`.",
    source: NO_SOURCE,
  },
  "under-exposure": {
    title: "Too little exposure in the camera",
    now: "Shadows that were not exposed are empty. Print for the middle tones.",
    next: "Check the meter, the film speed that is set, and the shutter. Meter for the shadows.",
    source: NO_SOURCE,
  },
  "over-development": {
    title: "Too much development (too long, too warm, or moved too much)",
    now: "Print on a softer grade, with longer exposures.",
    next: "Measure the temperature again in mid-step, and pour out at the call.",
    source: "Studio Light, 1917; a society's darkroom page (phsc.ca)",
  },
  "over-exposure": {
    title: "Too much exposure in the camera",
    now: "Print with longer exposures. Highlights that have run together are gone.",
    next: "Check the film speed that is set, the aperture and the shutter.",
    source: "US Navy NAVEDTRA 14209, tone tables",
  },
  "not-exposed": {
    title: "The film was never exposed",
    now: LOST,
    next: "See that the rewind knob turns as you wind on: then the film does too. Cap off, shutter working.",
    source: NO_SOURCE,
  },
  "not-developed": {
    title: "The film was not developed: fixer or water went in first, or a dead developer",
    now: LOST,
    next: "Read the label aloud before you pour. Developer first.",
    source: NO_SOURCE,
  },
  "short-fixing": {
    title: "Not fixed long enough",
    now: REFIX,
    next: "Fix for at least twice the clearing time, three times with tabular-grain film, and agitate.",
    source: `${ARMY_85} (stain); a handbook on chestofbooks.com, p. 234 (creamy film); the dye: ${NO_SOURCE}`,
  },
  "worn-fixer": {
    title: "Fixer exhausted",
    now: `${REFIX} Everybody who used this bottle since should look at their film.`,
    next: "Test the fixer with a scrap of film before class: `/batch test`.",
    source: ARMY_85,
  },
  "short-wash": {
    title: "Not washed long enough",
    now: "Wash again in full, with a wash aid if you have one.",
    next: "Handbooks ask for 20 to 30 minutes of running water, or 5 after a wash aid.",
    source: "US Navy NAVEDTRA 14209; US Army SS0509-8, p. 24; the dye: common practice, no source",
  },
  "film-touched": {
    title: "The film lay against itself on the reel",
    now: "Milky patches: fix again, then wash. Patches without any picture can't be saved.",
    next: "Practise loading with a spoilt film in daylight. Never force it: start again.",
    source: `a handbook on chestofbooks.com, p. 234; ${NO_SOURCE}`,
  },
  surge: {
    title: "Moved too hard: developer shot through the perforations",
    now: LOST,
    next: "Turn the tank over slowly, about one turn in two seconds, and differently each time.",
    source: "from memory, no source seen",
  },
  "little-agitation": {
    title: "Moved too little: developer stood still in places",
    now: LOST,
    next: "Agitate at every call, from the first second on.",
    source: "US Navy NAVEDTRA 14209, p. 258 and table 10-1",
  },
  splash: {
    title: "A dirty tank, splashes, or a bath that did not cover the film",
    now: LOST,
    next: "Rinse tank and reels with hot water. Fill to the volume that covers all reels.",
    source: NAVY_TABLE,
  },
  "camera-leak": {
    title: "Light got in at the camera",
    now: LOST,
    next: "Look at the camera's back and seals. Load in the shade.",
    source: NAVY_TABLE,
  },
  "tank-leak": {
    title: "Light got in at the tank, or while loading",
    now: "Set the tank aside and say so: `/tank report`.",
    next: "Sit five minutes in the dark: no light must be seen anywhere. Check the lid and its funnel.",
    source: NAVY_TABLE,
  },
  "old-film": {
    title: "Film too old, or kept too warm",
    now: "Print with longer exposures, on a harder grade.",
    next: "Keep film cool, and use it before its date.",
    source: NO_SOURCE,
  },
  "light-in-developer": {
    title: "White light during development, or fixer in the developer",
    now: LOST,
    next: "Keep the lid on until the fixer has been in. Rinse every measure between baths.",
    source: ARMY_85,
  },
  "air-bells": {
    title: "Air bells clung to the film",
    now: LOST,
    next: "Rap the tank on the bench after every agitation.",
    source: `${ARMY_84}; ${NAVY_TABLE}`,
  },
  dust: {
    title: "Dust on the film in the camera",
    now: "Spots on the print can be retouched.",
    next: "Blow the camera out before loading.",
    source: ARMY_84,
  },
  kinks: {
    title: "The film was kinked while loading",
    now: LOST,
    next: "Hold the film by its edges and let it curve; never bend it sharply.",
    source: "from memory, no source seen",
  },
  drying: {
    title: "Drops dried on the film, or it dried unevenly",
    now: "Soak again for some minutes, wetting agent, and hang up anew. Marks in the gelatin may stay.",
    next: "Wetting agent, mixed as its label says; let it drip, no dust, no draught.",
    source: `${NAVY_TABLE}; ${ARMY_84}`,
  },
  scratches: {
    title: "Grit or friction: in the camera, the cassette, or when the film was wiped",
    now: "Fine scratches on the back may be hidden by the printing light; deep ones stay.",
    next: "Don't pull the film tight on its spool, and don't wipe it wet.",
    source: NAVY_TABLE,
  },
  reticulation: {
    title: "Baths too far apart in temperature: the gelatin wrinkled",
    now: LOST,
    next: "Keep every bath and the wash within 2.8 °C of the one before.",
    source: ARMY_84,
  },
  "soft-gelatin": {
    title: "The gelatin got too soft: a warm bath, a bad fixer, or a long warm wash",
    now: "Let it dry without touching it.",
    next: "Keep the baths near 20 °C, and the wash as short as is needed.",
    source: ARMY_84,
  },
};
export type CauseWords = typeof en;
export type CauseCode = keyof CauseWords;
