import type { PushWords } from "./push-words.en.ts";

export const push: PushWords = {
  title: "Signale bei geschlossener Seite",
  lead: "Dein Handy kann dir auch dann ein Signal geben, wenn diese Seite zu oder das Handy gesperrt ist. Das Signal läuft verschlüsselt über den Dienst des Handyherstellers und braucht deshalb Internet. Es enthält den Schritt und die Dose, nicht deinen Namen.",
  notAllowed: "Deine Lehrkraft hat das für den Kurs nicht erlaubt.",
  noWay:
    "Mit diesem Browser geht es hier nicht. Es braucht https, und auf dem iPhone muss die Seite auf dem Home-Bildschirm liegen: Teilen, dann „Zum Home-Bildschirm“.",
  blocked: "Mitteilungen sind für diese Seite gesperrt: Erlaube sie in den Einstellungen des Browsers.",
  turnOn: "Einschalten",
  turnOff: "Ausschalten",
  isOn: "Auf diesem Gerät eingeschaltet. Lass die Seite trotzdem offen, solange es geht: Dort sind die Knöpfe und die Uhr.",
  isOff: "Auf diesem Gerät ausgeschaltet.",
  failed: "Der Dienst des Handyherstellers ist nicht erreichbar. Gibt es Internet? Versuch es noch einmal.",
  wait: "Einen Moment…",
  allowTitle: "Signale an geschlossene Seiten",
  allowLead:
    "Nicht erlaubt: Nichts verlässt das Netz der Schule. Erlaubt: Wer will, bekommt Signale auch bei geschlossener Seite, verschlüsselt über den Dienst des Handyherstellers. Der erfährt, dass und wann ein Signal kam, aber nicht, was darin steht. Es braucht Internet.",
  allow: "Für den Kurs erlauben",
  forbid: "Nicht mehr erlauben",
  allowed: "Erlaubt.",
  forbidden: "Nicht erlaubt.",
};
