/* To what a first hour in the darkroom brings. Common practice, no source, where no other is named. */

export const en = {
  unreel:
    "**Only after the last bath: light does no harm then.** Turn one half of a plastic reel past its stop and pull the halves apart; with a metal one, unwind the film from outside. Hold it by its edges, let it touch nothing, and hang it at once.",
  unreelShut:
    "**Not yet: the film stays on its reel, lid on, until the last bath is out.** Then turn one half of a plastic reel past its stop and pull the halves apart, and hang the film at once.",
  // Bath carried over wears out the next one: the handbook of The Darkroom Cookbook on stop baths, from memory.
  skip: "**Leave nothing out that your plan has.** Only the stop bath may be two changes of water instead. Left it out already? Go on with the fixer and tell an aide: it wears out sooner. Not fixed, the film goes dark in the light; not washed, it spoils later: give it the bath that is missing, lid on.",
  dark: "**Dark only while the film is open: from opening its cassette until the lid is on the tank.** Then the light may be on, for pouring as well. Ask aloud before you touch the switch: somebody else's film may be open.",
  // 5 °F between baths: US Army course SS0509-8, p. 84.
  rinseWarmth:
    "**Stop bath, fixer and water: nearly as warm as the bath before, at most 3 °C (5 °F) off.** A jump can wrinkle the film, and cold water washes more slowly. The developer goes by the degree: measure it and say how warm it is, like “21.5 degrees”.",
  redAndFilm: "**Not for film: it wants total darkness, red light off as well.** For paper:",
  atOnce:
    "**First the tank whose developer is over: that one can't wait.** A film in the fixer or in water bears half a minute more. Which is where:",
  atOnceNone: "**You have no film in a tank:** the call is somebody else's. Look at the board.",
  dryer:
    "**Whose turn it is at the dryer I don't know: ask an aide.** Until then leave the film in clean water, or hang it where no dust flies.",
  clings:
    "**Don't pull: put it into clean water and let it come apart by itself.** A tank is still shut? Leave the lid on and go on by the clock. Where film lay on film it stays milky: fix it again, and tell the teacher.",
  filmName:
    "**Read its name off the cassette, the box or the backing paper, never off the film: until it is fixed it stays in the dark.** You can't find it? Ask your teacher before anything is poured: without its name there is no time for it.",
  cut: "**Only when it is bone dry, also at its edges: wet film scratches and sticks.** Then cut between two pictures, as many to a strip as your sleeves take, and put the strips in at once.",
  spiltOn:
    "**Off with it if it is wet through, and rinse the skin under it with water.** Gloves on, wipe the rest up. Developer and fixer leave stains: rinse the cloth in cold water before it dries. Does it itch or burn? Call the teacher at once.",
  pourHow:
    "**Pour in one go, without a pause, the tank tilted a little so that the air gets out:** slowly poured, the film develops unevenly. Nothing may splash. Then close it and agitate at once. Begin to pour out when I call.",
  // Acid and fixer, gas: as on the safety data sheets of acid stop baths and fixers, in general; no single source.
  wrongBottle:
    "**Tell the teacher now what went into which bottle. Pour nothing more into it, and nobody uses it.** Don't put its cap on, and step back: acid and fixer together set gas free. Your film goes on by the clock; its next bath comes from another bottle.",
  whyAgitate:
    "**It brings fresh bath to the film: what lies against it is soon used up.** Too seldom, and the pictures get thin and uneven; too often or too hard, and they get dense, with streaks. So do it when I call, gently.",
  wetting:
    "**As much as its bottle says: usually a few drops in a tank of clean water.** More of it foams and dries into marks. Don't agitate it. Then let the film drip, and don't rinse it again.",
  wrongPlan:
    "**Nothing is poured in yet: make a new plan, with what is really in the tank.** A run that was started waits for its developer: stop it first.",
  wrongPlanIn:
    "**Go on, and tell the teacher now which film and developer are really in the tank.** I call by the plan until then; the teacher says when to pour out.",
  wrongTankIn:
    "**Go on: the tank's number changes no time.** Tell the teacher which tank it is, so that nobody else takes yours.",
  late: "**Late means: it was called, and nobody pressed yet.** Do now what the call says, then press. Done in time, only not pressed? Press, then say when, like “poured in 20 seconds ago”.",
  sleeve:
    "**Your name, the day, the film and its number in the log:** by that number everybody finds it again. Write before the strips are in: a pen presses through.",
  rewind:
    "**Before the camera is opened: press the button on its base, then turn the crank as its arrow shows, until it turns freely.** Already opened? Shut it, and tell the teacher: light has reached the outer pictures. A roll film is not rewound: wind it on to its end.",
  alarm:
    "**Out at once, as your school does it. Leave every film where it is.** Shout to whoever is at a tank or in the dark. Don't come back for a film before the teacher says so.",
  length:
    "**No: the time is the same for 24 and for 36 pictures.** What counts is how many rolls are in the tank: say it in the plan.",
  comeIn:
    "**In the room: Menu, “Door: code and people”.** The teacher finds the class code there, its address to scan, and “New code”. At the door a student types the code and a name. On Discord there is no code: whoever sees the class's channel is in.",
  lookWait:
    "**Leave the lid on: what a film looks like counts only when its time in the fixer is over.** Seen it already? Lid on at once, go on by the clock, and tell the teacher.",
  look: {
    milky:
      "**Milky means not fixed yet: back into the fixer, lid on, and tell the teacher.** Clear after that? Then wash it anew.",
    coloured:
      "**A little violet or pink is dye: wash it longer.** Still there after the wash? Into the fixer again, and tell the teacher.",
    // With or without edge print: from memory. Edges clear or dark: NAVEDTRA 14209, table 10-1.
    blank:
      "**Look for the numbers along its edge.** They are there: developed, but no light in the camera. None: no developer got to it, or the fixer came first. Show it to the teacher.",
    dark: "**Look at its edges, outside the pictures.** Dark as well: light got at it, or it was fogged in the tank. Clear: too much light in the camera, or developed too long. Show it to the teacher.",
    // Drops: NAVEDTRA 14209, p. 280. Air bells: US Army course SS0509-8, p. 84.
    spots:
      "**Don't wipe it.** Drops of water: rinse it again, then wetting agent, and hang it up. Small round clear spots are air bubbles from the developer: they stay; tap the tank next time.",
    scratch:
      "**A scratch stays: touch the wet film no more, and let it dry.** The teacher knows how to hide it in the print.",
    any: "**Once it is fixed, show the film to your teacher, by its edges, before a light.** When it is in the log I look for the cause with its record.",
  },
};
export type BasicsWords = typeof en;
