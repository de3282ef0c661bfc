/*
 * First aid in the order in which it is needed. After the precautionary statements of the GHS (United Nations, Globally
 * Harmonized System, annex 3): P305+P351+P338 eyes, P301+P330+P331 swallowed, P304+P340 inhaled, P302+P352 skin, P310 call.
 * 15 minutes at the eye: ANSI Z358.1 for eyewash stations.
 */
export const en = {
  eye: "**Eye: rinse now with running water, 15 minutes, lids held open.** Contact lenses out if they come out easily; go on rinsing. Shout for the teacher.",
  swallowed:
    "**Swallowed: rinse the mouth. Do not make them vomit.** Call the poison centre now, with the bottle in your hand. Shout for the teacher.",
  breathed:
    "**Breathing: out into fresh air now**, sit down, keep calm. Whoever does not feel better at once needs a doctor. Shout for the teacher.",
  skin: "**Skin: rinse now with plenty of running water, several minutes.** Take off what is soaked. If it burns or stays red, show it to a doctor.",
  spilt:
    "**Spilt: say it aloud, so that nobody slips.** Gloves on, wipe it up, rinse with plenty of water. If acid and bleach or powder are in it: everybody out, and get the teacher.",
  hurt: "**Shout for the teacher now.** Make the place safe, stay with whoever is hurt. In danger, or if anybody is not fully awake: call the emergency number.",
  call: "Emergency number: 112 in Europe, 911 in North America, elsewhere the one on the wall. The bottle's label, its safety data sheet (section 4) and the school's rules come first.",
};
export type AidWords = typeof en;
