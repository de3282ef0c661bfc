import { inEach } from "../speech/language.ts";
import { joinAnd, makeNumber, plain, quoted } from "../speech/wording.ts";
import { formatNumbers } from "../tank/numbers.ts";
import type { Run } from "../../store/shapes/run.ts";
import type { Tank } from "../../store/shapes/tank.ts";
import { nameOf } from "./run-words.ts";
import { de } from "./words/tank-busy.de.ts";
import { en } from "./words/tank-busy.en.ts";

/* What is said of a tank that another film is in. */

const words = inEach({ en, de });

export const own = (who: string): string => `${who} ${words().stopFirst}`;
export const waitsAlready = (who: string, run: Run): string => `${who} ${words().waitsAlready(nameOf(run))}`;
export const takeAnother = (who: string, free: readonly number[]): string =>
  `${who} ${words().takeAnother(formatNumbers(free), free.length)}`;
export const stillWaits = (who: string): string => `${who} ${words().isItEmpty}`;
export const waitsNoMore = (runs: readonly Run[]): string =>
  words().waitsNoMore(joinAnd(runs.map(({ number }) => makeNumber("run", number))), runs.length);
export const tankKey = (tank: number): string => words().tankKey(tank);
export const waitKey = (tank: number): string => words().waitKey(tank);
export const isMine = (): string => words().isMine;
export const unknown = (typed: string): string => words().unknown(quoted(plain(typed)));
export const unlike = ({ number, reels, volumeMl }: Tank): string => words().unlike(number, reels, volumeMl);
