/* Words by which somebody tells that they are hurt, or may be soon; as lexicon.ts, of which it is a part. */

export const HARM_WORDS = {
  EYE: "eye eyes auge augen",
  SWALLOW: "swallow* swallowed drank drunk drink verschluck* geschluckt getrunken trank ate gegessen",
  MOUTH: "mouth mund",
  FACE: "face gesicht",
  SKIN: "skin haut hand hände händen hands arm finger fingers",
  ITCH: "itch itches itching juckt rash ausschlag",
  BURNS: "burn burns burning brennt brennen verätzt ätzt stings",
  SPILL:
    "spill spills spilled spilt spilling verschütt* splash splashed gespritzt spritzt spritzer knocked umgefallen umgekippt umgestoßen ausgelaufen",
  FELL: "fell fallen dropped runtergefallen gefallen broke broken zerbrochen smashed",
  FLOOR:
    "floor boden fußboden table tisch clothes kleidung shirt tshirt pullover pulli jumper hoodie ärmel jacke hose jeans trousers pants",
  BREATHE:
    "breathe breath breathing atmen luft inhaled eingeatmet einatmen fumes dämpfen dämpfe dampf dizzy schwindlig schwindelig übel fainted ohnmächtig asthma stinkt hustet coughing",
  CUT: "cut geschnitten",
  ME: "mirist mirwird",
  SICKLY: "schlecht übel",
  ASK: "ask fragen",
  HURT: "sick nauseous nausea vomit* erbrech* erbroch* unconscious bewusstlos collapsed zusammengebrochen allergic allergisch hurt hurts verletzt blutet bleeding blood blut emergency notfall ambulance krankenwagen notarzt poison poisoned poisonous gift giftig vergiftet",
  FIRE: "fire feuer",
} as const;
