/* What words may mean that are said at the sink when something is in the way, or worries; as lexicon.ts, of which it is a part. */

export const SINK_WORDS = {
  OFTEN: "often oft",
  REEL: "reel reels spiral spule spulen spirale spiralen einspulen aufspulen einfädeln aufwickeln",
  LID: "lid cap deckel öffnen open opened aufmachen aufgemacht geöffnet reinschauen reinschaun reingucken reinsehen reingeschaut peek",
  LEAK: "leak leaks leaking leaky leck leckt tropft rinnt undicht",
  LAMP: "torch flashlight lamp lamps lights licht lampe lampen taschenlampe handylampe handylicht",
  NOISE:
    "noise sound sounds beep beeps beeping ton töne geräusch piep piept piepst piepsen klingelt klingeln signal signale gehört ghört hear heard hör höre hören volume lautsprecher leiser lauter vibriert vibrate stumm lautlos mute muted",
  PHONE: "phone handy natel smartphone telefon",
  MISSED: "missed verpasst verpennt überhört",
  LOO: "klo loo toilet toilette wc bathroom popout rausgehen weggehen",
  POUREDOUT: "ausgekippt ausgegossen ausgeschüttet ausgeleert rausgekippt pouredout",
  INSTEAD: "instead statt anstatt",
  FOAM: "foam foamy foaming schaum schäumt",
  HANG: "hang hanging hung aufhängen häng hängen trocknen curly curls curled curling rollt wellt",
  // What worries somebody, and what is in the way of the phone
  WEAR: "wear glove gloves apron goggles handschuh handschuhe schürze kittel schutzbrille anziehen",
  SMELL:
    "smell smells smelly smelling odour odor riecht riechen geruch gestank müffelt eggs eier eiern essig vinegar",
  DOOR: "door türe tür curtain vorhang",
  SWITCHED: "turned switched flicked angemacht eingeschaltet angeschaltet angeknipst",
  CASSETTE:
    "cassette cassettes canister cartridge patrone patronen filmpatrone kassette leader filmzunge filmlasche",
  ALWAYS: "each every immer jedesmal jedes",
  MISS: "miss verpasse verpass überhöre",
  BATTERY: "battery akku akkus charge aufladen charger ladekabel",
  PAGE: "page website site screen display browser app tab link seite webseite bildschirm",
  TURN: "turn dran reihe drankommen",
  LEAVE: "leave leaving heim heimgehen verlassen",
  RUNNING: "running läuft laufen laufende",
  PEOPLE: "student students schüler schülerin schülerinnen schülern kids people leute",
  EXPIRED: "expired outdated abgelaufen abgelaufene abgelaufener abgelaufenen überlagert ablaufdatum",
  TWO: "two both several zwei beide mehrere",
  FASTER: "faster quicker speed hurry schneller beeilen abkürzen",
  RUINED: "ruined ruin spoilt spoiled wrecked verdorben versaut verhunzt ruiniert",
  STAY: "stay staying bleiben dableiben stehenbleiben",
  TARDY: "late spät verspätet",
  RED: "red rot rotes rote",
  BAKED: "sun sonne car auto heat hitze kofferraum",
  SCARED: "scared afraid worried nervous panic angst panik nervös",
} as const;
