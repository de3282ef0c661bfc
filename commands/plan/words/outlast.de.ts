import type { OutlastWords } from "./outlast.en.ts";

export const de: OutlastWords = {
  bell: (time, advice) => `**Die Klingel läutet um ${time}.** ${advice}`,
  advice: {
    "cut-later": ({ done }) =>
      `Dieser Lauf endet um ${done}. Der Film ist vorher trocken: Lass ihn hängen, schneide ihn nächstes Mal und steck ihn in die Hülle.`,
    "dry-later": ({ hung }) =>
      `Der Film hängt um ${hung} und ist bis dahin nicht trocken: Lass ihn über Nacht trocknen, schneide ihn nächstes Mal und steck ihn in die Hülle.`,
    "wash-later": ({ fixed }) =>
      `Der Film ist um ${fixed} aus dem Fixierbad, aber bis dahin nicht gewässert. Frag die Lehrkraft, bevor du eingießt: Er darf eine Weile in klarem Wasser liegen, nie im Entwickler oder im Fixierbad.`,
    "not-fixed": ({ latest }) =>
      `**Nicht eingießen.** Beim Klingeln wäre der Film noch im Entwickler oder im Fixierbad. Das letzte Eingießen war um ${latest}. Lass den Film für nächstes Mal im Dunkeln, in seiner Dose oder seiner Patrone.`,
  },
};
