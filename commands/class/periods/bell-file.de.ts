import { joinAnd } from "../../speech/wording.ts";
import type { BellFileWords } from "./bell-file.en.ts";

export const de: BellFileWords = {
  event: (number) => `Termin ${number}`,
  faults: {
    ERR_NO_CALENDAR: () => "Das ist keine Kalenderdatei: Sie muss mit BEGIN:VCALENDAR anfangen (.ics).",
    ERR_CUT_OFF: () =>
      "Die Datei ist abgeschnitten: Ihre letzte Zeile muss END:VCALENDAR sein. Nimm die ganze Datei.",
    ERR_NO_EVENTS: () => "In dieser Datei stehen keine Termine.",
    ERR_UNREADABLE: (name) => `${name}: Das kann ich nicht lesen. Speichere es in deinem Kalender neu.`,
    ERR_NO_START: (name) => `${name}: Der Anfang fehlt (DTSTART).`,
    ERR_NO_DATE: (name) => `${name}: Anfang oder Ende sind kein Tag und keine Zeit, die es gibt.`,
    ERR_NO_END: (name) => `${name}: Das Ende fehlt, also gibt es keine Klingel. Setz eines.`,
    ERR_END_BEFORE_START: (name) => `${name}: Das Ende liegt vor dem Anfang.`,
    ERR_OVER_MIDNIGHT: (name) =>
      `${name}: Nach der Uhr des Kurses geht es über Mitternacht. Lass es um 24:00 enden, oder mach zwei daraus.`,
    ERR_BAD_RULE: (name) => `${name}: Ich kann nicht lesen, wie es sich wiederholt (RRULE).`,
    ERR_UNKNOWN_ZONE: (name, zone) =>
      `${name}: Eine Zeitzone „${zone}“ gibt es nicht, und die Datei sagt nicht, welche das ist.`,
    ERR_CLASH: (period, other) => `Zwei Kurstermine überschneiden sich: ${period} und ${other}.`,
  },
  nothingTaken: "**Aus der Datei wird nichts übernommen.** Berichtige dies und schick die Datei noch einmal:",
  moreFaults: (count) => `und noch ${count}.`,
  replaceHint: "Sollen die Kurstermine der Datei alle bisherigen ersetzen, gib `replace:yes` dazu.",
  skipped: {
    SKIP_ONCE: (names) => `Weggelassen, weil einmalig: ${names}.`,
    SKIP_NOT_WEEKLY: (names) => `Weggelassen, weil nicht jede Woche gleich: ${names}.`,
    SKIP_ALL_DAY: (names) => `Weggelassen, weil ganztägig: ${names}.`,
    SKIP_CANCELLED: (names) => `Weggelassen, weil abgesagt: ${names}.`,
    SKIP_MOVED_ONCE: (names) => `Weggelassen, weil nur ein einzelner Tag verschoben wird: ${names}.`,
    SKIP_OVER: (names) => `Weggelassen, weil der letzte Tag vorbei ist: ${names}.`,
  },
  exceptions: (names) => `Freie und zusätzliche Tage bleiben weg; hier ist jede Woche gleich: ${names}.`,
  moving: (names) =>
    `In einer anderen Zeitzone geschrieben; die Zeit ist die dieser Woche, und die Sommerzeit kann sie verschieben: ${names}.`,
  names: (shown, more) => (more > 0 ? `${shown.join(", ")} und noch ${more}` : joinAnd(shown)),
};
