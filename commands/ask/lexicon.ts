import { BASICS_WORDS } from "./basics-lexicon.ts";
import { DESK_WORDS } from "./desk-lexicon.ts";
import { HARM_WORDS } from "./harm-lexicon.ts";
import { SINK_WORDS } from "./sink-lexicon.ts";
import { createSlips, foldWord, isSlipOf } from "./tokens.ts";

/*
 * What words may mean. English and German stand side by side, since a class mixes them within a sentence. A word may mean
 * several things (`bad`); `*` stands for any ending.
 */

const WORDS = {
  ...SINK_WORDS,
  ...BASICS_WORDS,
  ...DESK_WORDS,
  ...HARM_WORDS,
  // Asking
  HOW: "how hwo wie",
  LONG: "long lange lang longer länger",
  MUCH: "much many viel viele wieviel wieviele wievel",
  WHEN: "when wann",
  WHAT: "what whats wat was welche welcher welches which womit welchen",
  WHO: "who whos wer whose wem wessen",
  WHERE: "where wheres whereis wo woist woher wohin",
  WHY: "why warum wieso weshalb wofür wozu",
  MEAN: "mean means meaning bedeutet bedeuten heißt heissen heißen explain erklär erkläre erklären define",
  CAN: "can could kann kannst darf may allowed erlaubt",
  SHOULD: "should supposed must need soll sollen muss brauch brauche söll muess muas müss",

  // Time
  TIME: "time times minutes minuten minute min mins zeit zeiten dauer duration",
  DEVTIME: "entwicklungszeit entwicklungszeiten entwicklungzeit developmenttime",
  LEFT: "left remaining remain restzeit rest übrig verbleib*",
  STILL: "still noch nohc nch yet noh",
  OVER: "over finished vorbei aus done fertig durch end ende ready",
  SOON: "soon bald nearly almost gleich",
  TOGO: "togo",
  LATER: "later später",
  AGO: "ago before",
  BEFORE: "vor",
  SINCE: "since seit for",
  ALREADY: "already schon",
  NOW: "now jetzt nun gerade grad jetz",
  NEXT: "next weiter weitermachen nxt continue nächste nächster nächstes nächsten nexte",
  AFTER: "after nach then danach dann afterwards",
  STEP: "step schritt",
  STATUS: "status stand steht",
  PLAN: "plan plans",

  CALENDAR:
    "class lesson week weeks month year yesterday tomorrow monday tuesday wednesday thursday friday saturday sunday montag dienstag mittwoch donnerstag freitag samstag sonntag stunde stunden woche wochen monat jahr gestern schule school unterricht letzte letztes letzten",

  // Doing
  START:
    "start starten starte begin beginnen beginne anfangen anfang fangen fang los loslegen starting go losgehts startstart",
  TIMER: "timer clock uhr stoppuhr",
  READY: "ready bereit soweit parat beinand startklar",
  STOP: "stop stopp stoppen stoppe halt horauf horeauf",
  CANCEL:
    "cancel abort quit abbrechen abbruch abbreche brich beenden beende aufhören terminate schluss giveup endit",
  CALLING: "calling call rufen anrufen ruf",
  WAIT: "wait waiting warte warten hold moment momentchen sec pause paused pausieren pausiere sekunde anhalten hangon",
  NOT: "not nicht dont didnt garnicht kein keine no nein nooo havent hasnt isnt doesnt",
  UNDO: "undo rückgängig widerruf* revert goback",
  NOBODY: "nobody noone niemand keiner",
  OOPS: "oops ups hoppla whoops mist",
  WRONG:
    "wrong falsch falsche falschen mistake versehen versehentlich accident accidentally vertan verdrückt vertippt irrtum fehler schiefgelaufen schief",
  BACK: "back zurück",
  AWAY: "away weg wegmachen",
  EARLY: "early früh früher zufrüh",
  PRESS:
    "press pressed tap tapped hit gedrückt drücken getippt tippen eingetippt eingegeben entered typed drückte drücke button knopf taste",
  FORGOT: "forgot vergessen forgotten",
  LOST: "lost verloren faden confused verwirrt track",
  POURED:
    "poured pour eingegossen eingießen reingegossen eingefüllt gegossen reingekippt reingeschüttet gieße gieß pouring filled",
  POUR: "umgießen umfüllen pour pouring gießen eingießen gieße gieß",
  OUT: "out raus draußen heraus",
  POUROUT: "pourout ausgießen auskippen ausschütten rausgießen rausschütten rauskippen ausleeren leeren",
  IN: "in drin drinnen rein inside",
  FULL: "full voll",
  DONE: "done fertig finished ok okay erledigt",
  AGITATE:
    "shook shaken shaking geschüttelt geschwenkt gekippt bewegt agitate agitation agitating kippen schütteln schüttel invert inverting inversion inversions bewegen schwenken shake flip umdrehen umdrehn wackeln drehen klopfen aufklopfen",
  DO: "do mach machen tun mache doing make",
  DEVELOP: "develop developing devlop entwickeln entwickle entwickelt entwicklung process",
  FILM: "film films filme filmen roll rolls rolle",
  NEW: "new neu neuer neuen another",
  PUSHED: "pushed push gepusht pushen pull pulled shot belichtet fotografiert exposed iso ei asa",
  CALCULATE: "calculate compute work ausrechnen rechne berechne berechnen",

  // Baths and bottles
  DEVELOPER: "developer dev devs developr entwickler entwicklers soup papierentwickler suppe brühe",
  STOPBATH: "stopbath stoppbad stopbad unterbrecher unterbrecherbad",
  FIXER:
    "fixer fixieren fixiert fixed fixierer fixierers fixierbad fix fixers fixing papierfixierer papierfixierbad",
  WASH: "wash washing rince wässern wässerung wasser water rinse spülen",
  BATH: "bath bad bath bäder",
  CHEMICAL:
    "chemical chemicals chemie chemistry chemikalie chemikalien acid säure solution lösung essigsäure",
  BOTTLE: "bottle bottles flasche flaschen batch kanister",
  TANK: "tank tanks dose dosen dosn dösli döserl",
  GOOD: "good gut okay ok ordnung brauchbar haltbar fit fresh frisch",
  USE: "use used using reuse reused benutzen benutzten benutzter benutztes nehmen verwenden benutzt nutzen",
  WORKS: "work works geht funktioniert taugt wirkt does do schafft",
  DEAD: "dead died dies tot exhausted verbraucht worn hin kaputt expired abgelaufen spent leer erschöpft hinüber",
  KEEPS: "keep keeps last lasts hält halten haltbar",
  OLD: "old alt alte alten altes",
  AGE: "age alter",
  MIXED: "mixed made make angesetzt gemacht gemischt angerührt wurde",
  FREE: "free frei available verfügbar spare",
  HAS: "has have got hat using benutzt gehört hamma habts hend",

  // Temperature
  WARMER: "warmer hotter wärmer heißer warm warme warmes warmem hot heiß heißes warmed gestiegen risen",
  COLDER:
    "colder cooler kälter kühler cold eiskalt kalt kalte kaltes kaltem cool cooled abgekühlt fällt sinkt dropping falling",
  TEMPERATURE: "temperature temp temperatur thermometer grad degrees degree fahrenheit celsius",
  TOO: "too zu",

  // Negatives
  NEGATIVE:
    "negative negatives negativ negativs negs neg film filme picture pictures bild bilder photos fotos abzug",
  LOOKS: "looks look looking sieht aussehen came geworden rausgekommen",
  COLOURED: "purple pink lila rosa violet violett magenta",
  CLEAR: "clear blank klar transparent durchsichtig empty leer seethrough",
  NOTHING: "nothing nichts nix",
  BLACK: "black schwarz",
  MILKY: "milky cloudy milchig trüb trübe creamy hazy opaque",
  STREAKS: "streaks streak streifen stripes streifig",
  HOLES: "holes perforation perforations perforation* löcher löchern sprocket",
  THIN: "thin dünn faint pale blass flau",
  DARK: "dark dunkel dunkle dunkeln finster",
  LIGHT: "light hell",
  SPOTS: "spots spot dots punkte flecken fleck bubbles blasen specks pünktchen pünktli tupfen",
  ROUND: "round runde rund runder",
  CRESCENT: "crescent crescents halbmond halbmonde moon moons knick",
  SCRATCH: "scratch scratches scratched kratzer lines linien verkratzt",
  STAIN: "yellow brown gelb braun stain stained",
  FOGGED: "fog fogged foggy schleier grau grey gray verschleiert",
  DRYMARKS: "drops wasserflecken trocknungsflecken watermarks tropfen trockenflecken",
  UNEVEN: "uneven unevenly patchy ungleichmäßig fleckig",
  DRAUF: "drauf",
  ALL: "all alle alles every",
  SHOW: "show zeig zeige anzeigen",
  GIVE: "give gib",
  LAB: "darkroom labor lab dunkelkammer room raum",
  WERDE: "werde werden",

  // Prints
  STRIP: "teststrip teststrips teststreifen probestreifen",
  CONTACT: "contactsheet contactsheets kontaktbogen kontaktbögen kontaktabzug kontaktabzüge",
  PRINTS: "print prints printing abzug abzüge abzugs abzügen vergrößern vergrößerung",
  AGAIN: "again nochmal reprint reuse reused wiederholen",
  FRAME: "frame frames aufnahme",
  PAPER: "paper papers papier papiere fotopapier papierfixierer papierfixierbad papierentwickler",
  RC: "rc pe resincoated rcpaper pepapier",
  FIBRE: "fibre fiber fibrepaper fiberpaper baryt barytpapier",
  SAFELIGHT: "safelight safelights dunkelkammerlicht dunkelkammerleuchte redlight rotlicht rotlampe",
  SAFE: "safe sicher",
  FLAT: "flat flach flau kontrastarm",
  HARD: "hard harsh contrasty contrast hart harte kontrast kontrastreich",
  LITTLE: "little low wenig zuwenig lacks fehlt",
  GRADE: "grade grades gradation gradationen multigrade",
  DRY: "dry drying dries dried trocken getrocknet",
  GREY: "grey gray grau",
  UNSHARP: "unsharp blurry blurred unscharf verschwommen",
  TRAY: "tray trays schale schalen",
  WHITELIGHT: "whitelight weißlicht",

  // Waste
  DISPOSE:
    "dispose disposal entsorgen entsorgung wegkippen weggießen wegschütten throw wegwerfen abfall waste rid",
  DRAIN: "drain sink ausguss abfluss waschbecken",

  // People
  HELLO: "grüezi hiya hi hello hey hallo moin servus morning evening abend morgen tag yo grüß hallöchen",
  THANKS: "thanks thank thx thankyou cheers danke dank merci ty dankeschön",
  HELP: "help hilfe helfen helf",
  COMMANDS: "command commands befehl befehle",
  UNDERSTAND: "understand verstehe versteh kapier kapiere verstanden",
  FIRST: "first erste ersten erstes zuerst imnew binneu",
  YOU: "you du",
  HERE: "here hier da there",
  MILLILITRES: "ml millilitres milliliter liter litre menge amount",
  AMI: "ami",
  MORE: "more mehr",
  HAPPENS: "happens passiert",
  ARE: "are gibt gibts exist habt there",
  LIST: "list liste overview übersicht",
} as const;

