import { saySeconds } from "../../speech/wording.ts";
import type { StepWords } from "./step.en.ts";

const from = (bottle: string | null): string => (bottle === null ? "" : ` aus ${bottle}`);

export const de: StepWords = {
  titles: {
    develop: "Entwickler",
    stop: "Stoppbad",
    rinse: "Zwischenwässerung",
    fix: "Fixierbad",
    wash: "Wässerung",
    "wash-aid": "Wässerungshilfe",
    "wetting-agent": "Netzmittel",
    dry: "Trocknen",
    cut: "Schneiden und in Negativhüllen",
    lamp: "Dunkelkammerlicht",
    grey: "Graubelichtung",
    read: "Ablesen",
    expose: "Belichtung",
    judge: "Beurteilen",
  },
  titleInText: (title) => title,
  doing: {
    develop: (bottle) =>
      `Gieß den Entwickler${from(bottle)} ein. Drück auf den Knopf, wenn die Dose voll ist.`,
    stop: (bottle) => `Gieß das Stoppbad${from(bottle)} ein. Drück auf den Knopf, wenn es drin ist.`,
    rinse: (bottle) => `Füll die Dose mit Wasser${from(bottle)}. Drück auf den Knopf, wenn sie voll ist.`,
    fix: (bottle) => `Gieß das Fixierbad${from(bottle)} ein. Drück auf den Knopf, wenn es drin ist.`,
    wash: (bottle) =>
      `Beginne die Wässerung${from(bottle)}. Drück auf den Knopf, wenn Wasser durch die Dose läuft.`,
    "wash-aid": (bottle) =>
      `Gieß die Wässerungshilfe${from(bottle)} ein. Drück auf den Knopf, wenn sie drin ist.`,
    "wetting-agent": (bottle) =>
      `Gieß das Netzmittel${from(bottle)} ein. Drück auf den Knopf, wenn es drin ist.`,
    dry: () =>
      "Häng den Film zum Trocknen auf, eine Klammer an jedem Ende. Drück auf den Knopf, wenn er hängt.",
    cut: () =>
      "Schneide den Film in Streifen und steck sie in Hüllen. Drück auf den Knopf, wenn du fertig bist.",
  },
  pourMixed: (concentrate, bottle, water) =>
    `Gieß den Entwickler ein: ${concentrate}${bottle === null ? " Konzentrat" : from(bottle)} und ${water} Wasser, gemischt. Drück auf den Knopf, wenn die Dose voll ist.`,
  labels: {
    develop: "Dose ist voll",
    stop: "Stoppbad ist drin",
    rinse: "Wasser ist drin",
    fix: "Fixierbad ist drin",
    wash: "Wässerung läuft",
    "wash-aid": "Wässerungshilfe ist drin",
    "wetting-agent": "Netzmittel ist drin",
    dry: "Film hängt",
    cut: "Geschnitten, in Hüllen",
  },
  leaving: {
    develop: () =>
      "Gieß den Entwickler aus. Er wird nur einmal benutzt: in den Kanister oder Ausguss, den dein Kurs dafür nimmt.",
    stop: () => "Gieß das Stoppbad aus.",
    rinse: () => "Gieß das Wasser aus.",
    fix: (bottle) => `Gieß das Fixierbad zurück in ${bottle ?? "seine Flasche"}, nie in den Ausguss.`,
    wash: () => "Die Wässerung ist fertig.",
    "wash-aid": () => "Gieß die Wässerungshilfe aus.",
    "wetting-agent": () => "Heb den Film aus dem Netzmittel. Lass ihn abtropfen.",
    dry: () => "Der Film sollte trocken sein. Prüf die Enden.",
    cut: () => "",
  },
  back: {
    develop: (bottle) => `Gieß den Entwickler zurück in ${bottle}.`,
    stop: (bottle) => `Gieß das Stoppbad zurück in ${bottle}.`,
    "wash-aid": (bottle) => `Gieß die Wässerungshilfe zurück in ${bottle}.`,
  },
  oneOfTwo: {
    doing: (bath, bottle) =>
      `Gieß Fixierbad ${bath}${from(bottle)} ein. Drück auf den Knopf, wenn es drin ist.`,
    label: (bath) => `Bad ${bath} ist drin`,
    leaving: (bath, bottle) =>
      `Gieß Fixierbad ${bath} zurück in ${bottle ?? `Flasche ${bath}`}, nie in die andere und nie in den Ausguss.`,
  },
  replenish: (ml) => `Dann kommen ${ml} Regenerat hinein: eine Hilfskraft oder die Lehrkraft notiert es.`,
  manners: {
    inversion: "die Dose kippen und wieder aufrichten",
    rotation: "die Spirale drehen",
    continuous: "die Dose ständig bewegen",
  },
  rhythm: (firstSeconds, burstSeconds, cycleSeconds) =>
    `erst ${saySeconds(firstSeconds)}, dann ${saySeconds(burstSeconds)} ${cycleSeconds === 60 ? "in jeder Minute" : `alle ${saySeconds(cycleSeconds)}`}`,
  firstOnly: (firstSeconds) => `erst ${saySeconds(firstSeconds)}`,
  taps: (taps) => `dann ${taps === 1 ? "einmal" : `${taps}-mal`} auf dem Tisch aufklopfen`,
};
