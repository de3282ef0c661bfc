import type { JsonWords, ParseFault } from "./json.en.ts";

const PARSE_FAULTS: Record<ParseFault, string> = {
  InvalidSymbol: "unbekanntes Zeichen",
  InvalidNumberFormat: "keine richtige Zahl",
  PropertyNameExpected: "ein Name fehlt",
  ValueExpected: "ein Wert fehlt",
  ColonExpected: "ein Doppelpunkt fehlt",
  CommaExpected: "ein Komma fehlt",
  CloseBraceExpected: "eine } fehlt",
  CloseBracketExpected: "eine ] fehlt",
  EndOfFileExpected: "nach dem Ende steht noch etwas",
  InvalidCommentToken: "Kommentare gibt es darin nicht",
  UnexpectedEndOfComment: "ein Kommentar bricht ab",
  UnexpectedEndOfString: "ein Text bricht ab",
  UnexpectedEndOfNumber: "eine Zahl bricht ab",
  InvalidUnicode: "ungültiges Unicode-Zeichen",
  InvalidEscapeCharacter: "ungültiges Zeichen nach einem \\",
  InvalidCharacter: "ungültiges Zeichen",
  "<unknown ParseErrorCode>": "Fehler unbekannt",
};

const KINDS: ReadonlyMap<string, string> = new Map([
  ["string", "einen Text"],
  ["number", "eine Zahl"],
  ["boolean", "true oder false"],
  ["array", "eine Liste"],
  ["object", "ein Objekt"],
]);

/** Each but the first after `Bei … erwarte ich`. */
export const de: JsonWords = {
  parseFault: (fault) => PARSE_FAULTS[fault],
  atLeast: (least) => `mindestens ${least}`,
  atMost: (most) => `höchstens ${most}`,
  wholeNumber: "eine ganze Zahl",
  ofKind: (kind) => KINDS.get(kind) ?? `etwas von der Art ${kind}`,
  without: (keys) => `nichts mit dem Namen ${keys.join(", ")}; das kenne ich nicht`,
  oneOf: (values) => `eines von ${values.join(", ")}`,
  notBlank: "Namen, die nicht leer sind",
  other: () => "einen anderen Wert",
};
