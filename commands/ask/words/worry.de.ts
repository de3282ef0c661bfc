import type { WorryWords } from "./worry.en.ts";

export const de: WorryWords = {
  wear: "**Handschuhe und Schutzbrille, wo etwas gegossen wird, eine Schürze über guten Kleidern.** Wasch dir die Hände, bevor du gehst.",
  smell:
    "**Ein wenig Essig oder Schwefel riecht man immer: Stoppbad und Fixierbad.** Fenster auf oder Lüftung an. Sticht es, musst du husten, wird dir schwindlig? Sofort an die frische Luft, und sag es der Lehrkraft. Faule Eier oder ein neuer Geruch nach dem Mischen: Alle raus, und hol die Lehrkraft.",
  exposed:
    "**Deckel drauf, Papier abdecken, Licht aus.** Einem Film in der geschlossenen Dose ist nichts passiert: Mach nach der Uhr weiter. Ein offener Film ist verschleiert, oft aber nicht ganz: Entwickle ihn trotzdem und sag es der Lehrkraft.",
  leader:
    "**Öffne die Patrone bei völliger Dunkelheit:** Heb den flachen Deckel mit einem Flaschenöffner ab, fass den Film nur am Rand an, schneide den Anfang ab und spul ihn ein. Bei Licht holt ihn nur ein Filmrückholer heraus: Frag die Lehrkraft.",
  tint: "**Lila oder rosa ist Farbstoff aus den Filmen und ganz üblich.** Trüb, gelbe oder weiße Flocken, Schwefelgeruch oder brauner Entwickler: Nimm es nicht und sag es einer Hilfskraft. Wie viele Filme eine Flasche hinter sich hat:",
  calls:
    "**Ein Signal zum Kippen musst du nicht wegtippen: Es geht von selbst.** Nur der Wechsel des Bades braucht deinen Knopf, sobald das nächste Bad drin ist. Eins verpasst? Das nächste kommt trotzdem, und ein Wechsel meldet sich mehrmals.",
  phone:
    "**Die Zeit läuft im Raum, nicht in deinem Handy: Dein Film geht weiter.** Lade die Seite neu oder öffne sie auf einem anderen Handy; die Lehrkraft lässt dich unter deinem Namen wieder herein. So lange zeigt die Wandtafel deine Dose, und die Uhr der Nachbarn tut es auch.",
  turn: "**Du bist dran, sobald eine Dose frei ist.** Mach so lange deinen Plan, dann kannst du gleich starten.",
  expired:
    "**Entwickle ihn so lange, wie sein Datenblatt sagt.** Alter Film wird grauer und flauer; mehr Zeit bringt wenig zurück. Zeig ihn zuerst der Lehrkraft: Wie er gelagert war, weiß sonst niemand.",
  several:
    "**Auf jede Spule ein Film, so viele, wie die Dose Spulen hat:** gleicher Film oder wenigstens gleiche Zeit, und mehr Entwickler. Sag im Plan, wie viele Filme es sind. In zwei Dosen hat jede ihren Plan und ihre Signale.",
  faster:
    "**Nein: Ein Bad braucht seine Zeit, sonst wird der Film dünn oder verdirbt später.** Schneller geht es nur mit wärmerem Entwickler und einem Plan vor dem Eingießen: Er sagt, ob das Datenblatt das hergibt.",
  worry:
    "**Mach nach der Uhr weiter: Die meisten Filme sind zu retten.** Schreib mir, was passiert ist, etwa „zu früh ausgegossen“ oder „der Deckel ging ab“, und sag es der Lehrkraft. Gewissheit gibt erst der nasse Film bei Licht, nach dem Fixierbad.",
};
