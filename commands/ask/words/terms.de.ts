import type { TermWords } from "./terms.en.ts";

export const de: TermWords = {
  developer:
    "**Entwickler** schwärzt das Silber, das Licht bekommen hat: Er macht das Bild. Seine Zeit hängt von der Temperatur ab.",
  stop: "**Stoppbad** beendet die Entwicklung sofort. Zweimal Wasser tut es langsamer.",
  fixer:
    "**Fixierbad** nimmt das Silber weg, das kein Licht bekommen hat; danach darf der Film ans Licht. Es wird wieder benutzt und enthält Silber: nie weggießen.",
  wash: "**Wässern** holt das Fixierbad aus dem Film. Ein zu kurz gewässerter Film bleicht aus und wird fleckig.",
  wetting:
    "**Netzmittel** lässt das Wasser ablaufen, damit keine Tropfen antrocknen. Eine Minute, danach nicht mehr spülen.",
  washaid:
    "**Wässerungshilfe** ist ein Salzbad, das das Fixierbad schneller herauslässt: Das Wässern wird kürzer.",
  agitation:
    "**Kippen** bringt frischen Entwickler an den Film: Dose ruhig kippen und wieder aufrichten, so oft es dir gesagt wird. Zu wenig macht Streifen, zu viel macht den Film zu kontrastreich.",
  reel: "**Die Spirale** hält den Film so, dass keine Windung die nächste berührt. Beim Einspulen muss sie trocken sein.",
  tank: "**Die Dose** ist lichtdicht: Ist der Deckel drauf, darf es hell sein. Die Bäder laufen durch den Deckel hinein und heraus.",
  cassette: "**Die Patrone** ist die kleine Hülse, in der der Film kommt. Öffne sie bei völliger Dunkelheit.",
  stock:
    "**Stammlösung** ist die Lösung, wie sie aus Pulver angesetzt wird oder in der Flasche ist, bevor Wasser dazukommt.",
  dilution:
    "**1+1** heißt: 1 Teil Konzentrat oder Stammlösung und 1 Teil Wasser. Für 300 ml: 150 ml und 150 ml.",
  exposure:
    "**EI**, der Belichtungsindex, ist die Empfindlichkeit, auf die der Belichtungsmesser eingestellt war. Sie muss nicht die auf der Schachtel sein.",
  push: "**Pushen**: belichtet, als wäre der Film empfindlicher, und länger entwickelt. **Pullen**: umgekehrt.",
  negative: "**Ein Negativ** ist hell, wo das Motiv dunkel war, und dunkel, wo es hell war.",
  contact: "**Ein Kontaktbogen** ist ein Abzug aller Streifen in ihrer eigenen Größe, zum Aussuchen.",
  strip:
    "**Ein Teststreifen** ist ein Stück des Papiers, in Feldern belichtet, jedes länger als das davor. Er zeigt, welche Zeit stimmt.",
  leader:
    "**Die Filmzunge** ist das Ende, das aus der Patrone hängt. Sie hat Licht gesehen: gut für Klärproben.",
  clearing:
    "**Die Klärzeit** ist die Zeit, in der Fixierbad einen Filmschnipsel klar macht. Fixiere mindestens doppelt so lang. Hat sie sich verdoppelt, ist das Fixierbad verbraucht.",
  batch: "**Eine Flasche** angesetzter Chemie hat eine Nummer: B3.",
  sheet:
    "**Ein Datenblatt** sagt, wie lange ein Film in einem Entwickler braucht, so wie es der Hersteller oder deine Lehrkraft gefunden hat.",
  run: "**Ein Lauf** ist eine Dose auf ihrem Weg durch alle Bäder, mit Nummer: R7.",
  numbers:
    "**P5** ist ein Plan, **R7** ein Lauf, **T3** eine Dose, **B2** eine Flasche, **L12** ein Film im Filmbuch, **V7** ein Abzug.",
  reticulation:
    "**Runzelkorn** ist ein Netz feiner Risse, wenn die Bäder zu verschieden warm sind. Halte sie auf ein paar Grad gleich.",
  presoak:
    "**Vorwässern** heißt: eine Minute klares Wasser vor dem Entwickler. Nur wenn es der Hersteller oder die Lehrkraft sagt.",
  squeegee: "**Ein Abstreifer** wischt Wasser vom Film. Er kann kratzen; mit Netzmittel geht es ohne.",
  grain:
    "**Korn** ist das Silber, das man im vergrößerten Bild sieht. Empfindlichere Filme und langes Entwickeln zeigen mehr davon.",
  thermometer: "**Das Thermometer** kommt in den Entwickler, kurz bevor du eingießt. Ein halbes Grad zählt.",
  safelight:
    "**Dunkelkammerlicht** ist schwaches Licht, das Papier eine Weile verträgt, wenn der Kurs es geprüft hat. **Keines für Film:** bei völliger Dunkelheit einspulen, Handy, Uhr und Rotlicht aus.",
};
