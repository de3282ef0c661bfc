const NO_SOURCE = "common practice, no source";
const NAVY_291 = "US Navy NAVEDTRA 14209, p. 291";
const ARMY = "US Army SS0509, printing lesson";
const CLERC = "Clerc, Photography: Theory and Practice";
const HAND = "The Book of Photography, on faults of prints";
const REPRINT = "Make it again: `/print again`.";

/** By the cause's code. `now`: what can be done for this print; `next`: what to do otherwise next time. */
export const en = {
  "over-exposure": {
    title: "Too much exposure",
    now: REPRINT,
    next: "Give less light, by a test strip; never pull it out early.",
    source: ARMY,
  },
  "under-exposure": {
    title: "Too little exposure",
    now: REPRINT,
    next: "Give more light, by a test strip: more time in the developer does not replace it.",
    source: `${NAVY_291}; ${HAND}`,
  },
  "pulled-early": {
    title: "Taken out of the developer too early",
    now: "Once fixed it can't be developed further.",
    next: "Leave it in for the full time. If it comes too dark, give less light.",
    source: `${CLERC}, section 556; a handbook on chestofbooks.com, 588`,
  },
  forced: {
    title: "Too little exposure, forced in the developer",
    now: REPRINT,
    next: "Give more light and the usual time in the developer.",
    source: "a handbook on chestofbooks.com, 590",
  },
  "too-much-bromide": {
    title: "Too much exposure, or too much bromide in the developer",
    now: "The tone stays. Print it again in fresh developer.",
    next: "Mix fresh developer: much used, it gathers bromide.",
    source: "a handbook on chestofbooks.com, 591",
  },
  "hard-negative": {
    title: "Negative too hard for this grade",
    now: "Print it on a softer grade: `/print again grade:…`.",
    next: "Choose the grade by a test strip over the highlights.",
    source: HAND,
  },
  "soft-grade": {
    title: "Grade too soft for this negative",
    now: "Print it on a harder grade: `/print again grade:…`.",
    next: "Choose the grade by a test strip over the shadows.",
    source: NO_SOURCE,
  },
  "long-development": {
    title: "Too long in the developer",
    now: "The stain stays.",
    next: "Take it out at its time: at most twice what full black needs.",
    source: `${NAVY_291}; ${CLERC}, section 556`,
  },
  "warm-developer": {
    title: "Developer too warm",
    now: REPRINT,
    next: "Let it cool to about 20 °C (68 °F): set the tray in cool water.",
    source: `${CLERC}, section 573`,
  },
  "cold-developer": {
    title: "Developer too cold",
    now: REPRINT,
    next: "Bring it to about 20 °C (68 °F) before you begin.",
    source: `${CLERC}, section 573`,
  },
  "weak-developer": {
    title: "Developer exhausted or too dilute",
    now: "Throw the developer away as local rules say, and mix fresh.",
    next: "Change it after as many prints as its label says, and after the session.",
    source: `${CLERC}, section 573`,
  },
  "strong-developer": {
    title: "Developer too strong",
    now: REPRINT,
    next: "Mix it as its label says.",
    source: HAND,
  },
  safelight: {
    title: "Safelight not safe, or too long under it",
    now: "Put open paper away, and test the lamp before anybody prints on.",
    next: "Paper that was exposed is more sensitive: test with a piece that is already light grey.",
    source: `a maker's safelight pages (K-4); ${HAND}`,
  },
  "old-paper": {
    title: "Paper too old, or light got into the box",
    now: "Develop an unexposed piece from this box in the dark: it must stay white.",
    next: "Use old boxes for test strips only.",
    source: HAND,
  },
  "fixer-in-developer": {
    title: "Fixer got into the developer",
    now: "Throw the developer away as local rules say, wash the tray, mix fresh.",
    next: "One pair of tongs for each bath, never mixed; dry hands.",
    source: HAND,
  },
  "out-of-liquid": {
    title: "A part lay out of the liquid before it was fixed",
    now: "The patch stays.",
    next: "Push the print under at once, and keep it there.",
    source: `a handbook on chestofbooks.com, Amateur Work; ${HAND}`,
  },
  "air-under": {
    title: "Air under a print that lay face down",
    now: "The marks stay.",
    next: "Slide it in, push it under, turn it over and keep it moving.",
    source: `${ARMY}; ${NAVY_291}`,
  },
  floated: {
    title: "It floated face up on the fixer",
    now: "Fix it again in full, under the liquid.",
    next: "Face down, under the liquid, and move it.",
    source: "Wellington handbook, p. 69",
  },
  "worn-fixer": {
    title: "Fixer exhausted",
    now: "Fix again in fresh fixer, and wash in full. That goes for everybody who used this bath.",
    next: "Count the prints through a fixer, and test it before class.",
    source: "US Navy NAVEDTRA 14209, p. 249",
  },
  "short-wash": {
    title: "Fixer or silver was left in it",
    now: "Fix again, then wash in full.",
    next: "Fix and wash for the full time; fibre paper needs far longer than resin-coated.",
    source: "handbooks' sections on washing (NAVEDTRA 14209; US Army SS0509-8)",
  },
  dust: {
    title: "Dust on the negative",
    now: "Spot it with retouching dye.",
    next: "Blow the negative and its carrier clean; look along the light.",
    source: "a club's page",
  },
  holes: {
    title: "Clear holes or scratches in the negative",
    now: "Spotting covers only light places: scrape the dark one gently with a blade, or print it again.",
    next: "Look at the negative with a magnifier first.",
    source: "a club's page",
  },
  "touching-glass": {
    title: "Two smooth faces nearly touch: negative and glass",
    now: REPRINT,
    next: "Use a carrier without glass or with etched glass, and a dry negative.",
    source: "a club's page",
  },
  focus: {
    title: "Not focused on the grain",
    now: REPRINT,
    next: "Focus on the grain with a magnifier, at the aperture you print with.",
    source: "US Navy printing manual",
  },
  "negative-moved": {
    title: "The negative buckled with the lamp's heat, or something shook",
    now: REPRINT,
    next: "Let the lamp warm the negative, focus, wait, then expose. Touch nothing.",
    source: "a photographer's page",
  },
  "negative-turned": {
    title: "The negative lay upside down in its carrier",
    now: REPRINT,
    next: "Dull side towards the paper: numbers on its border read right from above.",
    source: "from memory, no source seen",
  },
};
export type CauseWords = typeof en;
export type CauseCode = keyof CauseWords;
