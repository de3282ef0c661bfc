import type { SinkWords } from "./sink.en.ts";

export const de: SinkWords = {
  reel: "**Spule und Hände ganz trocken, und völlige Dunkelheit.** Schneide den Filmanfang gerade, runde die Ecken ab, schieb ihn unter die Führung und dreh ohne Kraft. Klemmt er? Nimm ihn heraus, trockne die Spule und fang neu an; leg den Film so lange in die geschlossene Dose. Üben lässt es sich bei Licht mit einem verdorbenen Film.",
  missed:
    "**Kipp jetzt einmal und mach dann mit den Signalen weiter.** Einmal ausgelassen sieht man kaum. Hol es nicht mit mehr Kippen nach.",
  missedCall:
    "**Tu jetzt, was unten steht.** Einmal nicht gekippt sieht man kaum: Hol es nicht mit mehr Kippen nach.",
  silent:
    "**Dreh die Lautstärke auf, lass diese Seite offen und tipp einmal darauf:** Ein Handy tönt erst nach einer Berührung. Signale bei geschlossener Seite: `/mine phone`. In einem anderen Chat: Erlaube seine Mitteilungen.",
  lights:
    "**Frag zuerst laut.** Licht verdirbt offenen Film und unbedecktes Papier sofort, auch das vom Handy. Ein Film in der geschlossenen Dose verträgt es.",
  lidShut:
    "**Lass den Deckel zu, bis die Zeit im Fixierbad um ist:** Vorher verdirbt Licht den Film. Nur eine Kappe über der Gießöffnung darf ab. Ist die Dose offen? Mach sie sofort zu, mach nach der Uhr weiter und sag es der Lehrkraft: Ein Teil des Films kann verloren sein.",
  lidSafe:
    "**Der Deckel darf ab: Der Film ist fixiert, Licht schadet ihm nicht mehr.** Fass ihn nur am Rand an und wässere ihn zu Ende.",
  leak: "**Handschuhe an, halt sie über das Becken und mach nach der Uhr weiter.** Drück den Deckel fest zu und kipp sanft. Wisch auf, was am Boden ist. Melde die Dose danach, damit sie niemand als Nächstes nimmt.",
  leaks: "undicht",
  reportLeak: (tank) => `Dose ${tank} melden: undicht`,
  warmth:
    "**20 °C sind beim Entwickler üblich;** alle anderen Bäder und das Wasser fast genauso warm. Miss und sag, wie warm er ist: Die Zeit richtet sich danach.",
  range: (low, high) => `Das Datenblatt hat Zeiten von ${low} bis ${high}.`,
  baths: (times, of) => `**${times}** (${of}). Du bekommst ein Signal, wenn die Zeit um ist.`,
  bathsAtLeast: (fix, wash) =>
    `**Mindestens ${fix} ins Fixierbad und ${wash} wässern,** so hält es dieser Kurs. Ein Plan sagt es für deinen Film.`,
  agitate: {
    often: (bath, how) => `**${bath}: ${how}.** Du bekommst jedes Mal ein Signal.`,
    always: (bath) => `**${bath}: Beweg die Dose, bis die Zeit um ist.**`,
    refills: (bath, changes) =>
      `**${bath}: Füll und leere die Dose ${changes}-mal.** Kipp sie bei jeder Füllung ein paar Mal.`,
    never: (bath) => `**${bath}: nicht kippen.**`,
  },
  hang: (time) =>
    `**Häng ihn auf, wo kein Staub fliegt, an jedem Ende eine Klammer: Die untere zieht ihn glatt.** Fass ihn nur am Rand an. Er braucht etwa ${time}. Kein Föhn: Er bläst Staub darauf.`,
  mishap: {
    early:
      "**Zu früh ausgegossen? Gieß dasselbe Bad sofort wieder ein,** wenn du es noch hast. Sonst mach mit dem nächsten weiter; ein Film, der zu wenig Entwickler hatte, wird dünn. Sag es der Lehrkraft.",
    instead:
      "**Falsches Bad? Sag der Lehrkraft sofort, welches und wie lange.** Wasser dazwischen schadet nicht: Gieß es aus und das richtige Bad ein. Fixierbad vor dem Entwickler nimmt das Bild weg.",
    fell: "**Ist der Deckel noch drauf? Dann mach nach der Uhr weiter.** Ging er ab, mach sie sofort zu und sag es der Lehrkraft. Handschuhe an, Verschüttetes aufwischen.",
    foam: "**Schaum schadet nicht; kipp sanfter.** Er kommt vom Netzmittel: Nimm weniger davon und spül Dose und Spule danach gut aus.",
  },
};
