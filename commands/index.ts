import { caution } from "./caution/command.ts";
import { classBell } from "./class/bell-command.ts";
import { classFit } from "./class/fit-command.ts";
import { classSaid, classSay } from "./class/say-command.ts";
import { classRole, classSetup } from "./class/setup-command.ts";
import type { Command } from "./define.ts";
import { help } from "./help/command.ts";
import { mixDilute, mixTemper } from "./mix/command.ts";
import { plan, planCurve } from "./plan/command.ts";
import { rollFind, rollNote, rollRate, rollShow } from "./roll/command.ts";
import { runCorrect, runNext, runStart, runStatus, runStop } from "./run/command.ts";
import { sheetAdd, sheetExport, sheetImport, sheetList, sheetShow } from "./sheet/command.ts";
import { tankAdd, tankClear, tankList, tankRemove, tankReport } from "./tank/command.ts";

/** The registry: what a person can ask. Nothing is found by file name. */
export const commands: readonly Command[] = [
  plan,
  planCurve,
  runStart,
  runNext,
  runStatus,
  runCorrect,
  runStop,
  rollFind,
  rollShow,
  rollNote,
  rollRate,
  sheetAdd,
  sheetShow,
  sheetList,
  sheetImport,
  sheetExport,
  mixDilute,
  mixTemper,
  classSetup,
  classBell,
  classRole,
  classSay,
  classSaid,
  classFit,
  tankList,
  tankReport,
  tankClear,
  tankAdd,
  tankRemove,
  caution,
  help,
];
