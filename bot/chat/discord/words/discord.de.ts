import type { DiscordWords } from "./discord.en.ts";
import { groups } from "./groups.de.ts";

export const de: DiscordWords = {
  groups,
  noClass:
    "Ich weiß noch nicht, zu welchem Kurs du gehörst. Gib einen Befehl auf dem Server deines Kurses, dann komm hierher zurück.",
  oldButton: "Dieser Knopf ist aus einer älteren Version. Tippe stattdessen den Befehl.",
  rateRoll: "Film bewerten",
  noRoll:
    "Diese Nachricht handelt von keinem einzelnen Film im Filmbuch. Nimm `/roll rate`, oder das hier bei der Nachricht zu einem deiner Filme.",
  choose: "Such eines aus",
  changeAndSend: "Ändern und noch einmal senden",
  welcome:
    "**Hallo. Ich gebe für jeden Film eures Fotolabors das Signal: kippen, ausgießen, nächstes Bad.**\nWer diesen Server verwaltet, richtet den Kurs ein; danach fragt ihr mit `/plan` nach einer Zeit, oder mit `/ask` in eigenen Worten. Lest die Sicherheitshinweise, bevor jemand Chemie ansetzt.",
  setUp: "Kurs einrichten",
  help: "Hilfe",
  cautions: "Sicherheit",
  broken: "Es ist ein Fehler aufgetreten. Sieh nach, wo dein Lauf steht, bevor du es noch einmal versuchst.",
  fileTooLarge: (megabytes, most) =>
    `Die Datei hat ${Math.ceil(megabytes)} MB; höchstens ${most}. Mach sie kleiner, oder schneide sie zu.`,
  fileNotFetched: "Die Datei ließ sich nicht holen. Es wurde nichts geändert. Schick sie noch einmal.",
  fileNoText:
    "Diese Datei ist kein Text, den ich lesen kann. Schick eine Tabelle als CSV, Kurstermine als .ics-Datei.",
  photoOf: {
    roll: (name) => `Der Kontaktbogen von ${name}`,
    print: (name) => `Der Abzug ${name}`,
  },
  done: "Erledigt.",
  lostPicture: (alt) => `Das Bild ließ sich nicht zeichnen. Es zeigt: ${alt}`,
  logGoesOn: (roll, line) =>
    `Die Datei reicht zurück bis ${roll}: Größere nimmt Discord nicht an. Die älteren Filme bekommst du mit \`/${line}\`.`,
  logRest: "Ältere Filme",
  tooLarge: (name, megabytes) =>
    `${name} ist zu groß für diesen Chat (${megabytes} MB). Frag nach weniger auf einmal.`,
  callsHere: "Deine Signale kommen hier an. Lass die Benachrichtigungen für diese Unterhaltung an.",
  callsInThread: (threadId) => `**Deine Signale kommen in <#${threadId}>: Mach dort weiter.**`,
  noThread: (missing) =>
    missing.length === 0
      ? "Ein Thread für deinen Film ließ sich nicht öffnen."
      : `Ein Thread für deinen Film ließ sich nicht öffnen: Im Kanal des Kurses fehlt mir ${missing.join(" und ")} (wer den Server verwaltet, kann es mir geben).`,
  callsAlone: "**Deine Signale kommen als Direktnachricht.**",
  callsInChannel: (channelId) =>
    `**Deine Direktnachrichten sind für mich gesperrt: Deine Signale kommen in <#${channelId}>, mit deinem Namen.** Damit du sie allein bekommst: Öffne das Menü des Servers, dann die Privatsphäre-Einstellungen, und schalte Direktnachrichten ein.`,
  callsNowhere: (lacking) =>
    `**Kein Signal kann dich erreichen: Stopp die Zeit selbst.** Deine Direktnachrichten sind für mich gesperrt (öffne das Menü des Servers, dann die Privatsphäre-Einstellungen, und schalte Direktnachrichten ein), und ${
      lacking === null
        ? "der Kurs hat noch keinen Kanal (die Lehrkraft wählt ihn mit `/class setup`)."
        : `in <#${lacking.channelId}> fehlt mir ${lacking.missing.join(" und ")} (wer den Server verwaltet, kann es mir geben).`
    }`,
  answeredLate: (text) =>
    `_Dein letzter Befehl wurde ausgeführt, aber meine Antwort kam zu spät, um gezeigt zu werden:_\n${text}\n`,
};
