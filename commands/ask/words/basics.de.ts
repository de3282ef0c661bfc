import type { BasicsWords } from "./basics.en.ts";

export const de: BasicsWords = {
  unreel:
    "**Erst nach dem letzten Bad: Dann schadet Licht nicht mehr.** Dreh eine Hälfte der Kunststoffspirale über den Anschlag und zieh beide auseinander; von einer aus Metall wickelst du den Film von außen ab. Fass ihn nur am Rand an, lass ihn nirgends anstoßen und häng ihn gleich auf.",
  unreelShut:
    "**Noch nicht: Der Film bleibt auf der Spirale und der Deckel zu, bis das letzte Bad draußen ist.** Dann drehst du eine Hälfte der Kunststoffspirale über den Anschlag, ziehst beide auseinander und hängst den Film gleich auf.",
  skip: "**Lass nichts weg, was in deinem Plan steht.** Nur statt des Stoppbads genügt zweimal frisches Wasser. Schon weggelassen? Mach mit dem Fixierbad weiter und sag es einer Hilfskraft: Es verbraucht sich schneller. Ohne Fixierbad wird der Film im Licht dunkel, ohne Wässerung verdirbt er später: Gib ihm das fehlende Bad, Deckel zu.",
  dark: "**Dunkel muss es nur sein, solange der Film offen ist: vom Öffnen der Patrone, bis der Deckel auf der Dose ist.** Danach darf Licht an sein, auch beim Gießen. Frag laut, bevor du an den Schalter gehst: Vielleicht liegt woanders ein Film offen.",
  rinseWarmth:
    "**Stoppbad, Fixierbad und Wasser: fast so warm wie das Bad davor, höchstens 3 °C Unterschied.** Ein Sprung kann den Film runzlig machen, und kaltes Wasser wäscht langsamer. Beim Entwickler zählt jedes Grad: Miss und schreib, wie warm er ist, etwa „21,5 Grad“.",
  redAndFilm: "**Nicht für Film: Der braucht völlige Dunkelheit, auch Rotlicht aus.** Für Papier:",
  atOnce:
    "**Zuerst die Dose, in der der Entwickler abgelaufen ist: Die kann nicht warten.** Ein Film im Fixierbad oder im Wasser verträgt eine halbe Minute mehr. Was wo ist:",
  atOnceNone: "**Du hast keinen Film in einer Dose:** Das Signal gilt jemand anderem. Sieh auf die Tafel.",
  dryer:
    "**Wer beim Trocknen dran ist, weiß ich nicht: Frag eine Hilfskraft.** So lange bleibt der Film in klarem Wasser, oder du hängst ihn auf, wo kein Staub fliegt.",
  clings:
    "**Zieh nicht: Leg ihn in klares Wasser und lass ihn sich von selbst lösen.** Ist die Dose noch zu? Lass den Deckel drauf und mach nach der Uhr weiter. Wo Film auf Film lag, bleibt er milchig: Fixier ihn noch einmal und sag es der Lehrkraft.",
  filmName:
    "**Lies den Namen auf der Patrone, der Schachtel oder dem Schutzpapier, nie auf dem Film selbst: Bis er fixiert ist, bleibt er im Dunkeln.** Du findest ihn nicht? Frag die Lehrkraft, bevor etwas eingegossen wird: Ohne Namen gibt es keine Zeit für ihn.",
  cut: "**Erst wenn er ganz trocken ist, auch am Rand: Nass verkratzt er und klebt.** Dann schneide zwischen zwei Bildern, so viele auf einen Streifen, wie in die Hülle passen, und steck die Streifen gleich hinein.",
  spiltOn:
    "**Zieh es aus, wenn es durchnässt ist, und spül die Haut darunter mit Wasser ab.** Handschuhe an, den Rest aufwischen. Entwickler und Fixierbad machen Flecken: Spül den Stoff kalt aus, bevor er trocknet. Juckt oder brennt es? Ruf sofort die Lehrkraft.",
  pourHow:
    "**Gieß in einem Zug ein, ohne Pause, die Dose etwas schräg, damit die Luft herauskommt:** Langsam eingegossen entwickelt der Film ungleichmäßig. Spritzen darf nichts. Dann zu damit und sofort bewegen. Fang mit dem Ausgießen an, wenn das Signal kommt.",
  wrongBottle:
    "**Sag es sofort der Lehrkraft: was in welche Flasche gekommen ist. Gieß nichts mehr hinein, und niemand benutzt sie.** Schraub sie nicht zu und geh einen Schritt zurück: Aus Säure und Fixierbad wird Gas frei. Dein Film läuft nach der Uhr weiter; sein nächstes Bad kommt aus einer anderen Flasche.",
  whyAgitate:
    "**Es bringt frisches Bad an den Film: Was an ihm anliegt, ist bald verbraucht.** Zu selten, und die Bilder werden dünn und ungleichmäßig; zu oft oder zu fest, und sie werden dicht und streifig. Mach es also, wenn das Signal kommt, und sanft.",
  wetting:
    "**So viel, wie auf seiner Flasche steht: meist ein paar Tropfen auf eine Dose sauberes Wasser.** Mehr schäumt und gibt Flecken beim Trocknen. Nicht bewegen. Danach lass den Film abtropfen und spül ihn nicht mehr.",
  wrongPlan:
    "**Noch ist nichts eingegossen: Mach einen neuen Plan, mit dem, was wirklich in der Dose ist.** Ein Lauf, der schon auf seinen Entwickler wartet, wird vorher gestoppt.",
  wrongPlanIn:
    "**Mach weiter, und sag der Lehrkraft jetzt, welcher Film und welcher Entwickler wirklich in der Dose sind.** Bis dahin kommen die Signale nach dem Plan; wann ausgegossen wird, sagt die Lehrkraft.",
  wrongTankIn:
    "**Mach weiter: Die Nummer der Dose ändert keine Zeit.** Sag der Lehrkraft, welche es ist, damit niemand sonst deine nimmt.",
  late: "**Zu spät heißt: Das Signal war da, und niemand hat gedrückt.** Tu jetzt, was dort steht, dann drück. Rechtzeitig getan, nur nicht gedrückt? Drück, und schreib dann, wann, etwa „vor 20 Sekunden eingegossen“.",
  sleeve:
    "**Dein Name, der Tag, der Film und seine Nummer im Filmbuch:** An der Nummer finden ihn alle wieder. Schreib, bevor die Streifen darin sind: Ein Stift drückt durch.",
  rewind:
    "**Bevor die Kamera aufgeht: Drück den Knopf an ihrem Boden, dann dreh die Kurbel, wie ihr Pfeil zeigt, bis sie leicht läuft.** Schon offen? Mach sie zu und sag es der Lehrkraft: An die äußeren Bilder ist Licht gekommen. Ein Rollfilm wird nicht zurückgespult: Dreh ihn bis zum Ende weiter.",
  alarm:
    "**Sofort raus, so wie es an deiner Schule gilt. Lass jeden Film, wo er ist.** Ruf laut, damit es auch hört, wer an einer Dose steht oder im Dunkeln ist. Komm erst zurück, wenn die Lehrkraft es sagt.",
  length:
    "**Nein: Die Zeit ist dieselbe, ob 24 oder 36 Bilder.** Es zählt, wie viele Filme in der Dose sind: Das steht im Plan.",
  comeIn:
    "**Im Raum: Menü, „Tür: Code und Leute“.** Dort findet die Lehrkraft den Kurscode, die Adresse zum Scannen und „Neuer Code“. An der Tür tippt man den Code und einen Namen ein. Auf Discord gibt es keinen Code: Wer den Kanal des Kurses sieht, ist drin.",
  lookWait:
    "**Lass den Deckel zu: Wie ein Film aussieht, zählt erst nach seiner Zeit im Fixierbad.** Schon hineingesehen? Deckel sofort drauf, mach nach der Uhr weiter und sag es der Lehrkraft.",
  look: {
    milky:
      "**Milchig heißt noch nicht fixiert: zurück ins Fixierbad, Deckel drauf, und sag es der Lehrkraft.** Danach klar? Dann wässere ihn neu.",
    coloured:
      "**Ein Hauch Violett oder Rosa ist Farbstoff: Wässere ihn länger.** Nach der Wässerung immer noch? Noch einmal ins Fixierbad, und sag es der Lehrkraft.",
    blank:
      "**Such die Zahlen am Rand.** Sind sie da: entwickelt, aber ohne Licht in der Kamera. Fehlen sie: Es kam kein Entwickler daran, oder das Fixierbad war zuerst drin. Zeig ihn der Lehrkraft.",
    dark: "**Sieh auf den Rand neben den Bildern.** Ist er auch dunkel, kam Licht daran, vielleicht in der Dose. Ist er klar: zu viel Licht in der Kamera oder zu lange entwickelt. Zeig ihn der Lehrkraft.",
    spots:
      "**Wisch nicht.** Wassertropfen: Spül ihn noch einmal, dann Netzmittel, und häng ihn auf. Kleine runde klare Flecken kommen von Luftblasen im Entwickler und bleiben; klopf die Dose nächstes Mal auf.",
    scratch:
      "**Ein Kratzer bleibt: Fass den nassen Film nicht mehr an und lass ihn trocknen.** Wie man ihn im Abzug versteckt, weiß die Lehrkraft.",
    any: "**Ist er fixiert, zeig den Film der Lehrkraft: am Rand gehalten, vor einem Licht.** Steht er im Filmbuch, suche ich die Ursache mit seinen Aufzeichnungen.",
  },
};
