import { summaryOf } from "./forms.ts";
import { makeAsk } from "./ask/command.ts";
import { batchAllow, batchCorrect, batchDiscard, batchTopup, makeBatchTest } from "./batch/change/command.ts";
import { batchMix } from "./batch/mix/command.ts";
import { batchPair, batchRotate } from "./batch/pair/command.ts";
import { batchShelf, batchRestock } from "./batch/shelf/command.ts";
import { batchLedger, batchStatus } from "./batch/status/command.ts";
import { batchTake } from "./batch/take/command.ts";
import { batchHandover, batchWaste } from "./batch/waste/command.ts";
import { caution } from "./caution/command.ts";
import { classBaths } from "./class/baths/command.ts";
import { classPeriods } from "./class/periods/command.ts";
import { classBoard } from "./class/board/command.ts";
import { classDigest } from "./class/digest/command.ts";
import { classErase } from "./class/erase/command.ts";
import { classFirstday } from "./class/firstday/command.ts";
import { classMend } from "./class/mend/command.ts";
import { classTurns } from "./class/turns/command.ts";
import { classReport } from "./class/report/command.ts";
import { classSaid, classSay } from "./class/say/command.ts";
import { classRole, classSetup } from "./class/setup/command.ts";
import { contactExposure } from "./contact/exposure/command.ts";
import { contactSheet } from "./contact/sheet/command.ts";
import type { Command } from "./define.ts";
import { help } from "./help/command.ts";
import { classForget, mineErase, mineExport, mineLanguage, mineShow } from "./mine/command.ts";
import { classPhone, minePhone } from "./mine/phone/command.ts";
import { mixClass } from "./mix/class/command.ts";
import { mixDilute, mixTemper } from "./mix/command.ts";
import { plan, planCurve } from "./plan/command.ts";
import { planExposure } from "./plan/exposure/command.ts";
import { rollNote, rollRate, rollShow } from "./roll/command.ts";
import { rollExport } from "./roll/export/command.ts";
import { rollFault } from "./roll/fault/command.ts";
import { rollFrame } from "./roll/frame/command.ts";
import { rollFind } from "./roll/find/command.ts";
import { rollPhoto } from "./roll/photo/command.ts";
import { printAgain } from "./print/again/command.ts";
import { printCompare } from "./print/compare/command.ts";
import { printEnlarger } from "./print/enlarger/command.ts";
import { printExport } from "./print/export/command.ts";
import { printFault } from "./print/fault/command.ts";
import { printFind } from "./print/find/command.ts";
import { printGear } from "./print/gear/command.ts";
import { printGrade } from "./print/grade/command.ts";
import { printLog } from "./print/log/command.ts";
import { printMeasure } from "./print/measure/command.ts";
import { printNote, printRate } from "./print/note/command.ts";
import { printPaper } from "./print/paper/command.ts";
import { printPhoto } from "./print/photo/command.ts";
import { printCall } from "./print/call/command.ts";
import { printRead } from "./print/read/command.ts";
import { printShow } from "./print/show/command.ts";
import { printStrip } from "./print/strip/command.ts";
import { printTime } from "./print/time/command.ts";
import { runCorrect, runNext, runSeen, runStart, runStatus, runStop } from "./run/command.ts";
import { fixLonger } from "./run/fix-longer.ts";
import { runTrial } from "./run/trial/command.ts";
import { sheetAdd, sheetExport, sheetList, sheetShow } from "./sheet/command.ts";
import { sheetImport, sheetUndo } from "./sheet/import/command.ts";
import { sheetJudge, sheetMove } from "./sheet/judge/command.ts";
import { sheetTablet } from "./sheet/tablet/command.ts";
import { trayLamp } from "./tray/lamp/command.ts";
import { trayLights, trayWait } from "./tray/lights/command.ts";
import { trayTest } from "./tray/test/command.ts";
import { trayBlack } from "./tray/black/command.ts";
import { trayFactor } from "./tray/factor/command.ts";
import { trayLines } from "./tray/lines/command.ts";
import { trayPlan } from "./tray/plan/command.ts";
import { traySet } from "./tray/set/command.ts";
import { tankMeasure } from "./tank/measure/command.ts";
import { tankAdd, tankClear, tankList, tankRemove, tankReport } from "./tank/command.ts";

const asked: readonly Command[] = [
  plan,
  planCurve,
  planExposure,
  runStart,
  runNext,
  runStatus,
  runCorrect,
  runSeen,
  runStop,
  trayPlan,
  trayLines,
  trayFactor,
  trayWait,
  trayLights,
  trayTest,
  trayLamp,
  trayBlack,
  traySet,
  runTrial,
  rollFind,
  rollShow,
  rollNote,
  rollRate,
  rollFault,
  rollFrame,
  rollExport,
  rollPhoto,
  contactSheet,
  contactExposure,
  printStrip,
  printCall,
  printRead,
  printGrade,
  printTime,
  printLog,
  printAgain,
  printFind,
  printShow,
  printCompare,
  printRate,
  printNote,
  printFault,
  printPhoto,
  printExport,
  printGear,
  printPaper,
  printMeasure,
  printEnlarger,
  sheetAdd,
  sheetTablet,
  sheetJudge,
  sheetMove,
  sheetShow,
  sheetList,
  sheetImport,
  sheetUndo,
  sheetExport,
  mixDilute,
  mixTemper,
  mixClass,
  batchStatus,
  batchMix,
  makeBatchTest(fixLonger),
  batchTopup,
  batchDiscard,
  batchLedger,
  batchCorrect,
  batchAllow,
  batchPair,
  batchRotate,
  batchTake,
  batchWaste,
  batchHandover,
  batchShelf,
  batchRestock,
  classFirstday,
  classSetup,
  classBaths,
  classPeriods,
  classDigest,
  classRole,
  classSay,
  classSaid,
  classTurns,
  classBoard,
  classReport,
  classPhone,
  classMend,
  classForget,
  classErase,
  mineShow,
  mineExport,
  mineLanguage,
  minePhone,
  mineErase,
  tankList,
  tankReport,
  tankClear,
  tankMeasure,
  tankAdd,
  tankRemove,
  caution,
  help,
];

/** The registry: what a person can ask. Nothing is found by file name. */
export const commands: readonly Command[] = [...asked, makeAsk(asked, summaryOf)];
