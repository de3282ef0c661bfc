/* What words may mean by which a class is run; as lexicon.ts, of which it is a part. */

export const DESK_WORDS = {
  TELL: "tell sag sage schreib schreibe",
  ANNOUNCE: "announce announcement durchsage ansage ankündigen",
  EVERYONE: "everyone everybody all allen alle",
  EXTEND: "extend extending prolong verlängern verlängere",
  REMOVE: "remove kick entferne entfernen rauswerfen rausschmeißen rausnehmen",
  GROUP: "class klasse kurs",
  STANDS: "steht stehen whereis woist wheres",
  MESSAGE: "message nachricht mitteilung",
  READ: "read gelesen",
  SAME: "same gleiche gleichen gleich dasselbe selbe",
  GETS: "gets bekommt kriegt",
  LABEL: "label labels etikett etiketten",
  /** Of paper with something on it: whoever wants that has swallowed nothing. */
  PRINTOUT: "druck ausdruck ausdrucken printout",
} as const;