export type Concept = keyof typeof WORDS;

/** Frequent words that mean nothing here, so that none of them is taken for a slip of another. */
const PLAIN =
  "a an and allen schreibe schreiben gerissen zerrissen eingerissen torn ripped beside besides the this that these those it its is isnt be been am im i me my mine we our us she he her his they them your to of on at by with from up out so or but if because just also very really please again some any one someone anyone somebody all says said did does has would will was were there here more most less than sure well lol haha " +
  "der die das den dem des ein eine einen einem einer ich mir mich mein meine meinen meiner wir uns er sie es ihr ist sind bin war waren hab habe haben hatte wird werden auf an am im bei mit von zum zur und oder aber wenn weil dass ja doch mal so auch sehr bitte wieder etwas einer jemand alle alles sagt gesagt kommt heute vom ums nen ne ner als ganz ganze ganzen tell one two three four five six seven eight nine ten eins zwei drei vier fünf sechs sieben acht neun zehn house see seen went go wht cant ive sorry oh today shall down into about ever everything everyone them then track side other both too difference usable until bis weit wanna gonna gotta think maybe still than half little number such same much thing things something anything lot great super weather nice feel come came want will wollen  like get let lets put dran wifi late date take home some same than them then für aufs ins am um über man meinem meines deine dein dir dich sich uns dies diese dieser dieses diesem jener kam kommt können konnte möchte möchten wollte wollten sollte nochmal mehr bloß nur eben halt denn dann ob kurz komplett des ned hob hats arg gone anmachen dauernd ständig immer sry omg brb pls plz scheiße shit worden habs ists sinds wars gibts gehts dauerts wo da unser unsere spät spater schade etwa ungefähr knapp zusammen guten schönen heute abend wetter wär wäre würde gern gerne glaub glaube weiß bleibt erwischt oh naja super nimm nehm take";

