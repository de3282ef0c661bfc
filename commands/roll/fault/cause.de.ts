import type { CauseWords } from "./cause.en.ts";

const ARMY_84 = "US Army SS0509-8, S. 84";
const ARMY_85 = "US Army SS0509-8, S. 85";
const NAVY_TABLE = "US Navy NAVEDTRA 14209, Tabelle 10-1";
const NO_SOURCE = "übliche Praxis, ohne Quelle";
const FROM_MEMORY = "aus dem Gedächtnis, keine Quelle gesehen";

const LOST = "Was nie da war, bringt nichts zurück. Heb den Film auf: Er lehrt etwas.";
const REFIX =
  "Fixier jetzt noch einmal, in frischem Fixierbad, mindestens seine doppelte Klärzeit. Dann wässere wieder ganz. Das schadet nicht, auch Wochen später.";

export const de: CauseWords = {
  "short-development": {
    title: "Zu wenig entwickelt (zu kurz oder zu kalt)",
    now: "Ein fixierter Film lässt sich nicht weiter entwickeln. Vergrößere auf härterer Gradation.",
    next: "Miss den Entwickler in der Dose, nimm die Zeit für diese Temperatur und gieß beim Signal aus.",
    source: "Studio Light, 1917; Dunkelkammerseite eines Vereins (phsc.ca)",
  },
  "weak-developer": {
    title: "Entwickler verbraucht, zu alt oder zu dünn",
    now: "Ein fixierter Film lässt sich nicht weiter entwickeln. Stell die Flasche weg, damit sie sonst keiner nimmt.",
    next: "Setz frisch an und miss das Konzentrat ab. Sieh vor dem Eingießen nach der Flasche: `/batch status`.",
    source: NO_SOURCE,
  },
  "under-exposure": {
    title: "In der Kamera zu wenig belichtet",
    now: "Schatten ohne Belichtung bleiben leer. Vergrößere für die mittleren Töne.",
    next: "Prüf Belichtungsmesser, eingestellte Empfindlichkeit und Verschluss. Miss auf die Schatten.",
    source: NO_SOURCE,
  },
  "over-development": {
    title: "Zu viel entwickelt (zu lang, zu warm oder zu viel bewegt)",
    now: "Vergrößere auf weicherer Gradation und belichte dabei länger.",
    next: "Miss mitten im Schritt noch einmal die Temperatur, und gieß beim Signal aus.",
    source: "Studio Light, 1917; Dunkelkammerseite eines Vereins (phsc.ca)",
  },
  "over-exposure": {
    title: "In der Kamera zu viel belichtet",
    now: "Belichte beim Vergrößern länger. Zugelaufene Lichter sind verloren.",
    next: "Prüf eingestellte Empfindlichkeit, Blende und Verschluss.",
    source: "US Navy NAVEDTRA 14209, Tabellen der Tonwerte",
  },
  "not-exposed": {
    title: "Der Film wurde nie belichtet",
    now: LOST,
    next: "Achte darauf, dass sich beim Spannen der Rückspulknopf dreht: Dann läuft der Film. Deckel ab, Verschluss geht.",
    source: NO_SOURCE,
  },
  "not-developed": {
    title: "Nicht entwickelt: Fixierbad oder Wasser kam zuerst, oder der Entwickler war tot",
    now: LOST,
    next: "Lies vor dem Eingießen das Etikett laut. Zuerst der Entwickler.",
    source: NO_SOURCE,
  },
  "short-fixing": {
    title: "Zu kurz fixiert",
    now: REFIX,
    next: "Fixier mindestens die doppelte Klärzeit, Film mit Flachkristallen die dreifache, und beweg dabei.",
    source: `${ARMY_85} (Flecken); ein Handbuch auf chestofbooks.com, S. 234 (milchiger Film); die Farbe: ${NO_SOURCE}`,
  },
  "worn-fixer": {
    title: "Fixierbad verbraucht",
    now: `${REFIX} Wer diese Flasche seither benutzt hat, sollte sich den eigenen Film ansehen.`,
    next: "Prüf das Fixierbad vor dem Kurs mit einem Filmschnipsel: `/batch test`.",
    source: ARMY_85,
  },
  "short-wash": {
    title: "Zu kurz gewässert",
    now: "Wässere noch einmal ganz, mit Wässerungshilfe, wenn du eine hast.",
    next: "Handbücher verlangen 20 bis 30 Minuten fließendes Wasser, nach einer Wässerungshilfe 5.",
    source: `US Navy NAVEDTRA 14209; US Army SS0509-8, S. 24; die Farbe: ${NO_SOURCE}`,
  },
  "film-touched": {
    title: "Der Film lag auf der Spirale aneinander",
    now: "Milchige Stellen: noch einmal fixieren, dann wässern. Stellen ganz ohne Bild sind nicht zu retten.",
    next: "Üb das Einspulen bei Licht mit einem verdorbenen Film. Nie mit Gewalt: Fang neu an.",
    source: `ein Handbuch auf chestofbooks.com, S. 234; ${NO_SOURCE}`,
  },
  surge: {
    title: "Zu heftig bewegt: Entwickler schoss durch die Perforation",
    now: LOST,
    next: "Kipp die Dose langsam, etwa einmal in zwei Sekunden, und jedes Mal etwas anders.",
    source: FROM_MEMORY,
  },
  "little-agitation": {
    title: "Zu wenig bewegt: Der Entwickler stand stellenweise still",
    now: LOST,
    next: "Beweg bei jedem Signal, von der ersten Sekunde an.",
    source: "US Navy NAVEDTRA 14209, S. 258 und Tabelle 10-1",
  },
  splash: {
    title: "Schmutzige Dose, Spritzer oder ein Bad, das den Film nicht bedeckte",
    now: LOST,
    next: "Spül Dose und Spiralen mit heißem Wasser. Füll so viel ein, dass alle Spiralen bedeckt sind.",
    source: NAVY_TABLE,
  },
  "camera-leak": {
    title: "Licht kam in der Kamera an den Film",
    now: LOST,
    next: "Sieh dir Rückwand und Dichtungen der Kamera an. Leg den Film im Schatten ein.",
    source: NAVY_TABLE,
  },
  "tank-leak": {
    title: "Licht kam in der Dose oder beim Einspulen an den Film",
    now: "Stell die Dose weg und melde sie: `/tank report`.",
    next: "Sitz fünf Minuten im Dunkeln: Nirgends darf Licht zu sehen sein. Prüf den Deckel und seinen Trichter.",
    source: NAVY_TABLE,
  },
  "old-film": {
    title: "Film zu alt oder zu warm gelagert",
    now: "Belichte beim Vergrößern länger, auf härterer Gradation.",
    next: "Lagere Film kühl und nimm ihn vor seinem Datum.",
    source: NO_SOURCE,
  },
  "light-in-developer": {
    title: "Weißes Licht beim Entwickeln, oder Fixierbad im Entwickler",
    now: LOST,
    next: "Lass den Deckel zu, bis das Fixierbad drin war. Spül jeden Messbecher zwischen den Bädern.",
    source: ARMY_85,
  },
  "air-bells": {
    title: "Luftblasen hingen am Film",
    now: LOST,
    next: "Klopf die Dose nach jedem Bewegen auf dem Tisch auf.",
    source: `${ARMY_84}; ${NAVY_TABLE}`,
  },
  dust: {
    title: "Staub in der Kamera auf dem Film",
    now: "Punkte auf dem Abzug lassen sich ausflecken.",
    next: "Blas die Kamera aus, bevor du einen Film einlegst.",
    source: ARMY_84,
  },
  kinks: {
    title: "Der Film wurde beim Einspulen geknickt",
    now: LOST,
    next: "Fass den Film an den Rändern und lass ihn sich wölben; knick ihn nie.",
    source: FROM_MEMORY,
  },
  drying: {
    title: "Tropfen trockneten auf dem Film, oder er trocknete ungleichmäßig",
    now: "Weich ihn einige Minuten ein, Netzmittel, neu aufhängen. Spuren in der Gelatine können bleiben.",
    next: "Netzmittel ansetzen, wie das Etikett sagt; abtropfen lassen, kein Staub, kein Zug.",
    source: `${NAVY_TABLE}; ${ARMY_84}`,
  },
  scratches: {
    title: "Sand oder Reibung: in der Kamera, in der Patrone oder beim Abstreifen",
    now: "Feine Kratzer auf der Rückseite kann das Licht des Vergrößerers verbergen; tiefe bleiben.",
    next: "Zieh den Film auf seinem Kern nicht stramm, und wisch ihn nicht nass ab.",
    source: NAVY_TABLE,
  },
  reticulation: {
    title: "Bäder zu verschieden warm: Die Gelatine hat sich gerunzelt",
    now: LOST,
    next: "Halt jedes Bad und die Wässerung höchstens 2,8 °C neben dem vorigen.",
    source: ARMY_84,
  },
  "soft-gelatin": {
    title: "Die Gelatine wurde zu weich: ein warmes Bad, ein schlechtes Fixierbad oder lange warm gewässert",
    now: "Lass ihn trocknen, ohne ihn zu berühren.",
    next: "Halt die Bäder nahe 20 °C und wässere nur so lang wie nötig.",
    source: ARMY_84,
  },
};
