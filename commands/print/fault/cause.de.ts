import type { CauseWords } from "./cause.en.ts";

const NO_SOURCE = "übliche Praxis, ohne Quelle";
const NAVY_291 = "US Navy NAVEDTRA 14209, S. 291";
const ARMY = "US Army SS0509, Lektion zum Vergrößern";
const CLERC = "Clerc, Photography: Theory and Practice";
const HAND = "ein altes Handbuch, über Fehler bei Abzügen (Book of Photography)";
const REPRINT = "Mach ihn noch einmal: `/print again`.";

export const de: CauseWords = {
  "over-exposure": {
    title: "Zu viel belichtet",
    now: REPRINT,
    next: "Gib weniger Licht, nach einem Teststreifen; nimm ihn nie vorzeitig heraus.",
    source: ARMY,
  },
  "under-exposure": {
    title: "Zu wenig belichtet",
    now: REPRINT,
    next: "Gib mehr Licht, nach einem Teststreifen: Längeres Entwickeln ersetzt es nicht.",
    source: `${NAVY_291}; ${HAND}`,
  },
  "pulled-early": {
    title: "Zu früh aus dem Entwickler genommen",
    now: "Ein fixierter Abzug lässt sich nicht weiter entwickeln.",
    next: "Lass ihn die ganze Zeit darin. Wird er zu dunkel, gib weniger Licht.",
    source: `${CLERC}, Abschnitt 556; ein Handbuch auf chestofbooks.com, 588`,
  },
  forced: {
    title: "Zu wenig belichtet und im Entwickler gequält",
    now: REPRINT,
    next: "Gib mehr Licht und die übliche Zeit im Entwickler.",
    source: "ein Handbuch auf chestofbooks.com, 590",
  },
  "too-much-bromide": {
    title: "Zu viel belichtet, oder zu viel Bromid im Entwickler",
    now: "Der Ton bleibt. Mach ihn in frischem Entwickler noch einmal.",
    next: "Setz frisch an: Viel benutzter Entwickler sammelt Bromid.",
    source: "ein Handbuch auf chestofbooks.com, 591",
  },
  "hard-negative": {
    title: "Negativ zu hart für diese Gradation",
    now: "Mach ihn auf weicherer Gradation: `/print again grade:…`.",
    next: "Wähl die Gradation mit einem Teststreifen über die Lichter.",
    source: HAND,
  },
  "soft-grade": {
    title: "Gradation zu weich für dieses Negativ",
    now: "Mach ihn auf härterer Gradation: `/print again grade:…`.",
    next: "Wähl die Gradation mit einem Teststreifen über die Schatten.",
    source: NO_SOURCE,
  },
  "long-development": {
    title: "Zu lange im Entwickler",
    now: "Die Verfärbung bleibt.",
    next: "Nimm ihn rechtzeitig heraus: höchstens doppelt so lang, wie volles Schwarz braucht.",
    source: `${NAVY_291}; ${CLERC}, Abschnitt 556`,
  },
  "warm-developer": {
    title: "Entwickler zu warm",
    now: REPRINT,
    next: "Lass ihn auf etwa 20 °C abkühlen: Stell die Schale in kühles Wasser.",
    source: `${CLERC}, Abschnitt 573`,
  },
  "cold-developer": {
    title: "Entwickler zu kalt",
    now: REPRINT,
    next: "Bring ihn auf etwa 20 °C, bevor du anfängst.",
    source: `${CLERC}, Abschnitt 573`,
  },
  "weak-developer": {
    title: "Entwickler verbraucht oder zu dünn",
    now: "Entsorge den Entwickler nach den örtlichen Regeln, und setz frisch an.",
    next: "Wechsle ihn nach so vielen Abzügen, wie auf dem Etikett steht, und nach dem Kurstermin.",
    source: `${CLERC}, Abschnitt 573`,
  },
  "strong-developer": {
    title: "Entwickler zu stark angesetzt",
    now: REPRINT,
    next: "Setz ihn so an, wie es auf dem Etikett steht.",
    source: HAND,
  },
  safelight: {
    title: "Dunkelkammerlicht nicht sicher, oder zu lange darunter",
    now: "Pack offenes Papier weg, und prüf die Lampe, bevor jemand weitermacht.",
    next: "Belichtetes Papier ist empfindlicher: Prüf mit einem Stück, das schon hellgrau ist.",
    source: `Seiten eines Herstellers zum Dunkelkammerlicht (K-4); ${HAND}`,
  },
  "old-paper": {
    title: "Papier zu alt, oder Licht kam in die Schachtel",
    now: "Entwickle ein unbelichtetes Stück daraus im Dunkeln: Es muss weiß bleiben.",
    next: "Nimm alte Schachteln nur für Teststreifen.",
    source: HAND,
  },
  "fixer-in-developer": {
    title: "Fixierbad kam in den Entwickler",
    now: "Entsorge den Entwickler nach den örtlichen Regeln, wasch die Schale aus, setz frisch an.",
    next: "Für jedes Bad eine eigene Zange, nie vertauscht; trockene Hände.",
    source: HAND,
  },
  "out-of-liquid": {
    title: "Ein Teil lag vor dem Fixieren über dem Bad",
    now: "Der Fleck bleibt.",
    next: "Drück den Abzug gleich unter, und halt ihn dort.",
    source: `ein Handbuch auf chestofbooks.com, Amateur Work; ${HAND}`,
  },
  "air-under": {
    title: "Luft unter einem Abzug, der mit dem Bild nach unten lag",
    now: "Die Stellen bleiben.",
    next: "Schieb ihn hinein, drück ihn unter, dreh ihn um, und beweg ihn weiter.",
    source: `${ARMY}; ${NAVY_291}`,
  },
  floated: {
    title: "Er schwamm mit dem Bild nach oben auf dem Fixierbad",
    now: "Fixier ihn noch einmal die volle Zeit, unter der Oberfläche.",
    next: "Bild nach unten, unter der Oberfläche, und bewegen.",
    source: "Handbuch von Wellington, S. 69",
  },
  "worn-fixer": {
    title: "Fixierbad verbraucht",
    now: "Fixier noch einmal in frischem Bad, und wässere die volle Zeit. Das gilt für alle, die dieses Bad benutzt haben.",
    next: "Zähl mit, wie viele Abzüge durch ein Fixierbad gehen, und prüf es vor dem Kurs.",
    source: "US Navy NAVEDTRA 14209, S. 249",
  },
  "short-wash": {
    title: "Fixierbad oder Silber blieb darin",
    now: "Fixier noch einmal, dann wässere die volle Zeit.",
    next: "Fixier und wässere die volle Zeit; Barytpapier braucht viel länger als PE-Papier.",
    source: "Abschnitte der Handbücher zum Wässern (NAVEDTRA 14209; US Army SS0509-8)",
  },
  dust: {
    title: "Staub auf dem Negativ",
    now: "Fleck ihn mit Retuschierfarbe aus.",
    next: "Blas Negativ und Bühne ab; sieh im Streiflicht nach.",
    source: "Seite eines Vereins",
  },
  holes: {
    title: "Klare Löcher oder Kratzer im Negativ",
    now: "Ausflecken deckt nur helle Stellen: Schab die dunkle vorsichtig ab, oder mach den Abzug noch einmal.",
    next: "Sieh das Negativ vorher mit der Lupe an.",
    source: "Seite eines Vereins",
  },
  "touching-glass": {
    title: "Zwei glatte Flächen berühren sich fast: Negativ und Glas",
    now: REPRINT,
    next: "Nimm eine Bühne ohne Glas oder mit geätztem Glas, und ein trockenes Negativ.",
    source: "Seite eines Vereins",
  },
  focus: {
    title: "Nicht auf das Korn scharf gestellt",
    now: REPRINT,
    next: "Stell mit dem Kornscharfsteller auf das Korn scharf, bei der Blende, mit der du belichtest.",
    source: "Handbuch der US Navy zum Vergrößern",
  },
  "negative-moved": {
    title: "Das Negativ wölbte sich in der Wärme, oder es wackelte",
    now: REPRINT,
    next: "Lass die Lampe das Negativ wärmen, stell scharf, warte, dann belichte. Nichts anfassen.",
    source: "Seite einer Fotografin oder eines Fotografen",
  },
  "negative-turned": {
    title: "Das Negativ lag verkehrt herum in der Bühne",
    now: REPRINT,
    next: "Matte Seite zum Papier: Die Zahlen am Rand liest man von oben richtig herum.",
    source: "aus dem Gedächtnis, keine Quelle gesehen",
  },
};
