import * as ofClass from "./class-answers.ts";
import type { Facts } from "./facts.ts";
import type { Reading } from "./read.ts";
import type { Intent } from "./rules.ts";
import { printingAnswer } from "./print-answers.ts";
import * as ofRun from "./run-answers.ts";
import * as basics from "./basics-answers.ts";
import * as around from "./around-answers.ts";
import * as desk from "./desk-answers.ts";
import * as atSink from "./sink-answers.ts";
import * as onWorry from "./worry-answers.ts";
import { says, shows, type Answer, type Answerer } from "./shape.ts";
import { timeAnswer } from "./time.ts";
import { askWords as words } from "./words.ts";

/*
 * What a sentence is answered with. Nothing is changed here: a command that only reads may be shown, and whatever would
 * change something is a key.
 */

const ANSWERS: Readonly<Record<Intent, Answerer>> = {
  time: timeAnswer,
  start: ofRun.startAnswer,
  next: ofRun.nextAnswer,
  poured: ofRun.pouredAnswer,
  where: ofRun.whereAnswer,
  left: ofRun.leftAnswer,
  stop: desk.stopAnswer,
  wait: ofRun.waitAnswer,
  undo: ofRun.undoAnswer,
  warmer: ofRun.warmerAnswer,
  good: ofClass.bottleAnswer,
  age: ofClass.bottleAnswer,
  who: ofClass.whoAnswer,
  look: basics.lookAnswer,
  word: ofClass.wordAnswer,
  waste: () => shows("caution", { about: "waste" }),
  amount: ofClass.amountAnswer,
  films: () => shows("sheet list"),
  printing: printingAnswer,
  warmth: atSink.warmthAnswer,
  baths: atSink.bathsAnswer,
  agitate: atSink.agitateAnswer,
  missed: atSink.missedAnswer,
  silent: atSink.silentAnswer,
  reel: atSink.reelAnswer,
  lid: atSink.lidAnswer,
  leak: atSink.leakAnswer,
  lights: atSink.lightsAnswer,
  hang: atSink.hangAnswer,
  mishap: atSink.mishapAnswer,
  wear: onWorry.wearAnswer,
  smell: onWorry.smellAnswer,
  exposed: onWorry.exposedAnswer,
  leader: onWorry.leaderAnswer,
  tint: onWorry.tintAnswer,
  calls: onWorry.callsAnswer,
  phone: onWorry.phoneAnswer,
  turn: onWorry.turnAnswer,
  expired: onWorry.expiredAnswer,
  several: onWorry.severalAnswer,
  faster: onWorry.fasterAnswer,
  worry: onWorry.worryAnswer,
  music: around.musicAnswer,
  "wet-hands": around.wetHandsAnswer,
  panic: around.panicAnswer,
  share: around.shareAnswer,
  "for-other": around.forOtherAnswer,
  teacher: around.teacherAnswer,
  "no-phone": around.noPhoneAnswer,
  touch: around.touchAnswer,
  level: around.levelAnswer,
  fixed: around.fixedAnswer,
  finish: around.finishAnswer,
  clock: around.clockAnswer,
  close: around.closeAnswer,
  place: around.placeAnswer,
  order: around.orderAnswer,
  water: around.waterAnswer,
  "second-reel": around.secondReelAnswer,
  eat: around.eatAnswer,
  tap: around.tapAnswer,
  back: around.backAnswer,
  bell: around.bellAnswer,
  "slow-pour": around.slowPourAnswer,
  load: around.loadAnswer,
  dropped: around.droppedAnswer,
  quiet: around.quietAnswer,
  wet: around.wetAnswer,
  hard: around.hardAnswer,
  "longer-fix": around.longerFixAnswer,
  dirt: around.dirtAnswer,
  broken: around.brokenAnswer,
  unreel: basics.unreelAnswer,
  skip: basics.skipAnswer,
  dark: basics.darkAnswer,
  "rinse-warmth": basics.rinseWarmthAnswer,
  "at-once": basics.atOnceAnswer,
  danger: () => shows("caution"),
  dryer: basics.dryerAnswer,
  clings: basics.clingsAnswer,
  cut: basics.cutAnswer,
  "film-name": basics.filmNameAnswer,
  "pour-how": basics.pourHowAnswer,
  "wrong-bottle": basics.wrongBottleAnswer,
  "why-agitate": basics.whyAgitateAnswer,
  wetting: basics.wettingAnswer,
  "come-in": basics.comeInAnswer,
  "wrong-plan": basics.wrongPlanAnswer,
  late: basics.lateAnswer,
  sleeve: basics.sleeveAnswer,
  rewind: basics.rewindAnswer,
  alarm: basics.alarmAnswer,
  length: basics.lengthAnswer,
  "spilt-on": basics.spiltOnAnswer,
  bells: desk.bellsAnswer,
  "say-all": desk.sayAllAnswer,
  "more-time": desk.moreTimeAnswer,
  "sign-out": desk.signOutAnswer,
  standing: desk.standingAnswer,
  labels: desk.labelsAnswer,
  "other-bottle": desk.otherBottleAnswer,
  "by-bell": desk.byBellAnswer,
  "stop-other": desk.stopOtherAnswer,
  rolls: desk.rollsAnswer,
  harm: ofClass.harmAnswer,
  hello: () => shows("help", {}, words().hello),
  thanks: () => says(words().thanks),
  help: () => shows("help"),
};

export function answerTo(intent: Intent, reading: Reading, facts: Facts): Answer {
  return ANSWERS[intent](reading, facts);
}
