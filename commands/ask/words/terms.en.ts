import type { Term } from "../terms.ts";

/** What the words of the trade mean, for somebody who stands at the sink for the first time. */
export const en: Readonly<Record<Term, string>> = {
  developer:
    "**Developer** turns the silver that met light black: it makes the picture. Its time hangs on its temperature.",
  stop: "**Stop bath** ends the developing at once. Water, twice, does it more slowly.",
  fixer:
    "**Fixer** takes away the silver that met no light, so that the film may see light. It is used again, and carries silver: never pour it away.",
  wash: "**Washing** takes the fixer out of the film. A film that is not washed long enough fades and stains.",
  wetting:
    "**Wetting agent** makes water run off, so that no drops dry on the film. A minute, no rinsing after it.",
  washaid: "**Wash aid** is a salt bath that lets the fixer out faster: the wash gets shorter.",
  agitation:
    "**Agitating** brings fresh developer to the film: turn the tank over and back, gently, as often as you are told. Too little makes streaks, too much makes it too contrasty.",
  reel: "**The reel** is the spiral that holds the film, so that no turn touches the next. It must be dry when you load it.",
  tank: "**The tank** is light-tight: once its lid is on, the room may be bright. Baths go in and out through the lid.",
  cassette: "**The cassette** is the small container the film comes in. Open it in total darkness.",
  stock:
    "**Stock** is the solution as it is mixed from powder or comes in the bottle, before water is added.",
  dilution:
    "**1+1** means 1 part of concentrate or stock and 1 part of water. 300 ml of it: 150 ml and 150 ml.",
  exposure:
    "**EI**, the exposure index, is the speed that the camera's meter was set to. It need not be the speed on the box.",
  push: "**Push**: shot as if the film were faster, and developed longer. **Pull**: the other way round.",
  negative: "**A negative** is light where the scene was dark, and dark where it was bright.",
  contact: "**A contact sheet** is a print of all strips at their own size, to choose from.",
  strip:
    "**A test strip** is a piece of the paper, exposed in bars, each longer than the one before. It shows which time is right.",
  leader:
    "**The leader** is the end of the film that hangs out of its cassette. It saw light: use it for tests.",
  clearing:
    "**The clearing time** is how long fixer takes to make a scrap of film clear. Fix at least twice as long. When it has doubled, the fixer is exhausted.",
  batch: "**A batch** is one bottle of mixed chemistry, numbered: B3.",
  sheet:
    "**A data sheet** says how long one film takes in one developer, as its maker or your teacher found it.",
  run: "**A run** is one tank on its way through all the baths, numbered: R7.",
  numbers:
    "**P5** is a plan, **R7** a run, **T3** a tank, **B2** a bottle, **L12** a roll in the log, **V7** a print.",
  reticulation:
    "**Reticulation** is a net of fine cracks, from baths whose temperatures differ by too much. Keep them within a few degrees.",
  presoak:
    "**A presoak** is a minute of plain water before the developer. Only if the maker or your teacher says so.",
  squeegee: "**A squeegee** wipes water off the film. It may scratch; wetting agent does without.",
  grain:
    "**Grain** is the silver one sees when the picture is enlarged. Faster film and longer developing show more.",
  thermometer: "**The thermometer** goes into the developer just before you pour. Half a degree counts.",
  safelight:
    "**A safelight** is dim light that paper bears for a while, once the class has tested it. **None for film:** load it in total darkness, phones, watches and red lights off.",
};
export type TermWords = typeof en;
