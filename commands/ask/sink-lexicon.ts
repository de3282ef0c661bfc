/* What words may mean that are said at the sink when something is in the way; as lexicon.ts, of which it is a part. */

export const SINK_WORDS = {
  OFTEN: "often oft",
  REEL: "reel reels spiral spule spulen spirale spiralen einspulen aufspulen einfädeln aufwickeln",
  LID: "lid cap deckel öffnen open opened aufmachen aufgemacht geöffnet reinschauen reinschaun reingucken reinsehen reingeschaut peek",
  LEAK: "leak leaks leaking leaky leck leckt tropft rinnt undicht",
  LAMP: "torch flashlight lamp lamps lights licht lampe lampen taschenlampe handylampe handylicht",
  NOISE:
    "noise sound sounds beep beeps beeping ton töne geräusch piep piept piepst piepsen klingelt klingeln signal signale gehört ghört hear heard vibriert vibrate stumm lautlos mute muted",
  PHONE: "phone handy natel smartphone telefon",
  MISSED: "missed verpasst verpennt überhört",
  LOO: "klo loo toilet toilette wc bathroom popout rausgehen weggehen",
  POUREDOUT: "ausgekippt ausgegossen ausgeschüttet ausgeleert rausgekippt pouredout",
  INSTEAD: "instead statt anstatt",
  FOAM: "foam foamy foaming schaum schäumt",
  HANG: "hang hanging hung aufhängen häng hängen trocknen curly curls curled curling rollt wellt",
} as const;
