import type { Forms } from "../../define.ts";

export const forms: Forms = {
  "class periods": {
    summary: "Die Kurstermine; ihr Ende ist die Klingel, an der jeder Plan gemessen wird",
    options: {
      days: "Welche Tage, zum Beispiel mo, mi oder mo-fr",
      from: "Anfang, zum Beispiel 18:00",
      to: "Die Klingel, zum Beispiel 20:30",
      name: "Wie der Kurstermin heißt, zum Beispiel Abendkurs",
      file: "Der Text einer Kalenderdatei (.ics): Ihre wöchentlichen Termine werden Kurstermine",
      replace: "Die Kurstermine der Datei ersetzen alle bisherigen",
      remove: "Nimmt den Kurstermin mit dieser Nummer heraus",
    },
  },
  "class baths": {
    summary: "Was Film verschleppt, ein oder zwei Fixierbäder, wie fein ihr messt; ohne Angaben zeigt es sie",
    options: {
      carry: "Von Bad zu Bad verschleppt: 20 ml (je Film), 0,04 ml/cm2; none: wird nicht gerechnet",
      fixbaths: "Fixierbäder, durch die Film geht: 1 oder 2",
      rotations: "Wie oft das zweite aufrückt, bis beide neu angesetzt werden: 2",
      measure: "Der feinste Schritt eurer Messgefäße oder Spritze, wie 0,1 ml; usual: die üblichen",
    },
  },
  "class firstday": {
    summary: "Was vor dem ersten Film zu tun ist, abgehakt, sobald es getan ist",
    options: { later: "Verschiebt einen Schritt, oder keinen mehr" },
  },
  "class mend": {
    summary: "Zeigen, was sich im Kurs nicht lesen lässt und warum, und es beiseitelegen",
    options: { what: "Was beiseitegelegt wird, wie es in der Liste steht: T3, R7, B2" },
  },
  "class board": {
    summary: "Alle Dosen jetzt: wer, welcher Schritt, bis wann, zu spät oder nicht",
    options: {
      channel: "Die Tafel in diesem Kanal zeigen, in einer Nachricht (Lehrkraft)",
    },
  },
  "class digest": {
    summary: "Wann der Kurs hört, was bereitsteht, was nachlässt und wie die Woche war",
    options: {
      before: "Wie lange vor einem Kurstermin der Kurs hört, was bereitsteht: 60 min",
      day: "Wochentag für die Zahlen der Woche: montag",
      at: "Ihre Uhrzeit: 8:00",
      quietfrom: "Warnungen, die warten können, schweigen ab: 22:00",
      quietto: "… bis: 7:00. Beide gleich: nie Ruhe",
    },
  },
  "class erase": {
    summary: "Den Kurs mit allem darin löschen, nach einigen Tagen Frist",
    options: {
      name: "Der Name des Kurses, zur Bestätigung",
      keep: "Den Kurs doch behalten",
    },
  },
  "class turns": {
    summary: "Werden alle Dosen bis zur Klingel fertig? Reihenfolge, spätestes Eingießen, wer wartet",
    options: {
      loads: "So viele Dosenfüllungen mehr, als einen Plan oder einen Lauf haben",
      developing: "Deren Entwicklungszeit: 9:00",
      films: "Filme in jeder davon",
      by: "Eine andere Klingel als die des Kurses, zum Beispiel 20:30",
    },
  },
  "class report": {
    summary: "Das Halbjahr auf einer Seite: Filme, Signale, Entwicklung, Fehler, Chemie, Silber",
    options: { when: "Welche Tage: 12 Wochen, 3.2026" },
  },
  "class role": {
    summary: "Jemanden im Kurs zur Schüler:in, Hilfskraft oder Lehrkraft machen",
    options: {
      person: "Wessen Rolle",
      role: "Was die Person im Kurs ist",
    },
  },
  "class said": {
    summary: "Wer die letzte Nachricht an viele bekommen hat",
    options: { say: "Welche; ohne Angabe die neueste" },
  },
  "class say": {
    summary: "Allen etwas sagen, oder denen bei einem bestimmten Schritt",
    options: {
      text: "Was zu sagen ist, zum Beispiel: Fixierbad B4 ist verbraucht, nehmt B5",
      to: "Wer es hört",
      step: "Welcher Schritt, mit to:at (auch weggelassen) oder to:before",
    },
  },
  "class setup": {
    summary: "Den Kurs einrichten, Teil für Teil; ohne Angaben: was schon steht und was noch fehlt",
    options: {
      name: "Wie der Kurs heißt",
      language: "Sprache für Kanal, Tafel und Wochenzahlen des Kurses",
      zone: "Seine Zeitzone, zum Beispiel Europe/Berlin",
      channel: "Der Kanal, der zum ganzen Kurs spricht; here: dieser",
      sinks: "Wie viele zugleich an den Becken arbeiten können",
      washplaces: "Wie viele Dosen zugleich wässern können",
      dryslots: "Wie viele Filme zugleich zum Trocknen hängen können",
      fixmin: "Die kürzeste Zeit im Fixierbad: 5 min",
      washmin: "Die kürzeste Zeit in fließendem Wasser: 20 min",
      washmethod: "Wie gewässert wird",
      washaid: "Eine Wässerungshilfe wird benutzt",
      stop: "Was den Entwickler stoppt",
      agitation: "Anfang/Dauer/Abstand in Sekunden, zum Beispiel 30/5/60; sheet: wie auf jedem Datenblatt",
      dry: "Wie lange Filme zum Trocknen hängen: 25 min",
      room: "Die übliche Temperatur des Raums: 19C",
      sleeves120: "Bilder 6x6 in einem Streifen eurer Hüllen für 120: 3 oder 4",
      sleeves: "Bilder in einem Streifen eurer Hüllen",
      pourout: "Sekunden vor dem Ende der Entwicklung, bei denen das Ausgießen beginnt",
      warn: "Sekunden vor dem Ausgießen, bei denen das nächste Bad gerufen wird",
      closedpages: "Handys dürfen bei geschlossener Seite gerufen werden, über das Internet",
      threads: "Ein Film, der im Kanal des Kurses startet, bekommt für seine Signale einen Thread",
      aiderole: "Die Rolle des Chats, die zur Hilfskraft macht; oder none",
      teacherrole: "Die Rolle des Chats, die zur Lehrkraft macht; oder none",
    },
  },
};
