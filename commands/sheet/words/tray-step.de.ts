import type { TrayStepWords } from "./tray-step.en.ts";

const at = (tray: string | null): string => (tray === null ? "" : ` (${tray})`);
const nth = (ordinal: number): string => (ordinal > 0 ? ` ${ordinal}` : "");

export const de: TrayStepWords = {
  doing: {
    develop: (tray) =>
      `Schieb den Abzug in den Entwickler${at(tray)}, Schicht nach unten, tauch ihn unter und dreh ihn um. Drück auf den Knopf, wenn er untergetaucht ist.`,
    stop: (tray) => `Leg ihn ins Stoppbad${at(tray)}. Drück auf den Knopf, wenn er drin ist.`,
    rinse: () => "Leg ihn ins Wasser der Zwischenwässerung. Drück auf den Knopf, wenn er drin ist.",
    fix: (tray, ordinal) =>
      `Leg ihn ins Fixierbad${nth(ordinal)}${at(tray)}, ganz untergetaucht. Drück auf den Knopf, wenn er drin ist.`,
    wash: (_, ordinal) =>
      `Leg ihn ${ordinal > 0 ? `zum ${ordinal === 1 ? "ersten" : "zweiten"} Mal ` : ""}in die Wässerung. Drück auf den Knopf, wenn er drin ist.`,
    "wash-aid": (tray) => `Leg ihn in die Wässerungshilfe${at(tray)}. Drück auf den Knopf, wenn er drin ist.`,
    dry: () =>
      "Nimm ihn heraus, streif das Wasser ab, häng ihn auf oder leg ihn auf ein Sieb. Drück auf den Knopf, wenn er trocknet.",
  },
  labels: {
    develop: () => "Abzug ist untergetaucht",
    stop: () => "Im Stoppbad",
    rinse: () => "Im Wasser",
    fix: (ordinal) => `Im Fixierbad${nth(ordinal)}`,
    wash: (ordinal) => `In der Wässerung${nth(ordinal)}`,
    "wash-aid": () => "In der Wässerungshilfe",
    dry: () => "Er trocknet",
  },
  leaving: {
    develop:
      "Heb ihn an einer Ecke heraus und lass ihn über dem Entwickler abtropfen. Nur die Zange dieser Schale.",
    stop: "Heb ihn heraus und lass ihn über dem Stoppbad abtropfen.",
    rinse: "Heb ihn heraus und lass ihn abtropfen.",
    fix: "Heb ihn heraus und lass ihn über dem Fixierbad abtropfen: Was tropft, enthält Silber.",
    wash: "Die Wässerung ist fertig.",
    "wash-aid": "Heb ihn aus der Wässerungshilfe.",
    dry: "",
  },
  rock: "die Schale ständig schaukeln",
  rhythm: (firstSeconds, burstSeconds) =>
    firstSeconds === burstSeconds
      ? `die Schale in jeder Minute ${burstSeconds} s schaukeln`
      : `die Schale ${firstSeconds} s schaukeln, dann in jeder Minute ${burstSeconds} s`,
};
