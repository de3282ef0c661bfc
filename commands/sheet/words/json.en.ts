import type { printParseErrorCode } from "jsonc-parser";

export type ParseFault = ReturnType<typeof printParseErrorCode>;

export const en = {
  /** `InvalidSymbol` as `invalid symbol`. */
  parseFault: (fault: ParseFault): string =>
    fault
      .replace(/([A-Z])/g, " $1")
      .trim()
      .toLowerCase(),
  atLeast: (least: string) => `at least ${least}`,
  atMost: (most: string) => `at most ${most}`,
  wholeNumber: "a whole number",
  ofKind: (kind: string) => `of the kind ${kind}`,
  without: (keys: readonly string[]) => `without ${keys.join(", ")}, which I don't know`,
  oneOf: (values: readonly string[]) => `one of ${values.join(", ")}`,
  notBlank: "names can't be blank",
  /** What the checking library says of a rarer fault. */
  other: (message: string) => message,
};
export type JsonWords = typeof en;
