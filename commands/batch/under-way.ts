/** Films under way whose fixing a test has changed: longer than it was to be; out of the fixer too soon, as is known now. */
export interface UnderWay {
  readonly longer: number;
  readonly again: number;
}
export const NONE_UNDER_WAY: UnderWay = { longer: 0, again: 0 };
