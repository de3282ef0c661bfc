import type { Suggestion } from "../../../commands/define.ts";

/** A command as the page needs it: for completion, for errors while typing and for its form. */
export interface CommandCard {
  readonly name: string;
  readonly summary: string;
  /** Other words by which people look for it, in small letters; in every language. */
  readonly alike: string;
  readonly rest: string | null;
  readonly options: readonly OptionCard[];
}

export interface OptionCard {
  readonly name: string;
  readonly about: string;
  readonly isRequired: boolean;
  readonly kind: "text" | "whole" | "number" | "choice";
  /** Each with what it is called in the language of the cards. */
  readonly choices: readonly Suggestion[];
  readonly least: number | null;
  readonly most: number | null;
  readonly longest: number | null;
  readonly preset: string | null;
  /** Shown at once; the rest is folded away. */
  readonly isFirst: boolean;
  /** Values are offered while typing. */
  readonly hasOffers: boolean;
}
