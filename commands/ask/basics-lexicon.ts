/* What words may mean in a first hour in the darkroom; as lexicon.ts, of which it is a part. */

export const BASICS_WORDS = {
  GOT: "got gotten gekriegt bekommen abbekommen abgekriegt abgekommen",
  STUFF: "stuff zeug zeugs brühe plörre flüssigkeit liquid juice suppe",
  STUCK: "stuck sticks jammed jams klemmt klemmen verklemmt festgeklemmt hakt verhakt",
  OFF: "off runter ab abmachen herunter abwickeln abspulen ausspulen unwind unroll abrollen rauskriegen",
  SKIP: "skip skipped skipping omit weglassen weggelassen auslassen ausgelassen überspringen übersprungen without ohne",
  MATTER: "matter matters egal schlimm problem",
  WHICH: "which welche welcher welches welchen",
  DANGER:
    "dangerous danger harmful toxic unhealthy harm gefährlich schädlich ungesund gefahr schädigt ätzend corrosive",
  BANG: "bang banging bump knock klopfen aufklopfen hauen schlagen",
  DRYER: "dryer drier trockner trockenschrank trockenplatz",
  SWAPPED: "swapped vertauscht verwechselt mixedup",
  CLING: "klebt kleben aneinander sticking sticky stick clings",
  TOGETHER: "together zusammen",
  FIT: "fit fits passen passt",
  SEEK: "find finde suche search missing",
  BRIEF: "short kurz soon",
  TRIM: "cut cutting schneide schneiden zerschneiden geschnitten",
  TWICE: "twice zweimal",
  MEASURE: "measure abmessen",
  BROUGHT: "brought dabei mitgebracht",
  GO: "gehen",
  SOAP: "soap spüli spülmittel seife",
} as const;
