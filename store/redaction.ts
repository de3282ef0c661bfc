/* How people are taken out of what others wrote and were shown; the words for it are not the store's. */

/** The ways in which a person may be named in a text. */
export interface NameForms {
  /** In any case. */
  readonly whole: readonly string[];
  /** As written: a first name may be a common word. */
  readonly parts: readonly string[];
}

/** By what something of a person is known again in an answer to somebody else. */
export interface Traces {
  readonly names: readonly string[];
  /** Numbers as they are said aloud, without their letters. */
  readonly plans: readonly number[];
  readonly runs: readonly number[];
  readonly rolls: readonly number[];
  readonly prints: readonly number[];
  /** What was written of their rolls and prints. */
  readonly texts: readonly string[];
}

export interface Redaction {
  /** The forms of `names` that nobody of `others` goes by, too. */
  formsOf(names: readonly string[], others: readonly string[]): NameForms;
  inText(text: string, forms: NameForms): string;
  /** In every text inside a JSON value. */
  inJson(value: unknown, forms: NameForms): unknown;
  /** Whether a JSON value tells of them: by any of these traces, or by a part of a name in `forms`. */
  tellsOf(traces: Traces, forms: NameForms): (value: unknown) => boolean;
  /** What stands where an answer stood that told of them. */
  withdrawn(): string;
}
