import { DEMO_NAME } from "../../demo/name.ts";
import { board, cue, hearing } from "./call-words.de.ts";
import { doorFaults } from "./door-faults.de.ts";
import { formList } from "./group-words.de.ts";
import { guide } from "./guide-words.de.ts";
import { photo, picture } from "./photo-words.de.ts";
import { push } from "./push-words.de.ts";
import { returning } from "./returning-words.de.ts";
import { invite } from "./invite-words.de.ts";
import { secure } from "./secure-words.de.ts";
import { renewing } from "./renew-words.de.ts";
import { trouble } from "./trouble-words.de.ts";
import { sink } from "./sink-words.de.ts";
import type { Words } from "./words.en.ts";

/* Every word of the page, in German. */

export const de: Words = {
  name: "Sinkside",
  loading: "Der Raum wird geöffnet…",
  classCalled: (name) => (name === DEMO_NAME ? "Hafenwerkstatt, Abendkurs (erfundene Demo)" : name),

  door: {
    title: "Anmelden",
    lead: "Dein Laborkurs, im eigenen Netz der Schule.",
    code: "Kurscode",
    codeHint: "Sechs Buchstaben und Ziffern, wie ABC-1DE, von der Lehrkraft oder von der Wand",
    yourName: "Dein Name",
    nameHint: "So, wie der Kurs dich kennt",
    join: "Als Schüler:in beitreten",
    asStaff: "Ich unterrichte oder helfe hier",
    asStudent: "Ich bin Schüler:in",
    passphrase: "Kennwort",
    passphraseHint: "Stand im Terminal, als der Kurs angelegt wurde",
    joinStaff: "Als Lehrkraft oder Hilfskraft anmelden",
    demoTitle: "Den erfundenen Kurs ausprobieren",
    demoLead: "Nichts davon ist echt: Leute, Film und Entwickler sind erfunden.",
    demoStudent: "Als Schüler:in beitreten",
    demoTeacher: "Als Lehrkraft umsehen",
    demoTeacherName: "Demo-Lehrkraft",
    ownClass: "Ich habe einen Kurscode",
    wait: "Einen Moment…",
  },
  doorFaults,

  link: {
    open: "Verbunden",
    opening: "Verbinde…",
    lost: "Keine Verbindung",
    lostLong:
      "Keine Verbindung zum Rechner des Kurses. Ich zähle allein weiter und hole alles nach, sobald er wieder da ist.",
    localCall: "Nach der Uhr dieses Handys: keine Verbindung zum Rechner des Kurses",
    staleLine: (text, seconds) => `„${text}“ wurde nicht gesendet: Vor ${seconds} gab es keine Verbindung.`,
    sendNow: "Jetzt senden",
    drop: "Verwerfen",
  },

  runs: {
    title: "Deine Läufe",
    none: "Du hast gerade keinen Lauf.",
    noneHint: "Mach einen Plan und drück dann auf Start.",
    makePlan: "Plan machen",
    planned: (bath, temperature) => (bath === "" ? "" : `in ${bath} bei ${temperature}`),
    start: "Start",
    otherPlan: "Anderer Plan",
    ofClass: (count) => (count === 1 ? "1 Lauf im Kurs" : `${count} Läufe im Kurs`),
    tank: (number) => `Dose ${number}`,
    where: ({ tank, trays }) =>
      trays !== undefined ? `Schalen ${trays}` : tank === null ? "" : de.runs.tank(tank),
    name: ({ number, isTrial, ...at }) =>
      [`${isTrial ? "Probelauf " : ""}R${number}`, de.runs.where(at)].filter(Boolean).join(" · "),
    trialMark: (speed) => `Probelauf: ${speed}-mal so schnell, nichts davon wird aufgehoben.`,
    step: (number, count) => `Schritt ${number} von ${count}`,
    left: "übrig",
    over: "über der Zeit",
    next: "Dann",
    inTime: (time) => `in ${time}`,
    mayGoDark:
      "Dein Bildschirm kann dunkel werden: Stell ihn so ein, dass er anbleibt, oder lass den Ton an.",
    heldByVideo: "Ein kleines Video hält diesen Bildschirm wach. Wird er doch dunkel, geht der Ton weiter.",
    pouredEarlier: "Zu spät gedrückt? Früher drin um",
    earlierBy: (seconds) => `${seconds} s früher`,
  },

  firstDay: {
    count: (done, steps) => `${done} von ${steps}`,
    done: "erledigt",
    later: "später",
    showCode: "Code und Bild zeigen",
  },

  cue,
  hearing,
  feed: {
    title: "Nachrichten",
    empty: "Hier erscheinen Nachrichten. Frag unten in eigenen Worten, oder öffne ein Formular.",
    toClass: "an den Kurs",
    call: "Signal",
    askedBy: (name) => `gefragt von ${name}`,
    newest: "Zum Neuesten",
    earlierCut: "Älteres steht hier nicht. Filme bleiben im Filmbuch: /roll find",
    openPicture: "Größer zeigen",
    download: (name) => `${name} speichern`,
    late: (seconds) => `${seconds} zu spät`,
  },

  composer: {
    label: "Befehl",
    placeholder: "Frag oder tipp /",
    send: "Senden",
    forms: "Formulare",
    needs: (names) => `Es fehlt noch: ${names}`,
    option: "Angabe",
    choices: "Vorschläge",
    sending: "Sende…",
  },
  lineFaults: {
    ERR_EMPTY_LINE: () => "Tippe einen Befehl, zum Beispiel /help.",
    ERR_UNKNOWN_COMMAND: (word, near) =>
      near === ""
        ? `Den Befehl /${word} gibt es nicht.`
        : `Den Befehl /${word} gibt es nicht. Meintest du ${near}?`,
    ERR_OPEN_QUOTE: (option) => `Das Anführungszeichen nach ${option}: ist nicht geschlossen.`,
    ERR_TWICE: (option) => `${option}: steht zweimal da.`,
    ERR_STRAY_WORDS: (words, command) =>
      `„${words}“ gehört zu keiner Angabe. Schreib Name:Wert, zum Beispiel /${command} name:wert.`,
    ERR_UNKNOWN_OPTION: (option, command) => `/${command} kennt ${option}: nicht.`,
    ERR_WHOLE: (option) => `${option}: ist eine ganze Zahl.`,
    ERR_NUMBER: (option) => `${option}: ist eine Zahl.`,
    ERR_LEAST: (option, least) => `${option}: ist mindestens ${least}.`,
    ERR_MOST: (option, most) => `${option}: ist höchstens ${most}.`,
    ERR_CHOICE: (option, choices) => `${option}: ist eines von ${choices}.`,
    ERR_LONGEST: (option, most) => `${option}: ist höchstens ${most} Zeichen lang.`,
    ERR_DISK: () =>
      "Das konnte nicht aufgeschrieben werden: Der Speicher des Kursrechners ist voll. Es wurde nichts geändert. Sag deiner Lehrkraft Bescheid.",
    ERR_TOO_FAST: () => "Das war schnell. Warte kurz und sende es noch einmal.",
    ERR_NOT_UNDERSTOOD: () => "Das hat der Raum nicht verstanden. Lade die Seite neu.",
    ERR_NOT_YOURS: () => "Das darf nur die Lehrkraft oder eine Hilfskraft sehen.",
    ERR_TOO_LONG: () => "Das ist zu lang. Kürze es.",
    ERR_BROKE: () => "Auf dem Rechner des Kurses ist ein Fehler aufgetreten. Versuch es noch einmal.",
  },

  formList,
  forms: {
    title: "Was möchtest du tun?",
    back: "Alle Formulare",
    run: "Senden",
    optional: "nicht nötig",
    leave: "(weglassen)",
    search: "Formular suchen",
    again: "Zurück zum Formular",
    more: (count) => `Mehr (${count})`,
    fromFile: "Aus einer Datei…",
  },

  menu: {
    title: "Menü",
    open: "Menü",
    close: "Schließen",
    theme: "Bildschirm",
    themeDaylight: "Tageslicht",
    themeSafelight: "Gedämpftes Rot",
    themeCaution: "Film bei völliger Dunkelheit einspulen: Handy, Uhr und Rotlicht aus.",
    themeAuto: "Wie das Handy",
    sound: "Ton und Vibration bei Signalen",
    speech: "Signale vorlesen",
    soundTest: "Ton probieren",
    language: "Sprache",
    you: (name, role) => `${name}, ${role}`,
    leave: "Dieses Gerät abmelden",
    board: "Tafel für die Wand",
    room: "Zurück in den Raum",
    door: "Tür: Code und Leute",
    newClass: "Meinen Kurs anlegen",
    here: (count) => `${count} da`,
  },
  roles: { student: "Schüler:in", aide: "Hilfskraft", teacher: "Lehrkraft" },

  keys: {
    title: "Tür",
    code: "Kurscode",
    scan: "Abscannen und hereinkommen",
    onlyHere: "Diese Adresse erreicht nur dieser Rechner. Für Handys: mit ROOM_HOST=0.0.0.0 starten.",
    rotate: "Neuer Code",
    people: "Leute",
    free: "Überall abmelden",
    freeHint: "Meldet diese Person auf jedem Gerät ab; zurück kommt sie mit einem Code, den du ihr gibst.",
    devices: {
      "Android phone": "Android-Handy",
      "Android tablet": "Android-Tablet",
      "Windows computer": "Windows-Rechner",
      "Linux computer": "Linux-Rechner",
      Device: "Gerät",
    },
    removeDevice: "Abmelden",
    isHere: "da",
    away: "weg",
    noDevices: "überall abgemeldet",
    passphrases: "Neue Kennwörter",
    teacherIs: "Lehrkraft",
    aideIs: "Hilfskraft",
    writeDown: "Schreib sie jetzt auf. Sie werden nicht noch einmal gezeigt.",
    seen: (when) => `zuletzt ${when}`,
  },

  calendar: {
    title: "Kalender",
    none: "Kurstermine und Übersichten können in jedem Kalender stehen: Er holt sie sich unter einer eigenen Adresse des Kurses.",
    make: "Kalender-Link anlegen",
    hint: "Wer die Adresse hat, sieht die Zeiten des Kurses, und keine Namen. Der Kalender sieht dort von selbst nach.",
    renew: "Link ersetzen",
    stop: "Link abschalten",
  },

  newClass: {
    title: "Meinen Kurs anlegen",
    lead: "Ein leerer eigener Kurs. Vom erfundenen wird nichts übernommen.",
    className: "Name des Kurses",
    zone: "Zeitzone",
    yourName: "Dein Name",
    make: "Kurs anlegen",
    made: "Dein Kurs ist da.",
    goIn: "Hineingehen",
  },

  board,

  guide,
  push,
  returning,
  invite,
  secure,
  trouble,
  renewing,
  sink,
  photo,
  picture,
};
