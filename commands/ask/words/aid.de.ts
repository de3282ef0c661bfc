import type { AidWords } from "./aid.en.ts";

export const de: AidWords = {
  eye: "**Auge: sofort unter fließendem Wasser spülen, 15 Minuten, Lider offen halten.** Kontaktlinsen heraus, wenn es leicht geht; weiterspülen. Ruf laut nach der Lehrkraft.",
  swallowed:
    "**Verschluckt: Mund ausspülen. Kein Erbrechen auslösen.** Sofort den Giftnotruf anrufen, die Flasche in der Hand. Ruf laut nach der Lehrkraft.",
  breathed:
    "**Atmen: sofort an die frische Luft**, hinsetzen, ruhig bleiben. Wem es nicht gleich besser geht, der braucht ärztliche Hilfe. Ruf laut nach der Lehrkraft.",
  skin: "**Haut: sofort mit viel fließendem Wasser spülen, mehrere Minuten.** Zieh aus, was durchnässt ist. Brennt es oder bleibt es rot, lass es ärztlich ansehen.",
  spilt:
    "**Verschüttet: Sag es laut, damit niemand ausrutscht.** Handschuhe an, aufwischen, mit viel Wasser nachspülen. Sind Säure und Chlorreiniger oder Pulver dabei: Alle raus, und hol die Lehrkraft.",
  hurt: "**Ruf sofort laut nach der Lehrkraft.** Sichere die Stelle, bleib bei der verletzten Person. Bei Gefahr, oder wenn jemand nicht ganz wach ist: Notruf wählen.",
  call: "Notruf: 112 in Europa, 911 in Nordamerika, sonst die Nummer an der Wand. Etikett, Sicherheitsdatenblatt (Abschnitt 4) und die Regeln der Schule gehen vor.",
};
