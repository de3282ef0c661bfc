/* To what happens around a tank: phones, neighbours, things that can't be found. Common practice, no source. */

export const en = {
  music:
    "**Yes, if you still hear the calls: one ear free, the music low, this page open.** A change of bath is called several times, and the phone vibrates where it can.",
  wetHands:
    "**Nothing has to be tapped while you agitate: those calls go by themselves.** For a change of bath dry one finger, or put the phone into a clear bag. Never with gloves that were in a bath.",
  panic:
    "**Stay beside them, speak calmly, and call the teacher.** A film goes on by the clock meanwhile; no film is worth more. Is somebody hurt, dizzy, or short of breath? Out to fresh air at once.",
  share:
    "**Each of you by your own name, so that each film has its own calls.** On one phone that is a device at the sink: the teacher opens it. Or each starts their run, and you listen for both.",
  forOther:
    "**Don't let it stand: tell the teacher or an aide now.** They may press for somebody else, and see on the board what that film needs next. Pour only what its owner or the teacher says.",
  teacher:
    "**What the teacher says comes before what I say.** A bath that is in goes on working meanwhile: ask what to do with it. Nobody there? Go on by the clock, mix nothing, and send somebody for an adult.",
  noPhone:
    "**No: film only in total darkness.** Phones, watches and red lights off, or outside, until the lid is on the tank.",
  touch:
    "**Only by its edges:** a wet film scratches at a touch, a dry one keeps every finger mark. Let it hang until it is dry.",
  touchReel:
    "**No: where film touches film no bath gets in, and it stays unfixed.** Nothing poured in yet? Wind it anew in the dark. Is the developer in? Leave the lid on, go on by the clock, and tell the teacher.",
  level:
    "**Film not covered? Pour in more of the same mix at once, and agitate.** What stands above the bath stays undeveloped or unfixed. More than needed does no harm as long as the lid shuts. Mixed too strong or too weak? Tell the teacher how much of each you took.",
  fixed:
    "**Fixed is what has had its whole time in the fixer: I call you then.** Before that nothing tells it through the lid. A film that is still milky goes back into the fixer: lid on, and tell the teacher.",
  finish:
    "**When the last bath is out: hang the film, rinse tank and reel, wipe your place, wash your hands.** When it is dry: cut it, put it in its sleeve. The roll is in the log.",
  clock:
    "**Go by my calls: I count from the moment you press.** Pressed late, or poured before? Say how long ago, like “poured 20 s ago”, and every call moves. A watch beside it does no harm.",
  close:
    "**Don't pour anything in yet, and keep the film in the dark.** Is the reel right down, its tube in the middle, the lid straight? Then press or turn it until it stops. It still won't? Call the teacher to you. A bath is in already? Hold the lid on.",
  closeNow:
    "**Hold the lid on with your hand, and go on by my calls.** Is it straight? Press or turn it until it stops, without lifting it. It still won't? Keep holding it, and call the teacher to you.",
  place:
    "**I can't see the room: ask an aide or the teacher where it is.** Don't leave a film that I am about to call.",
  eat: "**No: no food, drink or gum in the darkroom.** What was in a bath gets from fingers into the mouth. Outside, after washing your hands.",
  tap: "**Tap the tank on the bench after each agitation, firmly but not hard.** It knocks air bubbles off the film: where one stays, it leaves a round spot. On the outside of the tank they do nothing.",
  back: "**Developer: used once, into the waste jug or drain of the class. Stop bath and fixer: back into their own bottles, where your class uses them again.** Fixer never goes down the drain: it holds silver. The call to pour out says it for your film.",
  bell: "**Tell the teacher now: a bath goes on working after the bell.** A film that is fixed may lie in clean water until the teacher says. One in the developer or the fixer goes on to its end first.",
  bellAt: (bell: string, left: string) => `**In ${left}: the bell rings at ${bell}.**`,
  bellUnknown: "**No bell is set for now: ask your teacher by when you must be done.**",
  bellFits: (done: string, bell: string) => `**Yes: all done at ${done}, before the bell at ${bell}.**`,
  /** `fixed`: when it leaves the fixer; null where it has. */
  bellInWater: (bell: string, fixed: string | null) =>
    `**The bell rings at ${bell}.** The film is ${fixed === null ? "fixed" : `out of the fixer at ${fixed}`}, but not washed by then: tell the teacher. It may lie in clean water for a while.`,
  slowPour:
    "**A few seconds more hardly show: pour in the next bath now, and press when it is in.** The old bath works until then, so next time begin at the call. Minutes too long in the developer make the film denser, not lost: tell the teacher.",
  load: "**Either end may go first, and either way round it develops, as long as it lies on the reel without touching itself.** It curls inwards by itself: follow that. Not sure? In the dark, before anything is poured, feel whether it is even.",
  dropped:
    "**Still dry and in the dark? Lift it by its edges and wind it on.** Wet? Rinse it in clean water, don't wipe it. Did light reach it before the fixer? Into the closed tank at once, and tell the teacher.",
  quiet:
    "**Menu: take “Say calls aloud” off.** With the sound off, too, you must look at the screen for each call.",
  wet: "**Reel and hands must be bone dry, or the film sticks:** dry them with a cloth and warm air, also between the guides of the reel. A few drops in the tank do no harm.",
  hard: "**Turn the tank over gently: once over and back in a few seconds.** Shaken hard it foams, and the film develops unevenly. It happened? Go on gently by the calls.",
  longerFix:
    "**A minute or two longer in the fixer does no harm; a much longer time bleaches the film.** The developer never longer than its time.",
  rinseColour:
    "**Coloured or cloudy water from the film is usual: dye that comes off.** Pour it out and go on.",
  dirt: "**Leave it while it is wet: rinse it in clean water, don't wipe.** When it is dry, blow it off or take it away with a soft brush. It does the film no harm.",
  broken:
    "**Nobody touches the pieces: tell the teacher.** Stand back, shoes on, gloves for whoever sweeps it up. Silvery drops are mercury: everybody out, window open, and nobody sweeps.",
  /** `steps`: `Developer, Rinse 1, Fixer`; `of`: `R7`, `P7`. */
  order: (steps: string, of: string) => `**In this order: ${steps}** (${of}). I call you at each.`,
  usualOrder:
    "**Developer, then stop bath or two changes of water, fixer, wash, wetting agent.** Your plan says it for your film.",
  water:
    "**Tap water will do for mixing and rinsing, as warm as the bath.** Only the last one, with wetting agent, is better distilled: hard water leaves marks.",
  secondReel:
    "**Nothing poured in yet? In the dark, put it in.** Is a bath in? Leave the lid on: the film inside goes on by the clock. A reel without film above it only keeps the lower one from moving. A film that is left outside stays in the dark, and gets a run of its own.",
};
export type AroundWords = typeof en;
