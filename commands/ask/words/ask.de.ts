import type { AskWords } from "./ask.en.ts";

export const de: AskWords = {
  meant: {
    time: "Wie lange für einen Film?",
    start: "Anfangen",
    next: "Das nächste Bad ist drin",
    poured: "Ich habe schon eingegossen",
    where: "Wo bin ich?",
    left: "Wie lange noch?",
    stop: "Lauf abbrechen",
    wait: "Kann es warten?",
    undo: "Ich habe falsch gedrückt",
    warmer: "Andere Temperatur",
    good: "Ist die Chemie noch gut?",
    age: "Wie alt ist es?",
    who: "Wer hat welche Dose?",
    look: "Mein Film sieht falsch aus",
    word: "Was heißt ein Wort?",
    waste: "Wohin damit?",
    amount: "Wie viel brauche ich?",
    films: "Welche Filme gibt es?",
    printing: "Abzüge machen",
    warmth: "Wie warm soll es sein?",
    baths: "Wie lange in ein Bad?",
    agitate: "Wie oft kippen?",
    missed: "Ich habe das Kippen vergessen",
    silent: "Ich höre kein Signal",
    reel: "Der Film will nicht auf die Spule",
    lid: "Darf ich die Dose öffnen?",
    leak: "Die Dose ist undicht",
    lights: "Darf das Licht an?",
    hang: "Wo trocknet er?",
    mishap: "Mit der Dose ging etwas schief",
    wear: "Was ziehe ich an?",
    smell: "Es riecht",
    exposed: "Es kam Licht hin",
    leader: "Der Film steckt in der Patrone",
    tint: "Das Bad hat eine Farbe",
    calls: "Wie gehen die Signale?",
    phone: "Handy oder Seite ist weg",
    turn: "Wann bin ich dran?",
    expired: "Mein Film ist abgelaufen",
    several: "Mehrere Filme zugleich",
    faster: "Geht es schneller?",
    worry: "Ist mein Film verdorben?",
    harm: "Erste Hilfe",
    hello: "Hallo",
    thanks: "Danke",
    help: "Hilfe",
  },
  torn: "Das kann zweierlei heißen. Was meinst du?",
  unread: "Das habe ich nicht verstanden. Meintest du eins davon?",
  timeAt: (time, index) => `${time}, EI ${index}.`,
  timeKey: (time, bath) => `${time} · ${bath}`,
  planKey: "Plan machen",
  twenty: "Das gilt für 20 °C. Miss deinen Entwickler und sag, wie warm er ist: Die Zeit ändert sich damit.",
  chooseSheet: "In welchem Entwickler?",
  noTime: (sheet, temperature) => `Für ${sheet} gibt es keine Zeit bei ${temperature}.`,
  whichFilm: "Welcher Film ist es?",
  noFilms: "Es gibt noch keine Entwicklungszeiten. Eine Hilfskraft oder die Lehrkraft trägt sie ein.",
  sayFilm: "Oder schreib den Namen und wie warm der Entwickler ist, etwa „Lantern 400, 20 Grad“.",
  planFirst: "Zuerst ein Plan: Er rechnet die Zeit aus. Danach startest du ihn.",
  developed: (roll) =>
    `**Dein neuester Film steht als ${roll} im Filmbuch.** Wenn er trocken ist: schneiden, in die Hülle stecken, dann einen Kontaktbogen machen.`,
  developedUnlogged:
    "**Wenn er trocken ist: schneiden und in die Hülle stecken.** Ein Film, den ich bis zum Ende begleitet habe, steht im Filmbuch; dann ordne ich seinen Kontaktbogen an. Ein neuer beginnt mit einem Plan.",
  makePlan: "Plan machen",
  pressStart: (plan) =>
    `**Plan ${plan} ist fertig.** Drück auf Start, wenn der Film in der Dose ist und der Entwickler bereitsteht.`,
  start: "Start",
  noRun: "Du hast keinen Film in einer Dose.",
  pressIt: "Von selbst ändere ich nichts: Drück auf den Knopf, wenn es so weit ist.",
  whenPoured: (run) =>
    `**Wann hast du eingegossen, ${run}?** Drück darauf, dann rücken alle Signale dieses Bades nach.`,
  pouredAgo: (run, ago) => `${run}: vor ${ago} eingegossen`,
  ago: (ago) => `vor ${ago}`,
  nothingStopped:
    "Es ist noch nichts abgebrochen. Das Bad wirkt weiter, was immer ich tue: Brich nur ab, wenn du nach der Uhr fertig machst.",
  stopRun: (run) => `${run} abbrechen`,
  cannotWait:
    "**Ein Film im Bad entwickelt sich weiter: Eine Pause gibt es nicht.** Vor dem nächsten Bad darfst du dir einen Moment nehmen; die Uhr läuft erst, wenn du drückst.",
  undo: "**Was eingegossen ist, ist eingegossen.** Aber die Uhr lässt sich richtigstellen: Sag, wann das Bad wirklich hineinkam.",
  newTemperature: (run, temperature) => `${run}: jetzt ${temperature}`,
  pressTemperature: (temperature) =>
    `**${temperature} in der Dose?** Drück darauf, dann rechne ich aus, wie lange es noch dauert.`,
  measure: "**Wie warm ist es jetzt?** Miss in der Dose und schreib es, etwa „21,5 Grad“.",
  warmIt: "Ein Bad auf Temperatur bringen",
  noBottle: "Davon steht keine Flasche im Flaschenbuch.",
  otherBottles: "Alle Flaschen",
  tankFree: (tank) => `**Dose ${tank} ist frei.**`,
  tankReported: (tank, condition) => `**Dose ${tank} ist frei**, aber gemeldet: ${condition}.`,
  tankUnknown: (tank) => `Eine Dose ${tank} gibt es nicht.`,
  tankOf: (tank, person, step, until) =>
    `**Dose ${tank}: ${person}**, ${step}${until === null ? "" : ` bis ${until}`}.`,
  freeTanks: (tanks) => `Frei: ${tanks}.`,
  noFreeTank: "Keine Dose ist frei.",
  noRoll: "Du hast noch keinen Film im Filmbuch. Die Ursache wird mit den Aufzeichnungen des Films gesucht.",
  noTerm: "Welches Wort? Frag etwa „was ist ein Stoppbad“.",
  amountOf: (plan, total, parts) => `**Plan ${plan}: ${total}** Entwickler, ${parts}.`,
  parts: (concentrate, water) => `${concentrate} und ${water} Wasser`,
  stockOnly: "unverdünnt",
  mixTotal: "Das hängt von der Dose ab: Ein Plan sagt es.",
  makeStrip:
    "**Ein Teststreifen zeigt, welche Zeit stimmt.** Sag die kürzeste Zeit: Du erfährst Feld für Feld, was du an der Zeitschaltuhr einstellst. Drück danach auf das Feld, das stimmt.",
  stripKey: "Teststreifen machen",
  layContact:
    "**Ein Kontaktbogen** zeigt alle Bilder eines Films in ihrer eigenen Größe: Du erfährst, wie die Streifen auf dem Papier liegen und wie lange du belichtest.",
  contactKey: "Kontaktbogen meines neuesten Films",
  noPrintToRepeat:
    "**Du hast noch keinen Abzug eingetragen.** Trag einen mit seinen Sekunden ein, dann lässt er sich auf jedem Papier und Format wiederholen.",
  noSuchPrint: "Dieser Abzug ist nicht unter deinen eingetragenen.",
  allPrints: "Alle eingetragenen Abzüge",
  againKey: "Meinen neuesten Abzug noch einmal",
  inTrays:
    "**Das hängt von Papier und Entwickler ab.** Plane den Abzug: Du erfährst seine Zeit in jeder Schale und bekommst für jede ein Signal.",
  traysKey: "Abzug planen",
  whiteLight:
    "**Erst wenn alles Papier abgedeckt ist: Frag laut.** Abzüge vor dem Fixieren, offene Packungen und offener Film wären verloren. Weißes Licht kündigt eine Hilfskraft oder die Lehrkraft an.",
  whoInTrays: "Wer an den Schalen ist",
  trayTimes: (asked, paper, developer, temperature, all) =>
    asked === ""
      ? `**${all}**: ${paper} in ${developer} bei ${temperature}.`
      : `**${asked}** für ${paper}. Alles zusammen in ${developer} bei ${temperature}: ${all}.`,
  lampSafe: (lamp, time) =>
    `**Insgesamt ${time} unter ${lamp}**, nach der Probe des Kurses. Vor und nach der Belichtung zählt zusammen.`,
  lampUnsafe: (lamp) => `**${lamp} ist nicht sicher: Öffne darunter kein Papier.**`,
  noLamp:
    "**Noch hat es niemand geprüft.** Papier kann seine Lichter verlieren, ohne dass man es sieht: Halt es abgedeckt und bitte eine Hilfskraft, die Lampe zu prüfen.",
  lampAndFilm: "Das gilt für Papier. Film bei völliger Dunkelheit einspulen: ganz ohne Dunkelkammerlicht.",
  printing: "**Was möchtest du machen?** Zuerst ein Teststreifen, dann der Abzug, dann die Schalen.",
  printLooks:
    "**Stimmt etwas mit einem Abzug nicht?** Die Ursache wird mit dem gesucht, was zu ihm eingetragen ist.",
  printDark:
    "**Zu dunkel: Gib weniger Licht.** Die halbe Zeit ist eine Blende weniger; ein Teststreifen zeigt, wie viel es braucht.",
  printPale:
    "**Zu hell: Gib mehr Licht** und lass ihn die ganze Zeit im Entwickler. Die doppelte Zeit ist eine Blende mehr; ein Teststreifen zeigt, wie viel es braucht.",
  whichGrade:
    "**Fang mit Gradation 2 an.** Bei einem flauen Negativ nimm eine härtere (3 bis 4), bei einem harten eine weichere (0 bis 1). Miss das Negativ aus, dann nenne ich dir die Gradation.",
  gradeKey: "Gradation aus Messwerten",
  printHard:
    "**Nur Schwarz und Weiß, wenig Grau: Nimm eine weichere Gradation.** Danach ein Teststreifen für die Zeit.",
  printFlat:
    "**Kein echtes Schwarz oder Weiß: Nimm eine härtere Gradation** und lass ihn die ganze Zeit im Entwickler. Danach ein Teststreifen für die Zeit.",
  printUnlogged:
    "**Trag den Abzug zuerst ein,** mit seinen Sekunden: Dann wird die Ursache mit seinen eigenen Angaben gesucht. Oder fang mit einem Teststreifen an.",
  printFault: "Mein neuester Abzug sieht falsch aus",
  hello: "Hallo. Ich behalte die Zeit deines Films im Auge und gebe dir bei jedem Schritt ein Signal.",
  thanks: "Gern.",
  cautions: "Alle Sicherheitshinweise",
};