const exact = new Map<string, Set<Concept>>();
const endless: (readonly [stem: string, concept: Concept])[] = [];
for (const [concept, words] of Object.entries(WORDS) as [Concept, string][]) {
  for (const word of words.split(" ").map((each) => (each.endsWith("*") ? each : foldWord(each)))) {
    if (word.endsWith("*")) endless.push([foldWord(word.slice(0, -1)), concept]);
    else exact.set(word, (exact.get(word) ?? new Set()).add(concept));
  }
}
const plainWords = new Set(PLAIN.split(" ").map(foldWord));

const meantBy = createSlips(exact.keys());

const NONE: ReadonlySet<Concept> = new Set();

/** Whether a word has a meaning here or is too common to be a name. */
export function isCommon(word: string): boolean {
  return exact.has(word) || plainWords.has(word);
}

/** Whether a word means nothing that is known, not even as a slip: what it says is not understood. */
export function isStrange(word: string): boolean {
  return /^\p{L}{2}/u.test(word) && !isCommon(word) && conceptsOf(word).size === 0;
}

/** What a folded word may mean, slips forgiven. */
export function conceptsOf(word: string): ReadonlySet<Concept> {
  const known = exact.get(word);
  if (known) return known;
  const stems = endless
    .filter(([stem]) => word.startsWith(stem) || isSlipOf(word.slice(0, stem.length), stem))
    .map(([, concept]) => concept);
  if (stems.length > 0) return new Set(stems);
  if (word.length < 4 || plainWords.has(word)) return NONE;
  return exact.get(meantBy(word) ?? "") ?? NONE;
}
