import { joinAnd } from "../../speech/wording.ts";
import type { SetupWords } from "./en.ts";

export const de: SetupWords = {
  titles: {
    name: "Name",
    language: "Sprache",
    zone: "Zeitzone",
    channel: "Kanal des Kurses",
    roles: "Rollen",
    bell: "Klingel",
    sinks: "Plätze an den Becken",
    washplaces: "Plätze zum Wässern",
    dryslots: "Plätze zum Trocknen",
    tanks: "Dosen",
    fix: "Mindestzeit Fixieren",
    wash: "Mindestzeit Wässern",
    agitation: "Bewegung",
    sheets: "Filme und Entwickler",
    closedpages: "Signale bei geschlossener Seite",
    threads: "Ein Thread für jeden Film",
  },

  languages: { en: "Englisch", de: "Deutsch" },
  noneYet: "noch keine",
  noChannelYet: "noch keiner",
  channelSet: (name) => name ?? "gesetzt",
  channelStandsIn: (name) => `${name ?? "wo der erste Befehl kam"}, bis du einen wählst`,
  channelLacks: (name, missing) => `${name ?? "gesetzt"}, aber dort fehlt mir ${joinAnd(missing)}`,
  roles: (teacher, aide) =>
    `Lehrkraft: ${teacher ?? "wer den Server verwaltet"}; Hilfskraft: ${aide ?? "niemand"}`,
  noPeriods: "noch keine Kurstermine",
  washPlaces: (tanks) => (tanks === 1 ? "1 Dose" : `${tanks} Dosen`),
  drySlots: (films, time) => `${films === 1 ? "1 Film" : `${films} Filme`}, ${time}`,
  wash: (time, { washMethod, washAid, stop }) =>
    `${time} ${washMethod === "running" ? "in fließendem Wasser" : "in Füllungen"}${washAid ? ", mit Wässerungshilfe" : ""}, nach ${stop === "acid" ? "einem Stoppbad" : "Zwischenwässerungen statt eines Stoppbads"}`,
  asSheet: "wie auf jedem Datenblatt",
  allowed: "erlaubt, über den Dienst des Handyherstellers",
  notAllowed: "nicht erlaubt",
  noThread: "nein, Signale kommen als Direktnachricht",
  ownThreads: "ja, für Filme, die im Kanal des Kurses gestartet werden",
  openThreads:
    "ja, für Filme, die im Kanal des Kurses gestartet werden; alle dort sehen hinein, denn mir fehlt Create Private Threads",
  threadsLack: (missing) =>
    `ja, aber dort fehlt mir ${joinAnd(missing)}, und Signale kommen als Direktnachricht`,
  sheets: (count) => (count === 1 ? "1 Datenblatt" : `${count} Datenblätter`),

  questions: {
    name: "Wie heißt der Kurs? `/class setup name:…`",
    zone: (zone) => `In welcher Zeitzone findet der Kurs statt? \`/class setup zone:…\` (jetzt ${zone})`,
    channel:
      "Welcher Kanal spricht zum ganzen Kurs? Wähl ihn mit `/class setup channel:`, oder drück den Knopf für diesen.",
    roles:
      "Welche Rolle des Servers macht zur Hilfskraft, welche zur Lehrkraft? `/class setup aiderole:… teacherrole:…`",
    bell: "Wann trifft sich der Kurs? `/class periods days:mo, mi from:18:00 to:20:30`",
    sinks:
      "Wie viele können zugleich mit einer Dose an den Becken stehen, vom Eingießen bis zum Ende des Fixierbads?",
    washplaces: "Wie viele Dosen können zugleich wässern?",
    dryslots: "Wie viele Filme können zugleich zum Trocknen hängen?",
    tanks: "Welche Dosen gibt es? `/tank add numbers:1-12 reels:2 volume:500 ml`; einmal für jede Sorte.",
    fix: "Wie lange fixiert jeder Film mindestens? (Ein langsames Fixierbad macht einen Plan länger, nie kürzer.)",
    wash: "Wie lange wässert jeder Film mindestens, und wie? Handbücher verlangen 20 bis 30 min fließendes Wasser, oder 5 min nach einer Wässerungshilfe.",
    agitation:
      "Bewegt der Kurs jeden Film auf dieselbe Art? Die Zeiten eines Datenblatts gelten für dessen eigene Art. `/class setup agitation:30/5/60`",
    sheets:
      "Welcher Film in welchem Entwickler? Trag die Zeiten vom Blatt des Herstellers ein: `/sheet add`.",
  },
  labels: {
    keepName: "Name bleibt",
    keepZone: "Zeitzone bleibt",
    thisChannel: "Dieser Kanal",
    managersOnly: "Nur wer den Server verwaltet",
    running: (time) => `${time} fließend`,
    afterAid: (time) => `${time} nach Wässerungshilfe`,
    fills: (count) => `${count} Füllungen, kein fließendes Wasser`,
    asSheet: "Wie auf jedem Datenblatt",
    sheets: "Filme und Entwickler",
    speakMine: "Mit dem Kurs Deutsch sprechen",
  },

  done: (named) => `Notiert: ${joinAnd(named)}.`,
  allSet: (parts) => `**Alle ${parts} Teile stehen.** Jeder lässt sich neu setzen.`,
  someSet: (count, parts) => `**${count} von ${parts}** Teilen stehen.`,
  part: (title, value, isSet) => `- ${title}: ${value}${isSet ? "" : " _(nicht gesetzt)_"}`,
  next: (title, question) => `**Als Nächstes: ${title}.** ${question}`,
  inviteToChannel: "Einladen: Alle, die den Kanal des Kurses sehen, können mich dort benutzen.",
  inviteToRoom: (code) =>
    `Einladen: Öffne die Seite des Raums und gib den Kurscode **${code}** mit einem Namen ein. Hilfskräfte und Lehrkräfte geben auch das Kennwort an, das beim ersten Start gezeigt wurde.`,

  named: {
    name: "der Name",
    language: "die Sprache",
    zone: "die Zeitzone",
    channel: "der Kanal des Kurses",
    roles: "die Rollen",
    sinks: "die Plätze an den Becken",
    washplaces: "die Plätze zum Wässern",
    dryslots: "die Plätze zum Trocknen",
    fix: "die Mindestzeit zum Fixieren",
    wash: "die Mindestzeit zum Wässern",
    agitation: "die Bewegung",
    dry: "die Trockenzeit",
    room: "die Temperatur des Raums",
    sleeves: "die Bilder je Streifen",
    pourout: "die Sekunden zum Ausgießen",
    warn: "das Signal zum Bereitstellen",
    closedpages: "Signale bei geschlossener Seite",
    threads: "der Thread für jeden Film",
  },

  unknownZone: (typed, near) =>
    `Eine Zeitzone „${typed}“ gibt es nicht. ${near.length > 0 ? `Ist es ${near.join(", ")}?` : "Schreib sie wie Europe/Berlin."}`,
  noChannel:
    "Dieser Befehl kam aus keinem Kanal, in dem ich sprechen kann. Gib ihn in dem Kanal, der dem Kurs gehören soll.",
  noChannels: "Der Raum hat keine Kanäle: Was dem Kurs gesagt wird, sehen alle darin.",
  noThreads: "Im Raum gibt es keine Threads: Jede Person bekommt ihre Signale auf ihrer eigenen Seite.",
  noClosedPages:
    "Dieser Chat ruft Handys von selbst, ob er offen ist oder nicht: Hier gibt es nichts zu erlauben.",
  rolesByPassphrase:
    "Im Raum gehen die Rollen nach dem Kennwort: Hilfskräfte und Lehrkräfte treten mit dem ein, das beim ersten Start gezeigt wurde. Oder gib jemandem eine Rolle: `/class role person:… role:aide`.",

  roleWords: { student: "Schüler:in", aide: "Hilfskraft", teacher: "Lehrkraft" },
  role: (name, role) =>
    `${name} ist von jetzt an ${{ student: "Schüler:in", aide: "Hilfskraft", teacher: "Lehrkraft" }[role]} in diesem Kurs.`,
  rolesByChat:
    "Hier kommen die Rollen von den Rollen des Servers. Nenn sie mit `/class setup aiderole:… teacherrole:…` und gib der Person dann diese Rolle auf dem Server.",
  unknownPerson: (name) => `In diesem Kurs gibt es niemanden namens ${name}.`,
  lastTeacher: (name) =>
    `${name} ist die einzige Lehrkraft des Kurses. Mach zuerst jemand anderen zur Lehrkraft.`,
};
