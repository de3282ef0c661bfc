import type { AroundWords } from "./around.en.ts";

export const de: AroundWords = {
  music:
    "**Ja, wenn du die Signale noch hörst: ein Ohr frei, die Musik leise, diese Seite offen.** Ein Wechsel des Bades meldet sich mehrmals, und das Handy vibriert, wo es kann.",
  wetHands:
    "**Beim Kippen musst du nichts tippen: Diese Signale gehen von selbst.** Für einen Wechsel des Bades trockne einen Finger ab, oder steck das Handy in eine durchsichtige Tüte. Nie mit Handschuhen, die im Bad waren.",
  panic:
    "**Bleib bei der Person, sprich ruhig und ruf die Lehrkraft.** Ein Film läuft so lange nach der Uhr weiter; wichtiger ist er nicht. Ist jemand verletzt, schwindlig oder bekommt schlecht Luft? Sofort an die frische Luft.",
  share:
    "**Jeder unter seinem Namen, damit jeder Film seine Signale hat.** Auf einem einzigen Handy geht das als Gerät am Becken: Das öffnet die Lehrkraft. Oder jeder startet seinen Lauf, und ihr hört auf beide.",
  forOther:
    "**Lass ihn nicht stehen: Sag es jetzt der Lehrkraft oder einer Hilfskraft.** Sie dürfen für andere drücken und sehen auf der Tafel, was dieser Film als Nächstes braucht. Gieß nur, was die Person selbst oder die Lehrkraft sagt.",
  teacher:
    "**Was die Lehrkraft sagt, gilt vor dem, was ich sage.** Ein Bad in der Dose wirkt so lange weiter: Frag, was damit geschehen soll. Niemand da? Mach nach der Uhr weiter, misch nichts an und schick jemanden los, der einen Erwachsenen holt.",
  noPhone:
    "**Nein: Film nur bei völliger Dunkelheit.** Handy, Uhr und Rotlicht aus oder draußen lassen, bis der Deckel auf der Dose ist.",
  touch:
    "**Nur am Rand:** Nasser Film verkratzt bei jeder Berührung, trockener behält jeden Fingerabdruck. Lass ihn hängen, bis er trocken ist.",
  touchReel:
    "**Nein: Wo Film auf Film liegt, kommt kein Bad hin, und er bleibt unfixiert.** Noch nichts eingegossen? Spul ihn im Dunkeln neu ein. Ist der Entwickler drin? Lass den Deckel zu, mach nach der Uhr weiter und sag es der Lehrkraft.",
  level:
    "**Ist der Film nicht bedeckt? Gieß sofort vom selben Ansatz nach und beweg die Dose.** Was über dem Bad steht, bleibt unentwickelt oder unfixiert. Mehr als nötig schadet nicht, solange der Deckel schließt. Zu stark oder zu schwach gemischt? Sag der Lehrkraft, wie viel du wovon genommen hast.",
  fixed:
    "**Fixiert ist, was seine ganze Zeit im Fixierbad hatte: Dann bekommst du ein Signal.** Vorher sieht man es durch den Deckel nicht. Ein Film, der noch milchig ist, kommt zurück ins Fixierbad: Deckel drauf, und sag es der Lehrkraft.",
  finish:
    "**Wenn das letzte Bad draußen ist: Häng den Film auf, spül Dose und Spirale, wisch deinen Platz ab, wasch dir die Hände.** Ist er trocken: schneide ihn und steck ihn in die Hülle. Der Film steht im Filmbuch.",
  clock:
    "**Richte dich nach meinen Signalen: Ich zähle von dem Moment an, in dem du drückst.** Zu spät gedrückt oder vorher eingegossen? Sag, wie lange es her ist, etwa „vor 20 s eingegossen“: Dann verschieben sich alle Signale. Eine Uhr daneben schadet nicht.",
  close:
    "**Gieß noch nichts ein, und lass den Film im Dunkeln.** Sitzt die Spirale ganz unten, das Rohr in der Mitte, der Deckel gerade? Dann drück oder dreh ihn bis zum Anschlag. Geht er immer noch nicht zu? Ruf die Lehrkraft zu dir. Ist schon ein Bad drin? Halt den Deckel fest.",
  closeNow:
    "**Halt den Deckel mit der Hand fest, und mach nach den Signalen weiter.** Sitzt er gerade? Drück oder dreh ihn bis zum Anschlag, ohne ihn abzuheben. Geht er immer noch nicht zu? Halt ihn weiter fest, und ruf die Lehrkraft zu dir.",
  place:
    "**Den Raum sehe ich nicht: Frag eine Hilfskraft oder die Lehrkraft, wo es liegt.** Lass keinen Film allein, der gleich ein Signal bekommt.",
  eat: "**Nein: In der Dunkelkammer nichts essen, trinken oder kauen.** Was im Bad war, kommt über die Finger in den Mund. Draußen, nach dem Händewaschen.",
  tap: "**Klopf die Dose nach jedem Kippen auf dem Tisch auf, fest, aber nicht hart.** Das löst Luftblasen vom Film: Wo eine bleibt, gibt es einen runden Fleck. Außen an der Dose schaden sie nicht.",
  back: "**Entwickler: einmal benutzt, in den Kanister oder Ausguss des Kurses. Stoppbad und Fixierbad: zurück in ihre Flaschen, wo dein Kurs sie wieder benutzt.** Fixierbad kommt nie in den Ausguss: Es enthält Silber. Das Signal zum Ausgießen sagt es für deinen Film.",
  bell: "**Sag es jetzt der Lehrkraft: Ein Bad wirkt nach dem Klingeln weiter.** Ein fixierter Film darf in klarem Wasser liegen, bis die Lehrkraft etwas sagt. Im Entwickler oder Fixierbad geht er erst zu Ende.",
  bellAt: (bell, left) => `**In ${left}: Die Klingel läutet um ${bell}.**`,
  bellUnknown:
    "**Für jetzt ist keine Klingel eingetragen: Frag die Lehrkraft, bis wann du fertig sein musst.**",
  bellFits: (done, bell) => `**Ja: alles fertig um ${done}, vor der Klingel um ${bell}.**`,
  bellInWater: (bell, fixed) =>
    `**Die Klingel läutet um ${bell}.** Der Film ist ${fixed === null ? "fixiert" : `um ${fixed} aus dem Fixierbad`}, aber bis dahin nicht gewässert: Sag es der Lehrkraft. Er darf eine Weile in klarem Wasser liegen.`,
  slowPour:
    "**Ein paar Sekunden mehr sieht man kaum: Gieß jetzt das nächste Bad ein und drück, wenn es drin ist.** So lange wirkt das alte; fang beim nächsten Mal gleich beim Signal an. Minuten zu lang im Entwickler machen den Film dichter, verloren ist er nicht: Sag es der Lehrkraft.",
  load: "**Jedes Ende darf zuerst hinein, und andersherum entwickelt er auch, solange er auf der Spirale nirgends an sich selbst liegt.** Er rollt sich von selbst nach innen: Folge dem. Nicht sicher? Fühl im Dunkeln, bevor etwas eingegossen ist, ob er gleichmäßig liegt.",
  dropped:
    "**Noch trocken und im Dunkeln? Heb ihn am Rand auf und spul ihn ein.** Nass? Spül ihn in klarem Wasser, wisch nicht. Kam vor dem Fixierbad Licht daran? Sofort in die geschlossene Dose, und sag es der Lehrkraft.",
  quiet:
    "**Menü: Schalte „Signale vorlesen“ aus.** Ist auch der Ton aus, musst du für jedes Signal auf den Bildschirm sehen.",
  wet: "**Spirale und Hände müssen ganz trocken sein, sonst klebt der Film:** Trockne sie mit Tuch und warmer Luft, auch zwischen den Führungen der Spirale. Ein paar Tropfen in der Dose schaden nicht.",
  hard: "**Kipp die Dose sanft: einmal hin und zurück in ein paar Sekunden.** Wild geschüttelt schäumt es, und der Film wird ungleichmäßig. Schon passiert? Mach sanft nach den Signalen weiter.",
  longerFix:
    "**Ein, zwei Minuten länger im Fixierbad schaden nicht; viel länger bleicht den Film.** Im Entwickler nie länger als seine Zeit.",
  rinseColour:
    "**Gefärbtes oder trübes Wasser aus dem Film ist üblich: Farbstoff, der sich löst.** Gieß es aus und mach weiter.",
  dirt: "**Lass es, solange er nass ist: Spül ihn in klarem Wasser, wisch nicht.** Ist er trocken, blas es weg oder nimm es mit einem weichen Pinsel ab. Dem Film schadet es nicht.",
  broken:
    "**Niemand fasst die Stücke an: Sag es der Lehrkraft.** Tritt zurück, Schuhe an, Handschuhe für alle, die zusammenfegen. Silbrige Tropfen sind Quecksilber: Alle raus, Fenster auf, und niemand fegt.",
  order: (steps, of) => `**In dieser Reihenfolge: ${steps}** (${of}). Zu jedem bekommst du ein Signal.`,
  usualOrder:
    "**Entwickler, dann Stoppbad oder zweimal Wasser, Fixierbad, Wässerung, Netzmittel.** Für deinen Film sagt es dein Plan.",
  water:
    "**Zum Ansetzen und Spülen genügt Leitungswasser, so warm wie das Bad.** Nur das letzte, mit Netzmittel, ist destilliert besser: Hartes Wasser hinterlässt Flecken.",
  secondReel:
    "**Noch nichts eingegossen? Setz sie im Dunkeln ein.** Ist ein Bad drin? Lass den Deckel zu: Der Film in der Dose geht nach der Uhr weiter. Eine leere Spirale darüber hält nur die untere fest. Ein Film, der draußen blieb, bleibt im Dunkeln und bekommt einen eigenen Lauf.",
};
